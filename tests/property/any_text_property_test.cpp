// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whatever is typed, the readers answer or refuse; they never crash, and what they accept is finite. The texts are
// random bytes, and random strings of the pieces that good entries are made of, which get further in.
#include "core/friction/friction.hpp"
#include "core/quantity/read.hpp"
#include "core/text/plain_text.hpp"
#include "core/thread/designation.hpp"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <random>
#include <string>
#include <vector>

namespace clampwright {
namespace {

constexpr std::mt19937::result_type k_seed = 2230;
constexpr int k_texts = 4000;

std::vector<std::string> random_bytes() {
  std::mt19937 random(k_seed);
  std::uniform_int_distribution<std::size_t> length(0, 40);
  std::uniform_int_distribution<int> byte(0, 255);
  std::vector<std::string> texts;
  for (int i = 0; i < k_texts; ++i) {
    std::string text;
    for (auto n = length(random); n > 0; --n)
      text += static_cast<char>(byte(random));
    texts.push_back(std::move(text));
  }
  return texts;
}

std::vector<std::string> random_pieces() {
  constexpr std::array pieces{
      "24", "0",   "1",  "10",  "1e",  "e9", "1e308", ".",    "..",  ",",   "-",   "+",
      "/",  "1/4", " ",  "x",   "×",   "N",  "m",     "mm",   "Nm",  "N.m", "lbf", "ft",
      "in", "\"",  "kg", "psi", "°",   "C",  "%",     "M",    "M10", "#",   "UNF", "BA",
      "LH", "6g",  "2A", "nan", "inf", "0x", "·",     "\xC2", "−",   "½",   "0.1", "9999999999999999999",
      "\t", "K"};
  std::mt19937 random(k_seed);
  std::uniform_int_distribution<int> count(0, 7);
  std::uniform_int_distribution<std::size_t> pick(0, pieces.size() - 1);
  std::vector<std::string> texts;
  for (int i = 0; i < 5 * k_texts; ++i) {
    std::string text;
    for (int n = count(random); n > 0; --n)
      text += pieces[pick(random)];
    texts.push_back(std::move(text));
  }
  return texts;
}

std::vector<std::string> all_texts() {
  std::vector<std::string> texts = random_bytes();
  for (std::string& text : random_pieces())
    texts.push_back(std::move(text));
  return texts;
}

bool is_a_good_refusal(const Problem& problem) {
  return !problem.code.empty() && !problem.message.empty() && !problem.hint.empty() &&
         problem.trouble == Trouble::not_understood && text::is_printable(problem.input);
}

} // namespace

TEST(AnyText, IsReadAsAFiniteQuantityOrRefused) {
  int accepted = 0;
  for (const std::string& text : all_texts()) {
    const auto reading = quantity::read_quantity(text);
    if (reading) {
      ++accepted;
      EXPECT_TRUE(std::isfinite(reading->value) && std::isfinite(reading->si())) << text::quotable(text);
    } else {
      EXPECT_TRUE(is_a_good_refusal(reading.error())) << text::quotable(text);
    }
  }
  EXPECT_GT(accepted, 100); // or the pieces would prove nothing
}

TEST(AnyText, IsReadAsAFiniteThreadOrRefused) {
  int accepted = 0;
  for (const std::string& text : all_texts()) {
    const auto read = thread::read_designation(text);
    if (read) {
      ++accepted;
      EXPECT_TRUE(std::isfinite(read->diameter_mm) && std::isfinite(read->pitch_mm.value_or(1)) &&
                  std::isfinite(read->tpi.value_or(1)))
          << text::quotable(text);
    } else {
      EXPECT_TRUE(is_a_good_refusal(read.error())) << text::quotable(text);
    }
  }
  EXPECT_GT(accepted, 100);
}

TEST(AnyText, IsReadAsARisingFrictionBandOrRefused) {
  int accepted = 0;
  for (const std::string& text : all_texts()) {
    const auto band = friction::read_friction_band(text);
    if (band) {
      ++accepted;
      EXPECT_TRUE(0.0 <= band->low.value() && band->low <= band->likely && band->likely <= band->high &&
                  band->high.value() <= 1.0)
          << text::quotable(text);
    } else {
      EXPECT_TRUE(is_a_good_refusal(band.error())) << text::quotable(text);
    }
  }
  EXPECT_GT(accepted, 100);
}

TEST(AnyText, IsReadAsAPairOfLengthsAboveNothingOrRefused) {
  for (const std::string& text : all_texts()) {
    const auto pair = quantity::read_length_pair(text);
    EXPECT_TRUE(!pair || (pair->first > quantity::Length{} && pair->second > quantity::Length{}))
        << text::quotable(text);
  }
}

TEST(AnyText, IsReadAsAShareNotBelowNothingOrRefused) {
  for (const std::string& text : all_texts()) {
    const auto share = quantity::read_share(text);
    EXPECT_TRUE(!share || (std::isfinite(*share) && *share >= 0.0)) << text::quotable(text);
  }
}

} // namespace clampwright
