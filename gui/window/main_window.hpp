// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <map>

#include <QMainWindow>

#include "gui/models/bench.hpp"
#include "gui/models/finder.hpp"
#include "gui/records/record_form.hpp"
#include "gui/widgets/asking.hpp"

class QLabel;
class QLineEdit;
class QPushButton;
class QSplitter;
class QStackedWidget;

namespace clampwright::desk {

class FindPanel;
class JointPage;
class ReadingPage;
class RecordPage;
class RecordsPage;
class Page;
class SentencePage;
class WorkshopOpener;

// One line that finds everything, what was found below it, and the page beside that. In a narrow window the page takes
// the place of the list.
class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  MainWindow(Bench& bench, WorkshopOpener& opener, Asking& asking, QWidget* parent = nullptr);
  ~MainWindow() override;

  void open(const Target& target);
  // Back to the find line, empty.
  void start_again();

  // Remembers where the window stands and how it is divided.
  void keep_place();

  [[nodiscard]] QLineEdit& find_line() const { return *line_; }
  [[nodiscard]] FindPanel& found() const { return *found_; }
  [[nodiscard]] Page* page() const;
  // What stands above everything; empty as a rule.
  [[nodiscard]] QString banner() const;
  [[nodiscard]] bool is_narrow() const;

 signals:
  // What the menu asks for and the window does not do itself.
  void print_wanted();
  void pdf_wanted();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void closeEvent(QCloseEvent* event) override;

 private:
  void make_menus();
  void make_workshop_menu();
  void make_paper_menu(QMenu& menu);
  void make_view_menu();
  void make_help_menu();
  void take_up_place();
  void show_page(Page* page);
  void show_either();
  void show_banner();
  void show_title();
  SentencePage* sentence_page(const std::string& id);
  JointPage* joint_page();
  ReadingPage* reading_page();
  RecordsPage* records_page();
  RecordPage* record_page(const std::string& form);
  void open_record(const std::string& form, const RecordKey& key);
  // The forms with something filled in that is not in the workshop yet: "New joint: pump".
  [[nodiscard]] QStringList not_entered() const;
  // Does it where the person lets go of what is filled in there.
  void ask_to_lose(const QStringList& what, std::function<void()> does);
  void move_between_panes();

  Bench& bench_;
  WorkshopOpener& opener_;
  Asking& asking_;
  QLineEdit* line_;
  QPushButton* back_; // in a narrow window, where the page hides the list
  QLabel* banner_;
  QSplitter* split_;
  FindPanel* found_;
  QStackedWidget* pages_;
  std::map<std::string, SentencePage*> sentences_;
  JointPage* joint_ = nullptr;
  ReadingPage* reading_ = nullptr;
  RecordsPage* records_ = nullptr;
  std::map<std::string, RecordPage*> forms_;
  bool page_in_front_ = false; // in a narrow window
  bool leaving_ = false;       // nothing more is asked
};

} // namespace clampwright::desk
