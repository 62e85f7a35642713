// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/house/source_tree.hpp"

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace clampwright::house {

namespace {

TEST(SourceTree, HoldsTheFilesOfEveryFolder) {
  for (const char* path : {"core/problem/problem.hpp", "specdb/files/csv.cpp", "tests/house/source_tree_test.cpp"})
    EXPECT_TRUE(std::ranges::any_of(source_files(), [&](const SourceFile& file) { return file.path == path; })) << path;
}

TEST(CodeOnly, LeavesOutComments) { EXPECT_EQ(code_only("a; // b\nc; /* d\ne */ f;"), "a;     \nc;     \n     f;"); }

TEST(CodeOnly, LeavesOutTheInsidesOfLiterals) {
  EXPECT_EQ(code_only(R"(f("a\"b", 'c', '"');)"), R"(f("    ", ' ', ' ');)");
}

TEST(CodeOnly, LeavesOutRawLiterals) {
  EXPECT_EQ(code_only("f(R\"x(a)\" // b)x\"); g();"), "f(R              ); g();");
}

TEST(CodeOnly, KnowsADigitSeparatorFromALiteral) { EXPECT_EQ(code_only("1'000 + x; y"), "1'000 + x; y"); }

TEST(Includes, AreFoundWithTheirLines) {
  const auto found = includes("// x\n#include \"a/b.hpp\"\n  # include <c>\n// #include <d>\n#include");
  ASSERT_EQ(found.size(), 2U);
  EXPECT_EQ(found[0].name, "a/b.hpp");
  EXPECT_TRUE(found[0].quoted);
  EXPECT_EQ(found[0].line, 2U);
  EXPECT_EQ(found[1].name, "c");
  EXPECT_FALSE(found[1].quoted);
}

} // namespace

} // namespace clampwright::house
