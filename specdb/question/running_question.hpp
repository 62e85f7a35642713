// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/finding/finding.hpp"
#include "core/locking/running.hpp"
#include "core/problem/problem.hpp"
#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/question/text_field.hpp"

namespace clampwright::specdb {

// What a person asks about the running torque of a locking nut, as text.
struct RunningQuestion {
  std::string thread;
  std::optional<std::string> nut_class; // only lines of ISO 2320 for that class, beside those that name none
  std::optional<std::string> torque;    // as printed
  std::optional<std::string> measured;
  bool insert = false; // a locking insert is meant, not a nut
};

// Without --insert, which is said or not said.
inline constexpr std::array k_running_fields{
    TextField<RunningQuestion>{"--measured", &RunningQuestion::measured},
    TextField<RunningQuestion>{"--torque", &RunningQuestion::torque},
    TextField<RunningQuestion>{"--class", &RunningQuestion::nut_class},
};

struct RunningReply {
  ThreadEntry thread;
  std::vector<locking::RunningLimit> limits; // of nuts, or of inserts
  std::vector<locking::RunningRule> rules;
  std::optional<quantity::Torque> torque;
  const quantity::Unit* torque_unit = nullptr; // in which it was given
  std::optional<quantity::Torque> measured;
  std::optional<locking::Reuse> reuse;     // where it was measured
  std::vector<locking::RuleAnswer> adding; // where both are given
  bool mass_as_force = false;
  finding::Findings findings;
  std::vector<Source> sources;
};

// Fails with not-understood and no-such for the texts.
[[nodiscard]] Result<RunningReply> answer_running(const Catalogue& catalogue, const RunningQuestion& question);

[[nodiscard]] report::Document running_document(const RunningReply& reply, const quantity::DisplayUnits& units);

} // namespace clampwright::specdb
