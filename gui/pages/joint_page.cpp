// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/pages/joint_page.hpp"

#include <array>

#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "gui/look/utf8.hpp"
#include "gui/pages/joint_content.hpp"
#include "gui/text/page_text.hpp"
#include "gui/text/wording.hpp"
#include "gui/widgets/blank_edit.hpp"
#include "gui/widgets/choice_list.hpp"
#include "gui/widgets/flow_layout.hpp"
#include "gui/widgets/page_view.hpp"
#include "gui/widgets/scroll_pane.hpp"
#include "specdb/workshop/joints.hpp"
#include "specdb/workshop/wrenches.hpp"

namespace clampwright::desk {

namespace {

const Blank& fitted_blank() {
  static const Blank blank{"--as-fitted", &surfaces_blank(),
                           QT_TRANSLATE_NOOP("Sentences", "surfaces as fitted, where they differ"), "oiled"};
  return blank;
}

// Offered on a joint's page where the sentence takes what the record has.
constexpr std::array k_goes_on{"clamp", "substitute", "hold", "wrench", "sequence", "hand", "strip", "slot", "workup"};

} // namespace

JointPage::JointPage(Bench& bench, QWidget* parent) : Page(bench, parent) {
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(0, 0, 0, 0);
  auto* scroll = new ScrollPane(this);
  outer->addWidget(scroll);
  auto* all = new QWidget;
  auto* column = new QVBoxLayout(all);
  auto* choices = new QWidget(all);
  flow_ = new FlowLayout(choices, bench.look().gap());
  make_choices(*flow_);
  column->addWidget(choices);
  refusal_ = new QLabel(all);
  set_kind(*refusal_, "refusal");
  refusal_->setWordWrap(true);
  column->addWidget(refusal_);
  view_ = new PageView(bench.look(), all);
  column->addWidget(view_);
  auto* on = new QWidget(all);
  buttons_ = new FlowLayout(on, bench.look().gap());
  make_buttons(*buttons_);
  column->addWidget(on);
  column->addStretch(1);
  scroll->setWidget(all);
  connect(&bench, &Bench::look_changed, this, &JointPage::put_on_look);
  connect(&bench, &Bench::workshop_changed, this, &JointPage::fill_choices);
  connect(&bench, &Bench::changed, this, &JointPage::ask);
  fill_choices();
}

void JointPage::make_choices(FlowLayout& row) {
  QWidget* box = row.parentWidget();
  const auto labelled = [&](const QString& text, QWidget* field, QWidget* buddy) {
    auto* pair = new QWidget(box);
    auto* column = new QVBoxLayout(pair);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    auto* label = new QLabel(text, pair);
    label->setBuddy(buddy);
    column->addWidget(label);
    column->addWidget(field);
    row.addWidget(pair);
  };
  wrench_ = new ChoiceList;
  wrench_->setAccessibleName(tr("wrench in hand"));
  connect(wrench_, &QComboBox::activated, this,
          [this] { bench().take_wrench(to_utf8(wrench_->currentData().toString())); });
  labelled(tr("W&rench"), wrench_, wrench_);
  unit_ = new ChoiceList;
  unit_->setAccessibleName(tr("unit of torque"));
  for (const quantity::Unit& unit : quantity::all_units())
    if (unit.kind == quantity::Kind::torque) unit_->addItem(from_utf8(unit.symbol), from_utf8(unit.name));
  connect(unit_, &QComboBox::activated, this,
          [this] { bench().use_torque_unit(&quantity::unit_named(to_utf8(unit_->currentData().toString()))); });
  labelled(tr("&Unit"), unit_, unit_);
  fitted_ = new BlankEdit(fitted_blank(), bench().place(), bench().look(), box);
  connect(fitted_, &BlankEdit::changed, this, &JointPage::ask);
  labelled(tr("&As fitted"), fitted_, fitted_->field());
}

void JointPage::make_buttons(FlowLayout& row) {
  QWidget* box = row.parentWidget();
  auto* copy = new QPushButton(tr("&Copy this page"), box);
  connect(copy, &QPushButton::clicked, this,
          [this] { QGuiApplication::clipboard()->setText(plain_text(view_->content())); });
  row.addWidget(copy);
  const auto record = [&](const QString& text, auto&& what) {
    auto* button = new QPushButton(text, box);
    connect(button, &QPushButton::clicked, this, what);
    row.addWidget(button);
  };
  record(tr("Revise the &joint"), [this] { emit record_wanted("joint", {{}, slug_}); });
  record(tr("Revise the &figure"), [this] {
    if (answer_) emit record_wanted("figure", {slug_, to_utf8(QString::number(answer_->figure.figure.id))});
  });
  record(tr("Enter a&nother figure"), [this] { emit record_wanted("figure", {slug_, {}}); });
  for (const char* id : k_goes_on) {
    const Sentence* sentence = sentence_named(id);
    if (sentence == nullptr) continue;
    auto* button = new QPushButton(QCoreApplication::translate("Sentences", sentence->name), box);
    button->setObjectName(QLatin1String(id));
    connect(button, &QPushButton::clicked, this, [this, sentence] {
      if (answer_) emit sentence_wanted(from_utf8(sentence->id), words_for(*sentence, *answer_));
    });
    row.addWidget(button);
  }
}

void JointPage::fill_choices() {
  wrench_->clear();
  wrench_->addItem(tr("none chosen"), QString());
  if (bench().workshop() != nullptr)
    for (const specdb::WrenchRecord& wrench : specdb::all_wrenches(*bench().workshop()))
      wrench_->addItem(from_utf8(wrench.name), from_utf8(wrench.slug));
}

void JointPage::show_joint(const std::string& slug) {
  if (slug != slug_) {
    const QSignalBlocker quiet(fitted_);
    fitted_->write(std::nullopt);
  }
  slug_ = slug;
  ask();
}

QString JointPage::title() const { return answer_ ? from_utf8(answer_->joint.name) : tr("Joint"); }

void JointPage::ask() {
  answer_.reset();
  const Place place = bench().place();
  wrench_->setCurrentIndex(std::max(0, wrench_->findData(from_utf8(bench().wrench()))));
  unit_->setCurrentIndex(unit_->findData(from_utf8(place.units.torque->name)));
  const auto refuse = [this](const QString& text) {
    view_->clear_page();
    refusal_->setText(text);
    refusal_->setVisible(!text.isEmpty());
  };
  if (slug_.empty()) return refuse({});
  if (place.workshop == nullptr) return refuse(tr("No workshop is open."));
  const auto joint = specdb::joint_of_slug(*place.workshop, slug_);
  if (!joint) return refuse(tr("The joint %1 is no longer in this workshop.").arg(from_utf8(slug_)));
  if (!fitted_->read(place)) return refuse({});
  specdb::JointRequest request;
  request.as_fitted = fitted_->words();
  request.today = place.today;
  if (!bench().wrench().empty())
    if (auto wrench = specdb::find_wrench(*place.workshop, bench().wrench())) request.wrench = std::move(*wrench);
  auto answer = specdb::answer_for(*place.catalogue, *joint, request);
  if (!answer) return refuse(worded(answer.error().message) + QStringLiteral("; ") + worded(answer.error().hint));
  answer_ = std::move(*answer);
  refusal_->hide();
  view_->show_page(joint_content(*answer_, place, bench().is_invented()));
  for (QPushButton* button : findChildren<QPushButton*>())
    if (const Sentence* sentence = sentence_named(to_utf8(button->objectName())))
      button->setVisible(!words_for(*sentence, *answer_).empty());
}

void JointPage::put_on_look() {
  for (FlowLayout* flow : {flow_, buttons_})
    flow->set_gap(bench().look().gap());
  fitted_->put_on(bench().look());
  view_->put_on(bench().look());
}

std::optional<Printable> JointPage::printable() const {
  if (!answer_) return std::nullopt;
  return Printable{.content = view_->content(), .working = view_->state().working, .write_in = true};
}

QString JointPage::to_copy() const {
  if (!answer_) return {};
  const PageContent& content = view_->content();
  QStringList parts{title()};
  for (const Figure& figure : content.figures) {
    QStringList says{figure.says};
    for (const QString& more : figure.more)
      says << more;
    parts << QStringLiteral("%1 (%2)").arg(figure.value, says.join(QStringLiteral(", ")));
  }
  // What the figure must not be without: what forbids it, which way, what it is for, and whose it is.
  for (const auto* lines : {&content.flags, &content.essentials})
    for (const QString& line : *lines)
      parts << line;
  return parts.join(QStringLiteral("; "));
}

void JointPage::take_focus() { view_->setFocus(); }

} // namespace clampwright::desk
