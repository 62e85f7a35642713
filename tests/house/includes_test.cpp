// SPDX-License-Identifier: GPL-3.0-or-later
//
// Arrows point down only: core <- specdb <- cli, gui. And each library is known in one place.
#include <algorithm>
#include <array>
#include <span>
#include <string_view>
#include <vector>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/house/source_tree.hpp"

namespace clampwright::house {

namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

// Names that end in a slash stand for all that begins so.
using Names = std::vector<std::string_view>;

bool is_among(std::string_view name, const Names& names) {
  return std::ranges::any_of(
      names, [&](std::string_view known) { return known.ends_with('/') ? name.starts_with(known) : name == known; });
}

// What the files of a layer may include besides the standard library.
struct Layer {
  std::string_view folder;
  Names ours;
  Names libraries;
};

const std::vector<Layer> k_layers{
    {"core", {"core/"}, {"boost/units/", "tl/", "fmt/"}},
    {"specdb",
     {"core/", "specdb/"},
     {"tl/", "fmt/", "SQLiteCpp/", "sqlite3.h", "csv.h", "nettle/", "toml++/", "nlohmann/", "unistd.h", "fcntl.h",
      "sys/"}},
    {"cli", {"core/", "specdb/", "cli/"}, {"tl/", "fmt/", "CLI/", "nlohmann/", "unistd.h", "fcntl.h", "sys/"}},
    {"gui", {"core/", "specdb/", "gui/"}, {"tl/", "fmt/"}},
};

// Parts of the standard library that are no pure computation, so not for core. The calendar of <chrono> is; its clocks
// are banned by name in banned_test.cpp.
const Names k_impure{"iostream",   "istream", "ostream", "fstream",      "sstream", "iomanip",           "cstdio",
                     "filesystem", "ctime",   "random",  "locale",       "clocale", "cstdlib",           "csignal",
                     "thread",     "mutex",   "atomic",  "shared_mutex", "future",  "condition_variable"};

bool is_qt(std::string_view name) {
  return name == "qcustomplot.h" || (name.size() > 1 && name[0] == 'Q' && name[1] >= 'A' && name[1] <= 'Z') ||
         name.starts_with("Qt");
}

// A name of the standard library has neither folder nor ending.
bool is_standard(std::string_view name) { return name.find_first_of("/.") == std::string_view::npos && !is_qt(name); }

// A file that the build makes lies in no folder of ours; a header is made from a pattern that does.
bool is_made(const std::string& name) {
  return exists(name + ".in") ||
         (name.find('/') == std::string::npos && !name.ends_with(".hpp") && !name.ends_with(".h"));
}

Faults layer_faults(const SourceFile& file) {
  Faults faults;
  const auto layer = std::ranges::find_if(k_layers, [&](const Layer& one) { return file.is_in(one.folder); });
  if (layer == k_layers.end()) return faults;
  for (const Include& include : includes(file.text)) {
    const bool made = include.quoted && include.name.find('/') == std::string::npos && is_made(include.name);
    const bool allowed = made                        ? true
                         : include.quoted            ? is_among(include.name, layer->ours)
                         : is_standard(include.name) ? layer->folder != "core" || !is_among(include.name, k_impure)
                         : is_qt(include.name)       ? layer->folder == "gui"
                                                     : is_among(include.name, layer->libraries);
    if (!allowed)
      faults.push_back(fault(file, include.line, fmt::format("{} may not include {}", layer->folder, include.name)));
  }
  return faults;
}

// A library that only some files may show: the rest of the program is written against what they offer.
struct Library {
  std::string_view name;
  Names includes;
  bool (*may)(const SourceFile&);
  std::string_view where;
};

const std::array k_libraries{
    Library{"SQLite",
            {"SQLiteCpp/", "sqlite3.h"},
            [](const SourceFile& file) {
              return (file.is_in("specdb") && !file.is_header()) || file.path == "specdb/sql/query.hpp";
            },
            "the .cpp files of specdb and specdb/sql/query.hpp"},
    Library{
        "JSON",
        {"nlohmann/json.hpp"},
        [](const SourceFile& file) { return (file.is_in("cli") || file.is_in("specdb/files")) && !file.is_header(); },
        "the .cpp files of cli and specdb/files"},
    Library{"JSON, even its names alone,",
            {"nlohmann/json_fwd.hpp"},
            [](const SourceFile& file) { return file.is_in("cli") || file.is_in("specdb/files"); },
            "cli and specdb/files"},
    Library{"CLI11",
            {"CLI/"},
            [](const SourceFile& file) { return file.is_in("cli") && !file.is_header(); },
            "the .cpp files of cli"},
};

Faults library_faults(const SourceFile& file) {
  Faults faults;
  if (file.is_in("tests")) return faults;
  for (const Include& include : includes(file.text))
    for (const Library& library : k_libraries)
      if (is_among(include.name, library.includes) && !library.may(file))
        faults.push_back(fault(file, include.line, fmt::format("{} is for {}", library.name, library.where)));
  return faults;
}

Faults qt_faults(const SourceFile& file) {
  Faults faults;
  if (file.is_in("gui") || file.is_in("tests/gui")) return faults;
  for (const Include& include : includes(file.text))
    if (is_qt(include.name)) faults.push_back(fault(file, include.line, "Qt is for gui"));
  return faults;
}

// Our own files are named from the top and in quotes, all else in angle brackets.
Faults spelling_faults(const SourceFile& file) {
  Faults faults;
  for (const Include& include : includes(file.text)) {
    const bool ours = exists(include.name);
    const bool made = is_made(include.name);
    if (include.quoted && !ours && !made)
      faults.push_back(fault(file, include.line, fmt::format("there is no file {} of ours", include.name)));
    if (!include.quoted && ours && !made)
      faults.push_back(fault(file, include.line, fmt::format("{} is ours and stands in quotes", include.name)));
  }
  return faults;
}

TEST(Layers, IncludeOnlyWhatLiesBelowThem) {
  const Faults faults = over_all_files(layer_faults);
  EXPECT_THAT(faults, IsEmpty()) << listed(faults);
}

TEST(Layers, AreCheckedByATestThatSeesAFault) {
  EXPECT_THAT(layer_faults({"core/a/a.cpp", "#include \"core/b/b.hpp\"\n#include \"specdb/a/a.hpp\"\n"}),
              ElementsAre("core/a/a.cpp:2: core may not include specdb/a/a.hpp"));
  for (const char* name :
       {"<iostream>", "<ctime>", "<QString>", "<QtCore/QString>", "<sqlite3.h>", "<nlohmann/json.hpp>", "<CLI/CLI.hpp>",
        "<boost/json.hpp>", "<time.h>", "\"tests/house/source_tree.hpp\""})
    EXPECT_EQ(layer_faults({"core/a/a.hpp", fmt::format("#include {}\n", name)}).size(), 1U) << name;
  for (const char* name : {"\"cli/a/a.hpp\"", "\"gui/a/a.hpp\"", "<QString>", "<CLI/CLI.hpp>"})
    EXPECT_EQ(layer_faults({"specdb/a/a.cpp", fmt::format("#include {}\n", name)}).size(), 1U) << name;
  for (const char* name : {"\"gui/a/a.hpp\"", "<QString>", "<SQLiteCpp/Database.h>", "<sqlite3.h>"})
    EXPECT_EQ(layer_faults({"cli/a/a.cpp", fmt::format("#include {}\n", name)}).size(), 1U) << name;
  for (const char* name : {"\"cli/a/a.hpp\"", "<CLI/CLI.hpp>", "<SQLiteCpp/Database.h>"})
    EXPECT_EQ(layer_faults({"gui/a/a.cpp", fmt::format("#include {}\n", name)}).size(), 1U) << name;
  EXPECT_THAT(layer_faults({"gui/a/a.cpp", "#include <QString>\n#include \"specdb/a/a.hpp\"\n#include <thread>\n"}),
              IsEmpty());
}

TEST(Libraries, AreKnownInTheirPlaceOnly) {
  const Faults faults = over_all_files(library_faults);
  EXPECT_THAT(faults, IsEmpty()) << listed(faults);
}

TEST(Libraries, AreCheckedByATestThatSeesAFault) {
  const char* const database = "#include <SQLiteCpp/Database.h>\n";
  EXPECT_THAT(library_faults({"specdb/a/a.hpp", database}), ElementsAre(HasSubstr("specdb/a/a.hpp:1: SQLite is for")));
  EXPECT_THAT(library_faults({"specdb/a/a.cpp", database}), IsEmpty());
  EXPECT_THAT(library_faults({"specdb/sql/query.hpp", database}), IsEmpty());
  const char* const json = "#include <nlohmann/json.hpp>\n";
  EXPECT_EQ(library_faults({"cli/a/a.hpp", json}).size(), 1U);
  EXPECT_EQ(library_faults({"specdb/a/a.cpp", json}).size(), 1U);
  EXPECT_EQ(library_faults({"specdb/a/a.cpp", "#include <nlohmann/json_fwd.hpp>\n"}).size(), 1U);
  EXPECT_THAT(library_faults({"specdb/files/a.cpp", json}), IsEmpty());
  EXPECT_EQ(library_faults({"cli/a/a.hpp", "#include <CLI/CLI.hpp>\n"}).size(), 1U);
}

TEST(Qt, IsKnownToGuiOnly) {
  const Faults faults = over_all_files(qt_faults);
  EXPECT_THAT(faults, IsEmpty()) << listed(faults);
}

TEST(Qt, IsCheckedByATestThatSeesAFault) {
  EXPECT_EQ(qt_faults({"tests/core/a.cpp", "#include <QWidget>\n"}).size(), 1U);
  EXPECT_THAT(qt_faults({"tests/gui/a.cpp", "#include <QWidget>\n"}), IsEmpty());
}

TEST(IncludeLines, NameOurFilesFromTheTopInQuotes) {
  const Faults faults = over_all_files(spelling_faults);
  EXPECT_THAT(faults, IsEmpty()) << listed(faults);
}

TEST(IncludeLines, AreCheckedByATestThatSeesAFault) {
  EXPECT_EQ(spelling_faults({"core/a/a.cpp", "#include \"fmt/format.h\"\n"}).size(), 1U);
  EXPECT_EQ(spelling_faults({"core/a/a.cpp", "#include \"a.hpp\"\n"}).size(), 1U);
  EXPECT_EQ(spelling_faults({"core/a/a.cpp", "#include <core/problem/problem.hpp>\n"}).size(), 1U);
}

} // namespace

} // namespace clampwright::house
