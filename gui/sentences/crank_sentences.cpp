// SPDX-License-Identifier: GPL-3.0-or-later
//
// How a crank is held against a wrench, and which hand of thread a drive calls for.
#include <QCoreApplication>

#include "core/report/hand_report.hpp"
#include "gui/drawings/crank_picture.hpp"
#include "gui/drawings/hand_picture.hpp"
#include "gui/drawings/hold_curve.hpp"
#include "gui/look/utf8.hpp"
#include "gui/sentences/all_sentences.hpp"
#include "gui/sentences/reply_parts.hpp"
#include "gui/text/wording.hpp"
#include "specdb/question/hold_reading.hpp"
#include "specdb/question/of_joint.hpp"

namespace clampwright::desk {

namespace {

using quantity::Kind;

QString tr(const char* english) { return QCoreApplication::translate("Sentences", english); }

const BlankKind& way_blank() {
  static const auto kind =
      choice_blank({{"same-end", QT_TRANSLATE_NOOP("Offers", "the part itself, or the same end of the shaft")},
                    {"strap", QT_TRANSLATE_NOOP("Offers", "a strap or pin holder round the part")},
                    {"gear", QT_TRANSLATE_NOOP("Offers", "a gear of the crank, locked")},
                    {"stop", QT_TRANSLATE_NOOP("Offers", "a stop under the piston, in the plug hole")},
                    {"far-end", QT_TRANSLATE_NOOP("Offers", "the other end of a pressed-up crank")}},
                   &checked<&specdb::read_way>);
  return *kind;
}

const BlankKind& tool_blank() {
  static const auto kind =
      choice_blank({{"hand", QT_TRANSLATE_NOOP("Offers", "a wrench that is pulled by hand")}}, &specdb::check_tool);
  return *kind;
}

const BlankKind& side_blank() {
  static const auto kind =
      choice_blank({{"free-end", QT_TRANSLATE_NOOP("Offers", "the end of the shaft where the spanner goes")},
                    {"engine-side", QT_TRANSLATE_NOOP("Offers", "from the engine, looking outwards")}},
                   &checked<&specdb::read_engine_side>);
  return *kind;
}

const BlankKind& driver_blank() {
  static const auto kind = choice_blank({{"shaft", QT_TRANSLATE_NOOP("Offers", "the shaft turns the part in service")},
                                         {"part", QT_TRANSLATE_NOOP("Offers", "the part turns the shaft in service")}},
                                        &checked<&specdb::read_driver>);
  return *kind;
}

void add_stop_figures(PageContent& page, const crank::StopAnswer& stop, const Place& place) {
  const bool undoing = stop.undoing && stop.undoing->torque > stop.fitting.torque;
  const crank::StopLoads& loads = undoing ? *stop.undoing : stop.fitting;
  page.figures.push_back({shown(loads.forces.piston, place), tr("presses on the crown, through the stop")});
  if (stop.governs)
    page.figures.push_back(
        {shown(stop.governs->torque, place),
         tr("at the most on this stop, by its limit: %1").arg(worded(crank::limit_words(stop.governs->limit)))});
  else
    page.figures.push_back({tr("not known"), tr("the most that may be pulled: no limit was stated")});
}

void add_hold_figures(PageContent& page, const crank::HoldAnswer& answer, const Place& place) {
  const crank::HoldCase& asked = answer.asked;
  const quantity::Torque torque = crank::greater_torque(asked);
  switch (asked.by) {
  case crank::Way::stop:
    return add_stop_figures(page, *answer.stop, place);
  case crank::Way::strap:
    page.figures.push_back(
        {shown(crank::strap_force(torque, *asked.others.strap_radius), place), tr("pulls on the strap")});
    break;
  case crank::Way::gear:
    page.figures.push_back(
        {shown(crank::tooth_force(torque, *asked.others.gear_diameter), place), tr("presses on one pair of teeth")});
    break;
  case crank::Way::same_end:
    page.figures.push_back({tr("nothing"), tr("of %1 passes the crank").arg(shown(torque, place))});
    break;
  case crank::Way::far_end: {
    const auto slips = crank::slip_torque(*asked.others.far_end);
    page.figures.push_back(
        {shown(slips.likely, place),
         tr("likely turns the pin in its web; %1 to %2").arg(shown(slips.low, place), shown(slips.high, place))});
    break;
  }
  }
}

Result<Reply> answer_hold_sentence(const Words& words, const Place& place) {
  specdb::HoldQuestion question;
  put_words(question, words, specdb::k_hold_fields);
  const auto told = specdb::tell_hold(*place.catalogue, place.workshop, said(words, "--joint"), std::move(question));
  if (!told) return Refusal(told.error());
  const crank::HoldAnswer& answer = told->reply.answer;
  Reply reply;
  add_hold_figures(reply.page, answer, place);
  add_flags(reply.page, answer.findings, place);
  reply.page.document = specdb::hold_document(*told, place.units);
  if (auto drawing = crank_picture(answer, place.units)) reply.page.drawings.push_back({std::move(*drawing)});
  reply.curve = hold_curve(answer, place.units);
  return reply;
}

Result<Reply> answer_hand_sentence(const Words& words, const Place& place) {
  specdb::HandQuestion question;
  put_words(question, words, specdb::k_hand_fields);
  const auto told = specdb::tell_hand(*place.catalogue, place.workshop, said(words, "--joint"), std::move(question));
  if (!told) return Refusal(told.error());
  const crank::HandAnswer& answer = told->reply.answer;
  Reply reply;
  reply.page.figures.push_back({answer.hand == thread::Hand::left ? tr("left-hand") : tr("right-hand"),
                                tr("is what the steady load tightens: %1, looking at the free end")
                                    .arg(worded(thread::turn_name(thread::turn_to_tighten(answer.hand))))});
  if (answer.asked.fitted)
    reply.page.figures.push_back(
        {*answer.asked.fitted == thread::Hand::left ? tr("left-hand") : tr("right-hand"), tr("is on record")});
  add_flags(reply.page, answer.findings, place);
  reply.page.flags.push_back(tr("Look at the thread itself"));
  reply.page.document = specdb::hand_document(*told);
  reply.page.drawings.push_back({hand_picture(answer)});
  return reply;
}

std::vector<Blank> hold_blanks() {
  const BlankKind& length = quantity_blank(Kind::length);
  const BlankKind& torque = quantity_blank(Kind::torque);
  const BlankKind& force = quantity_blank(Kind::force);
  return {
      {"--torque", &torque, QT_TRANSLATE_NOOP("Sentences", "torque on the crank"), "30 N.m", true, false, "--joint"},
      {"--joint", &joint_blank(), QT_TRANSLATE_NOOP("Sentences", "joint on the crank"), "pump/clutch-hub", false, true},
      {"--by", &way_blank(), QT_TRANSLATE_NOOP("Sentences", "held by"), "stop"},
      {"--stroke", &length, QT_TRANSLATE_NOOP("Sentences", "stroke of the piston"), "50 mm"},
      {"--rod", &length, QT_TRANSLATE_NOOP("Sentences", "connecting rod, centre to centre"), "100 mm"},
      {"--angle", &quantity_blank(Kind::angle), QT_TRANSLATE_NOOP("Sentences", "crank angle before top dead centre"),
       "15 deg"},
      {"--below-tdc", &length, QT_TRANSLATE_NOOP("Sentences", "how far the crown stands below its top"), "9 mm", false,
       true},
      {"--stop-length", &length, QT_TRANSLATE_NOOP("Sentences", "stop, from the plug's seat to its tip"), "23 mm",
       false, true},
      {"--crown-depth", &length, QT_TRANSLATE_NOOP("Sentences", "from the plug's seat to the crown at the top"),
       "14 mm", false, true},
      {"--undo-torque", &torque, QT_TRANSLATE_NOOP("Sentences", "torque that undoing may need"), "60 N.m"},
      {"--tool", &tool_blank(), QT_TRANSLATE_NOOP("Sentences", "tool"), "hand"},
      {"--port-depth", &length, QT_TRANSLATE_NOOP("Sentences", "way down until the highest port opens"), "35 mm"},
      {"--tip-diameter", &length, QT_TRANSLATE_NOOP("Sentences", "flat tip of the stop"), "8 mm"},
      {"--stop-incline", &quantity_blank(Kind::angle), QT_TRANSLATE_NOOP("Sentences", "angle of the stop to the bore"),
       "20 deg"},
      {"--plug-thread", &thread_blank(), QT_TRANSLATE_NOOP("Sentences", "thread that the stop is screwed into"),
       "M14x1.25"},
      {"--plug-engaged", &length, QT_TRANSLATE_NOOP("Sentences", "length of that thread that bears"), "10 mm"},
      {"--plug-material", &material_blank(), QT_TRANSLATE_NOOP("Sentences", "metal of the head"), "cast-aluminium"},
      {"--tip-limit", &quantity_blank(Kind::stress), QT_TRANSLATE_NOOP("Sentences", "most pressure under the tip"),
       "60 MPa"},
      {"--plug-margin", &number_blank(),
       QT_TRANSLATE_NOOP("Sentences", "how many times its load the plug thread bears"), "3"},
      {"--rod-limit", &force, QT_TRANSLATE_NOOP("Sentences", "most force along the rod"), "6 kN"},
      {"--stop-limit", &force, QT_TRANSLATE_NOOP("Sentences", "most force along the stop"), "6 kN"},
      {"--crown-thickness", &length, QT_TRANSLATE_NOOP("Sentences", "thickness of the crown"), "5 mm"},
      {"--crown-radius", &length, QT_TRANSLATE_NOOP("Sentences", "radius of the crown"), "22 mm"},
      {"--strap-radius", &length, QT_TRANSLATE_NOOP("Sentences", "radius at which a strap pulls"), "60 mm"},
      {"--gear-diameter", &length, QT_TRANSLATE_NOOP("Sentences", "pitch diameter of a locked gear"), "54 mm"},
      {"--pin-diameter", &length, QT_TRANSLATE_NOOP("Sentences", "crank pin pressed into its webs"), "20 mm"},
      {"--pin-length", &length, QT_TRANSLATE_NOOP("Sentences", "length pressed into one web"), "15 mm"},
      {"--pin-pressure", &stress_band_blank(), QT_TRANSLATE_NOOP("Sentences", "pressure of that fit"), "80..120MPa"},
      {"--pin-friction", &friction_blank(), QT_TRANSLATE_NOOP("Sentences", "friction of that fit"), "0.10..0.20"},
  };
}

} // namespace

std::vector<Sentence> crank_sentences() {
  const BlankKind& length = quantity_blank(Kind::length);
  return {
      {.id = "hold",
       .command = "hold",
       .name = QT_TRANSLATE_NOOP("Sentences", "Holding the crank"),
       .also = QT_TRANSLATE_NOOP("Sentences", "piston stop crank strap gear undo crown rod plug"),
       .text = QT_TRANSLATE_NOOP(
           "Sentences",
           "A pull of {--torque} on the crank, or for the joint {--joint}, is held by {--by}. With a stroke of "
           "{--stroke} and a connecting rod of {--rod} the piston is met {--angle} before top dead centre, or "
           "{--below-tdc} below it, or by a stop of {--stop-length} with the crown {--crown-depth} deep. Then"),
       .blanks = hold_blanks(),
       .answer = &answer_hold_sentence},
      {.id = "hand",
       .command = "hand",
       .name = QT_TRANSLATE_NOOP("Sentences", "Which hand of thread"),
       .also = QT_TRANSLATE_NOOP("Sentences", "left-hand right-hand thread rotation drive precession creep"),
       .text = QT_TRANSLATE_NOOP(
           "Sentences", "A shaft that turns {--rotation}, seen from {--seen-from}, where the {--driver} drives the "
                        "other, or as on record for {--joint}, calls for a thread that is"),
       .blanks = {{"--rotation", &turn_blank(), QT_TRANSLATE_NOOP("Sentences", "turn of the shaft in service"),
                   "clockwise", true, false, "--joint"},
                  {"--seen-from", &side_blank(), QT_TRANSLATE_NOOP("Sentences", "side from which that is seen"),
                   "free-end", true, false, "--joint"},
                  {"--driver", &driver_blank(), QT_TRANSLATE_NOOP("Sentences", "which turns the other"), "shaft", true,
                   false, "--joint"},
                  {"--joint", &joint_blank(), QT_TRANSLATE_NOOP("Sentences", "joint"), "pump/clutch-hub", false, true},
                  {"--bore", &length, QT_TRANSLATE_NOOP("Sentences", "bore of the outer part"), "20.02 mm"},
                  {"--shaft", &length, QT_TRANSLATE_NOOP("Sentences", "shaft or pin that runs in it"), "20 mm"}},
       .answer = &answer_hand_sentence},
  };
}

} // namespace clampwright::desk
