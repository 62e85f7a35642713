// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/finding/finding.hpp"

#include <gtest/gtest.h>

#include <set>

namespace clampwright::finding {
namespace {

std::vector<Code> codes(const Findings& findings) {
  std::vector<Code> out;
  for (const Finding& finding : findings)
    out.push_back(finding.code);
  return out;
}

} // namespace

// The contract, section 3, last paragraph, keeps these words.
TEST(FindingCode, IsWrittenAsInTheContract) {
  EXPECT_EQ(code_name(Code::left_hand), "left-hand");
  EXPECT_EQ(code_name(Code::locking_compound), "locking-compound");
  EXPECT_EQ(code_name(Code::crank_reaction), "crank-reaction");
  EXPECT_EQ(code_name(Code::holding_unknown), "holding-unknown");
  EXPECT_EQ(code_name(Code::over_proof), "over-proof");
  EXPECT_EQ(code_name(Code::over_yield), "over-yield");
  EXPECT_EQ(code_name(Code::near_limit), "near-limit");
  EXPECT_EQ(code_name(Code::low_preload), "low-preload");
  EXPECT_EQ(code_name(Code::models_disagree), "models-disagree");
  EXPECT_EQ(code_name(Code::surfaces_not_stated), "surfaces-not-stated");
  EXPECT_EQ(code_name(Code::class_unknown), "class-unknown");
  EXPECT_EQ(code_name(Code::face_not_stated), "face-not-stated");
  EXPECT_EQ(code_name(Code::running_torque_added), "running-torque-added");
  EXPECT_EQ(code_name(Code::mass_as_force), "mass-as-force");
  EXPECT_EQ(code_name(Code::seating_torque), "seating-torque");
  EXPECT_EQ(code_name(Code::not_a_bolt), "not-a-bolt");
  EXPECT_EQ(code_name(Code::no_maker_value), "no-maker-value");
  EXPECT_EQ(code_name(Code::value_from_memory), "value-from-memory");
  EXPECT_EQ(code_name(Code::approved_data), "approved-data");
  EXPECT_EQ(code_name(Code::maker_first), "maker-first");
  EXPECT_EQ(code_name(Code::measured_only), "measured-only");
  EXPECT_EQ(code_name(Code::look_alikes), "look-alikes");
  EXPECT_EQ(code_name(Code::pitch_not_measured), "pitch-not-measured");
  EXPECT_EQ(code_name(Code::limits_assumed), "limits-assumed");
}

TEST(FindingCode, HasAWordOfItsOwn) {
  std::set<std::string_view> words;
  for (int code = 0; code <= static_cast<int>(Code::maker_first); ++code)
    words.insert(code_name(static_cast<Code>(code)));
  EXPECT_EQ(words.size(), static_cast<std::size_t>(Code::maker_first) + 1);
  EXPECT_FALSE(words.contains(""));
}

TEST(Severity, IsWrittenAsInTheContract) {
  EXPECT_EQ(severity_name(Severity::stop), "stop");
  EXPECT_EQ(severity_name(Severity::mind), "mind");
  EXPECT_EQ(severity_name(Severity::note), "note");
}

TEST(Findings, AreInOrderOfGravity) {
  Findings findings{{Code::low_preload, Severity::note, {}},
                    {Code::class_unknown, Severity::mind, {}},
                    {Code::over_yield, Severity::stop, {}}};
  put_in_order(findings);
  EXPECT_EQ(codes(findings), (std::vector{Code::over_yield, Code::class_unknown, Code::low_preload}));
}

TEST(Findings, EndInMakerFirst) {
  Findings findings{{Code::maker_first, Severity::note, {}},
                    {Code::low_preload, Severity::note, {}},
                    {Code::over_yield, Severity::stop, {}}};
  put_in_order(findings);
  EXPECT_EQ(codes(findings).back(), Code::maker_first);
}

TEST(Findings, OfOneGravityStayInTheOrderFound) {
  Findings findings{{Code::models_disagree, Severity::mind, {}},
                    {Code::class_unknown, Severity::mind, {}},
                    {Code::left_hand, Severity::mind, {}}};
  put_in_order(findings);
  EXPECT_EQ(codes(findings), (std::vector{Code::models_disagree, Code::class_unknown, Code::left_hand}));
}

} // namespace clampwright::finding
