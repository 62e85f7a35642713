// SPDX-License-Identifier: GPL-3.0-or-later
//
// Blanks for numbers, with and without a unit.
#include <QCoreApplication>

#include "core/calendar/moment.hpp"
#include "core/friction/friction.hpp"
#include "core/quantity/read.hpp"
#include "core/text/plain_text.hpp"
#include "core/tightening/sequence.hpp"
#include "gui/look/utf8.hpp"
#include "gui/sentences/blank.hpp"
#include "specdb/question/gauge_question.hpp"
#include "specdb/question/hold_reading.hpp"
#include "specdb/question/strip_question.hpp"
#include "specdb/question/wrench_words.hpp"

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
  [[nodiscard]] int width() const override { return 24; }
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

std::unique_ptr<BlankKind> count_blank(int least, int most) {
  const auto read = [least, most](std::string_view text) { return quantity::read_count(text, least, most); };
  const auto say = [](int count) { return QString::number(count); };
  return std::make_unique<ReadBlank<decltype(read), decltype(say)>>(read, say, 5);
}

const BlankKind& size_pair_blank() {
  static const ReadBlank kind(&quantity::read_length_pair, [](const quantity::LengthPair& pair) {
    const quantity::DisplayUnits metric;
    return tr("%1 outside, %2 inside")
        .arg(from_utf8(quantity::write(pair.first, metric)), from_utf8(quantity::write(pair.second, metric)));
  });
  return kind;
}

const BlankKind& stress_band_blank() {
  static const ReadBlank kind(
      &specdb::read_stress_band,
      [](const quantity::Band<quantity::Stress>& band) {
        const quantity::DisplayUnits metric;
        if (!(band.low < band.high)) return from_utf8(quantity::write(band.likely, metric));
        return tr("%1 to %2")
            .arg(from_utf8(quantity::write(band.low, metric)), from_utf8(quantity::write(band.high, metric)));
      },
      12);
  return kind;
}

const BlankKind& scale_range_blank() {
  static const ReadBlank kind(
      &specdb::read_scale_range,
      [](const specdb::ScaleRange& range) {
        return tr("%1 to %2").arg(number_text(range.low), from_utf8(quantity::write_value(range.high, *range.unit, 9)));
      },
      11);
  return kind;
}

const BlankKind& accuracy_blank() {
  static const ReadBlank kind(
      &specdb::read_accuracy, [](double share) { return from_utf8(quantity::write_share(share)); }, 6);
  return kind;
}

const BlankKind& threads_per_inch_blank() {
  static const ReadBlank kind(
      &specdb::read_tpi, [](double count) { return tr("%1 threads in one inch").arg(number_text(count)); }, 6);
  return kind;
}

const BlankKind& incomplete_blank() {
  static const ReadBlank kind(
      &specdb::read_incomplete,
      [](const specdb::Incomplete& incomplete) {
        return incomplete.turns ? tr("%1 turns").arg(number_text(*incomplete.turns))
                                : from_utf8(quantity::write(*incomplete.length, {}));
      },
      8);
  return kind;
}

const BlankKind& passes_blank() {
  static const ReadBlank kind(
      &tightening::read_passes,
      [](const std::vector<double>& passes) {
        QStringList shares;
        for (const double share : passes)
          shares << from_utf8(quantity::write_share(share));
        return shares.join(QStringLiteral(", "));
      },
      14);
  return kind;
}

const BlankKind& moment_blank() {
  static const ReadBlank kind(
      &calendar::read_moment, [](const calendar::Moment& moment) { return from_utf8(calendar::write_moment(moment)); },
      16);
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
