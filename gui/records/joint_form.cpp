// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtGlobal>

#include "gui/records/all_forms.hpp"
#include "specdb/question/joint_register.hpp"
#include "specdb/question/record_lines.hpp"
#include "specdb/workshop/joints.hpp"

namespace clampwright::desk {

namespace {

std::optional<specdb::JointRecord> found(const Place& place, const RecordKey& key) {
  if (place.workshop == nullptr || key.key.empty()) return std::nullopt;
  return specdb::joint_of_slug(*place.workshop, key.key);
}

Words recorded(const Place& place, const RecordKey& key) {
  const auto joint = found(place, key);
  if (!joint) return {};
  const specdb::JointWords said = specdb::words_of(*joint);
  Words words = filled_from(said, specdb::joint_fields());
  if (auto line = specdb::locks_line(joint->locks)) words["--lock"] = std::move(*line);
  if (said.neighbours)
    if (auto line = specdb::neighbours_line(*said.neighbours)) words["--neighbour"] = std::move(*line);
  return words;
}

std::optional<std::size_t> events(const Place& place, const RecordKey& key) {
  const auto joint = found(place, key);
  return joint ? std::optional(joint->events.size()) : std::nullopt;
}

PageContent history(const Place& place, const RecordKey& key) {
  PageContent content;
  if (const auto joint = found(place, key)) {
    content.where = QString::fromStdString(joint->machine.name + " / " + joint->assembly);
    content.document.title = joint->name;
    if (auto section = log_section(joint->events); !section.rows.empty())
      content.document.sections.push_back(std::move(section));
  }
  return content;
}

// What stands on a line, or nothing of it where it was taken away.
std::string line_of(const std::string& text) { return text == "none" ? std::string() : text; }

Result<specdb::JointWords> joint_words(const Words& words) {
  specdb::JointWords out;
  fill_question(out, specdb::joint_fields(), words);
  if (const auto line = said(words, "--lock")) {
    auto locks = specdb::read_locks_line(line_of(*line));
    if (!locks) return in_field(locks.error(), "--lock");
    out.locks = std::move(*locks);
  }
  if (const auto line = said(words, "--neighbour")) {
    auto neighbours = specdb::read_neighbours_line(line_of(*line));
    if (!neighbours) return in_field(neighbours.error(), "--neighbour");
    out.neighbours = std::move(*neighbours);
  }
  return out;
}

Result<RecordKey> keep(const specdb::Catalogue& catalogue, const Keeping& keeping) {
  auto words = joint_words(keeping.said);
  if (!words) return Refusal(words.error());
  if (keeping.key.key.empty()) {
    words->short_name = said(keeping.said, "--short-name");
    const auto figure = figure_words(keeping.said);
    if (!figure) return Refusal(figure.error());
    const auto kept = specdb::add_joint(catalogue, keeping.file, keeping.key.of, *words, *figure, keeping.today);
    if (!kept) return Refusal(kept.error());
    return RecordKey{keeping.key.of, kept->joint.slug};
  }
  const auto kept = specdb::revise_joint(catalogue, keeping.file, keeping.key.key, *words,
                                         {keeping.because, keeping.events_seen}, keeping.today);
  if (!kept) return Refusal(kept.error());
  return keeping.key;
}

const BlankKind& pattern_blank() {
  static const auto kind = choice_blank(
      {{"circle", QT_TRANSLATE_NOOP("Offers", "in a circle")}, {"row", QT_TRANSLATE_NOOP("Offers", "in a row")}});
  return *kind;
}

const BlankKind& how_many_blank() {
  static const auto kind = count_blank(1, 1000); // the register knows the true end
  return *kind;
}

const BlankKind& duty_blank() {
  static const auto kind = choice_blank(
      {{"dry", QT_TRANSLATE_NOOP("Offers", "it stays dry")}, {"wet", QT_TRANSLATE_NOOP("Offers", "it gets wet")}});
  return *kind;
}

const BlankKind& driver_blank() {
  static const auto kind = choice_blank({{"shaft", QT_TRANSLATE_NOOP("Offers", "the shaft turns the part")},
                                         {"part", QT_TRANSLATE_NOOP("Offers", "the part turns the shaft")}});
  return *kind;
}

BlankGroup place_group() {
  return {QT_TRANSLATE_NOOP("Records", "The joint"),
          {{"--assembly", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "assembly"), "clutch", true},
           {"--called", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "name"), "clutch hub", true},
           {"--kind", &joint_kind_blank(), QT_TRANSLATE_NOOP("Sentences", "kind of joint"), "bolt"},
           {"--quantity", &how_many_blank(), QT_TRANSLATE_NOOP("Sentences", "how many"), "1"},
           {"--pattern", &pattern_blank(), QT_TRANSLATE_NOOP("Sentences", "how they lie"), "circle"},
           {"--drive", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "tool that fits"), "13 mm hexagon"},
           {"--words", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "what else it is called"), "clutch nut"}}};
}

