// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "core/problem/problem.hpp"
#include "core/thread/limits.hpp"
#include "specdb/catalogue/threads.hpp"

namespace clampwright::specdb {

// The limits of size of a thread, for its strip areas. Fails with no-such (no-limits) for a British thread, or another
// class than 6g/6H and 2A/2B. `text` is how it was named, `field` the option.
[[nodiscard]] Result<thread::Limits> known_limits(const ThreadEntry& entry, std::string_view text,
                                                  const std::string& field);

} // namespace clampwright::specdb
