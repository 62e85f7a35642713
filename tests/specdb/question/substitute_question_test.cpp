// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whether another fastener is one that fits and bears enough: each rule with the source that has it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/report/substitute_words.hpp"
#include "tests/specdb/question/substitutes.hpp"

namespace clampwright::specdb {
namespace {

using namespace test_substitute;
using testing::HasSubstr;

// --- identity, and how the words are read
// -----------------------------------------------------------------------------

TEST(Fastener, IsReadAsThreadThenClass) {
  struct Row {
    const char* text;
    const char* thread;
    const char* strength_class;
  };
  const Row rows[]{{"M10 8.8", "M10", "8.8"},
                   {"M8x1.25  A2-70", "M8x1.25", "A2-70"},
                   {"1/4-28 UNF SAE 5", "1/4-28 UNF", "SAE 5"},
                   {"1/4-20 grade 8", "1/4-20", "grade 8"},
                   {"M10", "M10", "unknown"},
                   {"5/16 BSW", "5/16 BSW", "unknown"},
                   {"#10-32 UNF ASTM A574", "#10-32 UNF", "ASTM A574"}};
  const Catalogue catalogue;
  for (const Row& row : rows) {
    const auto read = read_fastener(catalogue, row.text);
    ASSERT_TRUE(read.has_value()) << row.text;
    EXPECT_EQ(read->first, row.thread) << row.text;
    EXPECT_EQ(read->second, row.strength_class) << row.text;
  }
}

TEST(Fastener, WithoutAThreadIsRefusedWithAnExample) {
  EXPECT_EQ(refusal("8.8", "M8 8.8").trouble, Trouble::not_understood);
  EXPECT_THAT(refusal("8.8", "M8 8.8").hint, HasSubstr("\"M10 8.8\""));
  EXPECT_EQ(refusal("M8 8.8", "").field, "--with");
}

TEST(Substitute, OfUnknownClassIsNotKnown) {
  // ISO 898-1: a fastener without a mark has no class; JOB.md E2: "unknown" is a valid answer.
  const auto answer = ask("M8 8.8", "M8");
  EXPECT_EQ(answer.answer.verdict, Verdict::not_known);
  EXPECT_EQ(answer.answer.governed_by, Link::identity);
  EXPECT_EQ(outcome(answer, Link::proof), Outcome::not_known);
}

TEST(Substitute, ForSomethingOfUnknownClassIsNotKnown) {
  const auto answer = ask("M8", "M8 8.8");
  EXPECT_EQ(answer.answer.verdict, Verdict::not_known);
  EXPECT_EQ(reason(answer, Link::identity), Reason::original_unknown);
}

TEST(LikeForLike, IsAdequateAndStillAsksWhetherItIsUsed) {
  const auto answer = ask("M8 8.8", "M8 8.8");
  EXPECT_EQ(answer.answer.verdict, Verdict::adequate);
  EXPECT_EQ(answer.answer.governed_by, std::nullopt);
  EXPECT_EQ(reason(answer, Link::reuse), Reason::reuse_not_told);
}

// --- fit
// -----------------------------------------------------------------------------------------------------------------

TEST(Fit, WantsTheSameForm) {
  // FACTS: M8 beside 5/16-18: 7.938 against 8 mm, 1.411 against 1.25 mm pitch, 13 % apart: it does not even start.
  const auto answer = ask("M8 8.8", "5/16-18 UNC SAE 5");
  EXPECT_EQ(answer.answer.verdict, Verdict::not_adequate);
  EXPECT_EQ(answer.answer.governed_by, Link::form);
  EXPECT_EQ(reason(answer, Link::form), Reason::other_form);
}

TEST(Fit, SaysThatALookAlikeStarts) {
  // confusable_threads.csv: M5 and #10-32 differ by 0.17 mm (3.5 %) in diameter and 0.8 % in pitch.
  EXPECT_EQ(reason(ask("M5 8.8", "10-32 UNF ASTM A574"), Link::form), Reason::starts_on_it);
}

TEST(Fit, WantsTheSameDiameterPitchAndHand) {
  EXPECT_EQ(ask("M8 8.8", "M10 8.8").answer.governed_by, Link::diameter);
  EXPECT_EQ(ask("M10 8.8", "M10x1.25 8.8").answer.governed_by, Link::pitch); // fine for coarse
  EXPECT_EQ(ask("M14x1.5-LH 8.8", "M14x1.5 8.8").answer.governed_by, Link::hand);
}

TEST(Fit, ShowsTheRestBehindTheFirstNo) {
  const auto answer = ask("M10 8.8", "M10x1.25 4.8");
  EXPECT_EQ(answer.answer.governed_by, Link::pitch);
  EXPECT_EQ(outcome(answer, Link::proof), Outcome::no);
  EXPECT_EQ(answer.answer.checks.back().link, Link::approval);
}

TEST(Substitute, NamesTheLinksThatItWasNotTold) {
  using testing::ElementsAre;
  EXPECT_THAT(links_not_told(ask("M10 8.8", "M10 10.9").answer),
              ElementsAre(Link::length, Link::nut, Link::seat, Link::head));
  EXPECT_THAT(links_not_told(ask("M10 8.8", "M10 10.9", [](SubstituteQuestion& q) { q.nut = "10"; }).answer),
              ElementsAre(Link::length, Link::seat, Link::head));
}

TEST(Length, ThatIsNotToldIsNoted) { EXPECT_EQ(outcome(ask("M6 8.8", "M6 8.8"), Link::length), Outcome::note); }

TEST(Length, ThatBottomsIsNo) {
  // 25 mm under the head, 12 mm clamped: 13 mm of screw over 10 mm of thread.
  const auto with_depth = [](const char* depth) {
    return ask("M6 8.8", "M6 8.8", [&](SubstituteQuestion& q) {
      q.length = "25mm";
      q.grip = "12mm";
      q.hole_depth = depth;
    });
  };
  EXPECT_EQ(with_depth("10mm").answer.governed_by, Link::length);
  EXPECT_EQ(reason(with_depth("10mm"), Link::length), Reason::bottoms);
  EXPECT_EQ(reason(with_depth("13mm"), Link::length), Reason::reaches_and_clears);
  EXPECT_EQ(reason(with_depth("12.99mm"), Link::length), Reason::bottoms);
}

TEST(Length, ThatDoesNotReachIsNo) {
  const auto answer = ask("M6 8.8", "M6 8.8", [](SubstituteQuestion& q) {
    q.length = "12mm";
    q.grip = "12mm";
  });
  EXPECT_EQ(reason(answer, Link::length), Reason::does_not_reach);
}

TEST(Length, ThatEngagesLessThanTheOriginalIsNo) {
  // "grip and engagement as original": common practice.
  const auto answer = ask("M6 8.8", "M6 8.8", [](SubstituteQuestion& q) {
    q.length = "20mm";
    q.original_length = "25mm";
    q.grip = "12mm";
    q.hole_depth = "15mm";
  });
  EXPECT_EQ(reason(answer, Link::length), Reason::engages_less);
}

TEST(Length, ThatIsLongerIsNotKnownWithoutTheDepthOfTheHole) {
  const auto longer = [](SubstituteQuestion& q) {
    q.length = "30mm";
    q.original_length = "25mm";
  };
  EXPECT_EQ(outcome(ask("M6 8.8", "M6 8.8", longer), Link::length), Outcome::not_known);
  const auto with_grip = [](SubstituteQuestion& q) {
    q.length = "30mm";
    q.original_length = "25mm";
    q.grip = "12mm";
  };
  EXPECT_EQ(reason(ask("M6 8.8", "M6 8.8", with_grip), Link::length), Reason::longer_depth_not_told);
}

TEST(Length, ThatIsTheSameIsFine) {
  const auto answer = ask("M6 8.8", "M6 8.8", [](SubstituteQuestion& q) {
    q.length = "25mm";
    q.original_length = "25mm";
  });
  EXPECT_EQ(outcome(answer, Link::length), Outcome::ok);
}

// --- strength of the bolt --------------------------------------------------------------------------------------------

TEST(Strength, IsComparedByLoadAndNeverByName) {
  // ISO 898-1 tables: M10 8.8 proof 33 700 N, tensile 46 400 N; 10.9 proof 48 100 N, tensile 60 300 N.
  const auto up = ask("M10 8.8", "M10 10.9");
  EXPECT_EQ(up.answer.verdict, Verdict::adequate);
  EXPECT_NEAR(share(up, Link::proof), 48100.0 / 33700.0, 1e-3);
  EXPECT_NEAR(share(up, Link::tensile), 60300.0 / 46400.0, 1e-3);
  const auto down = ask("M10 10.9", "M10 8.8");
  EXPECT_EQ(down.answer.verdict, Verdict::not_adequate);
  EXPECT_EQ(down.answer.governed_by, Link::proof);
}

TEST(Strength, OfInchGradesIsHeldToTheSameLine) {
  EXPECT_EQ(ask("3/8-24 UNF SAE 5", "3/8-24 UNF SAE 8").answer.verdict, Verdict::adequate);
  EXPECT_EQ(ask("3/8-24 UNF SAE 8", "3/8-24 UNF SAE 5").answer.governed_by, Link::proof);
}

TEST(Strength, OfMetricAndInchIsComparedByLoadToo) {
  // 5/16-18: 0.0524 in² × 85 000 psi = 4454 lbf = 19.81 kN proof for SAE 5 (SAE J429); M8 8.8: 21.2 kN (ISO 898-1).
  // By stress 8.8 is 1 % weaker in proof and 3 % weaker in tension (580 against 586, 800 against 827 MPa); by load M8
  // bears more, because it is the larger thread. It does not fit all the same.
  const auto answer = ask("5/16-18 UNC SAE 5", "M8 8.8");
  EXPECT_EQ(answer.answer.governed_by, Link::form);
  EXPECT_NEAR(share(answer, Link::proof), 21200.0 / 19813.0, 2e-3);
  const auto& proof = link(answer, Link::proof);
  EXPECT_NEAR(quantity::in_megapascals(std::get<quantity::Stress>(proof.offered.at(1))) /
                  quantity::in_megapascals(std::get<quantity::Stress>(proof.original.at(1))),
              0.990, 0.001);
  const auto& tensile = link(answer, Link::tensile);
  EXPECT_NEAR(quantity::in_megapascals(std::get<quantity::Stress>(tensile.offered.at(1))) /
                  quantity::in_megapascals(std::get<quantity::Stress>(tensile.original.at(1))),
              0.967, 0.001);
}

TEST(Strength, OfStainlessIsComparedByRp02) {
  // ISO 3506-1: A2-70 has Rp0.2 450 and Rm 700 MPa and no stress under proof load; ISO 898-1: 8.8 has 640 and 800.
  const auto answer = ask("M8 8.8", "M8 A2-70", [](SubstituteQuestion& q) {
    q.mating = "steel";
    q.duty = "dry";
  });
  EXPECT_EQ(outcome(answer, Link::proof), Outcome::note);
  EXPECT_EQ(reason(answer, Link::proof), Reason::no_proof_stress);
  EXPECT_EQ(answer.answer.governed_by, Link::yield);
  EXPECT_NEAR(share(answer, Link::yield), 450.0 / 640.0, 1e-9);
  EXPECT_NEAR(share(answer, Link::tensile), 0.875, 0.005); // practice/examples.csv GRADE-17; the table rounds loads
}

TEST(Strength, OfAReducedHeadIsLower) {
  // ISO 10642, ISO 7380-1: 0.8 of the loads with a leading zero.
  const auto answer = ask("M6 10.9", "M6 010.9");
  EXPECT_EQ(answer.answer.governed_by, Link::proof);
  EXPECT_NEAR(share(answer, Link::proof), 0.8, 0.005);
  EXPECT_THAT(answer.answer.findings,
              testing::Contains(testing::Field(&finding::Finding::code, finding::Code::reduced_head)));
}

TEST(HigherClass, KeepsTheTorqueOfTheOriginal) {
  // TB 9-2320-279-13&P-2, caution (practice/examples.csv GRADE-19).
  const auto answer = ask("M10 8.8", "M10 10.9", [](SubstituteQuestion& q) {
    q.torque = "45 N.m";
    q.how.surfaces = "zinc-oiled";
    q.with_surfaces = "zinc-oiled";
  });
  EXPECT_EQ(answer.answer.verdict, Verdict::adequate);
  const Check& torque = link(answer, Link::torque);
  EXPECT_EQ(torque.reason, Reason::keep_torque_of_lower_class);
  EXPECT_EQ(std::get<quantity::Torque>(torque.offered.at(0)), quantity::newton_metres(45.0));
  EXPECT_FALSE(answer.answer.other_torque.has_value());
  EXPECT_THAT(report::check_text(torque, {}), HasSubstr("keeps the torque of the original"));
}

} // namespace
} // namespace clampwright::specdb
