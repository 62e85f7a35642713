// SPDX-License-Identifier: GPL-3.0-or-later
//
// The shelf of locking compounds. A label is the user's own text and is handed back as it came; what it means is said
// by the grade, one of the tables.
#pragma once

#include <chrono>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "core/finding/finding.hpp"
#include "core/problem/problem.hpp"
#include "core/report/document.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// What a person enters, as text; what is empty was not said. An empty text takes away what was recorded.
struct ShelfEntry {
  std::optional<std::string> label;
  std::optional<std::string> grade;
  std::optional<std::string> batch;
  std::optional<std::string> expires; // 2027-06-30
  std::optional<std::string> opened;
  std::optional<std::string> bears; // temperature, by its maker's sheet
  std::optional<std::string> sheet; // what else the sheet says, in words
};

enum class ShelfState { good, expired, not_stated, retired };

// Good through the day that is printed.
[[nodiscard]] ShelfState state_of(const CompoundRecord& compound, std::chrono::year_month_day today);

// Each of them writes: in the place named, a new file where there is none and the first compound is added. Fails with
// usage for what is missing, with not-understood and no-such for the texts, with no-such for a compound that is not
// there, and as Workshop does.
[[nodiscard]] Result<CompoundRecord> add_to_shelf(const Catalogue& catalogue, const std::filesystem::path& file,
                                                  const ShelfEntry& entry, std::chrono::year_month_day today);
[[nodiscard]] Result<CompoundRecord> revise_on_shelf(const Catalogue& catalogue, const std::filesystem::path& file,
                                                     const std::string& name, const ShelfEntry& entry,
                                                     const std::string& because, std::chrono::year_month_day today);
[[nodiscard]] Result<CompoundRecord> retire_from_shelf(const std::filesystem::path& file, const std::string& name,
                                                       const std::string& because, std::chrono::year_month_day today);

// Those that are expired, a finding each.
[[nodiscard]] finding::Findings shelf_findings(const std::vector<CompoundRecord>& compounds,
                                               std::chrono::year_month_day today);

[[nodiscard]] report::Document shelf_document(const std::string& title, const std::vector<CompoundRecord>& compounds,
                                              std::chrono::year_month_day today);

} // namespace clampwright::specdb
