// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/command.hpp"
#include "core/thread/thread.hpp"
#include "specdb/catalogue/size_facts.hpp"

namespace clampwright::cli {

// What `thread` adds about holes, tools, nuts and washers: the contract's section 5.
[[nodiscard]] Json size_json(const thread::Thread& thread, const specdb::SizeFacts& facts);

} // namespace clampwright::cli
