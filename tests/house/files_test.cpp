// SPDX-License-Identifier: GPL-3.0-or-later
//
// What every source file has in common.
#include <string_view>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/house/source_tree.hpp"

namespace clampwright::house {

namespace {

using testing::IsEmpty;

Faults licence_faults(const SourceFile& file) {
  if (file.text.starts_with("// SPDX-License-Identifier: GPL-3.0-or-later\n")) return {};
  return {fault(file, 1, "the first line does not name the licence")};
}

Faults once_faults(const SourceFile& file) {
  const bool has_it = ("\n" + code_only(file.text)).find("\n#pragma once\n") != std::string::npos;
  if (file.is_header() == has_it) return {};
  return {fault(file, 1, file.is_header() ? "#pragma once is missing" : "#pragma once is for headers")};
}

std::string without_comments(std::string list) {
  for (std::size_t at = list.find('#'); at != std::string::npos; at = list.find('#', at))
    list.erase(at, list.find('\n', at) - at);
  return list;
}

// A file that no CMakeLists.txt names is never compiled, and nothing would say so. The one next above it counts.
Faults build_faults(const SourceFile& file) {
  if (file.is_header()) return {};
  const std::string stem = file.path.substr(0, file.path.size() - std::string_view(".cpp").size());
  for (std::size_t slash = stem.rfind('/'); slash != std::string::npos; slash = stem.rfind('/', slash - 1)) {
    const std::string list = stem.substr(0, slash) + "/CMakeLists.txt";
    if (!exists(list)) continue;
    const std::string text = without_comments(contents(list));
    const std::string name = stem.substr(slash + 1);
    for (std::size_t at = text.find(name); at != std::string::npos; at = text.find(name, at + 1)) {
      const bool begins = at == 0 || std::string_view(" \n\t(\"/").find(text[at - 1]) != std::string_view::npos;
      const std::size_t end = at + name.size();
      const bool ends = end >= text.size() || std::string_view(" \n\t)\".").find(text[end]) != std::string_view::npos;
      if (begins && ends) return {};
    }
    return {fault(file, 1, fmt::format("{} does not name it", list))};
  }
  return {fault(file, 1, "no CMakeLists.txt stands above it")};
}

TEST(SourceFiles, BeginWithTheLicence) {
  const Faults faults = over_all_files(licence_faults);
  EXPECT_THAT(faults, IsEmpty()) << listed(faults);
}

TEST(SourceFiles, HavePragmaOnceIfTheyAreHeaders) {
  const Faults faults = over_all_files(once_faults);
  EXPECT_THAT(faults, IsEmpty()) << listed(faults);
}

TEST(SourceFiles, AreNamedInTheBuild) {
  const Faults faults = over_all_files(build_faults);
  EXPECT_THAT(faults, IsEmpty()) << listed(faults);
}

TEST(SourceFiles, AreCheckedByATestThatSeesAFault) {
  EXPECT_EQ(licence_faults({"core/a/a.hpp", "#pragma once\n// SPDX-License-Identifier: GPL-3.0-or-later\n"}).size(),
            1U);
  EXPECT_EQ(once_faults({"core/a/a.hpp", "// #pragma once\n"}).size(), 1U);
  EXPECT_EQ(once_faults({"core/a/a.cpp", "#pragma once\n"}).size(), 1U);
  EXPECT_EQ(build_faults({"tests/house/forgotten_test.cpp", ""}).size(), 1U);
  EXPECT_EQ(build_faults({"tests/house/tree.cpp", ""}).size(), 1U); // only part of a name that is there
  EXPECT_THAT(build_faults({"tests/house/files_test.cpp", ""}), IsEmpty());
}

} // namespace

} // namespace clampwright::house