BlankGroup fastener_group() {
  const BlankKind& length = quantity_blank(quantity::Kind::length);
  return {
      QT_TRANSLATE_NOOP("Records", "The fastener"),
      {{"--thread", &thread_blank(), QT_TRANSLATE_NOOP("Sentences", "thread"), "M10x1.25", true},
       {"--class", &class_blank(), QT_TRANSLATE_NOOP("Sentences", "strength class"), "8.8"},
       {"--nut", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "class of the nut"), "8"},
       {"--turned", &part_turned_blank(), QT_TRANSLATE_NOOP("Sentences", "part that is turned"), "head"},
       {"--head", &head_blank(), QT_TRANSLATE_NOOP("Sentences", "head or nut"), "hex"},
       {"--washer", &size_pair_blank(), QT_TRANSLATE_NOOP("Sentences", "washer, outer by inner diameter"), "24x13mm"},
       {"--face-outer", &length, QT_TRANSLATE_NOOP("Sentences", "outer diameter of the face that rubs"), "30 mm"},
       {"--face-inner", &length, QT_TRANSLATE_NOOP("Sentences", "inner diameter of the face that rubs"), "15 mm"},
       {"--bolt-length", &length, QT_TRANSLATE_NOOP("Sentences", "length under the head"), "40 mm"},
       {"--lock", &locks_line_blank(), QT_TRANSLATE_NOOP("Sentences", "locked by"),
        "compound-medium (on clean thread)"},
       {"--running-torque", &quantity_blank(quantity::Kind::torque),
        QT_TRANSLATE_NOOP("Sentences", "running torque as measured"), "2 N.m"}}};
}

BlankGroup parts_group() {
  const BlankKind& length = quantity_blank(quantity::Kind::length);
  return {
      QT_TRANSLATE_NOOP("Records", "What it clamps and screws into"),
      {{"--seat-words", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "seat in words"), "against the shoulder"},
       {"--seat", &material_blank(), QT_TRANSLATE_NOOP("Sentences", "material of the seat"), "steel-s355"},
       {"--soft", &material_blank(), QT_TRANSLATE_NOOP("Sentences", "the weakest of what is clamped"), "gasket"},
       {"--grip", &length, QT_TRANSLATE_NOOP("Sentences", "length clamped"), "25 mm"},
       {"--taper", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "taper"), "1:5"},
       {"--mating-part", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "screws into"), "crankcase"},
       {"--mating", &material_blank(), QT_TRANSLATE_NOOP("Sentences", "material of that part"), "cast-aluminium"},
       {"--engagement", &length, QT_TRANSLATE_NOOP("Sentences", "length of thread that bears"), "15 mm"},
       {"--hole-depth", &length, QT_TRANSLATE_NOOP("Sentences", "depth of usable thread"), "20 mm"},
       {"--duty", &duty_blank(), QT_TRANSLATE_NOOP("Sentences", "wet or dry in service"), "dry"},
       {"--must-clamp", &quantity_blank(quantity::Kind::force),
        QT_TRANSLATE_NOOP("Sentences", "clamp load that each must keep"), "9 kN"},
       {"--must-clamp-because", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "because"), "the hub must not slip"}}};
}

BlankGroup turning_group() {
  return {QT_TRANSLATE_NOOP("Records", "Turning and holding"),
          {{"--seen-from", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "looked at from"), "looking at the clutch"},
           {"--on-crank", &yes_blank(), QT_TRANSLATE_NOOP("Sentences", "sits on the crank"), "yes"},
           {"--holding", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "held by"), "flats of the crank, 17 mm"},
           {"--shaft-turn", &turn_blank(), QT_TRANSLATE_NOOP("Sentences", "its shaft turns in service"), "clockwise"},
           {"--driver", &driver_blank(), QT_TRANSLATE_NOOP("Sentences", "who turns whom"), "shaft"},
           {"--neighbour", &neighbours_line_blank(), QT_TRANSLATE_NOOP("Sentences", "parts near it that heat concerns"),
            "crank oil seal (bears 120 degC)"}}};
}

} // namespace

RecordForm joint_form() {
  RecordForm form{.id = "joint",
                  .name = QT_TRANSLATE_NOOP("Records", "Joint"),
                  .new_one = QT_TRANSLATE_NOOP("Records", "New joint"),
                  .groups = {place_group(), fastener_group(), parts_group(), turning_group()},
                  .recorded = &recorded,
                  .events = &events,
                  .history = &history,
                  .keep = &keep};
  // A joint is entered with its first figure; afterwards that has a form of its own.
  for (BlankGroup group : figure_groups()) {
    group.only_new = true;
    form.groups.push_back(std::move(group));
  }
  return form;
}

} // namespace clampwright::desk
