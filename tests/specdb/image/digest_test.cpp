// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/image/digest.hpp"

#include <gtest/gtest.h>

namespace clampwright::specdb {
namespace {

struct Row {
  const char* message;
  const char* digest;
};

// The example messages that NIST publishes for SHA-256 of FIPS 180-4 ("abc", two blocks), and the empty message.
// Known: from memory, agrees with what sha256sum gives.
// clang-format off
constexpr Row k_published[] = {
    {"abc",
     "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"},
    {"",
     "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"},
    {"abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
     "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"},
};
// clang-format on

TEST(Digest, IsThePublishedOneOfThePublishedMessages) {
  for (const Row& row : k_published)
    EXPECT_EQ(sha256(row.message), row.digest) << row.message;
}

TEST(Digest, TakesZeroBytesForWhatTheyAre) {
  using namespace std::string_view_literals;
  EXPECT_NE(sha256("abc\0"sv), sha256("abc"sv));
}

} // namespace
} // namespace clampwright::specdb
