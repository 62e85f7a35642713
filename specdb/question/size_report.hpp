// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "core/thread/thread.hpp"
#include "specdb/catalogue/size_facts.hpp"

namespace clampwright::specdb {

// What goes with a thread, for people: holes, spanners and keys, nuts, washers; for British threads the section by
// analogy. Without rows where nothing is known.
[[nodiscard]] report::Section size_section(const thread::Thread& thread, const SizeFacts& facts,
                                           const quantity::DisplayUnits& units);

} // namespace clampwright::specdb
