// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/image/embedded_image.hpp"

#include <iostream>
#include <random>
#include <string>

#include <gtest/gtest.h>

#include "specdb/image/digest.hpp"

namespace clampwright::specdb {
namespace {

TEST(EmbeddedImage, HasTheDigestThatItWasBuiltWith) { EXPECT_EQ(sha256(embedded_image()), embedded_image_digest()); }

TEST(EmbeddedImage, HasAnotherDigestWithAnyBitFlipped) {
  constexpr std::uint32_t k_seed = 20240501;
  std::cout << "seed " << k_seed << '\n';
  std::mt19937 random(k_seed);
  const std::string image(embedded_image());
  std::uniform_int_distribution<std::size_t> any_bit(0, image.size() * 8 - 1);
  for (int trial = 0; trial < 200; ++trial) {
    const std::size_t bit = any_bit(random);
    std::string copy = image;
    copy[bit / 8] = static_cast<char>(static_cast<unsigned char>(copy[bit / 8]) ^ (1U << (bit % 8)));
    EXPECT_NE(sha256(copy), embedded_image_digest()) << "bit " << bit;
  }
}

// SQLite file format, 1.2 and 1.3: the magic text; bytes 18 and 19 are 1 for a rollback journal, 2 for a write-ahead
// log, which could not be read from memory. (sqlite.org/fileformat.html, from memory)
TEST(EmbeddedImage, IsADatabaseWithoutAWriteAheadLog) {
  const std::string_view image = embedded_image();
  ASSERT_GT(image.size(), 100U);
  EXPECT_EQ(image.substr(0, 16), std::string_view("SQLite format 3\0", 16));
  EXPECT_EQ(image.substr(18, 2), "\x01\x01");
}

} // namespace
} // namespace clampwright::specdb
