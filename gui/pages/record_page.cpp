// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/pages/record_page.hpp"

#include <algorithm>

#include <QCoreApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStyle>
#include <QTimer>
#include <QVBoxLayout>

#include "gui/look/utf8.hpp"
#include "gui/models/away.hpp"
#include "gui/widgets/blank_edit.hpp"
#include "gui/widgets/flow_layout.hpp"
#include "gui/widgets/page_view.hpp"
#include "gui/widgets/scroll_pane.hpp"

namespace clampwright::desk {

RecordPage::RecordPage(Bench& bench, const RecordForm& form, QWidget* parent) : Page(bench, parent), form_(form) {
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(0, 0, 0, 0);
  pane_ = new ScrollPane(this);
  outer->addWidget(pane_, 1);
  auto* all = new QWidget;
  auto* column = new QVBoxLayout(all);
  name_ = new QLabel(all);
  set_kind(*name_, "heading");
  name_->setWordWrap(true);
  column->addWidget(name_);
  no_workshop_ = new QLabel(tr("No workshop is open: open one, or make a new one, from the menu Workshop."), all);
  set_kind(*no_workshop_, "refusal");
  no_workshop_->setWordWrap(true);
  column->addWidget(no_workshop_);
  for (const BlankGroup& group : form.groups)
    make_group(*column, group);
  std::vector<Blank> blanks;
  for (const BlankGroup& group : form.groups)
    blanks.insert(blanks.end(), group.blanks.begin(), group.blanks.end());
  names_ = names_for(blanks);
  for (BlankEdit* edit : blanks_)
    edit->know_names(names_);
  reason_ = new QWidget(all);
  auto* reason = new QVBoxLayout(reason_);
  reason->setContentsMargins(0, 0, 0, 0);
  because_ = new QLineEdit(reason_);
  because_->setAccessibleName(tr("reason of the revision"));
  because_->setPlaceholderText(tr("measured again"));
  auto* label = new QLabel(tr("Beca&use"), reason_);
  label->setBuddy(because_);
  reason->addWidget(label);
  reason->addWidget(because_);
  column->addWidget(reason_);
  // Below what scrolls: what came of pressing the button is in sight wherever one is in the form.
  keep_ = new QPushButton(this);
  connect(keep_, &QPushButton::clicked, this, &RecordPage::keep);
  auto* foot = new QVBoxLayout;
  const int side = style()->pixelMetric(QStyle::PM_LayoutLeftMargin); // in line with the blanks
  foot->setContentsMargins(side, 0, side, 0);
  outer->addLayout(foot);
  foot->addWidget(keep_, 0, Qt::AlignLeft);
  said_ = new QLabel(this);
  said_->setWordWrap(true);
  foot->addWidget(said_);
  history_ = new PageView(bench.look(), all);
  column->addWidget(history_);
  column->addStretch(1);
  pane_->setWidget(all);
  connect(&bench, &Bench::look_changed, this, &RecordPage::put_on_look);
  connect(&bench, &Bench::changed, this, [this] {
    // Without a change of one's own the page follows the file; with one it stays, and keeping it finds the change.
    if (!busy_ && !is_new() && !has_changes()) fill();
    no_workshop_->setVisible(this->bench().workshop() == nullptr);
    show_history();
  });
  put_on_look();
  show_record({});
}

void RecordPage::make_group(QVBoxLayout& column, const BlankGroup& group) {
  auto* box = new QWidget(column.parentWidget());
  auto* inner = new QVBoxLayout(box);
  inner->setContentsMargins(0, 0, 0, 0);
  auto* heading = new QLabel(QCoreApplication::translate("Records", group.heading), box);
  set_kind(*heading, "part");
  inner->addWidget(heading);
  auto* grid = new QWidget(box);
  auto* flow = new FlowLayout(grid, bench().look().gap());
  flows_.push_back(flow);
  for (const Blank& blank : group.blanks) {
    auto* pair = new QWidget(grid);
    auto* stack = new QVBoxLayout(pair);
    stack->setContentsMargins(0, 0, 0, 0);
    stack->setSpacing(2);
    auto* edit = new BlankEdit(blank, bench().place(), bench().look(), pair);
    connect(edit, &BlankEdit::changed, this, [this] {
      say({}, false);
      read_all();
    });
    auto* label = new QLabel(edit->label(), pair);
    label->setBuddy(edit->field());
    stack->addWidget(label);
    stack->addWidget(edit);
    flow->addWidget(pair);
    blanks_.push_back(edit);
  }
  inner->addWidget(grid);
  column.addWidget(box);
  if (group.only_new) only_new_.push_back(box);
}

QString RecordPage::title() const { return name_->text(); }

void RecordPage::show_record(const RecordKey& key) {
  key_ = key;
  because_->clear();
  say({}, false);
  fill();
  show_history();
}

void RecordPage::fill() {
  const Place place = bench().place();
  const Words words = form_.recorded(place, key_);
  for (QWidget* box : only_new_)
    box->setVisible(is_new());
  for (BlankEdit* edit : blanks_) {
    const QSignalBlocker quiet(edit);
    edit->write(desk::said(words, edit->option()));
  }
  before_ = filled();
  events_seen_ = form_.events ? form_.events(place, key_) : std::nullopt;
  reason_->setVisible(!is_new());
  const QString what = QCoreApplication::translate("Records", is_new() ? form_.new_one : form_.name);
  const std::string& of = is_new() ? key_.of : form_.id == "figure" ? key_.of : key_.key;
  no_workshop_->setVisible(bench().workshop() == nullptr);
  name_->setText(of.empty() ? what : QStringLiteral("%1: %2").arg(what, from_utf8(of)));
  keep_->setText(is_new() ? tr("Ent&er into the workshop") : tr("R&evise"));
  read_all();
}

std::vector<BlankEdit*> RecordPage::shown_blanks() const {
  std::vector<BlankEdit*> shown;
  std::ranges::copy_if(blanks_, std::back_inserter(shown), [&](const BlankEdit* edit) {
    return is_new() || std::ranges::none_of(only_new_, [&](const QWidget* box) { return box->isAncestorOf(edit); });
  });
  return shown;
}

Words RecordPage::filled() const {
  Words words;
  for (const BlankEdit* edit : shown_blanks())
    if (auto text = edit->words()) words[edit->option()] = std::move(*text);
  return words;
}

bool RecordPage::has_changes() const { return filled() != before_; }

bool RecordPage::read_all() {
  const Place place = bench().place();
  bool may_keep = true;
  QStringList missing;
  for (BlankEdit* edit : shown_blanks()) {
    may_keep = edit->read(place) && may_keep;
    if (form_.blank(edit->option())->needed && !edit->words()) missing << edit->label();
  }
  if (!missing.empty()) say(tr("Still to be filled in: %1").arg(missing.join(QStringLiteral(", "))), false);
  may_keep = may_keep && missing.empty() && !busy_;
  keep_->setEnabled(may_keep);
  return may_keep;
}

void RecordPage::keep() {
  if (!read_all()) return;
  if (bench().workshop_path().empty()) return say(no_workshop_->text(), true);
  Keeping keeping;
  keeping.file = bench().workshop_path();
  keeping.today = bench().place().today;
  keeping.key = key_;
  keeping.said = is_new() ? filled() : differing(before_, filled());
  keeping.events_seen = events_seen_;
  if (const QString text = because_->text().trimmed(); !is_new() && !text.isEmpty()) keeping.because = to_utf8(text);
  busy_ = true;
  setFocus(); // a button that is switched off would hand it on, to the find line
  keep_->setEnabled(false);
  say(tr("Writing …"), false);
  away<RecordKey>(
      this,
      [this_keep = form_.keep, keeping] {
        const specdb::Catalogue catalogue; // a connection belongs to one thread
        return this_keep(catalogue, keeping);
      },
      [this](const Result<RecordKey>& outcome) { show_outcome(outcome); });
}

void RecordPage::show_outcome(const Result<RecordKey>& outcome) {
  busy_ = false;
  if (!outcome) {
    read_all();
    const Problem& problem = outcome.error();
    if (BlankEdit* edit = blank(problem.field); edit != nullptr) {
      edit->refuse(problem);
      say(tr("Nothing was written: see %1.").arg(edit->label()), true);
      return show_blank(*edit, *edit->field());
    }
    say(tr("Nothing was written: %1").arg(refusal_words(problem, names_)), true);
    if (problem.field == "--because") return show_blank(*because_, *because_);
    if (hasFocus()) keep_->setFocus();
    return;
  }
  key_ = *outcome;
  before_ = filled();
  because_->clear();
  read_all();
  say(tr("Kept."), false);
  if (hasFocus()) keep_->setFocus();
  emit kept(key_);
}

void RecordPage::show_blank(QWidget& blank, QWidget& field) {
  if (!isVisible()) return; // another page was opened in the meantime
  field.setFocus();
  // What it says has its room only after the next layout.
  QTimer::singleShot(0, this, [this, &blank] { pane_->ensureWidgetVisible(&blank); });
}

void RecordPage::say(const QString& text, bool refusal) {
  said_->setText(text);
  said_->setVisible(!text.isEmpty());
  set_kind(*said_, refusal ? "refusal" : "understood");
}

QString RecordPage::said() const { return said_->isHidden() ? QString() : said_->text(); }

QString RecordPage::said_at_once() const { return no_workshop_->isHidden() ? QString() : no_workshop_->text(); }

void RecordPage::show_history() {
  PageContent content = form_.history(bench().place(), key_);
  if (content.document.sections.empty()) return history_->clear_page();
  history_->show_page(std::move(content));
}

void RecordPage::put_on_look() {
  for (FlowLayout* flow : flows_)
    flow->set_gap(bench().look().gap());
  for (BlankEdit* edit : blanks_)
    edit->put_on(bench().look());
  history_->put_on(bench().look());
}

BlankEdit* RecordPage::blank(std::string_view option) const {
  const auto found = std::ranges::find_if(blanks_, [&](const BlankEdit* edit) { return edit->option() == option; });
  return found == blanks_.end() ? nullptr : *found;
}

std::optional<Printable> RecordPage::printable() const {
  if (!history_->has_page()) return std::nullopt;
  return Printable{history_->content()};
}

void RecordPage::take_focus() {
  const auto shown = shown_blanks();
  if (!shown.empty()) shown.front()->field()->setFocus();
}

} // namespace clampwright::desk
