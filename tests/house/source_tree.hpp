// SPDX-License-Identifier: GPL-3.0-or-later
//
// The source tree as the tests of this folder see it. A check is a function from text to faults, each a line that
// begins with path and line number; so that it can be shown a bad text and must find the fault.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace clampwright::house {

using Faults = std::vector<std::string>;

struct SourceFile {
  std::string path; // from the top of the repository, with slashes
  std::string text;

  [[nodiscard]] bool is_in(std::string_view folder) const; // "specdb/sql", at any depth
  [[nodiscard]] bool is_header() const { return path.ends_with(".hpp"); }
};

// Whole content of a file, named from the top of the repository; throws if it cannot be read.
[[nodiscard]] std::string contents(const std::string& path);

[[nodiscard]] bool exists(const std::string& path);

// Names of the files of a folder, sorted, without those of its folders.
[[nodiscard]] std::vector<std::string> names_in(const std::string& folder);

// Every .cpp and .hpp of ours.
[[nodiscard]] const std::vector<SourceFile>& source_files();

[[nodiscard]] bool is_word_character(char c); // of a C++ name

// The same text with comments and the insides of literals turned to blanks; lines stay where they are.
[[nodiscard]] std::string code_only(std::string_view text);

struct Include {
  std::string name;
  bool quoted;
  std::size_t line;
};

[[nodiscard]] std::vector<Include> includes(std::string_view text);

// "path:line: what"
[[nodiscard]] std::string fault(const SourceFile& file, std::size_t line, std::string_view what);

// All faults one below the other, for the message of a failed test.
[[nodiscard]] std::string listed(const Faults& faults);

// A check run over every source file.
template<class Check>
[[nodiscard]] Faults over_all_files(Check check) {
  Faults all;
  for (const SourceFile& file : source_files())
    for (std::string& found : check(file))
      all.push_back(std::move(found));
  return all;
}

} // namespace clampwright::house
