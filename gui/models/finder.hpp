// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the find line finds: joints and machines of the open workshop, threads, classes, units, and the desk's own
// pages.
#pragma once

#include <string>
#include <vector>

#include <QString>

#include "gui/sentences/sentence.hpp"
#include "specdb/catalogue/tables.hpp"
#include "specdb/workshop/browse.hpp"

namespace clampwright::desk {

// In the words of a table's target: what its rows must have.
inline constexpr const char* k_table_words = "words";

// In the words of a record's target: what it belongs to, and which it is; without that a new one.
inline constexpr const char* k_record_of = "of";
inline constexpr const char* k_record_key = "key";

// Where a line of the list leads.
struct Target {
  enum class To {
    joint,        // key: slug
    machine,      // key: slug; its joints are listed
    all_machines, // back from a machine's joints
    sentence,     // key: id, with words filled in
    table,        // key: name of a reference table; k_table_words
    records,      // key: "machines", "wrenches", "documents", or the machine whose joints are kept
    record,       // key: the form; k_record_of and k_record_key: what it is about
    about,        // cautions, keys, versions and licences
  };
  To to = To::about;
  std::string key = {};
  Words words = {};

  friend bool operator==(const Target&, const Target&) = default;
};

struct FoundLine {
  QString kind;   // "Joint"
  QString title;  // "clutch hub"
  QString detail; // "Pump Marrowfen P3 / clutch; 42 N·m"
  Target target;
};

struct FoundLines {
  std::vector<FoundLine> lines;
  QString note; // what was taken for what, or that nothing was found and what to try; may be empty
};

// Reads the tables once; finding is then quick enough for every key. The catalogue must outlive it.
class Finder {
 public:
  explicit Finder(const specdb::Catalogue& catalogue);

  // From now on it finds in that workshop as well, until another is taken up; nullptr: in none. It is kept.
  void take_up(const specdb::Workshop* workshop);
  [[nodiscard]] bool has_workshop() const { return workshop_ != nullptr; }

  // Lines for what was typed, best first. For nothing: the machines and pages to browse.
  [[nodiscard]] FoundLines find(const QString& typed) const;
  // The joints of one machine, by assembly.
  [[nodiscard]] FoundLines joints_of(const std::string& machine) const;

 private:
  const specdb::Catalogue& catalogue_;
  std::vector<std::string> threads_;
  std::vector<std::string> classes_;
  std::vector<specdb::TableSummary> tables_;
  const specdb::Workshop* workshop_ = nullptr;
  std::vector<specdb::MachineLine> machines_; // counting their joints takes too long for every key
};

// All pages that can be opened without typing: calculators and records.
[[nodiscard]] std::vector<FoundLine> page_lines();

} // namespace clampwright::desk
