// SPDX-License-Identifier: GPL-3.0-or-later
//
// What finish, metal and papers make of another fastener, and what cannot be read: each rule with its source.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/report/substitute_words.hpp"
#include "tests/specdb/question/substitutes.hpp"

namespace clampwright::specdb {
namespace {

using namespace test_substitute;
using testing::HasSubstr;

// --- finish and torque -----------------------------------------------------------------------------------------------

TEST(Finish, ThatDiffersAsksForAnotherTorque) {
  const auto answer = ask("M8 8.8", "M8 8.8", [](SubstituteQuestion& q) {
    q.torque = "22 N.m";
    q.how.surfaces = "dry";
    q.with_surfaces = "moly-paste";
  });
  EXPECT_EQ(answer.answer.verdict, Verdict::adequate_at_other_torque);
  EXPECT_EQ(answer.answer.governed_by, Link::friction);
  // The contract's table: K 0.20 dry, 0.13 (0.08 to 0.18) with molybdenum paste. F = 22/(0.20·0.008) = 13 750 N, so
  // T = 0.13·13 750·0.008 = 14.3 N·m, 8.8 to 19.8.
  ASSERT_TRUE(answer.answer.other_torque && answer.answer.other_torque->by_nut_factor);
  const auto& band = *answer.answer.other_torque->by_nut_factor;
  EXPECT_NEAR(quantity::in_newton_metres(answer.answer.other_torque->set), 14.3, 1e-9);
  EXPECT_NEAR(quantity::in_newton_metres(band.low), 8.8, 1e-9);
  EXPECT_NEAR(quantity::in_newton_metres(band.high), 19.8, 1e-9);
  ASSERT_TRUE(answer.answer.offered.has_value());
  EXPECT_NEAR(quantity::in_newtons(answer.answer.offered->nut_factor->preload.likely), 22.0 / (0.13 * 0.008), 1.0);
}

TEST(Finish, ThatIsTheSameKeepsTheTorque) {
  const auto answer = ask("M8 8.8", "M8 8.8", [](SubstituteQuestion& q) {
    q.torque = "22 N.m";
    q.how.surfaces = "dry";
    q.with_surfaces = "dry";
  });
  EXPECT_EQ(answer.answer.verdict, Verdict::adequate);
  EXPECT_FALSE(answer.answer.other_torque.has_value());
}

TEST(Finish, NeverRaisesTheTorqueOnSomethingSoft) {
  // A wooden-propeller maker's service bulletin (1999): more torque only crushes it.
  const auto answer = ask("M8 8.8", "M8 8.8", [](SubstituteQuestion& q) {
    q.mating = "wood";
    q.torque = "14 N.m";
    q.how.surfaces = "dry";
    q.with_surfaces = "zinc-dry";
  });
  EXPECT_EQ(reason(answer, Link::friction), Reason::finish_wants_more_on_soft);
  EXPECT_EQ(answer.answer.verdict, Verdict::not_known);
  EXPECT_FALSE(answer.answer.other_torque.has_value());
}

TEST(Finish, OfStainlessSteelIsNoneForPlainSteel) {
  const auto answer = ask("M8 8.8", "M8 8.8", [](SubstituteQuestion& q) { q.with_surfaces = "stainless-dry"; });
  EXPECT_EQ(answer.answer.governed_by, Link::friction);
  EXPECT_EQ(outcome(ask("M8 A2-70", "M8 A2-70",
                        [](SubstituteQuestion& q) {
                          q.mating = "steel";
                          q.with_surfaces = "zinc-dry";
                        }),
                    Link::friction),
            Outcome::no);
}

TEST(Finish, NamesTheTorqueByBothModels) {
  // By hand: 25 N·m dry clamp 12.6 kN by thread friction, which oiled takes 16.7 N·m; by K 0.18/0.20 it is 22.5 N·m.
  const auto answer = ask("M8 8.8", "M8 8.8", [](SubstituteQuestion& q) {
    q.torque = "25 N.m";
    q.how.surfaces = "dry";
    q.with_surfaces = "oiled";
  });
  EXPECT_NEAR(quantity::in_newton_metres(answer.answer.other_torque->by_nut_factor->likely), 22.5, 1e-9);
  EXPECT_NEAR(quantity::in_newton_metres(answer.answer.other_torque->by_thread_friction->likely), 16.7, 0.05);
  EXPECT_THAT(report::check_text(link(answer, Link::torque), {}),
              HasSubstr("22.5 N·m by nut factor, 16.7 N·m by thread friction"));
}

TEST(Finish, ThatWasNotToldIsNoted) { EXPECT_EQ(outcome(ask("M8 8.8", "M8 10.9"), Link::friction), Outcome::note); }

TEST(Torque, ThatIsPastYieldIsNo) {
  const auto answer = ask("M8 10.9", "M8 10.9", [](SubstituteQuestion& q) {
    q.torque = "80 N.m";
    q.how.surfaces = "dry";
    q.with_surfaces = "dry";
  });
  EXPECT_EQ(answer.answer.governed_by, Link::torque);
}

// --- metal
// ------------------------------------------------------------------------------------------------------------

TEST(Stainless, IsNotKnownWithoutWhatItTouches) {
  const auto answer = ask("M8 5.8", "M8 A2-70");
  EXPECT_EQ(answer.answer.verdict, Verdict::not_known);
  EXPECT_EQ(answer.answer.governed_by, Link::corrosion);
  EXPECT_EQ(outcome(answer, Link::galling), Outcome::not_known);
}

TEST(Stainless, InLightMetalDependsOnTheDuty) {
  // Corrosion notes, MIL-STD-889: borne dry, wet only behind a barrier; magnesium never.
  const auto in = [](const char* metal, const char* duty) {
    return outcome(ask("M8 5.8", "M8 A2-70",
                       [&](SubstituteQuestion& q) {
                         q.mating = metal;
                         if (*duty != '\0') q.duty = duty;
                       }),
                   Link::corrosion);
  };
  EXPECT_EQ(in("cast-aluminium", "dry"), Outcome::note);
  EXPECT_EQ(in("cast-aluminium", "wet"), Outcome::not_known);
  EXPECT_EQ(in("cast-aluminium", ""), Outcome::not_known);
  EXPECT_EQ(in("magnesium-die", "wet"), Outcome::no);
  EXPECT_EQ(in("steel", "wet"), Outcome::note);
  const auto in_steel = ask("M8 5.8", "M8 A2-70", [](SubstituteQuestion& q) {
    q.mating = "steel";
    q.duty = "wet";
  });
  EXPECT_EQ(reason(in_steel, Link::corrosion), Reason::stainless_in_other_metal_wet);
  EXPECT_EQ(in("stainless-steel", "wet"), Outcome::ok);
}

TEST(Stainless, OnStainlessGallsDry) {
  // J. Failure Anal. Prev. 5 (2005) 72-78.
  const auto on = [](const char* surfaces) {
    return outcome(ask("M8 A2-70", "M8 A2-70",
                       [&](SubstituteQuestion& q) {
                         q.mating = "stainless-steel";
                         if (*surfaces != '\0') q.with_surfaces = surfaces;
                       }),
                   Link::galling);
  };
  EXPECT_EQ(on("stainless-dry"), Outcome::no);
  EXPECT_EQ(on("stainless-lubricated"), Outcome::note);
  EXPECT_EQ(on(""), Outcome::not_known);
}

TEST(Stainless, ReplacedBySteelIsAQuestionOfTheDuty) {
  const auto with = [](const char* duty) {
    return ask("M8 A2-70", "M8 8.8", [&](SubstituteQuestion& q) {
      if (*duty != '\0') q.duty = duty;
    });
  };
  EXPECT_EQ(outcome(with("wet"), Link::corrosion), Outcome::no);
  EXPECT_EQ(outcome(with("dry"), Link::corrosion), Outcome::note);
  EXPECT_EQ(with("").answer.verdict, Verdict::not_known);
}

TEST(Fatigue, IsNoBetterForAHigherClass) {
  // VDI 2230-1: 0.85·(150/d + 45) MPa for 8.8 to 12.9 alike (from memory).
  EXPECT_EQ(reason(ask("M8 8.8", "M8 10.9"), Link::fatigue), Reason::fatigue_no_better);
}

// --- papers
// -----------------------------------------------------------------------------------------------------------

TEST(AircraftPart, GetsNoVerdict) {
  // 14 CFR 43.13(b): approved data.
  const auto answer = ask("M8 8.8", "M8 8.8", [](SubstituteQuestion& q) { q.approval_needed = true; });
  EXPECT_EQ(answer.answer.verdict, Verdict::not_known);
  EXPECT_EQ(answer.answer.governed_by, Link::approval);
}

TEST(StructuralBolt, GetsNoVerdict) {
  // ASTM F3125: for structures, whose own rules say how it is tightened.
  EXPECT_EQ(outcome(ask("1/2-13 UNC ASTM A325", "1/2-13 UNC SAE 5"), Link::approval), Outcome::not_known);
}

TEST(UnlistedThread, IsTakenWhereItIsAskedFor) {
  EXPECT_EQ(refusal("M8x1.3 8.8", "M8x1.3 10.9").code, "no-such-thread");
  const auto any_pitch = [](SubstituteQuestion& q) { q.how.any_pitch = true; };
  EXPECT_EQ(ask("M8x1.3 8.8", "M8x1.3 10.9", any_pitch).answer.verdict, Verdict::adequate);
}

TEST(UsedFastener, IsLookedAtFirst) {
  const auto in = [](const char* condition) {
    return reason(ask("M8 8.8", "M8 8.8", [&](SubstituteQuestion& q) { q.condition = condition; }), Link::reuse);
  };
  EXPECT_EQ(in("used"), Reason::reuse_used);
  EXPECT_EQ(in("new"), Reason::reuse_new);
}

// --- bad input
// ---------------------------------------------------------------------------------------------------------

TEST(Substitute, RefusesWhatItCannotRead) {
  struct Row {
    const char* field;
    Tweak tweak;
  };
  const Row rows[]{{"--coating", [](SubstituteQuestion& q) { q.coating = "gold"; }},
                   {"--nut", [](SubstituteQuestion& q) { q.nut = "77"; }},
                   {"--mating", [](SubstituteQuestion& q) { q.mating = "cheese"; }},
                   {"--seat", [](SubstituteQuestion& q) { q.seat = "cheese"; }},
                   {"--length", [](SubstituteQuestion& q) { q.length = "25"; }},
                   {"--grip", [](SubstituteQuestion& q) { q.grip = "1 N"; }},
                   {"--hole-depth", [](SubstituteQuestion& q) { q.hole_depth = "deep"; }},
                   {"--engagement", [](SubstituteQuestion& q) { q.engagement = "-1mm"; }},
                   {"--duty", [](SubstituteQuestion& q) { q.duty = "damp"; }},
                   {"--temperature", [](SubstituteQuestion& q) { q.temperature = "hot"; }},
                   {"--torque", [](SubstituteQuestion& q) { q.torque = "22"; }},
                   {"--condition", [](SubstituteQuestion& q) { q.condition = "fair"; }},
                   {"--with-surfaces", [](SubstituteQuestion& q) { q.with_surfaces = "jam"; }},
                   {"--with-mu", [](SubstituteQuestion& q) { q.with_mu = "9"; }},
                   {"--with-head", [](SubstituteQuestion& q) { q.with_head = "round"; }},
                   {"--surfaces", [](SubstituteQuestion& q) { q.how.surfaces = "jam"; }},
                   {"--coating", [](SubstituteQuestion& q) {
                      q.with_surfaces = "zinc-dry";
                      q.coating = "plain";
                    }}};
  for (const Row& row : rows) {
    const Problem problem = refusal("M8 8.8", "M8 8.8", row.tweak);
    EXPECT_EQ(problem.field, row.field) << problem.message;
    EXPECT_FALSE(problem.hint.empty()) << row.field;
  }
}

TEST(Substitute, RefusesAClassThatTheThreadHasNot) {
  EXPECT_EQ(refusal("M8 8.8", "M8 SAE 5").code, "no-such-class");
  EXPECT_EQ(refusal("M8 8.8", "M8 SAE 5").field, "--with");
  EXPECT_EQ(refusal("M20 8.8", "M20 9.8").code, "no-such-class"); // ISO 898-1: 9.8 up to M16
}

TEST(EveryReason, HasItsOwnSentenceAndBasis) {
  std::vector<std::string> sentences;
  for (int i = 0; i <= static_cast<int>(Reason::approval_needed); ++i) {
    Check check{Link::form, Outcome::note, static_cast<Reason>(i)};
    check.facts.assign(5, std::string("x"));
    sentences.push_back(report::check_text(check, {}));
    EXPECT_FALSE(report::check_basis(check.reason).empty()) << i;
  }
  std::ranges::sort(sentences);
  EXPECT_EQ(std::ranges::adjacent_find(sentences), sentences.end());
}

} // namespace
} // namespace clampwright::specdb
