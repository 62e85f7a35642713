// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtGlobal>

#include "gui/records/all_forms.hpp"
#include "specdb/question/wrench_list_report.hpp"
#include "specdb/question/wrench_record.hpp"
#include "specdb/workshop/wrenches.hpp"

namespace clampwright::desk {

namespace {

const BlankKind& turns_blank() {
  static const auto kind =
      choice_blank({{"both", QT_TRANSLATE_NOOP("Offers", "both ways")},
                    {"clockwise", QT_TRANSLATE_NOOP("Offers", "as the hand of a clock only")},
                    {"anticlockwise", QT_TRANSLATE_NOOP("Offers", "against the hand of a clock only")}});
  return *kind;
}

const BlankKind& interval_blank() {
  static const auto kind = count_blank(1, 1'000'000); // the register knows the true ends
  return *kind;
}

std::optional<specdb::WrenchRecord> found(const Place& place, const RecordKey& key) {
  if (place.workshop == nullptr || key.key.empty()) return std::nullopt;
  auto wrench = specdb::find_wrench(*place.workshop, key.key);
  return wrench ? std::optional(std::move(*wrench)) : std::nullopt;
}

Words recorded(const Place& place, const RecordKey& key) {
  const auto wrench = found(place, key);
  return wrench ? filled_from(specdb::words_of(*wrench), specdb::wrench_fields()) : Words();
}

std::optional<std::size_t> events(const Place& place, const RecordKey& key) {
  const auto wrench = found(place, key);
  return wrench ? std::optional(wrench->events.size()) : std::nullopt;
}

PageContent history(const Place& place, const RecordKey& key) {
  PageContent content;
  if (const auto wrench = found(place, key))
    content.document =
        specdb::wrench_record_report(*wrench, wrench->name, place.units, place.today, place.workshop->is_invented());
  return content;
}

Result<RecordKey> keep(const specdb::Catalogue&, const Keeping& keeping) {
  specdb::WrenchWords words;
  fill_question(words, specdb::wrench_fields(), keeping.said);
  if (keeping.key.key.empty()) {
    words.calibrated = said(keeping.said, "--calibrated");
    const std::string slug = said(keeping.said, "NAME").value_or("");
    const auto kept = specdb::add_to_register(keeping.file, slug, words, keeping.today);
    if (!kept) return Refusal(kept.error());
    return RecordKey{{}, kept->wrench.slug};
  }
  const auto kept = specdb::revise_in_register(keeping.file, keeping.key.key, words,
                                               {keeping.because, keeping.events_seen}, keeping.today);
  if (!kept) return Refusal(kept.error());
  return keeping.key;
}

} // namespace

RecordForm wrench_form() {
  return {.id = "wrench",
          .name = QT_TRANSLATE_NOOP("Records", "Torque wrench"),
          .new_one = QT_TRANSLATE_NOOP("Records", "New torque wrench"),
          .groups =
              {{QT_TRANSLATE_NOOP("Records", "New in the register"),
                {{"NAME", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "short name"), "D", true},
                 {"--calibrated", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "last calibrated, year-month-day"),
                  "2026-03-02"}},
                true},
               {QT_TRANSLATE_NOOP("Records", "The wrench"),
                {{"--called", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "name"), "Bench wrench D"},
                 {"--range", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "ends of its scale"), "20..100Nm", true},
                 {"--step", &quantity_blank(quantity::Kind::torque),
                  QT_TRANSLATE_NOOP("Sentences", "distance of two marks"), "1 N.m"},
                 {"--turns", &turns_blank(), QT_TRANSLATE_NOOP("Sentences", "calibrated for turning"), "both", true},
                 {"--arm", &quantity_blank(quantity::Kind::length),
                  QT_TRANSLATE_NOOP("Sentences", "middle of the grip to the drive"), "420 mm"},
                 {"--accuracy", &share_blank(), QT_TRANSLATE_NOOP("Sentences", "how far it may be off"), "4%"},
                 {"--accuracy-basis", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "where that comes from"),
                  "calibration sheet 114"},
                 {"--class", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "class as its standard names it"), "II A"},
                 {"--months", &interval_blank(), QT_TRANSLATE_NOOP("Sentences", "months between calibrations"), "12"},
                 {"--cycles", &interval_blank(), QT_TRANSLATE_NOOP("Sentences", "pulls between calibrations"), "5000"},
                 {"--due", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "due by its sheet, year-month-day"),
                  "2027-03-02"}}}},
          .recorded = &recorded,
          .events = &events,
          .history = &history,
          .keep = &keep};
}

} // namespace clampwright::desk
