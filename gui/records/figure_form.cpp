// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <charconv>

#include <QCoreApplication>

#include "core/quantity/write.hpp"
#include "core/report/wording.hpp"
#include "gui/look/utf8.hpp"
#include "gui/records/all_forms.hpp"
#include "specdb/question/figure_register.hpp"
#include "specdb/question/record_lines.hpp"
#include "specdb/workshop/joints.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("Records", english); }

const BlankKind& method_blank() {
  static const auto kind = choice_blank({{"torque", QT_TRANSLATE_NOOP("Offers", "to a torque")},
                                         {"torque-angle", QT_TRANSLATE_NOOP("Offers", "to a torque, then by an angle")},
                                         {"to-shoulder", QT_TRANSLATE_NOOP("Offers", "until the shoulder seats")},
                                         {"by-feel", QT_TRANSLATE_NOOP("Offers", "by feel, as the page says")}});
  return *kind;
}

const BlankKind& running_rule_blank() {
  static const auto kind =
      choice_blank({{"add", QT_TRANSLATE_NOOP("Offers", "the running torque is added to the figure")},
                    {"included", QT_TRANSLATE_NOOP("Offers", "the figure has the running torque in it")}});
  return *kind;
}

const BlankKind& reuse_rule_blank() {
  static const auto kind = choice_blank({{"never", QT_TRANSLATE_NOOP("Offers", "new each time")},
                                         {"while-good", QT_TRANSLATE_NOOP("Offers", "again while it is good")}});
  return *kind;
}

const BlankKind& status_blank() {
  static const auto kind = choice_blank({{"maker", QT_TRANSLATE_NOOP("Offers", "the maker's own figure")},
                                         {"general-table", QT_TRANSLATE_NOOP("Offers", "from a general table")},
                                         {"shop", QT_TRANSLATE_NOOP("Offers", "the workshop's own")},
                                         {"derived", QT_TRANSLATE_NOOP("Offers", "worked up or corrected")}});
  return *kind;
}

long long number_of(const RecordKey& key) {
  long long number = 0;
  std::from_chars(key.key.data(), key.key.data() + key.key.size(), number);
  return number;
}

std::optional<specdb::JointRecord> joint_of(const Place& place, const RecordKey& key) {
  if (place.workshop == nullptr) return std::nullopt;
  return specdb::joint_of_slug(*place.workshop, key.of);
}

Words recorded(const Place& place, const RecordKey& key) {
  const auto joint = joint_of(place, key);
  if (!joint || key.key.empty()) return {};
  std::vector<specdb::FigureRecord> in_force = joint->beside;
  in_force.push_back(joint->figure);
  const auto figure = std::ranges::find(in_force, number_of(key), &specdb::FigureRecord::id);
  if (figure == in_force.end()) return {};
  const specdb::FigureWords said = specdb::words_of(*figure);
  Words words = filled_from(said, specdb::figure_fields());
  if (said.recheck)
    if (auto line = specdb::rechecks_line(*said.recheck)) words["--recheck"] = std::move(*line);
  return words;
}

report::Section figures_section(const char* heading, const std::vector<specdb::FigureRecord>& figures) {
  report::Section section{to_utf8(tr(heading)), {}};
  for (const specdb::FigureRecord& figure : figures) {
    std::string words = report::full_source(figure.source);
    if (figure.superseded_on) words += "; " + to_utf8(tr("replaced on %1").arg(from_utf8(*figure.superseded_on)));
    if (figure.superseded_because) words += ": " + *figure.superseded_because;
    section.rows.push_back({figure.printed, words});
  }
  return section;
}

PageContent history(const Place& place, const RecordKey& key) {
  PageContent content;
  const auto joint = joint_of(place, key);
  if (!joint) return content;
  content.document.title = joint->name;
  std::vector<specdb::FigureRecord> in_force{joint->figure};
  in_force.insert(in_force.end(), joint->beside.begin(), joint->beside.end());
  content.document.sections.push_back(figures_section(QT_TRANSLATE_NOOP("Records", "In force"), in_force));
  if (!joint->superseded.empty())
    content.document.sections.push_back(
        figures_section(QT_TRANSLATE_NOOP("Records", "Replaced, newest first"), joint->superseded));
  return content;
}

