// SPDX-License-Identifier: GPL-3.0-or-later
//
// What can stand in a blank of a sentence. A kind of blank knows how its text is read, what was understood, and what it
// offers; it is no widget. One edit widget (widgets/blank_edit.hpp) serves every kind.
#pragma once

#include <chrono>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include <QString>

#include "core/problem/problem.hpp"
#include "core/quantity/write.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace clampwright::desk {

// Where and when a question is asked.
struct Place {
  const specdb::Catalogue* catalogue = nullptr;
  const specdb::Workshop* workshop = nullptr; // none is open
  quantity::DisplayUnits units;
  std::chrono::year_month_day today{};
};

// Something that may be written into a blank, and what it means.
struct Offer {
  std::string word;
  QString says; // may be empty
};

enum class Shape { words, quantity, tick }; // a line of text, a number with its unit beside it, a box to tick

class BlankKind {
 public:
  virtual ~BlankKind() = default;
  // What was understood, in words that show more than was typed: "= 33.2 lbf·ft". Never empty text. Fails as the
  // readers of core and specdb do.
  [[nodiscard]] virtual Result<QString> understood(const std::string& text, const Place& place) const = 0;
  [[nodiscard]] virtual std::vector<Offer> offers(const Place&) const { return {}; }
  [[nodiscard]] virtual Shape shape() const { return Shape::words; }
  // Of a quantity: the units that stand beside the number, the usual first.
  [[nodiscard]] virtual std::vector<const quantity::Unit*> units(const Place&) const { return {}; }
  // About how many letters it holds: "M10" takes less room than the name of a joint.
  [[nodiscard]] virtual int width() const { return 10; }
};

// A quantity with its unit. Zero and below are refused where the question refuses them.
[[nodiscard]] const BlankKind& quantity_blank(quantity::Kind kind);
// A quantity of any kind whose unit is typed along, for converting.
[[nodiscard]] const BlankKind& any_quantity_blank();

[[nodiscard]] const BlankKind& thread_blank();
[[nodiscard]] const BlankKind& fastener_blank(); // thread and class: "M10 8.8"
[[nodiscard]] const BlankKind& class_blank();
[[nodiscard]] const BlankKind& classes_blank(); // several: "8.8, 10.9"
[[nodiscard]] const BlankKind& surfaces_blank();
[[nodiscard]] const BlankKind& head_blank();
[[nodiscard]] const BlankKind& lock_blank();       // several with "+"
[[nodiscard]] const BlankKind& joint_kind_blank(); // bolt, hub, plug, stud-set, union
[[nodiscard]] const BlankKind& material_blank();

[[nodiscard]] const BlankKind& friction_blank();   // "0.12", "0.08..0.16"
[[nodiscard]] const BlankKind& nut_factor_blank(); // the same for K
[[nodiscard]] const BlankKind& number_blank();
[[nodiscard]] const BlankKind& share_blank();
[[nodiscard]] const BlankKind& count_blank();
[[nodiscard]] const BlankKind& size_pair_blank(); // "24x13mm"
[[nodiscard]] const BlankKind& words_blank();     // any words: a mark, a note
[[nodiscard]] const BlankKind& tick_blank();      // said or not said

// Of the open workshop.
[[nodiscard]] const BlankKind& joint_blank();
[[nodiscard]] const BlankKind& wrench_blank();

// One of a few words, as they are, each with its meaning: English, to be translated in the context "Offers".
struct Choice {
  const char* word;
  const char* says;
};
[[nodiscard]] std::unique_ptr<BlankKind> choice_blank(std::vector<Choice> choices);

} // namespace clampwright::desk
