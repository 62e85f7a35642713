// SPDX-License-Identifier: GPL-3.0-or-later
//
// Calls that follow the locale of the user's system, or are not the same each time: under a decimal comma strtod reads
// "1.5" as 1, and no test in an English locale notices.
#include <algorithm>
#include <array>
#include <string_view>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/house/source_tree.hpp"

namespace clampwright::house {

namespace {

using testing::ElementsAre;
using testing::IsEmpty;

struct Banned {
  std::string_view word;
  std::string_view next; // what has to follow, blanks aside
  std::string_view instead;
};

// clang-format off
constexpr std::array k_banned{
    Banned{"strtod",         "(",  "std::from_chars"},
    Banned{"strtof",         "(",  "std::from_chars"},
    Banned{"strtold",        "(",  "std::from_chars"},
    Banned{"stod",           "(",  "std::from_chars"},
    Banned{"stof",           "(",  "std::from_chars"},
    Banned{"stold",          "(",  "std::from_chars"},
    Banned{"atof",           "(",  "std::from_chars"},
    Banned{"sscanf",         "(",  "std::from_chars"},
    Banned{"cin",            ">>", "std::getline and core/quantity/read.hpp"},
    Banned{"std::to_string", "(",  "fmt without L, or std::to_chars"},
    Banned{"sprintf",        "(",  "fmt without L"},
    Banned{"snprintf",       "(",  "fmt without L"},
    Banned{"printf",         "(",  "fmt without L"},
    Banned{"setlocale",      "(",  "nothing: the program stays in the C locale"},
    Banned{"locale::global", "(",  "nothing: the program stays in the C locale"},
    Banned{"rand",           "(",  "a generator whose seed is given"},
    Banned{"srand",          "(",  "a generator whose seed is given"},
    Banned{"random_device",  "",   "a generator whose seed is given"},
    Banned{"system_clock",   "",   "a date that is given; the one call for today stands in cli/main.cpp"},
    Banned{"steady_clock",   "",   "nothing: no answer depends on how long it took"},
};
// clang-format on

struct Exception {
  std::string_view path;
  std::string_view word;
  std::string_view why;
};

constexpr std::array k_exceptions{
    Exception{"tests/main.cpp", "setlocale", "the suite takes the locale of the environment on purpose"},
    Exception{"tests/main.cpp", "locale::global", "the suite takes the locale of the environment on purpose"},
    Exception{"tests/core/forced_locale.hpp", "setlocale", "puts a locale in force for one test"},
    Exception{"tests/core/forced_locale.hpp", "locale::global", "puts a locale in force for one test"},
    Exception{"tests/house/locale_test.cpp", "setlocale", "asks which locale is in force"},
};

bool is_excepted(std::string_view path, std::string_view word) {
  return std::ranges::any_of(k_exceptions, [&](const Exception& one) { return one.path == path && one.word == word; });
}

Faults banned_faults(const SourceFile& file) {
  Faults faults;
  const std::string code = code_only(file.text);
  for (const Banned& banned : k_banned) {
    for (std::size_t at = code.find(banned.word); at != std::string::npos; at = code.find(banned.word, at + 1)) {
      if (at > 0 && is_word_character(code[at - 1])) continue;
      const std::size_t end = at + banned.word.size();
      if (end < code.size() && is_word_character(code[end])) continue;
      const std::size_t after = std::min(code.find_first_not_of(" \n", end), code.size());
      if (!std::string_view(code).substr(after).starts_with(banned.next)) continue;
      if (is_excepted(file.path, banned.word)) continue;
      const auto line = 1 + std::count(code.begin(), code.begin() + static_cast<std::ptrdiff_t>(at), '\n');
      faults.push_back(
          fault(file, static_cast<std::size_t>(line), fmt::format("{}: use {}", banned.word, banned.instead)));
    }
  }
  return faults;
}

TEST(BannedCalls, DoNotOccur) {
  const Faults faults = over_all_files(banned_faults);
  EXPECT_THAT(faults, IsEmpty()) << listed(faults);
}

TEST(BannedCalls, AreFoundByTheCheck) {
  EXPECT_THAT(banned_faults({"core/a/a.cpp", "// strtod(x)\ndouble y = std::strtod (x, nullptr);\n"}),
              ElementsAre("core/a/a.cpp:2: strtod: use std::from_chars"));
  EXPECT_EQ(banned_faults({"cli/a/a.cpp", "std::cin >> x;"}).size(), 1U);
  EXPECT_EQ(banned_faults({"cli/a/a.cpp", "auto t = std::to_string(1.5);"}).size(), 1U);
  EXPECT_EQ(banned_faults({"cli/a/a.cpp", "std::setlocale(LC_ALL, \"\");"}).size(), 1U);
  EXPECT_EQ(banned_faults({"core/a/a.cpp", "std::random_device d;"}).size(), 1U);
}

TEST(BannedCalls, AreNotSeenWhereThereAreNone) {
  EXPECT_THAT(banned_faults({"core/a/a.cpp",
                             "say(\"atof(x)\"); my_rand(); rand_x(); to_string(unit); std::getline(std::cin, s);"}),
              IsEmpty());
}

TEST(BannedCalls, HaveNoExceptionWithoutUse) {
  for (const Exception& exception : k_exceptions) {
    ASSERT_TRUE(exists(std::string(exception.path))) << exception.path;
    EXPECT_NE(code_only(contents(std::string(exception.path))).find(exception.word), std::string::npos)
        << exception.path;
  }
}

} // namespace

} // namespace clampwright::house
