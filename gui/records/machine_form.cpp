// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtGlobal>

#include "gui/records/all_forms.hpp"
#include "specdb/question/machine_register.hpp"
#include "specdb/workshop/machines.hpp"

namespace clampwright::desk {

namespace {

std::optional<specdb::MachineRecord> found(const Place& place, const RecordKey& key) {
  if (place.workshop == nullptr || key.key.empty()) return std::nullopt;
  return specdb::machine_of_slug(*place.workshop, key.key);
}

Words recorded(const Place& place, const RecordKey& key) {
  const auto machine = found(place, key);
  return machine ? filled_from(specdb::words_of(*machine), specdb::machine_fields()) : Words();
}

std::optional<std::size_t> events(const Place& place, const RecordKey& key) {
  const auto machine = found(place, key);
  return machine ? std::optional(machine->events.size()) : std::nullopt;
}

PageContent history(const Place& place, const RecordKey& key) {
  PageContent content;
  if (const auto machine = found(place, key)) {
    content.document.title = machine->name;
    if (auto section = log_section(machine->events); !section.rows.empty())
      content.document.sections.push_back(std::move(section));
  }
  return content;
}

Result<RecordKey> keep(const specdb::Catalogue& catalogue, const Keeping& keeping) {
  specdb::MachineWords words;
  fill_question(words, specdb::machine_fields(), keeping.said);
  if (keeping.key.key.empty()) {
    words.short_name = said(keeping.said, "--short-name");
    const auto kept = specdb::add_machine(catalogue, keeping.file, words, keeping.today);
    if (!kept) return Refusal(kept.error());
    return RecordKey{{}, kept->machine.slug};
  }
  const auto kept = specdb::revise_machine(catalogue, keeping.file, keeping.key.key, words,
                                           {keeping.because, keeping.events_seen}, keeping.today);
  if (!kept) return Refusal(kept.error());
  return keeping.key;
}

} // namespace

RecordForm machine_form() {
  const BlankKind& length = quantity_blank(quantity::Kind::length);
  return {
      .id = "machine",
      .name = QT_TRANSLATE_NOOP("Records", "Machine"),
      .new_one = QT_TRANSLATE_NOOP("Records", "New machine"),
      .groups =
          {{QT_TRANSLATE_NOOP("Records", "The machine"),
            {{"--called", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "name"), "Pump Marrowfen P4", true},
             {"--kind", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "what it is"), "flood pump, two-stroke single",
              true},
             {"--serial-from", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "figures hold from serial number"),
              "P4-0100"},
             {"--serial-to", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "to serial number"), "P4-0499"},
             {"--regulated-by", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "rules under which it is certified"),
              "aviation authority"}}},
           {QT_TRANSLATE_NOOP("Records", "Its crank"),
            {{"--crank-turn", &turn_blank(), QT_TRANSLATE_NOOP("Sentences", "turns in service"), "clockwise"},
             {"--crank-seen-from", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "seen from"),
              "looking at the clutch"},
             {"--stroke", &length, QT_TRANSLATE_NOOP("Sentences", "stroke"), "50 mm"},
             {"--rod", &length, QT_TRANSLATE_NOOP("Sentences", "connecting rod, centre to centre"), "100 mm"},
             {"--port-depth", &length, QT_TRANSLATE_NOOP("Sentences", "crown's way down to the highest port"),
              "22 mm"}}},
           {QT_TRANSLATE_NOOP("Records", "A piston stop for its plug hole"),
            {{"--crown-depth", &length, QT_TRANSLATE_NOOP("Sentences", "plug's seat to the crown at the top"), "14 mm"},
             {"--stop-length", &length, QT_TRANSLATE_NOOP("Sentences", "plug's seat to the tip of the stop"), "23 mm"},
             {"--tip-diameter", &length, QT_TRANSLATE_NOOP("Sentences", "diameter of its flat tip"), "8 mm"},
             {"--tip-limit", &quantity_blank(quantity::Kind::stress),
              QT_TRANSLATE_NOOP("Sentences", "pressure allowed on the crown"), "60 MPa"},
             {"--plug-thread", &thread_blank(), QT_TRANSLATE_NOOP("Sentences", "thread of the plug"), "M14x1.25"},
             {"--plug-reach", &length, QT_TRANSLATE_NOOP("Sentences", "reach of the plug"), "19 mm"},
             {"--plug-material", &material_blank(), QT_TRANSLATE_NOOP("Sentences", "metal of the head"),
              "cast-aluminium"}}}},
      .recorded = &recorded,
      .events = &events,
      .history = &history,
      .keep = &keep};
}

} // namespace clampwright::desk
