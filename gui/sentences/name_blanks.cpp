// SPDX-License-Identifier: GPL-3.0-or-later
//
// Blanks for what the tables and the workshop know by name.
#include <algorithm>

#include <QCoreApplication>

#include "core/report/thread_report.hpp"
#include "core/text/plain_text.hpp"
#include "core/thread/designation.hpp"
#include "gui/look/utf8.hpp"
#include "gui/sentences/blank.hpp"
#include "gui/sentences/sentence.hpp"
#include "gui/text/wording.hpp"
#include "specdb/catalogue/faces.hpp"
#include "specdb/catalogue/names.hpp"
#include "specdb/catalogue/strengths.hpp"
#include "specdb/catalogue/surfaces.hpp"
#include "specdb/catalogue/threads.hpp"
#include "specdb/question/substitute_question.hpp"
#include "specdb/workshop/joints.hpp"
#include "specdb/workshop/wrenches.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("Blanks", english); }

std::vector<Offer> bare(const std::vector<std::string>& names) {
  std::vector<Offer> offers;
  for (const std::string& name : names)
    offers.push_back({name, {}});
  return offers;
}

QString thread_words(const thread::Thread& thread) {
  const QString hand = thread.hand == thread::Hand::left ? tr("left-hand") : tr("right-hand");
  const QString pitch = thread.tpi ? tr("%1 threads per inch").arg(*thread.tpi)
                                   : tr("pitch %1").arg(from_utf8(quantity::write(thread.pitch, {})));
  return QStringLiteral("%1, %2, %3, %4")
      .arg(from_utf8(thread::write_designation(thread)), pitch, hand, worded(report::form_words(thread.form)));
}

class ThreadBlank : public BlankKind {
 public:
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place& place) const override {
    const auto entry = specdb::find_thread(*place.catalogue, text);
    if (entry) return thread_words(entry->thread);
    // Whether a pitch that no table lists is taken is for the whole sentence to say.
    const auto any = specdb::find_thread_of_any_pitch(*place.catalogue, text);
    if (any) return tr("%1, in no table").arg(thread_words(any->thread));
    return Refusal(entry.error());
  }
  [[nodiscard]] std::vector<Offer> offers(const Place& place) const override {
    std::vector<Offer> offers;
    for (const specdb::ThreadEntry& entry : specdb::all_threads(*place.catalogue))
      offers.push_back({thread::write_designation(entry.thread), from_utf8(entry.thread.series)});
    return offers;
  }
  [[nodiscard]] int width() const override { return 11; }
};

class FastenerBlank : public BlankKind {
 public:
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place& place) const override {
    const auto read = specdb::read_fastener(*place.catalogue, text, true);
    if (!read) return Refusal(read.error());
    return tr("thread %1, class %2").arg(from_utf8(read->first), from_utf8(read->second));
  }
  [[nodiscard]] int width() const override { return 14; }
};

class ClassBlank : public BlankKind {
 public:
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place& place) const override {
    if (specdb::class_key(text) == "unknown") return tr("not known: nothing is said of proof or yield");
    const auto found = specdb::find_class(*place.catalogue, text);
    if (!found) return refused(*place.catalogue, text);
    return QStringLiteral("%1, %2").arg(from_utf8(found->name), worded(report::form_words(found->form)));
  }
  [[nodiscard]] std::vector<Offer> offers(const Place& place) const override {
    auto names = specdb::class_names(*place.catalogue);
    names.emplace_back("unknown");
    return bare(names);
  }

 private:
  // In the words that count "unknown" among the classes. Whether a class is known does not hang on the size.
  static Refusal refused(const specdb::Catalogue& catalogue, const std::string& text) {
    const auto thread = specdb::find_thread(catalogue, "M10");
    if (!thread) return Refusal(thread.error());
    const auto found = specdb::find_strength(catalogue, text, thread->thread);
    return found ? Refusal(specdb::find_class(catalogue, text).error()) : Refusal(found.error());
  }
};

class ClassesBlank : public BlankKind {
 public:
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place& place) const override {
    QStringList names;
    for (std::size_t begin = 0; begin <= text.size();) {
      const std::size_t end = std::min(text.find(',', begin), text.size());
      const auto one = specdb::find_class(*place.catalogue, text::plain_spaces(text.substr(begin, end - begin)));
      if (!one) return Refusal(one.error());
      names << QStringLiteral("%1, %2").arg(from_utf8(one->name), worded(report::form_words(one->form)));
      begin = end + 1;
    }
    return names.join(QStringLiteral("; "));
  }
  [[nodiscard]] std::vector<Offer> offers(const Place& place) const override {
    return bare(specdb::class_names(*place.catalogue));
  }
  [[nodiscard]] int width() const override { return 14; }
};

