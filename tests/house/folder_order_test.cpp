// SPDX-License-Identifier: GPL-3.0-or-later
//
// The folders of core stand one upon the other, and so do those of gui. A new arrow belongs into this table first, with
// its reason; one that would point upwards shows a thing in the wrong folder.
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
const std::vector<Folder> k_core{
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

const std::vector<Folder> k_gui{
    {"look",      {}, "colours, sizes, what is remembered, Qt's strings"},
    {"drawings",  {"look"}, "functions of an answer that paint or plot"},
    {"text",      {"look", "drawings"}, "a page as text with drawings in it, in the language of the desk"},
    {"sentences", {"look", "drawings", "text"}, "calculators as data: blanks, and the question they ask; no widget"},
    {"records",   {"look", "text", "sentences"}, "what is kept as blanks to fill in; no widget"},
    {"models",    {"look", "text", "sentences", "records", "drawings"}, "what pages share, lists and tables for views"},
    {"widgets",   {"look", "drawings", "text", "sentences", "models"}, "blanks, pages to read, curves, the list of what was found"},
    {"printing",  {"look", "drawings", "text", "widgets"}, "a page on paper"},
    {"pages",     {"look", "drawings", "text", "sentences", "records", "models", "widgets", "printing"}, "what stands beside the list"},
    {"window",    {"look", "drawings", "text", "sentences", "records", "models", "widgets", "pages", "printing"}, "brings it all together"},
};
// clang-format on

// Lies directly in the root, and may use all of its folders: gui/main.cpp.
constexpr std::string_view k_top;

std::string_view folder_of(std::string_view path, std::string_view root) {
  const std::size_t begin = root.size() + 1;
  const std::size_t end = path.find('/', begin);
  return end == std::string_view::npos ? k_top : path.substr(begin, end - begin);
}

Faults order_faults(const SourceFile& file, std::string_view root, const std::vector<Folder>& folders) {
  Faults faults;
  if (!file.is_in(root)) return faults;
  const std::string_view own = folder_of(file.path, root);
  if (own == k_top) return faults;
  const auto row = std::ranges::find(folders, own, &Folder::name);
  if (row == folders.end()) {
    faults.push_back(fault(file, 1, fmt::format("{}/{} is not in the table of this test", root, own)));
    return faults;
  }
  for (const Include& include : includes(file.text)) {
    if (!include.name.starts_with(fmt::format("{}/", root))) continue;
    const std::string_view other = folder_of(include.name, root);
    if (other != own && std::ranges::find(row->uses, other) == row->uses.end())
      faults.push_back(fault(file, include.line, fmt::format("{0}/{1} does not use {0}/{2}", root, own, other)));
  }
  return faults;
}

Faults core_faults(const SourceFile& file) { return order_faults(file, "core", k_core); }
Faults gui_faults(const SourceFile& file) { return order_faults(file, "gui", k_gui); }

// Folders named in a row that do not stand above it.
Faults upward_arrows(const std::vector<Folder>& folders) {
  Faults faults;
  for (auto row = folders.begin(); row != folders.end(); ++row)
    for (const std::string_view used : row->uses)
      if (std::find_if(folders.begin(), row, [&](const Folder& lower) { return lower.name == used; }) == row)
        faults.push_back(fmt::format("{} uses {}, which does not lie below it", row->name, used));
  return faults;
}

TEST(Folders, UseEachOtherAsTheTablesHaveIt) {
  for (const auto check : {core_faults, gui_faults}) {
    const Faults faults = over_all_files(check);
    EXPECT_THAT(faults, IsEmpty()) << listed(faults);
  }
}

TEST(Folders, PointDownOnly) {
  for (const auto* folders : {&k_core, &k_gui})
    EXPECT_THAT(upward_arrows(*folders), IsEmpty());
}

TEST(Folders, AreCheckedByATestThatSeesAFault) {
  EXPECT_THAT(core_faults({"core/quantity/a.cpp", "#include <cmath>\n#include \"core/thread/thread.hpp\"\n"}),
              ElementsAre("core/quantity/a.cpp:2: core/quantity does not use core/thread"));
  EXPECT_THAT(core_faults({"core/misc/a.cpp", ""}),
              ElementsAre("core/misc/a.cpp:1: core/misc is not in the table of this test"));
  EXPECT_THAT(core_faults({"core/thread/a.cpp", "#include \"core/thread/b.hpp\"\n"}), IsEmpty());
  EXPECT_THAT(gui_faults({"gui/look/a.cpp", "#include \"gui/pages/page.hpp\"\n"}),
              ElementsAre("gui/look/a.cpp:1: gui/look does not use gui/pages"));
  EXPECT_THAT(gui_faults({"gui/main.cpp", "#include \"gui/window/main_window.hpp\"\n"}), IsEmpty());
  EXPECT_THAT(upward_arrows({{"a", {"b"}, ""}, {"b", {}, ""}}), ElementsAre("a uses b, which does not lie below it"));
}

} // namespace

} // namespace clampwright::house
