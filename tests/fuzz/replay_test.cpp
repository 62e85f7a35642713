// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every file of the corpus through its target, without libFuzzer: what once broke a reader stays mended on every
// compiler.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <vector>

#include <gtest/gtest.h>

#include "tests/fuzz/targets.hpp"

namespace clampwright::fuzz {
namespace {

namespace fs = std::filesystem;

std::vector<fs::path> corpus(const char* name) {
  std::vector<fs::path> files;
  for (const auto& entry : fs::directory_iterator(fs::path(CLAMPWRIGHT_SOURCE_DIR) / "tests/fuzz/corpus" / name))
    if (entry.is_regular_file()) files.push_back(entry.path());
  std::ranges::sort(files);
  return files;
}

std::string bytes_of(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  EXPECT_TRUE(in) << path;
  return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

void replay(const char* name, void (*target)(std::string_view)) {
  const std::vector<fs::path> files = corpus(name);
  EXPECT_FALSE(files.empty()) << name;
  for (const fs::path& file : files)
    EXPECT_NO_THROW(target(bytes_of(file))) << file.filename();
}

} // namespace

TEST(FuzzCorpus, OfQuantitiesHoldsEveryProperty) { replay("quantity", try_quantity); }
TEST(FuzzCorpus, OfThreadsHoldsEveryProperty) { replay("thread", try_thread); }
TEST(FuzzCorpus, OfSearchWordsHoldsEveryProperty) { replay("search", try_search); }

} // namespace clampwright::fuzz
