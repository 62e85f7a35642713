// SPDX-License-Identifier: GPL-3.0-or-later
//
// Keeping the documents from which figures are taken.
#pragma once

#include <filesystem>

#include "core/problem/problem.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// What is said of a document, as text; each field is named like its option.
struct SourceWords {
  MaybeText short_name = {}; // made from its title where it is not said
  MaybeText title = {};
  MaybeText edition = {}; // "2nd print"; "undated" where it has none
  MaybeText known = {};   // printed, second-hand, memory, computed, common-practice
};

struct KeptSource {
  SourceRecord source;
  bool made_file = false; // there was no workshop file, and an empty one was made for it
};

// Enters a document. Where no workshop file is there, one is made that holds the document alone. Fails with usage where
// title, edition or how it is known is missing, with not-understood for their texts, with cannot-create where a
// document of that short name, or of that title and edition, is there, or the file cannot be made.
[[nodiscard]] Result<KeptSource> add_source(const std::filesystem::path& file, const SourceWords& words);

} // namespace clampwright::specdb
