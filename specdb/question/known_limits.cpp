// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/known_limits.hpp"

#include <fmt/format.h>

namespace clampwright::specdb {

Result<thread::Limits> known_limits(const ThreadEntry& entry, std::string_view text, const std::string& field) {
  if (entry.limits) return *entry.limits;
  const auto& thread = entry.thread;
  const std::string what = thread.tolerance.empty()
                               ? thread.designation
                               : fmt::format("{} of class {}", thread.designation, thread.tolerance);
  return refuse(
      Trouble::no_such, "no-limits",
      fmt::format("no limits of size are known for {}, so its strip areas are not either", what), text,
      "known are those of metric threads (6g/6H) and of Unified ones (2A/2B); basic sizes would overstate the "
      "areas by about a third",
      field);
}

} // namespace clampwright::specdb
