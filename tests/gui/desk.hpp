// SPDX-License-Identifier: GPL-3.0-or-later
//
// A desk to test: the demo workshop in a folder of its own, settings that are forgotten, and somebody who answers.
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <vector>

#include <QApplication>
#include <QPageLayout>
#include <QPrinter>
#include <QTemporaryDir>
#include <QThread>
#include <gtest/gtest.h>

#include "gui/look/memory.hpp"
#include "gui/models/bench.hpp"
#include "gui/models/finder.hpp"
#include "gui/models/workshop_opener.hpp"
#include "gui/widgets/asking.hpp"
#include "gui/window/main_window.hpp"

namespace clampwright::desk {

inline constexpr std::chrono::year_month_day k_today{std::chrono::year(2026), std::chrono::month(11),
                                                     std::chrono::day(26)};

// One of each kind of page that the find line can open, in the demo workshop.
[[nodiscard]] std::vector<Target> all_targets();

// Answers what it was told to, and keeps what it was told.
class ScriptedAsking : public Asking {
 public:
  std::optional<QString> file;
  bool yes = true;
  QStringList told;
  QStringList questions; // to be answered with yes or no
  QString suggested;     // name of a file
  int asked = 0;

  void file_to_open(QWidget&, const QString&, const QString&, Answer answer) override {
    ++asked;
    answer(file);
  }
  void file_to_save(QWidget&, const QString&, const QString& name, const QString&, Answer answer) override {
    ++asked;
    suggested = name;
    answer(file);
  }
  void printer(QWidget&, const QPageLayout& sheet, std::function<void(QPrinter*)> answer) override {
    ++asked;
    if (!file) return answer(nullptr);
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(*file);
    printer.setPageLayout(sheet);
    answer(&printer);
  }
  void tell(QWidget&, const QString&, const QString& text) override { told << text; }
  void confirm(QWidget&, const QString& text, const QString&, std::function<void(bool)> answer) override {
    ++asked;
    questions << text;
    answer(yes);
  }
};

class Desk : public testing::Test {
 protected:
  Desk();
  ~Desk() override;

  // The window, in the look of the bench, shown and active.
  MainWindow& window();
  // Opens the demo workshop at once.
  void open_demo();
  [[nodiscard]] std::filesystem::path file(const char* name) const;
  // Runs the events that wait, and those they bring.
  static void settle();
  // Until it is true or five seconds have passed; says which.
  template<class Condition>
  static bool wait_for(Condition condition);

  QTemporaryDir folder;
  std::unique_ptr<Memory> memory = short_memory();
  ScriptedAsking asking;
  std::unique_ptr<Bench> bench;
  std::unique_ptr<WorkshopOpener> opener;

 private:
  std::unique_ptr<MainWindow> window_;
};

template<class Condition>
bool Desk::wait_for(Condition condition) {
  constexpr int k_tries = 500;
  for (int i = 0; i < k_tries && !condition(); ++i) {
    settle();
    if (!condition()) QThread::msleep(10);
  }
  return condition();
}

} // namespace clampwright::desk
