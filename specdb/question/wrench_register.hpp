// SPDX-License-Identifier: GPL-3.0-or-later
//
// Keeping the register of torque wrenches. Every change is one transaction with its line in the wrench's log: what was,
// what is, and why. Nothing is taken away; a wrench that is no longer used is retired.
#pragma once

#include <chrono>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "specdb/question/kept_changes.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// What is said of a wrench, in words. With `revise`, "none" takes step, class, arm, months, cycles or due away.
struct WrenchWords {
  std::optional<std::string> called = {};
  std::optional<std::string> range = {};
  std::optional<std::string> step = {};
  std::optional<std::string> wrench_class = {};
  std::optional<std::string> accuracy = {};
  std::optional<std::string> accuracy_basis = {};
  std::optional<std::string> turns = {};
  std::optional<std::string> arm = {};
  std::optional<std::string> months = {};
  std::optional<std::string> cycles = {};
  std::optional<std::string> due = {};
  std::optional<std::string> calibrated = {}; // for `add`; later calibrations are logged
  bool in_use = false;                        // for `revise`: no longer retired
};

// One thing that happened to it.
struct WrenchHappening {
  std::optional<std::string> calibrated; // the day
  std::optional<std::string> due;        // with `calibrated`: as the new sheet says
  std::optional<std::string> used;       // how many pulls
  bool drop = false;
  bool overload = false;
  bool note = false;
  std::optional<std::string> words;
  std::optional<std::string> on; // the day of the others; today if not said
};

// The wrench as it now stands, and what was done.
struct KeptWrench {
  WrenchRecord wrench;
  std::vector<std::string> changes; // "step: 0.5 -> 1", or what happened
  bool made_file = false;           // there was no workshop file, and an empty one was made for it
};

// Enters a new wrench under a short name. Where no workshop file is there, one is made that holds the wrench alone.
// Fails with cannot-create where a wrench has that name, or the file cannot be made.
[[nodiscard]] Result<KeptWrench> add_to_register(const std::filesystem::path& file, const std::string& slug,
                                                 const WrenchWords& words, std::chrono::year_month_day today);

// Fail with no-such where there is no such wrench, and with usage where nothing would change or no reason is given;
// with busy where somebody else wrote into its record meanwhile.
[[nodiscard]] Result<KeptWrench> revise_in_register(const std::filesystem::path& file, std::string_view name,
                                                    const WrenchWords& words, const Revision& revision,
                                                    std::chrono::year_month_day today);
[[nodiscard]] Result<KeptWrench> retire_in_register(const std::filesystem::path& file, std::string_view name,
                                                    const std::optional<std::string>& because,
                                                    const std::optional<std::string>& on,
                                                    std::chrono::year_month_day today);
[[nodiscard]] Result<KeptWrench> log_in_register(const std::filesystem::path& file, std::string_view name,
                                                 const WrenchHappening& happening, std::chrono::year_month_day today);

} // namespace clampwright::specdb