Result<RecordKey> keep(const specdb::Catalogue& catalogue, const Keeping& keeping) {
  const auto words = figure_words(keeping.said);
  if (!words) return Refusal(words.error());
  const auto kept = keeping.key.key.empty()
                        ? specdb::add_figure(catalogue, keeping.file, keeping.key.of, *words, keeping.today)
                        : specdb::revise_figure(catalogue, keeping.file, keeping.key.of, number_of(keeping.key), *words,
                                                keeping.because, keeping.today);
  if (!kept) return Refusal(kept.error());
  return RecordKey{keeping.key.of, quantity::write_number(static_cast<double>(kept->figure.id), 15)};
}

} // namespace

std::vector<BlankGroup> figure_groups() {
  const BlankKind& torque = quantity_blank(quantity::Kind::torque);
  const BlankKind& words = words_blank();
  return {
      {QT_TRANSLATE_NOOP("Records", "What the page says"),
       {{"--printed", &words, QT_TRANSLATE_NOOP("Sentences", "word for word, comma and all"), "42 N·m", true},
        {"--torque", &torque, QT_TRANSLATE_NOOP("Sentences", "the torque that it means, or none"), "42 N.m", true},
        {"--tolerance", &words, QT_TRANSLATE_NOOP("Sentences", "tolerance as printed"), "± 2 N·m"},
        {"--low", &torque, QT_TRANSLATE_NOOP("Sentences", "least that it means"), "40 N.m"},
        {"--high", &torque, QT_TRANSLATE_NOOP("Sentences", "most that it means"), "44 N.m"},
        {"--angle", &quantity_blank(quantity::Kind::angle), QT_TRANSLATE_NOOP("Sentences", "angle that follows"),
         "90 deg"},
        {"--method", &method_blank(), QT_TRANSLATE_NOOP("Sentences", "way of tightening"), "torque"},
        {"--reading", &words, QT_TRANSLATE_NOOP("Sentences", "how it was understood"), "comma as decimal mark"}}},
      {QT_TRANSLATE_NOOP("Records", "Under which conditions"),
       {{"--surfaces", &surfaces_blank(), QT_TRANSLATE_NOOP("Sentences", "surfaces it is for"), "oiled"},
        {"--mu", &friction_blank(), QT_TRANSLATE_NOOP("Sentences", "friction that the page names"), "0.12"},
        {"--condition", &words, QT_TRANSLATE_NOOP("Sentences", "condition in words"), "new bolts"},
        {"--temperature", &words, QT_TRANSLATE_NOOP("Sentences", "temperature in words"), "engine cold"},
        {"--sequence", &words, QT_TRANSLATE_NOOP("Sentences", "sequence in words"), "crosswise"},
        {"--passes", &words, QT_TRANSLATE_NOOP("Sentences", "passes, torques parted by commas"),
         "6 N.m, 12 N.m, 17 N.m"},
        {"--running-rule", &running_rule_blank(), QT_TRANSLATE_NOOP("Sentences", "running torque"), "add"},
        {"--reuse-rule", &reuse_rule_blank(), QT_TRANSLATE_NOOP("Sentences", "use again"), "never"},
        {"--reuse", &words, QT_TRANSLATE_NOOP("Sentences", "use again, in words"), "new nut each time"},
        {"--recheck", &rechecks_line_blank(), QT_TRANSLATE_NOOP("Sentences", "recheck"), "after the first run (1 h)"}}},
      {QT_TRANSLATE_NOOP("Records", "Where it comes from"),
       {{"--source", &document_blank(), QT_TRANSLATE_NOOP("Sentences", "document"), "marrowfen-sheets", true},
        {"--page", &words, QT_TRANSLATE_NOOP("Sentences", "page"), "page 4", true},
        {"--status", &status_blank(), QT_TRANSLATE_NOOP("Sentences", "whose figure"), "maker"}}}};
}

Result<specdb::FigureWords> figure_words(const Words& words) {
  specdb::FigureWords out;
  fill_question(out, specdb::figure_fields(), words);
  if (const auto line = said(words, "--recheck")) {
    auto rechecks = specdb::read_rechecks_line(*line == "none" ? std::string() : *line);
    if (!rechecks) return in_field(rechecks.error(), "--recheck");
    out.recheck = std::move(*rechecks);
  }
  return out;
}

RecordForm figure_form() {
  return {.id = "figure",
          .name = QT_TRANSLATE_NOOP("Records", "Figure of a joint"),
          .new_one = QT_TRANSLATE_NOOP("Records", "Another figure beside it"),
          .groups = figure_groups(),
          .recorded = &recorded,
          .events = {},
          .history = &history,
          .keep = &keep};
}

} // namespace clampwright::desk
