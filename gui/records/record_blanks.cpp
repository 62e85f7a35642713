// SPDX-License-Identifier: GPL-3.0-or-later
#include <QStringList>
#include <QtGlobal>

#include "gui/look/utf8.hpp"
#include "gui/records/all_forms.hpp"
#include "gui/text/wording.hpp"
#include "specdb/catalogue/surfaces.hpp"
#include "specdb/question/record_lines.hpp"
#include "specdb/workshop/sources.hpp"

namespace clampwright::desk {

namespace {

class LocksLineBlank : public BlankKind {
 public:
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place& place) const override {
    const auto locks = specdb::read_locks_line(text);
    if (!locks) return Refusal(locks.error());
    QStringList all;
    for (const specdb::LockRecord& one : *locks) {
      const auto lock = specdb::find_lock(*place.catalogue, one.lock);
      if (!lock) return Refusal(lock.error());
      all << worded(lock->description) + (one.note ? QStringLiteral(" (%1)").arg(from_utf8(*one.note)) : QString());
    }
    return all.join(QStringLiteral(" + "));
  }
  [[nodiscard]] std::vector<Offer> offers(const Place& place) const override { return lock_blank().offers(place); }
  [[nodiscard]] int width() const override { return 30; }
};

class NeighboursLineBlank : public BlankKind {
 public:
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place&) const override {
    const auto neighbours = specdb::read_neighbours_line(text);
    if (!neighbours) return Refusal(neighbours.error());
    return from_utf8(specdb::neighbours_line(*neighbours).value_or(""));
  }
  [[nodiscard]] int width() const override { return 34; }
};

class RechecksLineBlank : public BlankKind {
 public:
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place&) const override {
    const auto rechecks = specdb::read_rechecks_line(text);
    if (!rechecks) return Refusal(rechecks.error());
    return from_utf8(specdb::rechecks_line(*rechecks).value_or(""));
  }
  [[nodiscard]] int width() const override { return 34; }
};

class DocumentBlank : public BlankKind {
 public:
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place& place) const override {
    if (place.workshop == nullptr)
      return refuse(Trouble::no_such, "no-workshop", "no workshop is open", text, "open one from the menu Workshop");
    const auto source = specdb::find_source(specdb::all_sources(*place.workshop), text);
    if (!source) return Refusal(source.error());
    return QStringLiteral("%1, %2").arg(from_utf8(source->title), from_utf8(source->edition));
  }
  [[nodiscard]] std::vector<Offer> offers(const Place& place) const override {
    std::vector<Offer> offers;
    if (place.workshop != nullptr)
      for (const specdb::SourceRecord& source : specdb::all_sources(*place.workshop))
        offers.push_back({source.slug, from_utf8(source.title)});
    return offers;
  }
  [[nodiscard]] int width() const override { return 16; }
};

template<class Kind>
const BlankKind& only() {
  static const Kind kind;
  return kind;
}

} // namespace

const BlankKind& part_turned_blank() {
  static const auto kind = choice_blank({{"head", QT_TRANSLATE_NOOP("Offers", "the head of the bolt")},
                                         {"nut", QT_TRANSLATE_NOOP("Offers", "the nut")},
                                         {"part", QT_TRANSLATE_NOOP("Offers", "the part itself: a hub, a plug")}});
  return *kind;
}

const BlankKind& yes_blank() {
  static const auto kind =
      choice_blank({{"yes", QT_TRANSLATE_NOOP("Offers", "yes")}, {"no", QT_TRANSLATE_NOOP("Offers", "no")}});
  return *kind;
}

const BlankKind& locks_line_blank() { return only<LocksLineBlank>(); }
const BlankKind& neighbours_line_blank() { return only<NeighboursLineBlank>(); }
const BlankKind& rechecks_line_blank() { return only<RechecksLineBlank>(); }
const BlankKind& document_blank() { return only<DocumentBlank>(); }

} // namespace clampwright::desk
