// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/main_window.hpp"

#include <QApplication>
#include <QClipboard>
#include <QCloseEvent>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QTextEdit>
#include <QVBoxLayout>

#include "gui/look/utf8.hpp"
#include "gui/models/workshop_opener.hpp"
#include "gui/pages/joint_page.hpp"
#include "gui/pages/reading_content.hpp"
#include "gui/pages/reading_page.hpp"
#include "gui/pages/record_page.hpp"
#include "gui/pages/records_page.hpp"
#include "gui/pages/sentence_page.hpp"
#include "gui/text/wording.hpp"
#include "gui/widgets/find_panel.hpp"
#include "gui/widgets/scroll_pane.hpp"
#include "specdb/question/joint_report.hpp"

namespace clampwright::desk {

namespace {

// Narrower than this in running letters, list and page do not stand side by side.
constexpr int k_letters_for_both = 110;

// Is it something that takes letters itself?
bool takes_letters(const QWidget* widget) {
  if (widget == nullptr) return false;
  if (const auto* list = qobject_cast<const QComboBox*>(widget)) return list->isEditable();
  if (const auto* text = qobject_cast<const QTextEdit*>(widget)) return !text->isReadOnly();
  return qobject_cast<const QLineEdit*>(widget) != nullptr;
}

} // namespace

MainWindow::MainWindow(Bench& bench, WorkshopOpener& opener, Asking& asking, QWidget* parent)
    : QMainWindow(parent),
      bench_(bench),
      opener_(opener),
      asking_(asking),
      line_(new QLineEdit),
      back_(new QPushButton),
      banner_(new QLabel),
      split_(new QSplitter(Qt::Horizontal)),
      pages_(new QStackedWidget) {
  setWindowTitle(QStringLiteral("Clampwright"));
  auto* all = new QWidget(this);
  auto* column = new QVBoxLayout(all);
  line_->setPlaceholderText(tr("Find a joint, machine, thread, class or calculator"));
  line_->setAccessibleName(tr("find"));
  auto* top = new QHBoxLayout;
  back_->setText(tr("&Back to the list"));
  connect(back_, &QPushButton::clicked, this, &MainWindow::start_again);
  top->addWidget(back_);
  top->addWidget(line_, 1);
  column->addLayout(top);
  set_kind(*banner_, "banner");
  banner_->setWordWrap(true);
  column->addWidget(banner_);
  found_ = new FindPanel(bench, *line_, split_);
  split_->addWidget(found_);
  split_->addWidget(pages_);
  split_->setChildrenCollapsible(false);
  split_->setStretchFactor(0, 0);
  split_->setStretchFactor(1, 1);
  column->addWidget(split_, 1);
  setCentralWidget(all);
  make_menus();
  connect(found_, &FindPanel::opened, this, &MainWindow::open);
  connect(line_, &QLineEdit::textChanged, this, [this] {
    page_in_front_ = false;
    show_either();
  });
  connect(&bench, &Bench::workshop_changed, this, &MainWindow::show_banner);
  connect(&bench, &Bench::look_changed, this, [this] {
    put_on(*qApp, bench_.look());
    show_either();
  });
  connect(&opener, &WorkshopOpener::refused, this, [this](const Problem& problem) {
    if (opener_.not_there()) return show_banner(); // stays until there is one
    QString text = worded(problem.message);
    if (!problem.input.empty()) text += QStringLiteral(" (%1)").arg(from_utf8(problem.input));
    const bool made = problem.trouble == Trouble::cannot_create;
    asking_.tell(*this, made ? tr("The workshop cannot be made") : tr("The workshop cannot be opened"),
                 text + QStringLiteral("\n") + worded(problem.hint));
  });
  connect(&opener, &WorkshopOpener::opened, this, &MainWindow::show_banner);
  connect(&opener, &WorkshopOpener::lost, this, [this](const Problem& problem) {
    banner_->setText(
        tr("The workshop cannot be read any more, and is shown as it was: %1").arg(worded(problem.message)));
    banner_->show();
  });
  qApp->installEventFilter(this);
  show_banner();
  take_up_place();
  line_->setFocus();
}

MainWindow::~MainWindow() { qApp->removeEventFilter(this); }

Page* MainWindow::page() const { return qobject_cast<Page*>(pages_->currentWidget()); }

bool MainWindow::is_narrow() const {
  return width() < QFontMetrics(text_font(bench_.look())).averageCharWidth() * k_letters_for_both;
}

void MainWindow::show_either() {
  const bool narrow = is_narrow();
  found_->setVisible(!narrow || !page_in_front_);
  back_->setVisible(narrow && page_in_front_);
  pages_->setVisible((!narrow || page_in_front_) && pages_->count() > 0);
}

void MainWindow::show_page(Page* page) {
  pages_->setCurrentWidget(page);
  page_in_front_ = true;
  show_either();
  show_title();
  // What is opened begins at its beginning: the figure and which way to turn stand there.
  for (ScrollPane* pane : page->findChildren<ScrollPane*>())
    pane->to_top();
  page->take_focus();
}

SentencePage* MainWindow::sentence_page(const std::string& id) {
  if (const auto found = sentences_.find(id); found != sentences_.end()) return found->second;
  const Sentence* sentence = sentence_named(id);
  if (sentence == nullptr) return nullptr;
  auto* page = new SentencePage(bench_, *sentence, pages_);
  pages_->addWidget(page);
  sentences_[id] = page;
  return page;
}

JointPage* MainWindow::joint_page() {
  if (joint_ != nullptr) return joint_;
  joint_ = new JointPage(bench_, pages_);
  pages_->addWidget(joint_);
  connect(joint_, &JointPage::record_wanted, this, &MainWindow::open_record);
  connect(joint_, &JointPage::sentence_wanted, this, [this](const QString& id, const Words& words) {
    open({Target::To::sentence, to_utf8(id), words});
  });
  return joint_;
}

ReadingPage* MainWindow::reading_page() {
  if (reading_ == nullptr) {
    reading_ = new ReadingPage(bench_, pages_);
    pages_->addWidget(reading_);
  }
  return reading_;
}

RecordsPage* MainWindow::records_page() {
  if (records_ != nullptr) return records_;
  records_ = new RecordsPage(bench_, pages_);
  pages_->addWidget(records_);
  connect(records_, &RecordsPage::joint_wanted, this, [this](const std::string& slug) {
    open({Target::To::joint, slug});
  });
  connect(records_, &RecordsPage::joints_wanted, this, [this](const std::string& machine) {
    open({Target::To::machine, machine});
  });
  connect(records_, &RecordsPage::record_wanted, this, &MainWindow::open_record);
  return records_;
}

RecordPage* MainWindow::record_page(const std::string& form) {
  if (const auto found = forms_.find(form); found != forms_.end()) return found->second;
  auto* page = new RecordPage(bench_, *record_form(form), pages_);
  pages_->addWidget(page);
  forms_[form] = page;
  connect(page, &RecordPage::kept, this, [this, form](const RecordKey& key) {
    opener_.read_again();
    // A new joint is looked at; what was revised stays open, with what happened to it.
    if (form == "joint") open({Target::To::joint, key.key});
    if (form == "figure") open({Target::To::joint, key.of});
  });
  return page;
}

void MainWindow::open_record(const std::string& form, const RecordKey& key) {
  RecordPage* page = record_page(form);
  const auto show = [this, page, key] {
    page->show_record(key);
    show_page(page);
  };
  if (!page->has_changes()) return show();
  // What was typed for the same record and not kept yet is still there.
  if (page->key() == key) return show_page(page);
  ask_to_lose({page->title()}, show);
}

QStringList MainWindow::not_entered() const {
  QStringList titles;
  for (const auto& [form, page] : forms_)
    if (page->has_changes()) titles << page->title();
  return titles;
}

void MainWindow::ask_to_lose(const QStringList& what, std::function<void()> does) {
  asking_.confirm(*this,
                  tr("Filled in, not yet entered into the workshop, and lost if you leave it: %1")
                      .arg(what.join(QStringLiteral(", "))),
                  tr("&Leave it"), [does = std::move(does)](bool yes) {
                    if (yes) does();
                  });
}

void MainWindow::open(const Target& target) {
  switch (target.to) {
  case Target::To::joint:
    joint_page()->show_joint(target.key);
    return show_page(joint_);
  case Target::To::sentence:
    if (SentencePage* page = sentence_page(target.key)) {
      if (!target.words.empty()) page->fill_in(target.words);
      show_page(page);
    }
    return;
  case Target::To::table:
    reading_page()->show_content([table = target.key, words = said(target.words, k_table_words).value_or("")](
                                     const Place& place) { return table_content(place, table, words); });
    return show_page(reading_);
  case Target::To::about:
    reading_page()->show_content([](const Place& place) -> Result<PageContent> { return about_content(place); });
    return show_page(reading_);
  case Target::To::machine:
    records_page()->show_records("joints", target.key);
    return show_page(records_);
  case Target::To::records:
    records_page()->show_records(target.key, {});
    return show_page(records_);
  case Target::To::record:
    return open_record(target.key,
                       {said(target.words, k_record_of).value_or(""), said(target.words, k_record_key).value_or("")});
  case Target::To::all_machines:
    return;
  }
}

void MainWindow::start_again() {
  line_->clear();
  page_in_front_ = false;
  show_either();
  line_->setFocus();
}

QString MainWindow::banner() const { return banner_->isHidden() ? QString() : banner_->text(); }

void MainWindow::show_banner() {
  if (const auto& file = opener_.not_there()) {
    QString text = tr("The workshop file %1 is not there. Open it from where it is now, or make a new one: menu "
                      "Workshop.")
                       .arg(from_utf8(file->string()));
    // Another may be open still.
    if (bench_.is_invented()) text += QLatin1Char('\n') + worded(specdb::k_invented);
    banner_->setText(text);
    banner_->show();
  } else {
    banner_->setText(worded(specdb::k_invented));
    banner_->setVisible(bench_.is_invented());
  }
  show_title();
}

// The page, the file, the program: what tells two windows apart comes first.
void MainWindow::show_title() {
  QStringList parts;
  if (page() != nullptr && !page()->isHidden()) parts << page()->title();
  if (bench_.workshop() != nullptr) parts << from_utf8(bench_.workshop_path().filename().string());
  parts << QStringLiteral("Clampwright");
  setWindowTitle(parts.join(QStringLiteral(" – ")));
}

void MainWindow::move_between_panes() {
  QWidget* focus = focusWidget();
  if (focus == line_)
    found_->list().setFocus();
  else if (found_->isAncestorOf(focus) && page() != nullptr && page()->isVisible())
    page()->take_focus();
  else
    line_->setFocus();
}

bool MainWindow::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress || !isActiveWindow() || QApplication::activePopupWidget() != nullptr)
    return QMainWindow::eventFilter(watched, event);
  auto* widget = qobject_cast<QWidget*>(watched);
  if (widget == nullptr || widget->window() != this) return QMainWindow::eventFilter(watched, event);
  auto* key = static_cast<QKeyEvent*>(event);
  if (key->key() == Qt::Key_Escape) {
    if (line_->hasFocus() && line_->text().isEmpty() && page() != nullptr && !page_in_front_) return false;
    start_again();
    return true;
  }
  // Typing where nothing takes letters begins to find.
  const bool plain = (key->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) == 0;
  const QString text = key->text();
  // With Alt a letter is the key of something; where that is switched off, of nothing. It is never written.
  const bool alt = (key->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) == Qt::AltModifier;
  if (alt && takes_letters(widget) && text.size() == 1 && text[0].isPrint()) return true;
  if (plain && !takes_letters(widget) && text.size() == 1 && text[0].isLetterOrNumber()) {
    line_->setFocus();
    line_->setText(text);
    return true;
  }
  return QMainWindow::eventFilter(watched, event);
}

void MainWindow::resizeEvent(QResizeEvent* event) {
  QMainWindow::resizeEvent(event);
  show_either();
}

void MainWindow::keep_place() {
  bench_.memory().keep(Kept::window_place, saveGeometry());
  bench_.memory().keep(Kept::splitter, split_->saveState());
}

void MainWindow::take_up_place() {
  const QByteArray place = bench_.memory().get(Kept::window_place).toByteArray();
  if (place.isEmpty() || !restoreGeometry(place)) resize(bench_.look().pixels(1180), bench_.look().pixels(800));
  const QByteArray split = bench_.memory().get(Kept::splitter).toByteArray();
  if (split.isEmpty() || !split_->restoreState(split))
    split_->setSizes({bench_.look().pixels(340), bench_.look().pixels(840)});
  show_either();
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (const QStringList lost = not_entered(); !leaving_ && !lost.isEmpty()) {
    event->ignore();
    return ask_to_lose(lost, [this] {
      leaving_ = true;
      // A window that is just refusing to close cannot close.
      QMetaObject::invokeMethod(this, &QWidget::close, Qt::QueuedConnection);
    });
  }
  keep_place();
  QMainWindow::closeEvent(event);
}

} // namespace clampwright::desk
