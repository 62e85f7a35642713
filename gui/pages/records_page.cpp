// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/pages/records_page.hpp"

#include <algorithm>

#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "gui/models/record_table.hpp"
#include "gui/widgets/flow_layout.hpp"

namespace clampwright::desk {

namespace {

std::string form_of(const std::string& what) {
  return what == "joints" ? "joint" : what == "machines" ? "machine" : what == "wrenches" ? "wrench" : "document";
}

} // namespace

RecordsPage::RecordsPage(Bench& bench, QWidget* parent)
    : Page(bench, parent),
      name_(new QLabel(this)),
      open_(new QPushButton(this)),
      revise_(new QPushButton(tr("&Revise"), this)),
      add_(new QPushButton(this)),
      view_(new QTableView(this)),
      table_(new RecordTable(this)) {
  auto* column = new QVBoxLayout(this);
  set_kind(*name_, "heading");
  name_->setWordWrap(true);
  column->addWidget(name_);
  auto* buttons = new QWidget(this);
  auto* row = new FlowLayout(buttons, bench.look().gap());
  for (QPushButton* button : {open_, revise_, add_})
    row->addWidget(button);
  column->addWidget(buttons);
  view_->setModel(table_);
  view_->setSelectionBehavior(QAbstractItemView::SelectRows);
  view_->setSelectionMode(QAbstractItemView::SingleSelection);
  view_->setTabKeyNavigation(false);
  view_->setWordWrap(false);
  view_->setShowGrid(false);
  view_->setAccessibleName(tr("list of records"));
  view_->verticalHeader()->hide();
  view_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  view_->horizontalHeader()->setStretchLastSection(true);
  view_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  view_->horizontalHeader()->setHighlightSections(false);
  column->addWidget(view_, 1);
  connect(open_, &QPushButton::clicked, this, &RecordsPage::open_chosen);
  connect(view_, &QTableView::activated, this, &RecordsPage::open_chosen);
  connect(revise_, &QPushButton::clicked, this, [this] {
    const RecordKey key = table_->key(view_->currentIndex());
    if (!key.key.empty()) emit record_wanted(form_of(what_), key);
  });
  connect(add_, &QPushButton::clicked, this, [this] { emit record_wanted(form_of(what_), {of_, {}}); });
  connect(&bench, &Bench::changed, this, &RecordsPage::fill);
  connect(&bench, &Bench::look_changed, this, &RecordsPage::fill);
}

void RecordsPage::show_records(const std::string& what, const std::string& of) {
  what_ = what;
  of_ = of;
  fill();
}

void RecordsPage::fill() {
  const Place place = bench().place();
  const int chosen = view_->currentIndex().row();
  table_->show(what_ == "joints"     ? joint_rows(place, of_)
               : what_ == "machines" ? machine_rows(place)
               : what_ == "wrenches" ? wrench_rows(place)
                                     : document_rows(place));
  name_->setText(table_->rows().name);
  open_->setText(what_ == "machines" ? tr("&Its joints") : tr("&Open"));
  open_->setVisible(what_ == "machines" || what_ == "joints");
  revise_->setVisible(what_ != "documents");
  add_->setText(what_ == "joints"     ? tr("&New joint")
                : what_ == "machines" ? tr("&New machine")
                : what_ == "wrenches" ? tr("&New torque wrench")
                                      : tr("&New document"));
  view_->verticalHeader()->setDefaultSectionSize(bench().look().target());
  view_->setCurrentIndex(table_->index(std::clamp(chosen, 0, std::max(0, table_->rowCount() - 1)), 0));
}

void RecordsPage::open_chosen() {
  const RecordKey key = table_->key(view_->currentIndex());
  if (key.key.empty()) return;
  if (what_ == "joints")
    emit joint_wanted(key.key);
  else if (what_ == "machines")
    emit joints_wanted(key.key);
  else if (what_ == "wrenches")
    emit record_wanted(form_of(what_), key);
}

QString RecordsPage::title() const { return name_->text(); }

void RecordsPage::take_focus() { view_->setFocus(); }

} // namespace clampwright::desk
