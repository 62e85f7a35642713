// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/models/record_table.hpp"

#include <QCoreApplication>

#include "gui/look/utf8.hpp"
#include "gui/text/wording.hpp"
#include "specdb/question/wrench_list_report.hpp"
#include "specdb/question/wrench_words.hpp"
#include "specdb/workshop/browse.hpp"
#include "specdb/workshop/sources.hpp"
#include "specdb/workshop/wrenches.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("Records", english); }

// "no: overdue", as the command line lists it.
QString use_of(const specdb::WrenchRecord& record, const Place& place) {
  const tightening::Wrench wrench = specdb::registered_wrench(record);
  return wrench.upkeep ? worded(specdb::use_words(*wrench.upkeep, place.today)) : tr("not known");
}

} // namespace

RecordRows machine_rows(const Place& place) {
  RecordRows out{tr("Machines"), {tr("name"), tr("what it is"), tr("joints")}, {}};
  if (place.workshop == nullptr) return out;
  for (const specdb::MachineLine& machine : specdb::machines_with_counts(*place.workshop))
    out.rows.push_back(
        {{from_utf8(machine.name), from_utf8(machine.kind), QString::number(machine.joints)}, {{}, machine.slug}});
  return out;
}

RecordRows joint_rows(const Place& place, const std::string& machine) {
  RecordRows out{
      tr("Joints of %1").arg(from_utf8(machine)), {tr("assembly"), tr("name"), tr("thread"), tr("figure")}, {}};
  if (place.workshop == nullptr) return out;
  for (const specdb::Hit& hit : specdb::joints_of_machine(*place.workshop, machine))
    out.rows.push_back({{from_utf8(hit.assembly), from_utf8(hit.name), from_utf8(hit.thread),
                         hit.torque_printed ? from_utf8(*hit.torque_printed) : tr("none")},
                        {machine, hit.joint}});
  return out;
}

// As the register has it: what its report says line by line.
RecordRows wrench_rows(const Place& place) {
  RecordRows out{
      tr("Torque wrenches"), {tr("name"), tr("scale"), tr("turns"), tr("to be used"), tr("last calibrated")}, {}};
  if (place.workshop == nullptr) return out;
  for (const specdb::WrenchRecord& wrench : specdb::all_wrenches(*place.workshop))
    out.rows.push_back(
        {{from_utf8(wrench.name),
          tr("%1 to %2 %3")
              .arg(from_utf8(quantity::write_number(wrench.low, 6)), from_utf8(quantity::write_number(wrench.high, 6)),
                   from_utf8(quantity::unit_named(wrench.unit).symbol)),
          worded(wrench.turns), use_of(wrench, place), from_utf8(wrench.calibrated_on.value_or(""))},
         {{}, wrench.slug}});
  return out;
}

RecordRows document_rows(const Place& place) {
  RecordRows out{tr("Documents"), {tr("short name"), tr("title"), tr("edition"), tr("how it is known")}, {}};
  if (place.workshop == nullptr) return out;
  for (const specdb::SourceRecord& source : specdb::all_sources(*place.workshop))
    out.rows.push_back(
        {{from_utf8(source.slug), from_utf8(source.title), from_utf8(source.edition), worded(known_name(source.known))},
         {{}, source.slug}});
  return out;
}

void RecordTable::show(RecordRows rows) {
  beginResetModel();
  rows_ = std::move(rows);
  endResetModel();
}

RecordKey RecordTable::key(const QModelIndex& index) const {
  return index.isValid() && index.row() < rowCount() ? rows_.rows[static_cast<std::size_t>(index.row())].key
                                                     : RecordKey();
}

int RecordTable::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.rows.size());
}

int RecordTable::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.headings.size());
}

QVariant RecordTable::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || role != Qt::DisplayRole) return {};
  return rows_.rows[static_cast<std::size_t>(index.row())].cells.value(index.column());
}

QVariant RecordTable::headerData(int section, Qt::Orientation orientation, int role) const {
  if (role != Qt::DisplayRole || orientation == Qt::Vertical) return {};
  return rows_.headings.value(section);
}

} // namespace clampwright::desk
