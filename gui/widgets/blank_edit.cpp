// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/widgets/blank_edit.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QCompleter>
#include <QCoreApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStyle>
#include <QVBoxLayout>

#include "core/quantity/read.hpp"
#include "gui/look/utf8.hpp"
#include "gui/text/wording.hpp"
#include "gui/widgets/choice_list.hpp"
#include "gui/widgets/folded_label.hpp"

namespace clampwright::desk {

namespace {

// The key with the decimal mark on the number pad writes a point, whatever the keyboard's language says. A comma from
// the letters' part stays one, and is refused with both readings: it may stand for thousands.
class NumberLine : public QLineEdit {
 protected:
  void keyPressEvent(QKeyEvent* event) override {
    if (event->key() == Qt::Key_Comma && (event->modifiers() & Qt::KeypadModifier) != 0) {
      insert(QStringLiteral("."));
      return;
    }
    QLineEdit::keyPressEvent(event);
  }
};

constexpr const char* k_number_signs = "0123456789.,/+- ";

// How much of the text is the number: all before the first sign that belongs to none.
qsizetype number_length(const QString& text) {
  qsizetype at = 0;
  while (at < text.size() && QString::fromLatin1(k_number_signs).contains(text[at]))
    ++at;
  return at;
}

} // namespace

BlankEdit::BlankEdit(const Blank& blank, const Place& place, const Look& look, QWidget* parent)
    : QWidget(parent), blank_(blank), label_(QCoreApplication::translate("Sentences", blank.label)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  make_field(place);
  below_ = new FoldedLabel(this);
  set_kind(*below_, "understood");
  below_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  below_->setFocusPolicy(Qt::NoFocus);
  column->addWidget(below_);
  connect(below_, &FoldedLabel::cut_changed, this, &BlankEdit::offer_all);
  setFocusProxy(field());
  setObjectName(from_utf8(blank_.option));
  put_on(look);
}

void BlankEdit::make_field(const Place& place) {
  auto* row = new QHBoxLayout;
  row->setContentsMargins(0, 0, 0, 0);
  static_cast<QVBoxLayout*>(layout())->addLayout(row);
  switch (blank_.kind->shape()) {
  case Shape::quantity:
    make_quantity(place);
    break;
  case Shape::words:
    make_words(place);
    break;
  case Shape::tick:
    make_tick();
    break;
  }
  for (QWidget* widget : {static_cast<QWidget*>(choice_ != nullptr ? choice_ : nullptr),
                          static_cast<QWidget*>(choice_ == nullptr ? line_ : nullptr), static_cast<QWidget*>(unit_),
                          static_cast<QWidget*>(tick_)})
    if (widget != nullptr) row->addWidget(widget);
  all_ = new QPushButton(this);
  all_->hide();
  connect(all_, &QPushButton::clicked, this, [this] { below_->unfold(!below_->is_unfolded()); });
  row->addWidget(all_);
  row->addStretch(1);
  if (line_ == nullptr) return;
  // Words that could be taken for what was filled in would be.
  line_->setPlaceholderText(tr("e.g. %1").arg(from_utf8(blank_.example)));
  field()->setAccessibleName(label_);
}

void BlankEdit::make_quantity(const Place& place) {
  line_ = new NumberLine;
  line_->setAlignment(Qt::AlignRight);
  unit_ = new ChoiceList;
  unit_->setAccessibleName(tr("unit of: %1").arg(label_));
  for (const quantity::Unit* unit : blank_.kind->units(place))
    unit_->addItem(from_utf8(unit->symbol), from_utf8(unit->name));
  connect(line_, &QLineEdit::textChanged, this, &BlankEdit::changed);
  connect(line_, &QLineEdit::editingFinished, this, &BlankEdit::part_from_unit);
  connect(unit_, &QComboBox::activated, this, [this] {
    // The number stays and is now in the chosen unit; one that was typed along goes.
    if (has_own_unit()) {
      const QSignalBlocker quiet(line_);
      line_->setText(typed().left(number_length(typed())).trimmed());
    }
    emit changed();
  });
}

void BlankEdit::make_words(const Place& place) {
  const std::vector<Offer> offers = blank_.kind->offers(place);
  if (offers.empty()) {
    line_ = new QLineEdit;
    connect(line_, &QLineEdit::textChanged, this, &BlankEdit::changed);
    return;
  }
  choice_ = new ChoiceList;
  choice_->setEditable(true);
  choice_->setInsertPolicy(QComboBox::NoInsert);
  for (const Offer& offer : offers) {
    choice_->addItem(from_utf8(offer.word));
    choice_->setItemData(choice_->count() - 1, offer.says, Qt::AccessibleDescriptionRole);
  }
  choice_->setCurrentIndex(-1);
  line_ = choice_->lineEdit();
  line_->setAccessibleName(label_);
  choice_->completer()->setCompletionMode(QCompleter::PopupCompletion);
  choice_->completer()->setFilterMode(Qt::MatchContains);
  choice_->completer()->setCaseSensitivity(Qt::CaseInsensitive);
  connect(choice_, &QComboBox::editTextChanged, this, &BlankEdit::changed);
}

void BlankEdit::make_tick() {
  tick_ = new QCheckBox(label_);
  tick_->setAccessibleName(label_);
  connect(tick_, &QCheckBox::toggled, this, &BlankEdit::changed);
}

QWidget* BlankEdit::field() const {
  if (tick_ != nullptr) return tick_;
  if (choice_ != nullptr) return choice_;
  return line_;
}

QString BlankEdit::typed() const { return line_ != nullptr ? line_->text().trimmed() : QString(); }

bool BlankEdit::has_own_unit() const {
  const QString text = typed();
  return number_length(text) < text.size();
}

std::optional<std::string> BlankEdit::words() const {
  if (tick_ != nullptr) return tick_->isChecked() ? std::optional<std::string>("yes") : std::nullopt;
  const QString text = typed();
  if (text.isEmpty()) return std::nullopt;
  if (unit_ == nullptr || has_own_unit()) return to_utf8(text);
  return to_utf8(text + QStringLiteral(" ") + unit_->currentData().toString());
}

void BlankEdit::write(const std::optional<std::string>& words) {
  if (tick_ != nullptr) {
    tick_->setChecked(words.has_value());
    return;
  }
  const QString text = words ? from_utf8(*words) : QString();
  if (choice_ != nullptr)
    choice_->setEditText(text);
  else
    line_->setText(text);
  line_->setCursorPosition(0); // the beginning of a long text is what one looks for
  part_from_unit();
}

void BlankEdit::part_from_unit() {
  if (unit_ == nullptr || !has_own_unit()) return;
  const auto reading = quantity::read_quantity(to_utf8(typed()));
  if (!reading) return;
  const int index = unit_->findData(from_utf8(reading->unit->name));
  const QString number = typed().left(number_length(typed())).trimmed();
  if (index < 0 || number.isEmpty()) return;
  const QSignalBlocker quiet(line_);
  unit_->setCurrentIndex(index);
  line_->setText(number);
}

bool BlankEdit::read(const Place& place) {
  const auto text = words();
  if (!text) {
    show_below({}, false);
    return true;
  }
  const auto understood = blank_.kind->understood(*text, place);
  if (!understood) {
    refuse(understood.error());
    return false;
  }
  // Only what says more than was typed; a tick says it already.
  show_below(tick_ != nullptr || *understood == typed() ? QString() : *understood, false);
  return true;
}

void BlankEdit::refuse(const Problem& problem) { show_below(refusal_words(problem, names_, blank_.option), true); }

QString BlankEdit::said_below() const { return below_->text(); }

void BlankEdit::show_below(const QString& text, bool refusal) {
  below_->say(text, refusal);
  below_->setVisible(!text.isEmpty());
  offer_all();
  field()->setAccessibleDescription(text);
  if (refusal == refused_) return;
  refused_ = refusal;
  set_kind(*below_, refusal ? "refusal" : "understood");
  field()->setProperty("refused", refusal);
  field()->style()->unpolish(field());
  field()->style()->polish(field());
}

void BlankEdit::offer_all() {
  const bool offered = !below_->text().isEmpty() && (below_->is_cut() || below_->is_unfolded());
  // Whoever pressed it to see less keeps the focus in the blank.
  if (!offered && all_->hasFocus()) field()->setFocus();
  all_->setText(below_->is_unfolded() ? tr("Show less") : tr("Show all of it"));
  all_->setVisible(offered);
}

void BlankEdit::put_on(const Look& look) {
  const QFontMetrics metrics(text_font(look));
  const int letter = metrics.averageCharWidth();
  if (line_ != nullptr) {
    const int width = letter * (blank_.kind->width() + 3) + look.gap() * 2;
    field()->setMinimumWidth(choice_ != nullptr ? width + look.target() : width);
    if (choice_ == nullptr) line_->setMaximumWidth(width * 2);
  }
  if (unit_ != nullptr) unit_->setMinimumWidth(letter * 6 + look.target());
  layout()->invalidate();
}

} // namespace clampwright::desk
