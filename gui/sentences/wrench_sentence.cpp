// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where to set a torque wrench.
#include <QCoreApplication>

#include "core/report/wording.hpp"
#include "gui/drawings/adaptor_picture.hpp"
#include "gui/look/utf8.hpp"
#include "gui/sentences/all_sentences.hpp"
#include "gui/sentences/reply_parts.hpp"
#include "gui/text/wording.hpp"
#include "specdb/question/wrench_question.hpp"
#include "specdb/question/wrench_report.hpp"

namespace clampwright::desk {

namespace {

using quantity::Kind;

QString tr(const char* english) { return QCoreApplication::translate("Sentences", english); }

// The mark, and what then reaches the fastener; or that there is none.
void add_figures(PageContent& page, const specdb::WrenchSetReply& reply, const Place& place) {
  const tightening::LeverSetting& set = reply.set;
  const QString name = reply.is_registered ? from_utf8(reply.wrench.name) : tr("the wrench");
  if (!set.on_scale.setting || !reply.suits) {
    page.figures.push_back({tr("no setting"), tr("for %1: see below why").arg(name)});
    return;
  }
  page.figures.push_back(
      {from_utf8(specdb::setting_words(reply.wrench, *set.on_scale.setting)), tr("is to be set on %1").arg(name)});
  if (set.levers.adaptor)
    page.figures.push_back(
        {from_utf8(quantity::write_si_rounded(quantity::in_newton_metres(*set.applied), *place.units.torque)),
         tr("then reaches the fastener")});
}

Result<Reply> answer_wrench_sentence(const Words& words, const Place& place) {
  specdb::WrenchSetQuestion question;
  put_words(question, words, specdb::k_wrench_set_fields);
  const auto told =
      specdb::tell_wrench_set(*place.catalogue, place.workshop, {said(words, "--wrench"), said(words, "--joint")},
                              question, nullptr, place.today);
  if (!told) return Refusal(told.error());
  Reply reply;
  add_figures(reply.page, told->reply, place);
  add_flags(reply.page, told->reply.findings, place);
  reply.page.document =
      specdb::wrench_set_report(told->reply, told->joint ? &*told->joint : nullptr, place.units, told->invented);
  if (auto drawing = adaptor_picture(told->reply, place.units)) reply.page.drawings.push_back({std::move(*drawing)});
  return reply;
}

} // namespace

std::vector<Sentence> wrench_sentences() {
  const BlankKind& length = quantity_blank(Kind::length);
  const BlankKind& torque = quantity_blank(Kind::torque);
  return {
      {.id = "wrench",
       .command = "wrench set",
       .name = QT_TRANSLATE_NOOP("Sentences", "Setting a torque wrench"),
       .also = QT_TRANSLATE_NOOP("Sentences", "crow's foot adaptor extension arm lever scale mark"),
       .text = QT_TRANSLATE_NOOP(
           "Sentences", "For {--torque} at the fastener, or for the joint {--joint}, with the wrench {--wrench} or an "
                        "arm of {--arm}, through an adaptor of {--adaptor} at {--adaptor-angle} to it, set"),
       .blanks =
           {{"--torque", &torque, QT_TRANSLATE_NOOP("Sentences", "torque that is to reach the fastener"), "25 N.m",
             true, false, "--joint"},
            {"--joint", &joint_blank(), QT_TRANSLATE_NOOP("Sentences", "joint"), "pump/head-nuts", false, true},
            {"--wrench", &wrench_blank(), QT_TRANSLATE_NOOP("Sentences", "wrench of the workshop"), "A", false, true},
            {"--arm", &length, QT_TRANSLATE_NOOP("Sentences", "middle of the grip to the middle of the drive"),
             "300 mm", true, false, "--wrench"},
            {"--adaptor", &length, QT_TRANSLATE_NOOP("Sentences", "adaptor, drive to fastener"), "50 mm"},
            {"--adaptor-angle", &quantity_blank(Kind::angle),
             QT_TRANSLATE_NOOP("Sentences", "angle of the adaptor, 0 straight ahead"), "45 deg"},
            {"--tolerance", &accuracy_blank(), QT_TRANSLATE_NOOP("Sentences", "limits of the figure, either side"),
             "10%"},
            {"--low", &torque, QT_TRANSLATE_NOOP("Sentences", "lower limit of the figure"), "22 N.m"},
            {"--high", &torque, QT_TRANSLATE_NOOP("Sentences", "upper limit of the figure"), "28 N.m"},
            {"--turn", &turn_blank(), QT_TRANSLATE_NOOP("Sentences", "way in which it tightens"), "clockwise"},
            {"--range", &scale_range_blank(), QT_TRANSLATE_NOOP("Sentences", "ends of the scale"), "10..60Nm"},
            {"--step", &torque, QT_TRANSLATE_NOOP("Sentences", "from one mark to the next"), "0.5 N.m"},
            {"--wrench-accuracy", &accuracy_blank(), QT_TRANSLATE_NOOP("Sentences", "accuracy of the wrench"), "4%"},
            {"--operator", &share_blank(), QT_TRANSLATE_NOOP("Sentences", "spread of the pull"), "1%"},
            {"--lever-error", &share_blank(), QT_TRANSLATE_NOOP("Sentences", "how far the levers may be off"), "1%"},
            {"--nut-factor-spread", &share_blank(), QT_TRANSLATE_NOOP("Sentences", "spread of the friction"), "10%"}},
       .answer = &answer_wrench_sentence},
  };
}

} // namespace clampwright::desk
