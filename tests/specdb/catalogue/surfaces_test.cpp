// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/catalogue/surfaces.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "specdb/sql/query.hpp"
#include "tests/core/problem_of.hpp"

namespace clampwright::specdb {
namespace {

using friction::LockFamily;
using test::problem_of;
using testing::HasSubstr;
using testing::StartsWith;

struct Row {
  const char* name;
  double mu_low, mu_likely, mu_high;
  double k_low, k_likely, k_high;
};

struct LockRow {
  const char* name;
  LockFamily family;
  bool single_use;
};

struct SlipRow {
  const char* given;
  const char* meant;
};

// clang-format off
// The contract, section 2, "Surfaces (first values)".
constexpr Row k_surfaces[] = {
    {"not-stated",           .08, .14, .24, .12, .20, .30},
    {"dry",                  .14, .19, .24, .16, .20, .27},
    {"oiled",                .08, .12, .16, .12, .18, .22},
    {"zinc-dry",             .14, .20, .35, .17, .22, .35},
    {"zinc-oiled",           .08, .12, .16, .12, .17, .22},
    {"zinc-flake",           .08, .12, .16, .12, .16, .22},
    {"phosphate-oiled",      .08, .13, .18, .15, .19, .23},
    {"moly-paste",           .04, .08, .10, .08, .13, .18},
    {"anti-seize",           .06, .11, .16, .08, .13, .23},
    {"stainless-dry",        .30, .40, .50, .30, .40, .50},
    {"stainless-lubricated", .08, .15, .24, .13, .20, .30},
    {"threadlocker-wet",     .14, .19, .24, .15, .20, .27},
};

// What the words mean in a workshop; single use by TB 43-0218, section III (seen second-hand), and common practice.
constexpr LockRow k_locks[] = {
    {"none",               LockFamily::none,           false},
    {"compound-low",       LockFamily::compound,       true},
    {"compound-medium",    LockFamily::compound,       true},
    {"compound-high",      LockFamily::compound,       true},
    {"locking-nut-insert", LockFamily::running_torque, true},
    {"locking-nut-metal",  LockFamily::running_torque, true},
    {"tab-washer",         LockFamily::positive,       true},
    {"lock-wire",          LockFamily::positive,       true},
    {"split-pin",          LockFamily::positive,       true},
    {"circlip",            LockFamily::positive,       false},
    {"spring-washer",      LockFamily::washer,         true},
    {"wedge-washer",       LockFamily::washer,         false},
    {"second-nut",         LockFamily::positive,       false},
    {"staked",             LockFamily::positive,       true},
};

constexpr SlipRow k_surface_slips[] = {
    {"olied",             "oiled"},
    {"oild",              "oiled"},
    {"DYR",               "dry"},
    {"zink-dry",          "zinc-dry"},
    {"antiseize",         "anti-seize"},
    {"moly paste!",       "moly-paste"},
    {"stainless-lubricatd", "stainless-lubricated"},
    {"thread-locker-wet", "threadlocker-wet"},
};

constexpr SlipRow k_lock_slips[] = {
    {"tabwasher",         "tab-washer"},
    {"split-pn",          "split-pin"},
    {"lokc-wire",         "lock-wire"},
    {"compound-hihg",     "compound-high"},
};
// clang-format on

TEST(Surfaces, AreTheTwelveOfTheContractInItsOrder) {
  std::vector<std::string> names;
  for (const Row& row : k_surfaces)
    names.emplace_back(row.name);
  EXPECT_EQ(surfaces_names(Catalogue()), names);
}

TEST(Surfaces, HaveTheFrictionOfTheContract) {
  const Catalogue catalogue;
  for (const Row& row : k_surfaces) {
    const auto found = find_surfaces(catalogue, row.name);
    ASSERT_TRUE(found.has_value()) << row.name;
    EXPECT_DOUBLE_EQ(found->mu.low.value(), row.mu_low) << row.name;
    EXPECT_DOUBLE_EQ(found->mu.likely.value(), row.mu_likely) << row.name;
    EXPECT_DOUBLE_EQ(found->mu.high.value(), row.mu_high) << row.name;
  }
}

TEST(Surfaces, HaveTheNutFactorOfTheContract) {
  const Catalogue catalogue;
  for (const Row& row : k_surfaces) {
    const auto found = find_surfaces(catalogue, row.name);
    ASSERT_TRUE(found.has_value()) << row.name;
    EXPECT_DOUBLE_EQ(found->k.low.value(), row.k_low) << row.name;
    EXPECT_DOUBLE_EQ(found->k.likely.value(), row.k_likely) << row.name;
    EXPECT_DOUBLE_EQ(found->k.high.value(), row.k_high) << row.name;
  }
}

TEST(Surfaces, HaveASourceForEachModel) {
  const Catalogue catalogue;
  for (const Row& row : k_surfaces)
    for (const char* model : {"mu", "k"}) {
      Query count(catalogue.connection(), "SELECT count(*) FROM surface_sources WHERE surface = ? AND model = ?",
                  std::string_view(row.name), std::string_view(model));
      ASSERT_TRUE(count.next());
      EXPECT_GE(count.integer(0), 1) << row.name << ' ' << model;
    }
}

TEST(Surfaces, NameTheirSources) {
  const Catalogue catalogue;
  for (const Row& row : k_surfaces) {
    const auto found = find_surfaces(catalogue, row.name);
    EXPECT_FALSE(found->sources.empty()) << row.name;
    for (const Source& source : found->sources)
      EXPECT_FALSE(source.title.empty()) << row.name;
  }
}

TEST(Surfaces, AreWetCompoundIfThreadlockerOnly) {
  const Catalogue catalogue;
  for (const Row& row : k_surfaces)
    EXPECT_EQ(find_surfaces(catalogue, row.name)->wet_compound, std::string_view(row.name) == "threadlocker-wet")
        << row.name;
}

TEST(Surfaces, AreDescribedInWords) {
  const Catalogue catalogue;
  for (const Row& row : k_surfaces)
    EXPECT_FALSE(find_surfaces(catalogue, row.name)->description.empty()) << row.name;
}

TEST(Surfaces, AreFoundInAnyCaseAndWithSpaces) {
  const Catalogue catalogue;
  for (const char* text : {"zinc-dry", "Zinc-Dry", "zinc dry", "ZINC_DRY", " zinc  dry "}) {
    const auto found = find_surfaces(catalogue, text);
    ASSERT_TRUE(found.has_value()) << text;
    EXPECT_EQ(found->name, "zinc-dry") << text;
  }
}

TEST(Surfaces, SuggestTheNearNameIfMisspelt) {
  const Catalogue catalogue;
  for (const SlipRow& row : k_surface_slips)
    EXPECT_THAT(problem_of(find_surfaces(catalogue, row.given)).hint,
                StartsWith(std::string("did you mean ") + row.meant + "? "))
        << row.given;
}

TEST(Surfaces, AreRefusedWithTheWholeList) {
  const Problem problem = problem_of(find_surfaces(Catalogue(), "honey"));
  EXPECT_EQ(problem.trouble, Trouble::no_such);
  EXPECT_EQ(problem.code, "no-such-name");
  EXPECT_EQ(problem.input, "honey");
  for (const Row& row : k_surfaces)
    EXPECT_THAT(problem.hint, HasSubstr(row.name));
}

TEST(Surfaces, SuggestNothingIfNothingIsNear) {
  EXPECT_THAT(problem_of(find_surfaces(Catalogue(), "whitewash")).hint, StartsWith("known are "));
}

TEST(Surfaces, AreNotFoundByAnEmptyName) {
  EXPECT_EQ(problem_of(find_surfaces(Catalogue(), "")).trouble, Trouble::no_such);
}

TEST(Locks, AreKnownByTheirNames) {
  std::vector<std::string> names;
  for (const LockRow& row : k_locks)
    names.emplace_back(row.name);
  EXPECT_EQ(lock_names(Catalogue()), names);
}

TEST(Locks, BelongToTheirFamilies) {
  const Catalogue catalogue;
  for (const LockRow& row : k_locks) {
    const auto found = find_lock(catalogue, row.name);
    ASSERT_TRUE(found.has_value()) << row.name;
    EXPECT_EQ(found->family, row.family) << row.name;
  }
}

TEST(Locks, SayWhichServeOnce) {
  const Catalogue catalogue;
  for (const LockRow& row : k_locks)
    EXPECT_EQ(find_lock(catalogue, row.name)->single_use, row.single_use) << row.name;
}

struct HeatRow {
  const char* name;
  double degrees_celsius;
  const char* basis; // part of it
};

// TM 10-3930-643-20 paragraph 2-12, AC 43.13-1B paragraph 7-64f, scope of ISO 2320:2015; all second-hand.
constexpr HeatRow k_heat[] = {
    {"compound-low", 149, "TM 10-3930-643-20, para 2-12"},
    {"compound-medium", 149, "TM 10-3930-643-20, para 2-12"},
    {"compound-high", 149, "TM 10-3930-643-20, para 2-12"},
    {"locking-nut-insert", 121, "para 7-64f"},
    {"locking-nut-metal", 150, "ISO 2320"},
};

TEST(Locks, ThatGiveWayInHeatSayWhere) {
  const Catalogue catalogue;
  for (const HeatRow& row : k_heat) {
    const auto found = find_lock(catalogue, row.name);
    ASSERT_TRUE(found->heat_limit.has_value()) << row.name;
    EXPECT_EQ(quantity::in_degrees_celsius(*found->heat_limit), row.degrees_celsius) << row.name;
    EXPECT_THAT(found->heat_limit_basis, HasSubstr(row.basis)) << row.name;
  }
}

TEST(Locks, OfShapeHaveNoHeatLimit) {
  const Catalogue catalogue;
  for (const char* name : {"none", "tab-washer", "lock-wire", "split-pin", "circlip", "spring-washer", "staked"}) {
    EXPECT_FALSE(find_lock(catalogue, name)->heat_limit.has_value()) << name;
    EXPECT_EQ(find_lock(catalogue, name)->heat_limit_basis, "") << name;
  }
}

TEST(Surfaces, AreElectroplatedIfZincButNotFlake) {
  const Catalogue catalogue;
  for (const Row& row : k_surfaces) {
    const std::string_view name = row.name;
    EXPECT_EQ(find_surfaces(catalogue, name)->electroplated, name == "zinc-dry" || name == "zinc-oiled") << name;
  }
}

TEST(Locks, AreFoundInAnyCaseAndWithSpaces) {
  const Catalogue catalogue;
  for (const char* text : {"Tab Washer", "TAB-WASHER", "tab_washer"})
    EXPECT_EQ(find_lock(catalogue, text)->name, "tab-washer") << text;
}

TEST(Locks, SuggestTheNearNameIfMisspelt) {
  const Catalogue catalogue;
  for (const SlipRow& row : k_lock_slips)
    EXPECT_THAT(problem_of(find_lock(catalogue, row.given)).hint,
                StartsWith(std::string("did you mean ") + row.meant + "? "))
        << row.given;
}

TEST(Locks, AreRefusedWithTheWholeList) {
  const Problem problem = problem_of(find_lock(Catalogue(), "prayer beads"));
  EXPECT_EQ(problem.trouble, Trouble::no_such);
  for (const LockRow& row : k_locks)
    EXPECT_THAT(problem.hint, HasSubstr(row.name));
}

} // namespace
} // namespace clampwright::specdb