class SurfacesBlank : public BlankKind {
 public:
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place& place) const override {
    const auto found = specdb::find_surfaces(*place.catalogue, text);
    if (!found) return Refusal(found.error());
    return worded(found->description);
  }
  [[nodiscard]] std::vector<Offer> offers(const Place& place) const override {
    return bare(specdb::surfaces_names(*place.catalogue));
  }
  [[nodiscard]] int width() const override { return 16; }
};

class HeadBlank : public BlankKind {
 public:
  // What is asked for first: what is neither is called none of those.
  explicit HeadBlank(bool of_nut) : of_nut_(of_nut) {}
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place& place) const override {
    const auto heads = specdb::face_names(*place.catalogue, specdb::Part::head);
    const auto nuts = specdb::face_names(*place.catalogue, specdb::Part::nut);
    const auto is_it = [&](const std::string& name) { return specdb::name_key(name) == specdb::name_key(text); };
    if (const auto head = std::ranges::find_if(heads, is_it); head != heads.end())
      return tr("head: %1").arg(from_utf8(*head));
    if (const auto nut = std::ranges::find_if(nuts, is_it); nut != nuts.end())
      return tr("nut: %1").arg(from_utf8(*nut));
    return specdb::no_such_name(of_nut_ ? "nut" : "head", text, of_nut_ ? nuts : heads);
  }
  [[nodiscard]] std::vector<Offer> offers(const Place& place) const override {
    auto names = specdb::face_names(*place.catalogue, specdb::Part::head);
    for (std::string& nut : specdb::face_names(*place.catalogue, specdb::Part::nut))
      if (std::ranges::find(names, nut) == names.end()) names.push_back(std::move(nut));
    return bare(names);
  }
  [[nodiscard]] int width() const override { return 14; }

 private:
  bool of_nut_;
};

class LockBlank : public BlankKind {
 public:
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place& place) const override {
    QStringList all;
    for (const std::string& one : several({{"", text}}, "")) {
      const auto found = specdb::find_lock(*place.catalogue, one);
      if (!found) return Refusal(found.error());
      all << worded(found->description);
    }
    return all.join(QStringLiteral(" + "));
  }
  [[nodiscard]] std::vector<Offer> offers(const Place& place) const override {
    return bare(specdb::lock_names(*place.catalogue));
  }
  [[nodiscard]] bool is_list() const override { return true; }
  [[nodiscard]] int width() const override { return 18; }
};

Refusal no_workshop(const std::string& text) {
  return refuse(Trouble::no_such, "no-workshop", "no workshop is open", text,
                "open one, or the demo workshop, from the menu Workshop");
}

class JointBlank : public BlankKind {
 public:
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place& place) const override {
    if (place.workshop == nullptr) return no_workshop(text);
    const auto found = specdb::find_joint(*place.workshop, text);
    if (!found) return Refusal(found.error());
    return QStringLiteral("%1 / %2 / %3")
        .arg(from_utf8(found->machine.name), from_utf8(found->assembly), from_utf8(found->name));
  }
  [[nodiscard]] std::vector<Offer> offers(const Place& place) const override {
    return place.workshop == nullptr ? std::vector<Offer>() : bare(specdb::joint_slugs(*place.workshop));
  }
  [[nodiscard]] int width() const override { return 20; }
};

class WrenchBlank : public BlankKind {
 public:
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place& place) const override {
    if (place.workshop == nullptr) return no_workshop(text);
    const auto found = specdb::find_wrench(*place.workshop, text);
    if (!found) return Refusal(found.error());
    return from_utf8(found->name);
  }
  [[nodiscard]] std::vector<Offer> offers(const Place& place) const override {
    std::vector<Offer> offers;
    if (place.workshop != nullptr)
      for (const specdb::WrenchRecord& wrench : specdb::all_wrenches(*place.workshop))
        offers.push_back({wrench.slug, from_utf8(wrench.name)});
    return offers;
  }
};

template<class Kind>
const BlankKind& only() {
  static const Kind kind;
  return kind;
}

} // namespace

const BlankKind& thread_blank() { return only<ThreadBlank>(); }
const BlankKind& fastener_blank() { return only<FastenerBlank>(); }
const BlankKind& class_blank() { return only<ClassBlank>(); }
const BlankKind& classes_blank() { return only<ClassesBlank>(); }
const BlankKind& surfaces_blank() { return only<SurfacesBlank>(); }
const BlankKind& head_blank() {
  static const HeadBlank kind(false);
  return kind;
}
const BlankKind& nut_face_blank() {
  static const HeadBlank kind(true);
  return kind;
}
const BlankKind& lock_blank() { return only<LockBlank>(); }
const BlankKind& joint_blank() { return only<JointBlank>(); }
const BlankKind& wrench_blank() { return only<WrenchBlank>(); }

} // namespace clampwright::desk
