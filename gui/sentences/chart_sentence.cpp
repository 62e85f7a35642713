// SPDX-License-Identifier: GPL-3.0-or-later
//
// A torque chart with its basis on it.
#include <iterator>

#include <fmt/format.h>

#include <QCoreApplication>

#include "core/report/chart_report.hpp"
#include "core/version/version.hpp"
#include "gui/look/utf8.hpp"
#include "gui/sentences/all_sentences.hpp"
#include "gui/sentences/case_blanks.hpp"
#include "gui/sentences/reply_parts.hpp"
#include "gui/text/wording.hpp"
#include "specdb/question/chart_question.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("Sentences", english); }

// Which of them there are hangs on the classes; the question refuses the others.
Result<void> any_series(std::string_view) { return {}; }

const BlankKind& series_blank() {
  static const auto kind = choice_blank({{"coarse", QT_TRANSLATE_NOOP("Offers", "the coarse pitches")},
                                         {"fine", QT_TRANSLATE_NOOP("Offers", "the fine pitches")},
                                         {"UNC", QT_TRANSLATE_NOOP("Offers", "Unified coarse")},
                                         {"UNF", QT_TRANSLATE_NOOP("Offers", "Unified fine")},
                                         {"UNEF", QT_TRANSLATE_NOOP("Offers", "Unified extra fine")},
                                         {"all", QT_TRANSLATE_NOOP("Offers", "all of that system")}},
                                        &any_series);
  return *kind;
}

Result<Reply> answer_chart_sentence(const Words& words, const Place& place) {
  specdb::ChartQuestion question;
  put_words(question, words, specdb::k_chart_fields);
  question.classes = said(words, "--class").value_or("");
  question.each = case_question(words);
  const auto chart = specdb::chart_for(*place.catalogue, question);
  if (!chart) return Refusal(chart.error());
  Reply reply;
  reply.page.figures.push_back(
      {tr("%1 sizes").arg(chart->threads.size()), tr("for %1").arg(worded(report::chart_purpose(chart->wanted)))});
  add_flags(reply.page, specdb::findings_of(*chart), place);
  reply.page.document = report::chart_report(
      *chart, {fmt::format("clampwright {}", k_version), place.catalogue->data_version(), place.today}, place.units);
  return reply;
}

} // namespace

std::vector<Sentence> chart_sentences() {
  std::vector<Blank> blanks = {
      {"--class", &classes_blank(), QT_TRANSLATE_NOOP("Sentences", "classes, with commas between"), "8.8, 10.9", true},
      {"--from", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "smallest size"), "M6"},
      {"--to", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "greatest size"), "M10"},
      {"--series", &series_blank(), QT_TRANSLATE_NOOP("Sentences", "series of pitches"), "coarse"},
      case_blank("--surfaces"),
      {"--proof-fraction", &share_blank(), QT_TRANSLATE_NOOP("Sentences", "share of the proof load wanted"), "75%"},
      {"--yield-fraction", &share_blank(),
       QT_TRANSLATE_NOOP("Sentences", "share of yield wanted, at the lowest friction"), "90%", false, true},
  };
  auto rest = case_blanks_but({"THREAD", "--class", "--surfaces", "--washer", "--face-outer", "--face-inner", "--kind",
                               "--running-torque", "--shank", "--bore", "--any-pitch"});
  std::ranges::move(rest, std::back_inserter(blanks));
  return {
      {.id = "chart",
       .command = "chart",
       .name = QT_TRANSLATE_NOOP("Sentences", "A torque chart"),
       .also = QT_TRANSLATE_NOOP("Sentences", "table of torques sizes wall proof share"),
       .text = QT_TRANSLATE_NOOP("Sentences",
                                 "For class {--class}, from {--from} to {--to}, {--series}, surfaces {--surfaces}, for "
                                 "{--proof-fraction} of proof or {--yield-fraction} of yield, set"),
       .blanks = std::move(blanks),
       .answer = &answer_chart_sentence},
  };
}

} // namespace clampwright::desk
