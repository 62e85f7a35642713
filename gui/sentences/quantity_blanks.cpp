// SPDX-License-Identifier: GPL-3.0-or-later
//
// Blanks for numbers, with and without a unit.
#include <QCoreApplication>

#include "core/friction/friction.hpp"
#include "core/quantity/read.hpp"
#include "core/text/plain_text.hpp"
#include "gui/look/utf8.hpp"
#include "gui/sentences/blank.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("Blanks", english); }

using quantity::Kind;
using quantity::Unit;

// What a quantity is shown in beside the unit in which it was typed.
std::vector<const Unit*> usual_units(Kind kind) {
  switch (kind) {
  case Kind::torque:
    return {&quantity::unit_named("N.m"), &quantity::unit_named("lbf.ft")};
  case Kind::force:
    return {&quantity::unit_named("kN"), &quantity::unit_named("lbf")};
  case Kind::stress:
    return {&quantity::unit_named("MPa"), &quantity::unit_named("psi")};
  case Kind::length:
    return {&quantity::unit_named("mm"), &quantity::unit_named("in")};
  case Kind::temperature:
    return {&quantity::unit_named("degC"), &quantity::unit_named("degF")};
  case Kind::angle:
    return {&quantity::unit_named("deg")};
  case Kind::time:
    return {&quantity::unit_named("h"), &quantity::unit_named("min")};
  case Kind::speed:
    return {&quantity::unit_named("rpm")};
  }
  return {};
}

// As typed, and in the other usual units: "45 N·m = 33.2 lbf·ft".
QString both_ways(const quantity::Reading& reading) {
  QString out = from_utf8(quantity::write_value(reading.value, *reading.unit, 9));
  for (const Unit* unit : usual_units(reading.unit->kind))
    if (unit != reading.unit)
      out += QStringLiteral(" = ") + from_utf8(quantity::write_si_rounded(reading.si(), *unit, 4));
  if (reading.mass_as_force) out += QStringLiteral("; ") + tr("the mass read as a force");
  return out;
}

class QuantityBlank : public BlankKind {
 public:
  explicit QuantityBlank(Kind kind) : kind_(kind) {}
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place&) const override {
    const auto reading = quantity::read_quantity(text, kind_);
    if (!reading) return Refusal(reading.error());
    return both_ways(*reading);
  }
  [[nodiscard]] Shape shape() const override { return Shape::quantity; }
  [[nodiscard]] std::vector<const Unit*> units(const Place& place) const override {
    std::vector<const Unit*> units;
    if (const Unit* wanted = wanted_unit(place.units)) units.push_back(wanted);
    for (const Unit& unit : quantity::all_units())
      if (unit.kind == kind_ && (units.empty() || &unit != units.front())) units.push_back(&unit);
    return units;
  }
  [[nodiscard]] int width() const override { return 7; }

 private:
  [[nodiscard]] const Unit* wanted_unit(const quantity::DisplayUnits& units) const {
    switch (kind_) {
    case Kind::torque:
      return units.torque;
    case Kind::force:
      return units.force;
    case Kind::stress:
      return units.stress;
    case Kind::length:
      return units.length;
    case Kind::angle:
      return units.angle;
    default:
      return usual_units(kind_).front();
    }
  }
  Kind kind_;
};

class AnyQuantityBlank : public BlankKind {
 public:
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place&) const override {
    const auto reading = quantity::read_quantity(text);
    if (!reading) return Refusal(reading.error());
    return both_ways(*reading);
  }
  [[nodiscard]] int width() const override { return 14; }
};

// A blank whose reader is a function, and whose reading is put into words by another.
template<class Read, class Say>
class ReadBlank : public BlankKind {
 public:
  ReadBlank(Read read, Say say, int width = 10) : read_(read), say_(say), width_(width) {}
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place&) const override {
    const auto value = read_(text);
    if (!value) return Refusal(value.error());
    return say_(*value);
  }
  [[nodiscard]] int width() const override { return width_; }

 private:
  Read read_;
  Say say_;
  int width_;
};

QString number_text(double value) { return from_utf8(quantity::write_number(value, 9)); }

template<class Coefficient>
QString band_text(const quantity::Band<Coefficient>& band) {
  if (!(band.low < band.high)) return number_text(band.likely.value());
  return tr("%1 to %2, likely %3")
      .arg(number_text(band.low.value()), number_text(band.high.value()), number_text(band.likely.value()));
}

class TickBlank : public BlankKind {
 public:
  [[nodiscard]] Result<QString> understood(const std::string&, const Place&) const override { return tr("yes"); }
  [[nodiscard]] Shape shape() const override { return Shape::tick; }
};

class WordsBlank : public BlankKind {
 public:
  [[nodiscard]] Result<QString> understood(const std::string& text, const Place&) const override {
    return from_utf8(text::printable(text));
  }
  [[nodiscard]] int width() const override { return 16; }
};

} // namespace

const BlankKind& quantity_blank(Kind kind) {
  static const std::vector<QuantityBlank> all = [] {
    std::vector<QuantityBlank> blanks;
    for (const Kind one : {Kind::torque, Kind::force, Kind::stress, Kind::length, Kind::angle, Kind::temperature,
                           Kind::time, Kind::speed})
      blanks.emplace_back(one);
    return blanks;
  }();
  return all[static_cast<std::size_t>(kind)];
}

const BlankKind& any_quantity_blank() {
  static const AnyQuantityBlank kind;
  return kind;
}

const BlankKind& friction_blank() {
  static const ReadBlank kind(&friction::read_friction_band, &band_text<friction::FrictionCoefficient>, 12);
  return kind;
}

const BlankKind& nut_factor_blank() {
  static const ReadBlank kind(&friction::read_nut_factor_band, &band_text<friction::NutFactor>, 12);
  return kind;
}

const BlankKind& number_blank() {
  static const ReadBlank kind(&quantity::read_number, &number_text, 6);
  return kind;
}

const BlankKind& share_blank() {
  static const ReadBlank kind(
      &quantity::read_share, [](double share) { return from_utf8(quantity::write_share(share)); }, 6);
  return kind;
}

const BlankKind& count_blank() {
  constexpr int k_many = 1000000; // the question knows the true end
  static const ReadBlank kind([](std::string_view text) { return quantity::read_count(text, 0, k_many); },
                              [](int count) { return QString::number(count); }, 5);
  return kind;
}

const BlankKind& size_pair_blank() {
  static const ReadBlank kind(&quantity::read_length_pair, [](const quantity::LengthPair& pair) {
    const quantity::DisplayUnits metric;
    return tr("%1 outside, %2 inside")
        .arg(from_utf8(quantity::write(pair.first, metric)), from_utf8(quantity::write(pair.second, metric)));
  });
  return kind;
}

const BlankKind& words_blank() {
  static const WordsBlank kind;
  return kind;
}

const BlankKind& tick_blank() {
  static const TickBlank kind;
  return kind;
}

} // namespace clampwright::desk
