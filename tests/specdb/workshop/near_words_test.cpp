// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/near_words.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace clampwright::specdb {
namespace {

using testing::ElementsAre;
using testing::ElementsAreArray;
using testing::IsEmpty;

const std::vector<std::string> k_words{"bolt", "bolts", "clutch", "exhaust", "flywheel", "flywheels", "head",
                                       "hub",  "lever", "m6",     "m10x1",   "25",       "mount",     "mounting",
                                       "nut",  "nuts",  "pulley", "seal",    "sensor",   "shackle",   "spring"};

// "pulley 2", "head nuts 1"
std::vector<std::string> meant(std::string_view typed) {
  std::vector<std::string> out;
  for (const Meant& one : Vocabulary(k_words).meant_by(typed))
    out.push_back(fmt::format("{} {}", fmt::join(one.words, " "), one.slips));
  return out;
}

struct Row {
  const char* typed;
  std::vector<std::string> meant;
};

// By hand.
// clang-format off
const Row k_rows[] = {
    {"clucth",      {"clutch 1"}},   // swapped
    {"cluttch",     {"clutch 1"}},   // doubled
    {"cluch",       {"clutch 1"}},   // missing
    {"clutvh",      {"clutch 1"}},   // another
    {"lutch",       {"clutch 1"}},   // the first letter missing
    {"plly",        {"pulley 2"}},   // two of six
    {"flywheal",    {"flywheel 1"}}, // and flywheels, which begins like it
    {"flywhea",     {"flywheel 1"}}, // a beginning with a slip
    {"exhua",       {"exhaust 1"}},
    {"moumt",       {"mount 1"}},
    {"nutt",        {"nut 1"}},
    {"ntu",         {"nut 1"}},
    {"headnuts",    {"head nuts 1"}}, // a space missing
    {"nuthead",     {"nut head 1"}},
    {"headnu",      {"head 2"}},      // two letters make no word of their own
    {"zeppelin",    {}},
    {"spanner",     {}},
    {"xyz",         {}},
    {"ut",          {}},              // too short to tell
    {"but",         {}},              // not "nut": three letters with another first one
    {"m8",          {}},              // digits are never changed
    {"m10x2",       {}},
    {"26",          {}},
    {"6m",          {}},
    {"",            {}},
};
// clang-format on

TEST(NearWords, AreThoseThatASlipOrTwoMakeOfIt) {
  for (const Row& row : k_rows)
    EXPECT_THAT(meant(row.typed), ElementsAreArray(row.meant)) << row.typed;
}

TEST(NearWords, ComeWithTheFewestSlipsFirst) {
  // "senl": "seal" by one change. "sensor" begins "sen", one letter too many.
  EXPECT_THAT(meant("senl"), ElementsAre("seal 1", "sensor 1"));
  // "clutck": "clutch" by one change.
  EXPECT_THAT(Vocabulary({"clutch", "clumps"}).meant_by("cluthc").front().words, ElementsAre("clutch"));
}

TEST(NearWords, HaveNoDigitIfTheTypedWordHasNone) {
  EXPECT_THAT(Vocabulary({"m10x1", "bolt8"}).meant_by("bolts"), IsEmpty());
}

TEST(NearWords, AreComparedByLettersNotByBytes) {
  EXPECT_THAT(Vocabulary({"муфта"}).meant_by("мувта").front().words, ElementsAre("муфта"));
  EXPECT_THAT(Vocabulary({"螺母"}).meant_by("螺栓"), IsEmpty()); // two letters
}

TEST(NearWords, AreNoneForWordsThatNobodyTypes) {
  EXPECT_THAT(Vocabulary(k_words).meant_by(std::string(100000, 'n')), IsEmpty());
}

TEST(Vocabulary, KnowsTheBeginningsOfItsWords) {
  const Vocabulary vocabulary(k_words);
  for (const char* known : {"flywheel", "fly", "m10", "nuts", "n"})
    EXPECT_TRUE(vocabulary.begins_a_word(known)) << known;
  for (const char* unknown : {"wheel", "m8", "nutss", "zz"})
    EXPECT_FALSE(vocabulary.begins_a_word(unknown)) << unknown;
}

} // namespace
} // namespace clampwright::specdb
