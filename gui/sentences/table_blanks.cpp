// SPDX-License-Identifier: GPL-3.0-or-later
//
// Blanks whose words stand in one table each.
#include <algorithm>

#include <QCoreApplication>

#include "core/quantity/spelling.hpp"
#include "core/text/plain_text.hpp"
#include "core/thread/turning.hpp"
#include "gui/look/utf8.hpp"
#include "gui/sentences/blank.hpp"
#include "gui/sentences/sentence.hpp"
#include "gui/text/wording.hpp"
#include "specdb/catalogue/head_marks.hpp"
#include "specdb/catalogue/locking.hpp"
#include "specdb/catalogue/materials.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/catalogue/nut_strengths.hpp"
#include "specdb/catalogue/nuts.hpp"
#include "specdb/catalogue/surfaces.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/question/head_mark.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("Blanks", english); }

std::vector<Offer> bare(std::vector<std::string> names) {
  std::vector<Offer> offers;
  for (std::string& name : names)
    offers.push_back({std::move(name), {}});
  return offers;
}

Result<QString> material_words(const specdb::Catalogue& catalogue, std::string_view text) {
  const auto found = specdb::find_material(catalogue, text);
  if (!found) return Refusal(found.error());
  return worded(found->description);
}

Result<QString> elastic_words(const specdb::Catalogue& catalogue, std::string_view text) {
  const auto found = specdb::find_elastic(catalogue, text);
  if (!found) return Refusal(found.error());
  return worded(found->description);
}

Result<QString> nut_class_words(const specdb::Catalogue& catalogue, std::string_view text) {
  const auto found = specdb::find_nut_pairing(catalogue, text);
  if (!found) return Refusal(found.error());
  return found->highest_bolt_class ? tr("for bolts up to class %1").arg(from_utf8(*found->highest_bolt_class))
                                   : tr("a thin nut");
}

Result<QString> nut_strength_words(const specdb::Catalogue& catalogue, std::string_view text) {
  // Whether the class is known does not hang on the size.
  const auto thread = specdb::find_thread(catalogue, "M10");
  if (!thread) return Refusal(thread.error());
  const auto found = specdb::find_nut_strength(catalogue, text, thread->thread);
  if (!found) return Refusal(found.error());
  return tr("nut of class %1").arg(from_utf8(found->nut_class));
}

std::vector<std::string> compound_names(const specdb::Catalogue& catalogue) {
  std::vector<std::string> names = specdb::lock_names(catalogue);
  std::erase_if(names, [&](const std::string& name) {
    return specdb::find_lock(catalogue, name)->family != friction::LockFamily::compound;
  });
  return names;
}

Result<QString> lock_words(const specdb::Catalogue& catalogue, std::string_view text) {
  const auto found = specdb::find_lock(catalogue, text);
  if (!found) return Refusal(found.error());
  return worded(found->description);
}

Result<QString> cure_surface_words(const specdb::Catalogue& catalogue, std::string_view text) {
  const auto found = specdb::find_cure_surface(catalogue, text);
  if (!found) return Refusal(found.error());
  return worded(found->description);
}

Result<QString> mark_words(const specdb::Catalogue& catalogue, std::string_view text) {
  const auto read = specdb::read_head_mark(catalogue, text, {});
  if (!read) return Refusal(read.error());
  return tr("read as %1").arg(from_utf8(read->reading));
}

std::vector<std::string> mark_names(const specdb::Catalogue& catalogue) {
  std::vector<std::string> names;
  for (specdb::HeadMark& row : specdb::head_marks(catalogue))
    if (std::ranges::find(names, row.mark) == names.end()) names.push_back(std::move(row.mark));
  return names;
}

Result<QString> unit_words(const specdb::Catalogue&, std::string_view text) {
  const auto spelling = quantity::read_unit(text::plain_spaces(text));
  if (!spelling) {
    Problem problem = spelling.error();
    problem.input = text::quotable(text);
    return Refusal(std::move(problem));
  }
  return from_utf8(spelling->unit->symbol);
}

std::vector<std::string> unit_names(const specdb::Catalogue&) {
  std::vector<std::string> names;
  for (const quantity::Unit& unit : quantity::all_units())
    names.emplace_back(unit.name);
  return names;
}

