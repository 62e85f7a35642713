// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>

#include <QObject>

#include "gui/printing/print_pages.hpp"

namespace clampwright::desk {

class Asking;
class Bench;
class MainWindow;

// Program and version as the application knows them, and the day.
[[nodiscard]] Imprint imprint_of(std::chrono::year_month_day today);

// "clutch hub" -> "clutch-hub.pdf": letters and digits, the rest as single hyphens.
[[nodiscard]] QString suggested_file(const QString& title);

// Answers the window's wish to print or to save as PDF what its page shows.
class Printing : public QObject {
  Q_OBJECT

 public:
  Printing(MainWindow& window, Bench& bench, Asking& asking);

  void print();
  void save_pdf();

 private:
  // What is shown, or nothing after having said that there is nothing.
  [[nodiscard]] std::optional<Printable> shown();
  void refuse_with(const Problem& problem);

  MainWindow& window_;
  Bench& bench_;
  Asking& asking_;
};

} // namespace clampwright::desk
