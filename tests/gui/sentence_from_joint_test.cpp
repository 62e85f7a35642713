// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a joint has on record is never asked for again.
#include "gui/look/utf8.hpp"
#include "gui/pages/joint_content.hpp"
#include "specdb/question/joint_answer.hpp"
#include "specdb/workshop/joints.hpp"
#include "tests/gui/desk.hpp"

namespace clampwright::desk {

namespace {

class SentenceFromJoint : public Desk {
 protected:
  void SetUp() override { open_demo(); }
  [[nodiscard]] specdb::JointAnswer joint(const char* slug) const {
    const auto record = specdb::joint_of_slug(*bench->workshop(), slug).value();
    return specdb::answer_for(bench->catalogue(), record).value();
  }
  [[nodiscard]] Words words(const char* sentence, const char* slug) const {
    return words_for(*sentence_named(sentence), joint(slug));
  }
};

TEST_F(SentenceFromJoint, NamesTheJointWhereItCan) {
  for (const char* sentence : {"hold", "hand", "sequence", "wrench", "substitute"})
    EXPECT_EQ(words(sentence, "pump/clutch-hub"), (Words{{"--joint", "pump/clutch-hub"}})) << sentence;
  EXPECT_EQ(words("workup", "pump/clutch-hub"), (Words{{"JOINT", "pump/clutch-hub"}}));
}

// ../shared/DEMO.md: the clutch hub is M14x1.5-LH and is tightened with 42 N·m.
TEST_F(SentenceFromJoint, FillsInWhatIsOnRecord) {
  const Words clamp = words("clamp", "pump/clutch-hub");
  EXPECT_EQ(said(clamp, "THREAD"), "M14x1.5-LH");
  EXPECT_EQ(said(clamp, "--torque"), "42 N.m");
  EXPECT_EQ(said(words("thread", "pump/clutch-hub"), "THREAD"), "M14x1.5-LH");
  EXPECT_EQ(said(words("convert", "pump/clutch-hub"), "QUANTITY"), "42 N.m");
  EXPECT_EQ(said(words("surfaces", "pump/clutch-hub"), "--thread"), "M14x1.5-LH");
}

// Nothing that the record fills in is refused by the blank that it is filled into.
TEST_F(SentenceFromJoint, IsUnderstoodByEveryBlank) {
  for (const std::string& slug : specdb::joint_slugs(*bench->workshop())) {
    const auto answer = joint(slug.c_str());
    for (const Sentence& sentence : sentences())
      for (const auto& [option, text] : words_for(sentence, answer)) {
        const Blank* blank = sentence.blank(option);
        ASSERT_NE(blank, nullptr) << sentence.id << option;
        const auto understood = blank->kind->understood(text, bench->place());
        EXPECT_TRUE(understood) << slug << " " << sentence.id << " " << option << ": " << text;
      }
  }
}

} // namespace

} // namespace clampwright::desk