struct Reader {
  Result<QString> (*understood)(const specdb::Catalogue& catalogue, std::string_view text);
  std::vector<std::string> (*names)(const specdb::Catalogue& catalogue);
  int width = 12;
  bool list = false;
};

class TableBlank : public BlankKind {
 public:
  explicit TableBlank(Reader reader) : reader_(reader) {}
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place& place) const override {
    if (!reader_.list) return reader_.understood(*place.catalogue, text);
    QStringList all;
    for (const std::string& one : several({{"", text}}, "")) {
      const auto words = reader_.understood(*place.catalogue, one);
      if (!words) return Refusal(words.error());
      all << *words;
    }
    return all.join(QStringLiteral(" + "));
  }
  [[nodiscard]] std::vector<Offer> offers(const Place& place) const override {
    return bare(reader_.names(*place.catalogue));
  }
  [[nodiscard]] bool is_list() const override { return reader_.list; }
  [[nodiscard]] int width() const override { return reader_.width; }

 private:
  Reader reader_;
};

class TurnBlank : public BlankKind {
 public:
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place&) const override {
    const auto turn = thread::read_turn(text);
    if (!turn) return Refusal(turn.error());
    return worded(thread::turn_name(*turn));
  }
  [[nodiscard]] std::vector<Offer> offers(const Place&) const override {
    return {{"clockwise", {}}, {"anticlockwise", {}}};
  }
  [[nodiscard]] int width() const override { return 13; }
};

class ChoiceBlank : public BlankKind {
 public:
  ChoiceBlank(std::vector<Choice> choices, Check check) : choices_(std::move(choices)), check_(check) {}
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place&) const override {
    if (check_ != nullptr)
      if (const auto fits = check_(text); !fits) return Refusal(fits.error());
    const auto found = std::ranges::find_if(
        choices_, [&](const Choice& choice) { return specdb::name_key(text) == specdb::name_key(choice.word); });
    if (found != choices_.end()) return QCoreApplication::translate("Offers", found->says);
    if (check_ != nullptr) return from_utf8(text);
    std::vector<std::string> words;
    for (const Choice& choice : choices_)
      words.emplace_back(choice.word);
    return specdb::no_such_name("choice", text, words);
  }
  [[nodiscard]] std::vector<Offer> offers(const Place&) const override {
    std::vector<Offer> offers;
    for (const Choice& choice : choices_)
      offers.push_back({choice.word, QCoreApplication::translate("Offers", choice.says)});
    return offers;
  }
  [[nodiscard]] int width() const override { return 12; }

 private:
  std::vector<Choice> choices_;
  Check check_;
};

} // namespace

const BlankKind& material_blank() {
  static const TableBlank kind({&material_words, &specdb::material_names, 16});
  return kind;
}
const BlankKind& elastic_blank() {
  static const TableBlank kind({&elastic_words, &specdb::elastic_names, 16});
  return kind;
}
const BlankKind& nut_class_blank() {
  static const TableBlank kind({&nut_class_words, &specdb::nut_class_names, 8});
  return kind;
}
const BlankKind& nut_strength_blank() {
  static const TableBlank kind({&nut_strength_words, &specdb::nut_strength_names, 8});
  return kind;
}
const BlankKind& one_lock_blank() {
  static const TableBlank kind({&lock_words, &specdb::lock_names, 18});
  return kind;
}
const BlankKind& compound_blank() {
  static const TableBlank kind({&lock_words, &compound_names, 16});
  return kind;
}
const BlankKind& cure_surface_blank() {
  static const TableBlank kind({&cure_surface_words, &specdb::cure_surface_names, 16, true});
  return kind;
}
const BlankKind& head_mark_blank() {
  static const TableBlank kind({&mark_words, &mark_names, 16});
  return kind;
}
const BlankKind& unit_blank() {
  static const TableBlank kind({&unit_words, &unit_names, 8, true});
  return kind;
}
const BlankKind& turn_blank() {
  static const TurnBlank kind;
  return kind;
}

std::unique_ptr<BlankKind> choice_blank(std::vector<Choice> choices, Check check) {
  return std::make_unique<ChoiceBlank>(std::move(choices), check);
}

} // namespace clampwright::desk
