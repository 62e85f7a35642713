// SPDX-License-Identifier: GPL-3.0-or-later
//
// Keeping the machines of a workshop. Every change is one transaction with its line in the log of the machine's record:
// what was, what is, and why. Nothing is taken away.
#pragma once

#include <chrono>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/question/kept_changes.hpp"
#include "specdb/question/machine_record.hpp"

namespace clampwright::specdb {

// The machine as it now stands, and what was done.
struct KeptMachine {
  MachineRecord machine;
  std::vector<std::string> changes; // "stroke: 50 mm -> 52 mm", or "entered"
  bool made_file = false;           // there was no workshop file, and an empty one was made for it
};

// Enters a new machine. Where no workshop file is there, one is made that holds the machine alone. Fails with
// cannot-create where a machine has that name or short name, or the file cannot be made; with usage, not-understood and
// no-such for its words.
[[nodiscard]] Result<KeptMachine> add_machine(const Catalogue& catalogue, const std::filesystem::path& file,
                                              const MachineWords& words, std::chrono::year_month_day today);

// Fails with no-such where there is no such machine (by slug or name), with usage where nothing would change or no
// reason is given, with busy where it was revised since the caller looked, and for its words as above.
[[nodiscard]] Result<KeptMachine> revise_machine(const Catalogue& catalogue, const std::filesystem::path& file,
                                                 std::string_view name, const MachineWords& words,
                                                 const Revision& revision, std::chrono::year_month_day today);

} // namespace clampwright::specdb
