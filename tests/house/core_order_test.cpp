// SPDX-License-Identifier: GPL-3.0-or-later
//
// The folders of core stand one upon the other. A new arrow belongs into this table first, with its reason; one that
// would point upwards shows a thing in the wrong folder.
#include <algorithm>
#include <string_view>
#include <vector>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/house/source_tree.hpp"

namespace clampwright::house {

namespace {

using testing::ElementsAre;
using testing::IsEmpty;

struct Folder {
  std::string_view name;
  std::vector<std::string_view> uses;
  std::string_view why;
};

// Lowest first.
// clang-format off
const std::vector<Folder> k_folders{
    {"text",       {}, "letters and spaces, for everything that reads or quotes"},
    {"problem",    {"text"}, "why a question has no answer, quoting what was asked; anything may fail"},
    {"calendar",   {"text", "problem"}, "days and times, read from text"},
    {"source",     {}, "where a value comes from; anything may carry one"},
    {"working",    {}, "the steps of a calculation, as text"},
    {"quantity",   {"text", "problem"}, "reading a quantity may fail"},
    {"thread",     {"text", "problem", "quantity", "source", "working"}, "designations are read, limits have sources, geometry shows its steps"},
    {"strength",   {"quantity", "source"}, "stresses with their sources; what class a thread has is not a thread's matter"},
    {"friction",   {"text", "problem", "quantity", "source"}, "bands with their sources, read from text"},
    {"finding",    {"quantity"}, "what is noticed about a joint, with its figures"},
    {"crank",      {"quantity", "thread", "working", "finding"}, "forces of the engine's crank on a joint, which hand of thread its turning tightens, and what must be said of both"},
    {"locking",    {"text", "problem", "calendar", "quantity", "source", "friction", "finding"}, "what holds a thread, and what becomes of it: cure, running torque, other surfaces"},
    {"tightening", {"text", "problem", "calendar", "quantity", "source", "working", "thread", "strength", "friction", "finding"}, "brings thread, strength and friction together into answer and findings"},
    {"joint",      {"text", "quantity", "source", "working", "thread", "strength", "friction", "crank", "finding", "tightening"}, "what a tightened bolt works in: thread in the part, nut, seat, heat, drive"},
    {"substitute", {"text", "problem", "quantity", "source", "thread", "strength", "finding", "tightening", "joint"}, "may another fastener go in: compares every property, and the joint as it would be tightened"},
    {"workup",     {"quantity", "working", "strength", "finding", "tightening", "joint"}, "a torque where the maker gives none: the weakest part against what the joint must carry"},
    {"version",    {}, "which version this is"},
    {"report",     {"text", "problem", "quantity", "source", "working", "thread", "strength", "friction", "crank", "finding", "locking", "tightening", "joint", "substitute", "workup"}, "puts any answer into words"},
};
// clang-format on

std::string_view folder_of(std::string_view path) {
  const std::size_t begin = std::string_view("core/").size();
  return path.substr(begin, path.find('/', begin) - begin);
}

Faults order_faults(const SourceFile& file) {
  Faults faults;
  if (!file.is_in("core")) return faults;
  const std::string_view own = folder_of(file.path);
  const auto row = std::ranges::find(k_folders, own, &Folder::name);
  if (row == k_folders.end()) {
    faults.push_back(fault(file, 1, fmt::format("core/{} is not in the table of this test", own)));
    return faults;
  }
  for (const Include& include : includes(file.text)) {
    if (!include.name.starts_with("core/")) continue;
    const std::string_view other = folder_of(include.name);
    if (other != own && std::ranges::find(row->uses, other) == row->uses.end())
      faults.push_back(fault(file, include.line, fmt::format("core/{} does not use core/{}", own, other)));
  }
  return faults;
}

// Folders named in a row that do not stand above it.
Faults upward_arrows(const std::vector<Folder>& folders) {
  Faults faults;
  for (auto row = folders.begin(); row != folders.end(); ++row)
    for (const std::string_view used : row->uses)
      if (std::find_if(folders.begin(), row, [&](const Folder& lower) { return lower.name == used; }) == row)
        faults.push_back(fmt::format("{} uses {}, which does not lie below it", row->name, used));
  return faults;
}

TEST(CoreFolders, UseEachOtherAsTheTableHasIt) {
  const Faults faults = over_all_files(order_faults);
  EXPECT_THAT(faults, IsEmpty()) << listed(faults);
}

TEST(CoreFolders, PointDownOnly) { EXPECT_THAT(upward_arrows(k_folders), IsEmpty()); }

TEST(CoreFolders, AreCheckedByATestThatSeesAFault) {
  EXPECT_THAT(order_faults({"core/quantity/a.cpp", "#include <cmath>\n#include \"core/thread/thread.hpp\"\n"}),
              ElementsAre("core/quantity/a.cpp:2: core/quantity does not use core/thread"));
  EXPECT_THAT(order_faults({"core/misc/a.cpp", ""}),
              ElementsAre("core/misc/a.cpp:1: core/misc is not in the table of this test"));
  EXPECT_THAT(order_faults({"core/thread/a.cpp", "#include \"core/thread/b.hpp\"\n"}), IsEmpty());
  EXPECT_THAT(upward_arrows({{"a", {"b"}, ""}, {"b", {}, ""}}), ElementsAre("a uses b, which does not lie below it"));
}

} // namespace

} // namespace clampwright::house
