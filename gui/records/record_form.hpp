// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is kept of a machine, joint, figure, document or wrench, as blanks to fill in: the same blanks as those of
// sentences, named like the options by which the command line would say the same.
#pragma once

#include <filesystem>
#include <functional>
#include <string>
#include <vector>

#include "gui/sentences/sentence.hpp"

namespace clampwright::desk {

// What a form is about. `of` is that to which a new record belongs: the machine of a joint, the joint of a figure;
// `key` that which is revised, empty for a new one.
struct RecordKey {
  std::string of;
  std::string key;

  friend bool operator==(const RecordKey&, const RecordKey&) = default;
};

// A heading and the blanks below it.
struct BlankGroup {
  const char* heading; // English, to be translated
  std::vector<Blank> blanks;
  bool only_new = false; // not asked again when the record is revised
};

// What is done with what was filled in. Runs away from the window's thread, so it asks no Place.
struct Keeping {
  std::filesystem::path file;
  std::chrono::year_month_day today{};
  RecordKey key;
  Words said;                         // only what differs from what is recorded; "none" takes away
  std::optional<std::string> because; // of a revision
  std::optional<std::size_t> events_seen;
};

struct RecordForm {
  std::string id;      // "machine", "joint", "figure", "document", "wrench"
  const char* name;    // English, to be translated: "Machine"
  const char* new_one; // "New machine"
  std::vector<BlankGroup> groups;
  bool revised = true; // can be: a document cannot
  // What is recorded under the key; empty for a new one.
  std::function<Words(const Place& place, const RecordKey& key)> recorded;
  // How many events its record has, for the guard against a change in the meantime.
  std::function<std::optional<std::size_t>(const Place& place, const RecordKey& key)> events;
  // Its name and history, as a page; without sections where there is none.
  std::function<PageContent(const Place& place, const RecordKey& key)> history;
  // Enters or revises; gives the key of what is there now.
  std::function<Result<RecordKey>(const specdb::Catalogue& catalogue, const Keeping& keeping)> keep;

  [[nodiscard]] const Blank* blank(std::string_view option) const;
};

[[nodiscard]] const std::vector<RecordForm>& record_forms();
[[nodiscard]] const RecordForm* record_form(std::string_view id);

// What of the filled-in words differs from the recorded ones; what was emptied is "none".
[[nodiscard]] Words differing(const Words& recorded, const Words& filled);

} // namespace clampwright::desk
