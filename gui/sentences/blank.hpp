// SPDX-License-Identifier: GPL-3.0-or-later
//
// What can stand in a blank of a sentence. A kind of blank knows how its text is read, what was understood, and what it
// offers; it is no widget. One edit widget (widgets/blank_edit.hpp) serves every kind.
#pragma once

#include <chrono>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
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
  // May it be said several times, with "+" between: "compound-medium + split-pin"?
  [[nodiscard]] virtual bool is_list() const { return false; }
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
[[nodiscard]] const BlankKind& nut_face_blank();   // the same where a nut is what is turned
[[nodiscard]] const BlankKind& lock_blank();       // several with "+"
[[nodiscard]] const BlankKind& joint_kind_blank(); // bolt, hub, plug, stud-set, union
[[nodiscard]] const BlankKind& material_blank();
[[nodiscard]] const BlankKind& elastic_blank();      // a material whose modulus is known
[[nodiscard]] const BlankKind& nut_class_blank();    // a nut by the bolts that it is made for
[[nodiscard]] const BlankKind& nut_strength_blank(); // a nut by what it bears
[[nodiscard]] const BlankKind& one_lock_blank();
[[nodiscard]] const BlankKind& compound_blank();     // a lock, offered are those that cure
[[nodiscard]] const BlankKind& cure_surface_blank(); // several with "+"
[[nodiscard]] const BlankKind& head_mark_blank();    // "8.8", "3 radial lines", "none"
[[nodiscard]] const BlankKind& unit_blank();         // several with "+"

[[nodiscard]] const BlankKind& friction_blank();   // "0.12", "0.08..0.16"
[[nodiscard]] const BlankKind& nut_factor_blank(); // the same for K
[[nodiscard]] const BlankKind& number_blank();
[[nodiscard]] const BlankKind& share_blank();
[[nodiscard]] const BlankKind& size_pair_blank();   // "24x13mm"
[[nodiscard]] const BlankKind& stress_band_blank(); // "80..120MPa"
[[nodiscard]] const BlankKind& scale_range_blank(); // "10..60Nm"
[[nodiscard]] const BlankKind& accuracy_blank();    // "4%": above nothing and under one
[[nodiscard]] const BlankKind& turn_blank();        // "clockwise"
[[nodiscard]] const BlankKind& threads_per_inch_blank();
[[nodiscard]] const BlankKind& incomplete_blank(); // "2" turns, or a length
[[nodiscard]] const BlankKind& passes_blank();     // "50%,75%,100%"
[[nodiscard]] const BlankKind& moment_blank();     // "2026-11-26 09:30"
[[nodiscard]] const BlankKind& words_blank();      // any words: a mark, a note
[[nodiscard]] const BlankKind& tick_blank();       // said or not said

// Of the open workshop.
[[nodiscard]] const BlankKind& joint_blank();
[[nodiscard]] const BlankKind& wrench_blank();

// One of a few words, as they are, each with its meaning: English, to be translated in the context "Offers".
struct Choice {
  const char* word;
  const char* says;
};
using Check = Result<void> (*)(std::string_view);
// Refused is what the question's own reader refuses; without one, whatever is none of the words.
[[nodiscard]] std::unique_ptr<BlankKind> choice_blank(std::vector<Choice> choices, Check check = nullptr);
// That reader as a check.
template<auto read>
Result<void> checked(std::string_view text) {
  const auto value = read(text);
  if (!value) return Refusal(value.error());
  return {};
}

// A whole number in these bounds.
[[nodiscard]] std::unique_ptr<BlankKind> count_blank(int least, int most);

} // namespace clampwright::desk
