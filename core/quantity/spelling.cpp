// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/spelling.hpp"

#include <algorithm>
#include <array>
#include <unordered_map>

#include <fmt/format.h>

#include "core/text/plain_text.hpp"

namespace clampwright::quantity {

namespace {

using text::equal_fold;
using text::to_lower;

// A word for the force or the length inside a torque, as it is written between separators ("." here).
struct Part {
  std::string_view word;
  std::string_view unit; // of the force or length table
  bool is_mass = false;
};

constexpr std::array k_force_parts{
    Part{"N", "N"},
    Part{"newton", "N"},
    Part{"newtons", "N"},
    Part{"mN", "mN"},
    Part{"dN", "dN"},
    Part{"daN", "daN"},
    Part{"kN", "kN"},
    Part{"kgf", "kgf"},
    Part{"kp", "kgf"},
    Part{"kilopond", "kgf"},
    Part{"kg", "kgf", true},
    Part{"gf", "gf"},
    Part{"g", "gf", true},
    Part{"lbf", "lbf"},
    Part{"lbsf", "lbf"},
    Part{"pound.force", "lbf"},
    Part{"lb", "lbf", true},
    Part{"lbs", "lbf", true},
    Part{"pound", "lbf", true},
    Part{"pounds", "lbf", true},
    Part{"ozf", "ozf"},
    Part{"ounce.force", "ozf"},
    Part{"oz", "ozf", true},
    Part{"ounce", "ozf", true},
    Part{"ounces", "ozf", true},
};

constexpr std::array k_length_parts{
    Part{"m", "m"},   Part{"metre", "m"}, Part{"metres", "m"},  Part{"meter", "m"}, Part{"meters", "m"},
    Part{"cm", "cm"}, Part{"mm", "mm"},   Part{"ft", "ft"},     Part{"foot", "ft"}, Part{"feet", "ft"},
    Part{"in", "in"}, Part{"inch", "in"}, Part{"inches", "in"},
};

// The other kinds: spelling and unit name.
struct Word {
  std::string_view text;
  std::string_view unit;
};

constexpr std::array k_words{
    Word{"N", "N"},
    Word{"newton", "N"},
    Word{"newtons", "N"},
    Word{"kN", "kN"},
    Word{"daN", "daN"},
    Word{"lbf", "lbf"},
    Word{"pound.force", "lbf"},
    Word{"kgf", "kgf"},
    Word{"kp", "kgf"},
    Word{"ozf", "ozf"},
    Word{"MPa", "MPa"},
    Word{"Pa", "Pa"},
    Word{"kPa", "kPa"},
    Word{"GPa", "GPa"},
    Word{"N/mm2", "N/mm2"},
    Word{"psi", "psi"},
    Word{"lbf/in2", "psi"},
    Word{"ksi", "ksi"},
    Word{"bar", "bar"},
    Word{"kgf/mm2", "kgf/mm2"},
    Word{"kp/mm2", "kgf/mm2"},
    Word{"mm", "mm"},
    Word{"millimetre", "mm"},
    Word{"millimetres", "mm"},
    Word{"millimeter", "mm"},
    Word{"millimeters", "mm"},
    Word{"cm", "cm"},
    Word{"m", "m"},
    Word{"metre", "m"},
    Word{"metres", "m"},
    Word{"meter", "m"},
    Word{"meters", "m"},
    Word{"um", "um"},
    Word{"in", "in"},
    Word{"inch", "in"},
    Word{"inches", "in"},
    Word{"\"", "in"},
    Word{"ft", "ft"},
    Word{"foot", "ft"},
    Word{"feet", "ft"},
    Word{"deg", "deg"},
    Word{"degree", "deg"},
    Word{"degrees", "deg"},
    Word{"°", "deg"},
    Word{"rad", "rad"},
    Word{"degC", "degC"},
    Word{"deg.C", "degC"},
    Word{"°C", "degC"},
    Word{"°.C", "degC"},
    Word{"degF", "degF"},
    Word{"deg.F", "degF"},
    Word{"°F", "degF"},
    Word{"°.F", "degF"},
    Word{"K", "K"},
    Word{"h", "h"},
    Word{"hour", "h"},
    Word{"hours", "h"},
    Word{"min", "min"},
    Word{"minute", "min"},
    Word{"minutes", "min"},
    Word{"s", "s"},
    Word{"second", "s"},
    Word{"seconds", "s"},
    Word{"d", "d"},
    Word{"day", "d"},
    Word{"days", "d"},
    Word{"rpm", "rpm"},
    Word{"r/min", "rpm"},
    Word{"rev/min", "rpm"},
    Word{"1/min", "rpm"},
};

// Spellings whose meaning hangs on the case of one letter, as written. Nobody can tell a slip of the shift key from the
// prefix mega or milli, so they are refused; the spelling with the right case is in the hint.
struct Doubtful {
  std::string_view text;
  std::string_view hint;
};

constexpr std::array k_doubtful{
    Doubtful{"mPA", "millipascals or megapascals? Write MPa"},
    Doubtful{"mM", "milli- or megametres? Write mm"},
    Doubtful{"mPa", "millipascals or megapascals? Write MPa"},
    Doubtful{"Mm", "megametres or millimetres? Write mm"},
    Doubtful{"mN", "millinewtons or metre-newtons? Write N, or N.m for a torque"},
    Doubtful{"MN", "mega- or millinewtons, or metre-newtons? Write kN, or N.m for a torque"},
    Doubtful{"mn", "millinewtons or metre-newtons? Write N, or N.m for a torque"},
    Doubtful{"Mn", "mega- or millinewtons, or metre-newtons? Write kN, or N.m for a torque"},
    Doubtful{"M", "a capital M is no unit. Write m for metres, N.m for a torque"},
    Doubtful{"k", "a small k is no unit. Write K for kelvin, kN for a force"},
    Doubtful{"S", "a capital S is no unit. Write s for seconds"},
};

// A capital M before newtons inside a torque: mega, or milli with a slip of the shift key.
bool has_doubtful_newtons(std::string_view key) {
  constexpr std::array<std::string_view, 4> k_torques{"mn.m", "mnm", "m.mn", "mmn"};
  return std::ranges::find(k_torques, to_lower(key)) != k_torques.end() &&
         (key.find("MN") != std::string_view::npos || key.find("Mn") != std::string_view::npos);
}

// Words that are units, but of no kind that is used here.
constexpr std::array k_energies{"J",    "kJ",  "joule", "joules", "Wh",  "kWh", "W.h",
                                "kW.h", "cal", "kcal",  "erg",    "btu", "W.s", "Ws"};
constexpr std::array k_masses{"kg", "g", "lb", "lbs", "oz", "pound", "pounds", "ounce", "ounces", "t"};

struct Tables {
  std::unordered_map<std::string, Spelling> exact;
  std::unordered_map<std::string, Spelling> folded;
};

std::string torque_name(std::string_view force, std::string_view length) { return fmt::format("{}.{}", force, length); }

const Unit* find_torque(std::string_view force, std::string_view length) {
  const std::string name = torque_name(force, length);
  for (const Unit& unit : all_units())
    if (unit.kind == Kind::torque && unit.name == name) return &unit;
  return nullptr;
}

std::string dotted_removed(std::string_view text) {
  std::string out;
  for (const char c : text)
    if (c != '.') out += c;
  return out;
}

void add(Tables& tables, std::string key, Spelling spelling) {
  tables.folded.try_emplace(to_lower(key), spelling);
  tables.exact.try_emplace(std::move(key), spelling);
}

Tables make_tables() {
  Tables tables;
  for (const Word& word : k_words) {
    const Spelling spelling{&unit_named(word.unit)};
    add(tables, std::string(word.text), spelling);
    if (word.text.find('.') != std::string_view::npos && word.text != ".")
      add(tables, dotted_removed(word.text), spelling);
  }
  for (const Part& force : k_force_parts) {
    for (const Part& length : k_length_parts) {
      const Unit* unit = find_torque(force.unit, length.unit);
      if (unit == nullptr) continue;
      const Spelling spelling{unit, force.is_mass};
      for (const std::string_view separator : {".", ""}) {
        for (const std::string& written : {std::string(force.word), dotted_removed(force.word)}) {
          add(tables, fmt::format("{}{}{}", written, separator, length.word), spelling);
          add(tables, fmt::format("{}{}{}", length.word, separator, written), spelling);
        }
      }
    }
  }
  // One Army manual (MIL-DTL-45916C, Table I) prints the metre-kilogram with a stroke.
  for (const std::string_view stroke : {"kg/m", "kp/m", "kgf/m"})
    add(tables, std::string(stroke), Spelling{&unit_named("kgf.m"), stroke == "kg/m"});
  return tables;
}

const Tables& tables() {
  static const Tables made = make_tables();
  return made;
}

// Brings the joints between the parts of a unit to one form: "N · m", "N*m", "N-m", "N m" all become "N.m".
std::string normalised(std::string_view text) {
  std::string out;
  bool joint_pending = false;
  bool sign_seen = false;
  for (std::size_t i = 0; i < text.size();) {
    const std::string_view rest = text.substr(i);
    std::size_t length = 0;
    bool sign = false;
    if (rest.starts_with("·") || rest.starts_with("∙"))
      length = rest.starts_with("·") ? 2 : 3, sign = true;
    else if (rest.starts_with("⋅") || rest.starts_with("•"))
      length = 3, sign = true;
    else if (rest[0] == '.' || rest[0] == '*' || rest[0] == '-')
      length = 1, sign = true;
    else if (rest[0] == ' ')
      length = 1;
    if (length != 0) {
      if (sign && sign_seen) return std::string(text); // two signs in a row: nothing we know
      joint_pending = true;
      sign_seen = sign_seen || sign;
      i += length;
      continue;
    }
    if (joint_pending && !out.empty()) out += '.';
    joint_pending = false;
    sign_seen = false;
    if (rest.starts_with("²")) {
      out += '2';
      i += 2;
    } else if (rest.starts_with("º") || rest.starts_with("˚")) {
      out += "°";
      i += 2;
    } else if (rest.starts_with("µ") || rest.starts_with("μ")) {
      out += 'u';
      i += 2;
    } else if (rest.starts_with("″") || rest.starts_with("”")) {
      out += '"';
      i += 3;
    } else {
      out += rest[0];
      i += 1;
    }
  }
  if (joint_pending) out += '.';
  return out;
}

template<class List>
bool holds(const List& list, std::string_view text) {
  return std::ranges::any_of(list, [&](std::string_view word) { return equal_fold(word, text); });
}

} // namespace

Result<Spelling> read_unit(std::string_view text) {
  const std::string key = normalised(text);
  for (const Doubtful& doubtful : k_doubtful)
    if (doubtful.text == key)
      return not_understood("ambiguous-unit", fmt::format("\"{}\" can be read in more than one way", text), text,
                            std::string(doubtful.hint));
  if (has_doubtful_newtons(key))
    return not_understood("ambiguous-unit", fmt::format("\"{}\" can be read in more than one way", text), text,
                          "mega- or millinewton metres? Write N.m, kN.m or mN.m");
  if (const auto found = tables().exact.find(key); found != tables().exact.end()) return found->second;
  if (holds(k_energies, key))
    return not_understood("wrong-kind", fmt::format("\"{}\" is a unit of energy; no energy is asked for here", text),
                          text, "a torque is written in N.m or lbf.ft, for example 24.5N.m");
  if (holds(k_masses, key))
    return not_understood("wrong-kind", fmt::format("\"{}\" is a mass, not a force", text), text,
                          "write kgf, lbf or ozf for a force (250kgf), kgf.m or lbf.ft for a torque (2.5kgf.m)");
  if (const auto found = tables().folded.find(to_lower(key)); found != tables().folded.end()) return found->second;
  return not_understood("unknown-unit", fmt::format("\"{}\" is no unit that is known here", text), text,
                        fmt::format("units of torque are {}; of force {}; of stress {}; of length {}",
                                    unit_names(Kind::torque), unit_names(Kind::force), unit_names(Kind::stress),
                                    unit_names(Kind::length)));
}

std::string unit_names(Kind kind) {
  std::string out;
  for (const Unit& unit : all_units()) {
    if (unit.kind != kind) continue;
    if (!out.empty()) out += ' ';
    out += unit.name;
  }
  return out;
}

std::string_view example_of(Kind kind) {
  switch (kind) {
  case Kind::torque:
    return "24.5N.m";
  case Kind::force:
    return "15kN";
  case Kind::stress:
    return "640MPa";
  case Kind::length:
    return "10mm";
  case Kind::angle:
    return "60deg";
  case Kind::temperature:
    return "20degC";
  case Kind::time:
    return "24h";
  case Kind::speed:
    return "3000rpm";
  }
  return "";
}

} // namespace clampwright::quantity
