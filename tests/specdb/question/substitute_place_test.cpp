// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whether nut, part, seat, hydrogen and heat let another fastener in: each rule with the source that has it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/report/substitute_words.hpp"
#include "tests/specdb/question/substitutes.hpp"

namespace clampwright::specdb {
namespace {

using namespace test_substitute;
using testing::HasSubstr;

// --- what holds the bolt ---------------------------------------------------------------------------------------------

TEST(Nut, GoesWithBoltsUpToItsClass) {
  // ISO 898-2, table 2.
  const auto with_nut = [](const char* offered, const char* nut) {
    return ask("M10 8.8", offered, [&](SubstituteQuestion& q) { q.nut = nut; });
  };
  EXPECT_EQ(with_nut("M10 10.9", "8").answer.governed_by, Link::nut);
  EXPECT_EQ(with_nut("M10 10.9", "10").answer.verdict, Verdict::adequate);
  EXPECT_EQ(with_nut("M10 8.8", "10").answer.verdict, Verdict::adequate); // a higher nut may always replace a lower one
  EXPECT_EQ(with_nut("M10 8.8", "04").answer.verdict, Verdict::not_known);
}

TEST(Nut, ThatWasTooWeakBeforeIsSaidToBe) {
  const auto answer = ask("M10 10.9", "M10 12.9", [](SubstituteQuestion& q) {
    q.nut = "8";
    q.coating = "plain";
  });
  EXPECT_EQ(reason(answer, Link::nut), Reason::nut_too_weak_before);
}

TEST(Nut, OfInchGradeIsHeldAgainstTheTensileStrength) {
  // SAE J995 practice: grade 5 with grade 5, grade 8 with grade 8; A574 (180 ksi) is stronger than SAE 8 (150 ksi).
  const auto with_nut = [](const char* offered, const char* nut) {
    return ask("3/8-24 UNF SAE 5", offered, [&](SubstituteQuestion& q) {
      q.nut = nut;
      q.coating = "plain";
    });
  };
  EXPECT_EQ(outcome(with_nut("3/8-24 UNF SAE 8", "SAE 5"), Link::nut), Outcome::no);
  EXPECT_EQ(outcome(with_nut("3/8-24 UNF SAE 8", "SAE 8"), Link::nut), Outcome::ok);
  EXPECT_EQ(outcome(with_nut("3/8-24 UNF ASTM A574", "SAE 8"), Link::nut), Outcome::no);
}

TEST(Nut, ThatWasNotToldDecidesNothing) {
  const auto answer = ask("M10 8.8", "M10 10.9");
  EXPECT_EQ(outcome(answer, Link::nut), Outcome::note);
}

// A case of cast aluminium, 130 MPa in shear, limits 6g/6H. M6: 12.19 mm² for each millimetre that bears (FED-STD-H28/2
// with d_min 5.794, D2_max 5.500: π·5.794·(0.5 + 0.57735·0.294)), two turns of 1 mm each do not bear, and a soft part
// under a strong bolt has C3 up to 1.055 (VDI 2230-1): in 10 mm 8·12.19·130 = 12.7 kN, 13.4 kN at the most.
Tweak in_aluminium(const char* engagement, const char* torque) {
  return [=](SubstituteQuestion& q) {
    q.mating = "cast-aluminium";
    q.engagement = engagement;
    q.torque = torque;
    q.how.surfaces = "dry";
    q.with_surfaces = "dry";
  };
}

TEST(ThreadInThePart, DoesNotGetStrongerWithTheBolt) {
  const auto answer = ask("M6 8.8", "M6 10.9", in_aluminium("10mm", "9 N.m"));
  const Check& check = link(answer, Link::part_thread);
  EXPECT_EQ(check.reason, Reason::part_gives_before_bolt); // 16.7 kN proof of 10.9 (ISO 898-1)
  const double limit = quantity::in_newtons(std::get<quantity::Force>(check.facts.at(1)));
  EXPECT_GT(limit, 12600.0);
  EXPECT_LT(limit, 13450.0);
  EXPECT_EQ(answer.answer.verdict, Verdict::adequate);
}

TEST(ThreadInThePart, ThatStripsAtTheTorqueIsNo) {
  // M10 8.8 in 10 mm: 1.055·130·21.48·(10 - 3) = 20.6 kN; 45 N·m oiled make likely 27.5 kN by the graver model.
  const auto answer = ask("M10 8.8", "M10 10.9", [](SubstituteQuestion& q) {
    q.mating = "cast-aluminium";
    q.engagement = "10mm";
    q.torque = "45 N.m";
    q.how.surfaces = "oiled";
    q.with_surfaces = "oiled";
  });
  EXPECT_EQ(answer.answer.governed_by, Link::part_thread);
  const Check& check = link(answer, Link::part_thread);
  EXPECT_EQ(check.reason, Reason::part_gives);
  EXPECT_NEAR(quantity::in_newtons(std::get<quantity::Force>(check.facts.at(1))), 20600.0, 100.0);
}

// Oiled, 9 N·m, M6 in 9 mm (11.1 to 11.7 kN): likely 8.3 kN, at the most 13 kN by nut factor.
TEST(ThreadInThePart, ThatMayStripIsNotKnown) {
  const auto answer = ask("M6 8.8", "M6 8.8", [](SubstituteQuestion& q) {
    q.mating = "cast-aluminium";
    q.engagement = "9mm";
    q.torque = "9 N.m";
    q.how.nut_factor = "0.20";
    q.with_nut_factor = "0.12..0.20..0.28";
  });
  EXPECT_EQ(reason(answer, Link::part_thread), Reason::part_may_give);
  EXPECT_EQ(answer.answer.verdict, Verdict::not_known);
}

TEST(ThreadInThePart, ThatMightHaveStrippedBeforeIsNoWorse) {
  const auto answer = ask("M6 8.8", "M6 8.8", [](SubstituteQuestion& q) {
    q.mating = "cast-aluminium";
    q.engagement = "9mm";
    q.torque = "9 N.m";
    q.how.surfaces = "oiled";
    q.with_surfaces = "oiled";
  });
  EXPECT_EQ(reason(answer, Link::part_thread), Reason::part_may_give_as_before);
  EXPECT_EQ(answer.answer.verdict, Verdict::adequate);
}

TEST(ThreadInThePart, HoldsWhereItIsLongEnough) {
  EXPECT_EQ(outcome(ask("M6 8.8", "M6 8.8", in_aluminium("13mm", "9 N.m")), Link::part_thread), Outcome::ok);
}

TEST(ThreadInThePart, OfUnknownStrengthIsNotKnown) {
  for (const char* material : {"plastic", "wood", "brass"})
    EXPECT_EQ(outcome(ask("M6 8.8", "M6 8.8", [&](SubstituteQuestion& q) { q.mating = material; }), Link::part_thread),
              Outcome::not_known)
        << material;
  const auto answer = ask("M6 8.8", "M6 8.8", [](SubstituteQuestion& q) { q.mating = "cast-aluminium"; });
  EXPECT_EQ(reason(answer, Link::part_thread), Reason::part_length_not_told);
}

TEST(Hub, IsNotJudgedByTheStrengthOfABolt) {
  // ISO 898-1 covers bolts, screws and studs.
  for (const char* kind : {"hub", "plug", "union"}) {
    const auto answer = ask("M10 8.8", "M10 10.9", [&](SubstituteQuestion& q) { q.how.kind = kind; });
    EXPECT_EQ(answer.answer.verdict, Verdict::not_known) << kind;
    EXPECT_EQ(reason(answer, Link::proof), Reason::not_judged_as_bolt) << kind;
  }
}

TEST(Seat, ThatGivesIsNo) {
  // practice/examples.csv GRADE-22, 23: 17 kN on the 42.6 mm² under an M8 hexagon are 399 MPa; VDI 2230 has 290 MPa for
  // die-cast aluminium.
  const auto answer = ask("M8 8.8", "M8 10.9", [](SubstituteQuestion& q) {
    q.seat = "cast-aluminium-die";
    q.torque = "30 N.m";
    q.how.surfaces = "dry";
    q.with_surfaces = "dry";
  });
  EXPECT_EQ(answer.answer.governed_by, Link::seat);
}

TEST(Head, ThatIsSmallerIsNotKnownOnASeatThatIsNotTold) {
  // ISO 4762 M10: d_w 15.33; ISO 4014: 14.63 (grade A); EN 1665: 19.6. From flange to hexagon the face shrinks.
  const auto answer = ask("M10 8.8", "M10 8.8", [](SubstituteQuestion& q) {
    q.how.head = "flange";
    q.with_head = "hex";
  });
  EXPECT_EQ(answer.answer.verdict, Verdict::not_known);
  EXPECT_EQ(answer.answer.governed_by, Link::head);
  const auto larger = ask("M10 8.8", "M10 8.8", [](SubstituteQuestion& q) {
    q.how.head = "hex";
    q.with_head = "flange";
  });
  EXPECT_EQ(outcome(larger, Link::head), Outcome::ok);
}

// --- brittleness and heat --------------------------------------------------------------------------------------------

TEST(Brittleness, ForbidsElectroplated129) {
  // ISO 4042:2018, 4.4: above 390 HV; ISO 898-1: 12.9 reaches 435 HV.
  const auto coated = [](const char* coating) {
    return ask("M8 8.8", "M8 12.9", [&](SubstituteQuestion& q) { q.coating = coating; });
  };
  EXPECT_EQ(coated("electroplated").answer.governed_by, Link::brittleness);
  EXPECT_EQ(coated("electroplated").answer.verdict, Verdict::not_adequate);
  EXPECT_EQ(coated("hot-dip").answer.verdict, Verdict::not_adequate);
  EXPECT_EQ(coated("plain").answer.verdict, Verdict::adequate);
  EXPECT_EQ(coated("zinc-flake").answer.verdict, Verdict::adequate);
}

TEST(Brittleness, IsNotKnownWhereTheCoatingOf129WasNotTold) {
  EXPECT_EQ(ask("M8 8.8", "M8 12.9").answer.governed_by, Link::brittleness);
  EXPECT_EQ(ask("M8 8.8", "M8 12.9").answer.verdict, Verdict::not_known);
  EXPECT_EQ(ask("3/8-16 UNC SAE 8", "3/8-16 UNC ASTM A574").answer.governed_by, Link::brittleness);
  EXPECT_EQ(ask("M8 12.9", "M8 12.9").answer.verdict, Verdict::not_known); // like for like as well
}

TEST(Brittleness, IsReadFromTheSurfacesToo) {
  const auto on = [](const char* surfaces) {
    return outcome(ask("M8 8.8", "M8 12.9", [&](SubstituteQuestion& q) { q.with_surfaces = surfaces; }),
                   Link::brittleness);
  };
  EXPECT_EQ(on("zinc-dry"), Outcome::no);
  EXPECT_EQ(on("zinc-flake"), Outcome::note);
  EXPECT_EQ(on("anti-seize"), Outcome::not_known); // paste says nothing of what is below it
}

TEST(Brittleness, Of109WantsAVerifiedProcess) {
  // ISO 4042:2018, 4.4: 360 to 390 HV; 10.9 reaches 380.
  const auto answer = ask("M8 8.8", "M8 10.9", [](SubstituteQuestion& q) { q.coating = "electroplated"; });
  EXPECT_EQ(outcome(answer, Link::brittleness), Outcome::note);
  EXPECT_EQ(reason(answer, Link::brittleness), Reason::midway_plated);
  EXPECT_EQ(reason(ask("M8 8.8", "M8 8.8"), Link::brittleness), Reason::soft_enough); // 320 HV
}

TEST(Temperature, BeyondTheRangeOfTheClassIsNo) {
  // ISO 898-1: -50 to 150 °C (FACTS, section 8).
  const auto at = [](const char* temperature, const char* offered) {
    return outcome(ask(offered, offered, [&](SubstituteQuestion& q) { q.temperature = temperature; }),
                   Link::temperature);
  };
  EXPECT_EQ(at("150 degC", "M8 8.8"), Outcome::ok);
  EXPECT_EQ(at("151 degC", "M8 8.8"), Outcome::no);
  EXPECT_EQ(at("-51 degC", "M8 8.8"), Outcome::no);
  EXPECT_EQ(at("120 degC", "1/4-20 UNC SAE 5"), Outcome::not_known); // no upper limit was read
  EXPECT_EQ(at("120 degC", "M8 A2-70"), Outcome::not_known);
  EXPECT_EQ(outcome(ask("M8 8.8", "M8 8.8"), Link::temperature), Outcome::note);
}

TEST(AircraftClass, GetsNoVerdict) {
  EXPECT_EQ(ask("1/4-28 UNF 125 ksi", "1/4-28 UNF 125 ksi").answer.verdict, Verdict::not_known);
  EXPECT_EQ(outcome(ask("1/4-28 UNF 125 ksi", "1/4-28 UNF SAE 8"), Link::approval), Outcome::not_known);
}

} // namespace
} // namespace clampwright::specdb
