// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/problem/problem.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/question/word_field.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// When to look at a joint again: in words, and by hours or days in service or an event, as far as the page says so.
struct RecheckWords {
  std::string words = {};
  MaybeText hours = {}; // "1 h"
  MaybeText days = {};  // "10 d"
  MaybeText event = {}; // "first heat"

  friend bool operator==(const RecheckWords&, const RecheckWords&) = default;
};

// What is said of a figure, as text; each field is named like its option (`running_rule` is --running-rule). What the
// page prints is kept word for word, comma and all; the torque that it means is entered apart, with its unit. With a
// revision, "none" takes any field away but `printed`, `surfaces`, `source`, `page` and `status`.
struct FigureWords {
  MaybeText printed = {};
  MaybeText torque = {};    // "42 N.m"; "none" where the page gives no value
  MaybeText tolerance = {}; // as the page words it: "± 2 N·m"
  MaybeText low = {};       // the limits that it means: torques, both or neither
  MaybeText high = {};
  MaybeText method =
      {}; // torque, torque-angle, to-shoulder, by-feel; follows from torque and angle where it is not said
  MaybeText angle = {};    // that follows the torque
  MaybeText reading = {};  // how the printed text was understood, where that needs saying
  MaybeText surfaces = {}; // not-stated where it is not said
  MaybeText mu = {};       // a coefficient that the page names
  MaybeText condition = {};
  MaybeText temperature = {};                            // in words: "engine cold"
  MaybeText sequence = {};                               // in words
  MaybeText passes = {};                                 // torques, rising, parted by commas: "6 N.m, 12 N.m, 17 N.m"
  MaybeText running_rule = {};                           // of a locking nut's running torque: add, included
  MaybeText reuse_rule = {};                             // never, while-good; with reuse
  MaybeText reuse = {};                                  // in words
  std::optional<std::vector<RecheckWords>> recheck = {}; // takes the place of all that is recorded
  MaybeText source = {};                                 // short name of a document that is entered
  MaybeText page = {};                                   // where in it
  MaybeText status = {}; // maker, general-table, shop, derived; of a new figure with a torque it must be said
};

// The fields of the words, all but its rechecks, in the order of the record.
[[nodiscard]] std::span<const WordField<FigureWords>> figure_fields();

// The words that enter the record again as it is: with_words changes nothing by them. What is not recorded is not said,
// but for the torque, which is then "none".
[[nodiscard]] FigureWords words_of(const FigureRecord& record);

// The record of a new figure. Fails with usage where what is printed, its torque (or "none"), whose it is, source or
// page is missing, and like with_words.
[[nodiscard]] Result<FigureRecord> new_figure(const Catalogue& catalogue, const std::vector<SourceRecord>& sources,
                                              const FigureWords& words);

// The record with what the words say of it put in. Fails with not-understood where a text is not, or a number cannot be
// beside the others, as a torque far from what is printed; with no-such for surfaces or a source that are not there;
// with usage for what contradicts itself or is missing beside another.
[[nodiscard]] Result<FigureRecord> with_words(const Catalogue& catalogue, const std::vector<SourceRecord>& sources,
                                              FigureRecord record, const FigureWords& words);

// What differs, field by field: "torque: 42 N.m -> 45 N.m".
[[nodiscard]] std::vector<std::string> differences(const FigureRecord& was, const FigureRecord& is);

} // namespace clampwright::specdb
