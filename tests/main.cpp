// SPDX-License-Identifier: GPL-3.0-or-later
//
// The locale of the environment is taken on purpose, for C and for C++: the suite must give the same numbers where the
// decimal mark is a comma.
#include <clocale>
#include <locale>

#include <gtest/gtest.h>

int main(int argc, char** argv) {
  std::setlocale(LC_ALL, "");
  try {
    std::locale::global(std::locale(""));
  } catch (const std::runtime_error&) {
    // A locale that is named but not installed: the C locale stays.
  }
  testing::InitGoogleTest(&argc, argv);
  return RUN_ALL_TESTS();
}
