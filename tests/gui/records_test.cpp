// SPDX-License-Identifier: GPL-3.0-or-later
//
// Entering and revising on the desk, and two programs on one file.
#include <QAbstractItemModelTester>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>

#include "gui/models/record_table.hpp"
#include "gui/pages/joint_page.hpp"
#include "gui/pages/record_page.hpp"
#include "gui/pages/records_page.hpp"
#include "gui/widgets/blank_edit.hpp"
#include "gui/widgets/page_view.hpp"
#include "specdb/question/figure_register.hpp"
#include "specdb/workshop/joints.hpp"
#include "specdb/workshop/machines.hpp"
#include "tests/gui/desk.hpp"

namespace clampwright::desk {

namespace {

std::string number_text(long long number) { return QString::number(number).toStdString(); }

class Records : public Desk {
 protected:
  // The demo workshop, opened as the program opens it.
  void open_as_the_program() {
    open_demo();
    opener->open(bench->workshop_path());
    ASSERT_TRUE(wait_for([this] { return !opener->is_busy(); }));
  }
  RecordPage& form(const std::string& id, const RecordKey& key) {
    window().open({Target::To::record, id, {{k_record_of, key.of}, {k_record_key, key.key}}});
    auto* page = qobject_cast<RecordPage*>(window().page());
    EXPECT_NE(page, nullptr);
    return *page;
  }
  void press(RecordPage& page) {
    QTest::mouseClick(&page.keep_button(), Qt::LeftButton);
    EXPECT_TRUE(wait_for([&] { return !page.is_busy(); }));
    EXPECT_TRUE(wait_for([this] { return !opener->is_busy(); }));
  }
};

TEST_F(Records, EnterAMachine) {
  open_as_the_program();
  RecordPage& page = form("machine", {});
  EXPECT_FALSE(page.keep_button().isEnabled());
  page.blank("--called")->write("Bilge pump Reedwater 2");
  page.blank("--kind")->write("bilge pump, two-stroke single");
  page.blank("--stroke")->write("44 mm");
  page.blank("--rod")->write("88 mm");
  press(page);
  const auto machine = specdb::machine_of_slug(*bench->workshop(), page.key().key);
  ASSERT_TRUE(machine) << page.said().toStdString();
  EXPECT_EQ(machine->name, "Bilge pump Reedwater 2");
  EXPECT_EQ(machine->stroke_mm, 44);
}

TEST_F(Records, ReviseAMachineWithAReasonAndKeepWhatItWas) {
  open_as_the_program();
  RecordPage& page = form("machine", {{}, "pump"});
  const auto before = specdb::machine_of_slug(*bench->workshop(), "pump");
  page.blank("--stroke")->write("51 mm");
  press(page);
  EXPECT_TRUE(page.said().contains(QStringLiteral("reason"))) << page.said().toStdString();
  EXPECT_EQ(specdb::machine_of_slug(*bench->workshop(), "pump")->stroke_mm, before->stroke_mm);
  page.because().setText(QStringLiteral("measured again"));
  press(page);
  const auto after = specdb::machine_of_slug(*bench->workshop(), "pump");
  EXPECT_EQ(after->stroke_mm, 51);
  ASSERT_EQ(after->events.size(), before->events.size() + 1);
  EXPECT_EQ(after->events.back().because, "measured again");
  EXPECT_EQ(after->events.back().words, "stroke: 44 mm -> 51 mm"); // 44 mm: ../shared/DEMO.md
}

TEST_F(Records, EnterAJointWithItsFigure) {
  open_as_the_program();
  RecordPage& page = form("joint", {"pump", {}});
  for (const auto& [option, text] : std::vector<std::pair<const char*, const char*>>{{"--assembly", "bilge strainer"},
                                                                                     {"--called", "strainer bolt"},
                                                                                     {"--thread", "M6"},
                                                                                     {"--class", "8.8"},
                                                                                     {"--printed", "9,5 N·m"},
                                                                                     {"--torque", "9.5 N.m"},
                                                                                     {"--page", "page 11"},
                                                                                     {"--status", "maker"}})
    page.blank(option)->write(text);
  page.blank("--source")->write(specdb::joint_of_slug(*bench->workshop(), "pump/clutch-hub")->figure.source_slug);
  press(page);
  auto* joint = qobject_cast<JointPage*>(window().page());
  ASSERT_NE(joint, nullptr) << page.said().toStdString();
  const auto record = specdb::joint_of_slug(*bench->workshop(), joint->slug());
  ASSERT_TRUE(record);
  // Word for word, comma and all.
  EXPECT_EQ(record->figure.printed, "9,5 N·m");
  EXPECT_EQ(record->figure.value, 9.5);
}

TEST_F(Records, RefuseInTheBlankWhatTheTablesDoNotHave) {
  open_as_the_program();
  RecordPage& page = form("joint", {{}, "pump/clutch-hub"});
  page.blank("--thread")->write("M14x1.7");
  EXPECT_TRUE(page.blank("--thread")->is_refused() ||
              page.blank("--thread")->said_below().contains(QStringLiteral("no table")));
  page.blank("--class")->write("8.7");
  EXPECT_TRUE(page.blank("--class")->is_refused());
  EXPECT_FALSE(page.keep_button().isEnabled());
}

TEST_F(Records, ReviseAFigureAndShowTheOneBefore) {
  open_as_the_program();
  const auto before = specdb::joint_of_slug(*bench->workshop(), "pump/clutch-hub");
  RecordPage& page = form("figure", {"pump/clutch-hub", number_text(before->figure.id)});
  page.blank("--printed")->write("44 N·m");
  page.blank("--torque")->write("44 N.m");
  page.because().setText(QStringLiteral("third print of the sheets"));
  press(page);
  const auto after = specdb::joint_of_slug(*bench->workshop(), "pump/clutch-hub");
  EXPECT_EQ(after->figure.printed, "44 N·m") << page.said().toStdString();
  ASSERT_FALSE(after->superseded.empty());
  EXPECT_EQ(after->superseded.front().printed, before->figure.printed);
}

TEST_F(Records, OfTwoDesksTheSecondIsToldThatTheFirstRevisedIt) {
  open_as_the_program();
  RecordPage& page =
      form("figure",
           {"pump/clutch-hub", number_text(specdb::joint_of_slug(*bench->workshop(), "pump/clutch-hub")->figure.id)});
  page.blank("--printed")->write("44 N·m");
  page.blank("--torque")->write("44 N.m");
  page.because().setText(QStringLiteral("mine"));
  // Somebody else is quicker.
  specdb::FigureWords words;
  words.printed = "43 N·m";
  words.torque = "43 N.m";
  ASSERT_TRUE(specdb::revise_figure(bench->catalogue(), bench->workshop_path(), "pump/clutch-hub",
                                    specdb::joint_of_slug(*bench->workshop(), "pump/clutch-hub")->figure.id, words,
                                    "theirs", k_today));
  press(page);
  EXPECT_TRUE(page.said().contains(QStringLiteral("Nothing was written"))) << page.said().toStdString();
  // What was typed is still there.
  EXPECT_EQ(page.blank("--printed")->words(), "44 N·m");
  EXPECT_TRUE(wait_for(
      [&] { return specdb::joint_of_slug(*bench->workshop(), "pump/clutch-hub")->figure.printed == "43 N·m"; }));
}

TEST_F(Records, ShowWhatAnotherProgramWrote) {
  open_as_the_program();
  window().open({Target::To::joint, "pump/clutch-hub"});
  auto* page = qobject_cast<JointPage*>(window().page());
  specdb::FigureWords words;
  words.printed = "43 N·m";
  words.torque = "43 N.m";
  ASSERT_TRUE(specdb::revise_figure(bench->catalogue(), bench->workshop_path(), "pump/clutch-hub",
                                    specdb::joint_of_slug(*bench->workshop(), "pump/clutch-hub")->figure.id, words,
                                    "theirs", k_today));
  EXPECT_TRUE(wait_for([&] { return page->view().content().figures.front().value == QStringLiteral("43 N·m"); }));
}

TEST_F(Records, AreListedAndOpenedByKeys) {
  open_as_the_program();
  window().open({Target::To::records, "machines"});
  auto* page = qobject_cast<RecordsPage*>(window().page());
  ASSERT_NE(page, nullptr);
  EXPECT_GT(page->table().rowCount(), 0);
  QTest::keyClick(&page->view(), Qt::Key_Return);
  EXPECT_EQ(page->what(), "joints");
}

TEST_F(Records, ModelKeepsTheRules) {
  open_demo();
  RecordTable table;
  const QAbstractItemModelTester tester(&table, QAbstractItemModelTester::FailureReportingMode::Fatal);
  const Place place = bench->place();
  for (RecordRows rows : {machine_rows(place), joint_rows(place, "pump"), wrench_rows(place), document_rows(place)}) {
    EXPECT_FALSE(rows.rows.empty()) << rows.name.toStdString();
    for (const auto& row : rows.rows)
      EXPECT_EQ(row.cells.size(), rows.headings.size());
    table.show(std::move(rows));
  }
}

} // namespace

} // namespace clampwright::desk
