// SPDX-License-Identifier: GPL-3.0-or-later
//
// What goes with a thread: its dimensions, its holes, nuts, washers and spanners.
#pragma once

#include <string>

#include "core/finding/finding.hpp"
#include "core/problem/problem.hpp"
#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "specdb/catalogue/size_facts.hpp"
#include "specdb/catalogue/threads.hpp"

namespace clampwright::specdb {

struct ThreadQuestion {
  std::string thread;
  bool any_pitch = false; // take a thread that no table lists
};

struct ThreadReply {
  ThreadEntry entry;
  SizeFacts facts;
  finding::Findings findings;
};

// Fails like find_thread, or find_thread_of_any_pitch.
[[nodiscard]] Result<ThreadReply> answer_thread(const Catalogue& catalogue, const ThreadQuestion& question);

[[nodiscard]] report::Document thread_document(const ThreadReply& reply, const quantity::DisplayUnits& units);

} // namespace clampwright::specdb
