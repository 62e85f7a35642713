// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/pages/sentence_page.hpp"

#include <algorithm>

#include <QClipboard>
#include <QCoreApplication>
#include <QGuiApplication>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/text/plain_text.hpp"
#include "gui/look/utf8.hpp"
#include "gui/text/page_text.hpp"
#include "gui/widgets/blank_edit.hpp"
#include "gui/widgets/flow_layout.hpp"
#include "gui/widgets/page_view.hpp"
#include "gui/widgets/plot_pane.hpp"
#include "gui/widgets/scroll_pane.hpp"

namespace clampwright::desk {

SentencePage::SentencePage(Bench& bench, const Sentence& sentence, QWidget* parent)
    : Page(bench, parent), sentence_(sentence) {
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(0, 0, 0, 0);
  auto* scroll = new ScrollPane(this);
  outer->addWidget(scroll);
  auto* all = new QWidget;
  auto* column = new QVBoxLayout(all);
  column->addWidget(make_top());
  column->addWidget(make_sentence());
  column->addWidget(make_middle());
  more_ = make_more();
  column->addWidget(more_);
  instead_ = new QLabel(all);
  instead_->setWordWrap(true);
  instead_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  instead_->setFocusPolicy(Qt::NoFocus);
  column->addWidget(instead_);
  view_ = new PageView(bench.look(), all);
  column->addWidget(view_);
  plot_ = new PlotPane(bench.look(), all);
  column->addWidget(plot_);
  column->addStretch(1);
  names_ = names_for(sentence.blanks);
  for (BlankEdit* edit : blanks_)
    edit->know_names(names_);
  scroll->setWidget(all);
  show_more(false);
  put_on_look();
  connect(&bench, &Bench::look_changed, this, &SentencePage::put_on_look);
  connect(&bench, &Bench::changed, this, &SentencePage::ask);
  ask();
}

QWidget* SentencePage::make_top() {
  auto* top = new QWidget(this);
  auto* row = new FlowLayout(top, bench().look().gap());
  flows_.push_back(row);
  auto* name = new QLabel(title(), top);
  set_kind(*name, "heading");
  row->addWidget(name);
  const auto button = [&](const QString& text, auto&& does) {
    auto* made = new QPushButton(text, top);
    connect(made, &QPushButton::clicked, this, does);
    row->addWidget(made);
  };
  button(tr("Fill in an e&xample"), [this] { fill_in_example(); });
  button(tr("&Empty all"), [this] { fill_in({}); });
  return top;
}

// Between question and answer: what else may be asked, and the answer to take along.
QWidget* SentencePage::make_middle() {
  auto* middle = new QWidget(this);
  auto* row = new FlowLayout(middle, bench().look().gap());
  flows_.push_back(row);
  more_button_ = new QPushButton(middle);
  connect(more_button_, &QPushButton::clicked, this, [this] { show_more(more_->isHidden()); });
  row->addWidget(more_button_);
  more_button_->setVisible(
      !std::ranges::all_of(sentence_.blanks, [&](const Blank& one) { return sentence_.stands_in_text(one); }));
  const auto to_copy = [&](const QString& text, auto&& what) {
    auto* made = new QPushButton(text, middle);
    connect(made, &QPushButton::clicked, this, [what] { QGuiApplication::clipboard()->setText(what()); });
    row->addWidget(made);
    need_answer_.push_back(made);
  };
  to_copy(tr("&Copy the answer"), [this] { return plain_text(view_->content()); });
  to_copy(tr("Copy as co&mmand line"), [this] { return from_utf8(as_command_line()); });
  return middle;
}

BlankEdit* SentencePage::make_blank(const Blank& blank, QWidget* parent) {
  auto* edit = new BlankEdit(blank, bench().place(), bench().look(), parent);
  connect(edit, &BlankEdit::changed, this, &SentencePage::ask);
  blanks_.push_back(edit);
  return edit;
}

// Words and blanks in the order of the translated sentence.
QWidget* SentencePage::make_sentence() {
  auto* box = new QWidget(this);
  auto* flow = new FlowLayout(box, bench().look().gap());
  flows_.push_back(flow);
  QString text = QCoreApplication::translate("Sentences", sentence_.text);
  QLabel* before = nullptr;
  const auto put_words = [&](QString words) {
    // A blank parts as well as a comma or a stop does.
    while (!words.isEmpty() && QStringLiteral(" ,.:;").contains(words.front()))
      words.remove(0, 1);
    for (const QString& word : words.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
      before = new QLabel(word, box);
      set_kind(*before, "sentence");
      flow->addWidget(before);
    }
  };
  while (!text.isEmpty()) {
    const qsizetype open = text.indexOf(QLatin1Char('{'));
    const qsizetype close = text.indexOf(QLatin1Char('}'), open);
    if (open < 0 || close < 0) break;
    put_words(text.left(open));
    if (const Blank* blank = sentence_.blank(to_utf8(text.mid(open + 1, close - open - 1)))) {
      BlankEdit* edit = make_blank(*blank, box);
      if (before != nullptr) before->setBuddy(edit->field());
      flow->addWidget(edit);
    }
    text = text.mid(close + 1);
  }
  put_words(text);
  return box;
}

QWidget* SentencePage::make_more() {
  auto* box = new QWidget(this);
  auto* flow = new FlowLayout(box, bench().look().gap());
  flows_.push_back(flow);
  for (const Blank& blank : sentence_.blanks) {
    if (sentence_.stands_in_text(blank)) continue;
    auto* pair = new QWidget(box);
    auto* column = new QVBoxLayout(pair);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    BlankEdit* edit = make_blank(blank, pair);
    if (blank.kind->shape() != Shape::tick) {
      auto* label = new QLabel(edit->label(), pair);
      label->setBuddy(edit->field());
      column->addWidget(label);
    }
    column->addWidget(edit);
    flow->addWidget(pair);
  }
  return box;
}

QString SentencePage::title() const { return QCoreApplication::translate("Sentences", sentence_.name); }

void SentencePage::show_more(bool more) {
  more_->setVisible(more);
  more_button_->setText(more ? tr("Hide what else may be &known") : tr("What else is &known?"));
}

void SentencePage::put_on_look() {
  const Look& look = bench().look();
  for (FlowLayout* flow : flows_)
    flow->set_gap(look.gap());
  for (BlankEdit* edit : blanks_)
    edit->put_on(look);
  for (QLabel* word : findChildren<QLabel*>())
    if (word->property("kind") == QStringLiteral("sentence")) word->setMinimumHeight(look.target());
  view_->put_on(look);
  plot_->put_on(look);
}

Words SentencePage::words() const {
  Words words;
  for (const BlankEdit* edit : blanks_)
    if (auto text = edit->words()) words[edit->option()] = std::move(*text);
  return words;
}

void SentencePage::fill_in(const Words& words) {
  filling_ = true;
  bool more = false;
  for (BlankEdit* edit : blanks_) {
    const auto text = said(words, edit->option());
    edit->write(text);
    more = more || (text && !sentence_.stands_in_text(*sentence_.blank(edit->option())));
  }
  filling_ = false;
  if (more) show_more(true);
  ask();
}

void SentencePage::fill_in_example() {
  Words words;
  for (const Blank& blank : sentence_.blanks)
    if (blank.needed || (sentence_.stands_in_text(blank) && !blank.alternative)) words[blank.option] = blank.example;
  fill_in(words);
}

std::string SentencePage::as_command_line() const {
  const Words said = words();
  return command_line(sentence_, said,
                      same_circumstances(sentence_, said, bench().place().units, bench().workshop_path()));
}

BlankEdit* SentencePage::blank(std::string_view option) const {
  const auto found = std::ranges::find_if(blanks_, [&](const BlankEdit* edit) { return edit->option() == option; });
  return found == blanks_.end() ? nullptr : *found;
}

QString SentencePage::said_instead() const { return instead_->isHidden() ? QString() : instead_->text(); }

void SentencePage::show_instead(const QString& text, bool refusal) {
  view_->clear_page();
  plot_->hide();
  curve_.reset();
  instead_->setText(text);
  instead_->setVisible(!text.isEmpty());
  set_kind(*instead_, refusal ? "refusal" : "");
  for (QPushButton* button : need_answer_)
    button->setEnabled(false);
}

// The filled blank that a refusal is about: the one that it names, or the only one with that text.
BlankEdit* SentencePage::blank_of(const Problem& problem) const {
  if (BlankEdit* edit = blank(problem.field); edit != nullptr && edit->words()) return edit;
  if (!problem.field.empty() || problem.input.empty()) return nullptr;
  BlankEdit* found = nullptr;
  for (BlankEdit* edit : blanks_)
    if (const auto text = edit->words(); text && text::quotable(*text) == problem.input) {
      if (found != nullptr) return nullptr;
      found = edit;
    }
  return found;
}

// The empty blanks that a refusal names, by their labels.
QString SentencePage::still_missing(const Problem& problem) const {
  QStringList labels;
  for (const BlankEdit* edit : blanks_) {
    const std::size_t at = problem.message.find(edit->option());
    if (edit->words() || at == std::string::npos) continue;
    // "--stop" is not meant by "--stop-length".
    const std::size_t end = at + edit->option().size();
    if (end < problem.message.size() && problem.message[end] == '-') continue;
    labels << edit->label();
  }
  if (labels.isEmpty())
    if (const BlankEdit* edit = blank(problem.field)) labels << edit->label();
  if (labels.isEmpty()) return {};
  return tr("Still to be filled in: %1").arg(labels.join(QStringLiteral(", ")));
}

void SentencePage::ask() {
  if (filling_) return;
  const Place place = bench().place();
  bool all_read = true;
  for (BlankEdit* edit : blanks_)
    all_read = edit->read(place) && all_read;
  if (!all_read) return show_instead({}, false);
  const Words asked = words();
  if (const auto missing = still_to_fill_in(sentence_, asked); !missing.empty()) {
    QStringList labels;
    for (const char* label : missing)
      labels << QCoreApplication::translate("Sentences", label);
    return show_instead(tr("Still to be filled in: %1").arg(labels.join(QStringLiteral(", "))), false);
  }
  auto reply = sentence_.answer(asked, place);
  if (!reply) {
    const Problem& problem = reply.error();
    if (BlankEdit* edit = blank_of(problem)) {
      edit->refuse(problem);
      return show_instead({}, false);
    }
    if (problem.code == "missing")
      if (const QString text = still_missing(problem); !text.isEmpty()) return show_instead(text, false);
    return show_instead(refusal_words(problem, names_), true);
  }
  instead_->hide();
  reply->page.blank_names = names_;
  view_->show_page(std::move(reply->page));
  curve_ = std::move(reply->curve);
  if (curve_) plot_->show_curve(*curve_);
  plot_->setVisible(curve_.has_value());
  for (QPushButton* button : need_answer_)
    button->setEnabled(true);
}

std::optional<Printable> SentencePage::printable() const {
  if (!view_->has_page()) return std::nullopt;
  return Printable{view_->content(), curve_, view_->state().working};
}

QString SentencePage::to_copy() const {
  if (!view_->has_page()) return {};
  QStringList lines;
  for (const Figure& figure : view_->content().figures)
    lines << QStringLiteral("%1 (%2)").arg(figure.value, figure.says);
  return lines.join(QLatin1Char('\n'));
}

void SentencePage::take_focus() {
  if (!blanks_.empty()) blanks_.front()->field()->setFocus();
}

} // namespace clampwright::desk
