// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/sentences/reply_parts.hpp"

#include <algorithm>

#include <QCoreApplication>

#include "core/report/sequence_drawing.hpp"
#include "core/report/wording.hpp"
#include "gui/drawings/bolt_order.hpp"
#include "gui/text/wording.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("Sentences", english); }

} // namespace

QString shown_length(quantity::Length length, const Place& place) {
  return from_utf8(quantity::write_si_rounded(quantity::in_metres(length), *place.units.length));
}

void add_flags(PageContent& page, const finding::Findings& findings, const Place& place) {
  for (const finding::Finding& finding : findings)
    if (finding.severity == finding::Severity::stop)
      page.flags.push_back(worded(report::finding_brief(finding, place.units)));
    else if (finding.code == finding::Code::left_hand)
      page.flags.push_back(tr("Left-hand thread"));
}

QString torque_range(const std::vector<quantity::Torque>& torques, const Place& place) {
  const auto [least, most] = std::ranges::minmax(torques);
  const QString low = shown(least, place);
  const QString high = shown(most, place);
  if (low == high) return high;
  const QString unit = from_utf8(place.units.torque->symbol);
  return tr("%1 to %2").arg(low.left(low.size() - unit.size()).trimmed(), high);
}

Figure clamp_figure(const std::optional<quantity::Band<quantity::Force>>& load, const Place& place) {
  if (!load) return {tr("not known"), tr("clamp load")};
  return {shown(load->likely, place),
          tr("likely clamp load; %1 to %2").arg(shown(load->low, place), shown(load->high, place))};
}

Drawing order_picture(const tightening::Sequence& sequence, const std::string& seen_from) {
  report::SequenceDrawing drawing = report::sequence_drawing(sequence, "", seen_from);
  drawing.description = to_utf8(worded(drawing.description));
  return bolt_order(drawing);
}

Refusal beside(Problem problem, const char* option) {
  if (problem.field.empty()) problem.field = option;
  return Refusal(std::move(problem));
}

} // namespace clampwright::desk
