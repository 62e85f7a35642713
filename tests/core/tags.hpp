// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace clampwright::test {

// What is wrong with the tags of a page that is to be well-formed: "" where each is closed in turn, every "&" begins an
// entity, and no "<" stands in a text.
[[nodiscard]] inline std::string tag_fault(std::string_view page) {
  constexpr std::string_view k_doctype = "<!DOCTYPE html>";
  if (!page.starts_with(k_doctype)) return "no doctype";
  page.remove_prefix(k_doctype.size());
  std::vector<std::string> open;
  while (!page.empty()) {
    const auto less = page.find('<');
    const std::string_view text = page.substr(0, less);
    for (auto at = text.find('&'); at != std::string_view::npos; at = text.find('&', at + 1))
      if (const auto end = text.find(';', at); end == std::string_view::npos || end - at > 6)
        return "a bare & in " + std::string(text.substr(at, 20));
    if (less == std::string_view::npos) break;
    const auto more = page.find('>', less);
    if (more == std::string_view::npos) return "a tag that does not end";
    const std::string_view tag = page.substr(less + 1, more - less - 1);
    page.remove_prefix(more + 1);
    if (tag.find('<') != std::string_view::npos) return "a < within " + std::string(tag);
    if (tag.ends_with('/')) continue;
    const std::string name(tag.substr(tag.starts_with('/') ? 1 : 0, tag.find(' ') - (tag.starts_with('/') ? 1 : 0)));
    if (!tag.starts_with('/')) {
      open.push_back(name);
      continue;
    }
    if (open.empty() || open.back() != name) return "</" + name + "> closes nothing";
    open.pop_back();
  }
  return open.empty() ? "" : "<" + open.back() + "> is not closed";
}

} // namespace clampwright::test
