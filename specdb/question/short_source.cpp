// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/short_source.hpp"

#include <array>
#include <string_view>

#include <fmt/format.h>

namespace clampwright::specdb {

namespace {

constexpr std::array<std::string_view, 4> k_publishers{"US Army Technical Manual ", "US Army Technical Bulletin ",
                                                       "FAA Advisory Circular ", "US Navy training manual "};

} // namespace

std::string short_source(const Source& source) {
  std::string title = source.title.substr(0, source.title.find(", "));
  for (const std::string_view publisher : k_publishers)
    if (title.starts_with(publisher)) title.erase(0, publisher.size());
  return source.where.empty() ? title : fmt::format("{}, {}", title, source.where);
}

} // namespace clampwright::specdb
