// SPDX-License-Identifier: GPL-3.0-or-later
//
// The contract, section 2, on the face under the turned part. Face and hole of M10: 14.63 and 11 mm (ISO 4014 and
// ISO 273, seen second-hand).
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/question/case_question.hpp"
#include "tests/core/problem_of.hpp"

namespace clampwright::specdb {
namespace {

using test::problem_of;
using testing::AllOf;
using testing::HasSubstr;
using Text = std::optional<std::string>;

struct FaceQuestion {
  const char* thread = "M10";
  Text kind = {}, head = {}, turned = {}, washer = {}, outer = {}, inner = {};
};

CaseQuestion question(const FaceQuestion& row) {
  CaseQuestion q;
  q.thread = row.thread;
  q.kind = row.kind;
  q.head = row.head;
  q.turned = row.turned;
  q.washer = row.washer;
  q.face_outer = row.outer;
  q.face_inner = row.inner;
  return q;
}

std::optional<tightening::Face> face(const FaceQuestion& row) {
  const auto resolved = resolve(Catalogue(), question(row));
  if (!resolved) throw std::runtime_error(resolved.error().message);
  return resolved->asked.face;
}

struct Row {
  FaceQuestion question;
  double outer_mm, inner_mm, mean_mm;
};

struct RefusedRow {
  FaceQuestion question;
  Trouble trouble;
  const char* code;
  const char* field;
};

// clang-format off
// The mean is (outer + inner)/2 by hand. A washer: the smaller of head face and outer, with the washer's hole.
const Row k_faces[] = {
    {{},                                                       14.63,     11.0,      12.815},
    {{.kind = "bolt"},                                         14.63,     11.0,      12.815},
    {{.head = "hex"},                                          14.63,     11.0,      12.815},
    {{.turned = "head"},                                       14.63,     11.0,      12.815},
    {{.thread = "M14"},                                        19.37,     15.5,      17.435},
    {{.thread = "M14", .turned = "nut"},                       19.64,     15.5,      17.57},
    {{.thread = "M14", .turned = "Nut"},                       19.64,     15.5,      17.57},
    {{.thread = "M8"},                                         11.63,     9.0,       10.315},
    {{.thread = "M8", .head = "socket"},                       12.33,     9.0,       10.665},
    {{.thread = "M8", .head = "flange", .turned = "nut"},      15.8,      9.0,       12.4},
    {{.thread = "3/8-24"},                                     12.8524,   10.31748,  11.58494}, // 0.506, 0.4062 in
    {{.thread = "3/8-24", .turned = "nut"},                    13.3096,   10.31748,  11.81354}, // 0.524 in
    {{.washer = "24x13mm"},                                    14.63,     13.0,      13.815}, // (14.63 + 13)/2
    {{.washer = "24mm x 13mm"},                                14.63,     13.0,      13.815},
    {{.washer = "14x10.5mm"},                                  14.0,      10.5,      12.25},  // (14 + 10.5)/2
    {{.head = "flange", .washer = "18x11mm"},                  18.0,      11.0,      14.5},   // under a face of 19.6
    {{.turned = "nut", .washer = "20x10.5mm"},                 14.63,     10.5,      12.565},
    {{.kind = "hub", .head = "hex"},                           14.63,     11.0,      12.815},
    {{.outer = "30 mm", .inner = "15 mm"},                     30.0,      15.0,      22.5},
    {{.kind = "hub", .outer = "30 mm", .inner = "15 mm"},      30.0,      15.0,      22.5},
    {{.thread = "M9", .outer = "1 in", .inner = "1/2 in"},     25.4,      12.7,      19.05},
};

const FaceQuestion k_none[] = {
    {.thread = "M9"},
    {.thread = "#10-32"},
    {.thread = "5/16 BSW"},
    {.thread = "2 BA"},
    {.kind = "hub"},
    {.kind = "plug"},
    {.kind = "stud-set"},
    {.kind = "union"},
    {.kind = "hub", .turned = "nut"},
    {.thread = "M9", .washer = "24x13mm"},
};

const RefusedRow k_refused[] = {
    {{.outer = "30 mm"},                                      Trouble::usage,          "missing",        ""},
    {{.inner = "15 mm"},                                      Trouble::usage,          "missing",        ""},
    {{.head = "hex", .outer = "30 mm", .inner = "15 mm"},     Trouble::usage,          "surplus",        ""},
    {{.washer = "24x13mm", .outer = "30mm", .inner = "15mm"}, Trouble::usage,          "surplus",        ""},
    {{.outer = "15 mm", .inner = "30 mm"},                    Trouble::not_understood, "out-of-range",   "--face-outer"},
    {{.outer = "15 mm", .inner = "15 mm"},                    Trouble::not_understood, "out-of-range",   "--face-outer"},
    {{.head = "hexx"},                                        Trouble::no_such,        "no-such-name",   "--head"},
    {{.head = "socket", .turned = "nut"},                     Trouble::no_such,        "no-such-name",   "--head"},
    {{.turned = "stud"},                                      Trouble::not_understood, "not-understood", "--turned"},
    {{.washer = "13x24mm"},                                   Trouble::not_understood, "out-of-range",   "--washer"},
    {{.washer = "24x9mm"},                                    Trouble::not_understood, "out-of-range",   "--washer"}, // M10 does not go through
    {{.washer = "24x14.63mm"},                                Trouble::not_understood, "out-of-range",   "--washer"},
    {{.washer = "24x16mm"},                                   Trouble::not_understood, "out-of-range",   "--washer"}, // wider than the head
    {{.kind = "rivet"},                                       Trouble::not_understood, "not-understood", "--kind"},
    {{.kind = ""},                                            Trouble::not_understood, "not-understood", "--kind"},
};

// Their codes are the reader's own; here it counts that the option is named.
const RefusedRow k_unread[] = {
    {{.outer = "30", .inner = "15 mm"},                       Trouble::not_understood, "", "--face-outer"},
    {{.outer = "30 mm", .inner = "15"},                       Trouble::not_understood, "", "--face-inner"},
    {{.outer = "30 N", .inner = "15 mm"},                     Trouble::not_understood, "", "--face-outer"},
    {{.outer = "-30 mm", .inner = "15 mm"},                   Trouble::not_understood, "", "--face-outer"},
    {{.washer = "24mm"},                                      Trouble::not_understood, "", "--washer"},
    {{.washer = "24x13"},                                     Trouble::not_understood, "", "--washer"},
    {{.washer = "big"},                                       Trouble::not_understood, "", "--washer"},
};
// clang-format on

TEST(Face, RunsFromTheHoleToTheSmallestRing) {
  for (const Row& row : k_faces) {
    const auto found = face(row.question);
    ASSERT_TRUE(found.has_value()) << row.question.thread << ' ' << row.mean_mm;
    EXPECT_NEAR(quantity::in_millimetres(found->outer), row.outer_mm, 1e-9) << row.question.thread;
    EXPECT_NEAR(quantity::in_millimetres(found->inner), row.inner_mm, 1e-9) << row.question.thread;
  }
}

TEST(Face, HasTheMeanOfItsTwoDiameters) {
  for (const Row& row : k_faces) {
    const auto found = face(row.question);
    ASSERT_TRUE(found.has_value()) << row.question.thread << ' ' << row.mean_mm;
    EXPECT_NEAR(quantity::in_millimetres(found->mean_diameter()), row.mean_mm, 1e-9) << row.question.thread;
  }
}

TEST(Face, IsNoneWhereNoneIsKnown) {
  for (const FaceQuestion& row : k_none)
    EXPECT_FALSE(face(row).has_value()) << row.thread << ' ' << row.kind.value_or("");
}

TEST(Face, SaysWhereItIsFrom) {
  EXPECT_EQ(face({})->basis, "ISO 4014 head face, grade A, ISO 273 medium hole");
  EXPECT_EQ(face({.outer = "30 mm", .inner = "15 mm"})->basis, "as given");
  EXPECT_THAT(face({.washer = "24x13mm"})->basis, AllOf(HasSubstr("ISO 4014 head face"), HasSubstr("washer hole")));
}

TEST(Face, NamesTheSourcesOfItsDiameters) {
  const auto found = face({});
  ASSERT_EQ(found->sources.size(), 2U);
  EXPECT_THAT(found->sources[0].title, HasSubstr("ISO 4014"));
  EXPECT_THAT(found->sources[1].title, HasSubstr("ISO 273"));
}

TEST(Face, IsRefusedUnderTheNameOfItsOption) {
  for (const RefusedRow& row : k_refused) {
    const Problem problem = problem_of(resolve(Catalogue(), question(row.question)));
    EXPECT_EQ(problem.trouble, row.trouble) << problem.message;
    EXPECT_EQ(problem.code, row.code) << problem.message;
    EXPECT_EQ(problem.field, row.field) << problem.message;
  }
}

TEST(Face, IsRefusedWhereItsDiametersCannotBeRead) {
  for (const RefusedRow& row : k_unread) {
    const Problem problem = problem_of(resolve(Catalogue(), question(row.question)));
    EXPECT_EQ(problem.trouble, row.trouble) << problem.message;
    EXPECT_EQ(problem.field, row.field) << problem.message;
  }
}

// --turned takes head or nut; a word that is neither is not understood, whatever else is said.
TEST(Face, RefusesAnUnknownTurnedPartEvenBesideItsDiameters) {
  EXPECT_EQ(problem_of(resolve(Catalogue(), question({.turned = "stud", .outer = "30 mm", .inner = "15 mm"}))).field,
            "--turned");
}

} // namespace
} // namespace clampwright::specdb
