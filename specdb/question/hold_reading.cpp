// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/hold_reading.hpp"

#include <array>

#include <fmt/format.h>

#include "core/friction/friction.hpp"
#include "core/quantity/read.hpp"
#include "core/quantity/write.hpp"
#include "core/text/plain_text.hpp"

namespace clampwright::specdb {

namespace {

using crank::Way;
using quantity::Angle;
using quantity::Band;
using quantity::Force;
using quantity::Length;
using quantity::Stress;
using quantity::Torque;

struct LengthEntry {
  MaybeText HoldQuestion::*text;
  std::optional<Length> HoldReading::*value;
  const char* option;
  const char* name;
};

// clang-format off
constexpr std::array k_lengths{
    LengthEntry{&HoldQuestion::stroke,          &HoldReading::stroke,          "--stroke",          "stroke"},
    LengthEntry{&HoldQuestion::rod,             &HoldReading::rod,             "--rod",             "rod"},
    LengthEntry{&HoldQuestion::below_tdc,       &HoldReading::below_tdc,       "--below-tdc",       "below top dead centre"},
    LengthEntry{&HoldQuestion::stop_length,     &HoldReading::stop_length,     "--stop-length",     "stop length"},
    LengthEntry{&HoldQuestion::crown_depth,     &HoldReading::crown_depth,     "--crown-depth",     "crown depth"},
    LengthEntry{&HoldQuestion::tip_diameter,    &HoldReading::tip_diameter,    "--tip-diameter",    "tip diameter"},
    LengthEntry{&HoldQuestion::port_depth,      &HoldReading::port_depth,      "--port-depth",      "port depth"},
    LengthEntry{&HoldQuestion::plug_engaged,    &HoldReading::plug_engaged,    "--plug-engaged",    "plug thread engaged"},
    LengthEntry{&HoldQuestion::crown_thickness, &HoldReading::crown_thickness, "--crown-thickness", "crown thickness"},
    LengthEntry{&HoldQuestion::crown_radius,    &HoldReading::crown_radius,    "--crown-radius",    "crown radius"},
    LengthEntry{&HoldQuestion::strap_radius,    &HoldReading::strap_radius,    "--strap-radius",    "strap radius"},
    LengthEntry{&HoldQuestion::gear_diameter,   &HoldReading::gear_diameter,   "--gear-diameter",   "gear diameter"},
    LengthEntry{&HoldQuestion::pin_diameter,    &HoldReading::pin_diameter,    "--pin-diameter",    "pin diameter"},
    LengthEntry{&HoldQuestion::pin_length,      &HoldReading::pin_length,      "--pin-length",      "pin length"},
};
// clang-format on

const quantity::DisplayUnits k_units;

Result<void> read_lengths(const HoldQuestion& q, HoldReading& out) {
  for (const LengthEntry& entry : k_lengths) {
    const MaybeText& text = q.*entry.text;
    if (!text) continue;
    const auto length = quantity::read_length(*text);
    if (!length) return in_field(length.error(), entry.option);
    out.*entry.value = *length;
    out.understood.push_back(fmt::format("{} {}", entry.name, quantity::write(*length, k_units)));
  }
  return {};
}

Result<std::optional<Torque>> read_torque_of(const MaybeText& text, const char* option, const char* name,
                                             HoldReading& out) {
  if (!text) return std::optional<Torque>();
  const auto reading = quantity::read_quantity(*text, quantity::Kind::torque);
  if (!reading) return in_field(reading.error(), option);
  const Torque torque = quantity::newton_metres(reading->si());
  if (!(torque > Torque()))
    return not_understood("out-of-range", "a torque of nothing was understood; nothing has to be held against it",
                          *text, fmt::format("write a torque above zero, like {} 30Nm", option), option);
  out.mass_as_force = out.mass_as_force || reading->mass_as_force;
  out.understood.push_back(fmt::format("{} {}", name, quantity::write(torque, k_units)));
  return std::optional(torque);
}

// Before top dead centre the piston rises; behind it, it leaves the stop.
Result<void> check_angle(Angle angle, const std::string& text) {
  const double value = quantity::in_degrees(angle);
  const std::string hint =
      "write the angle of the crank before top dead centre, above 0 and below 180, like --angle 45deg";
  const std::string words = quantity::write_number(value, 6) + "°";
  if (value > 180.0 || value < -180.0)
    return not_understood("out-of-range", fmt::format("{} was understood; an angle lies within 180° of the top", words),
                          text, hint, "--angle");
  if (value < 0)
    return not_understood("out-of-range",
                          fmt::format("{} before top dead centre is {}° behind it: there the piston goes down and no "
                                      "stop holds it",
                                      words, quantity::write_number(-value, 6)),
                          text, hint + "; turned the other way, the crank meets the stop before the top again",
                          "--angle");
  if (!(value > 0) || !(value < 180.0))
    return not_understood("out-of-range",
                          fmt::format("{} is a dead centre: there the force of any torque has no limit", words), text,
                          hint, "--angle");
  return {};
}

Result<void> read_angles(const HoldQuestion& q, HoldReading& out) {
  if (q.angle) {
    const auto angle = quantity::read_angle(*q.angle);
    if (!angle) return in_field(angle.error(), "--angle");
    if (const auto fits = check_angle(*angle, *q.angle); !fits) return fits;
    out.angle = *angle;
    out.understood.push_back(fmt::format("angle {}°", quantity::write_number(quantity::in_degrees(*angle), 6)));
  }
  if (q.stop_incline) {
    const auto angle = quantity::read_angle(*q.stop_incline);
    if (!angle) return in_field(angle.error(), "--stop-incline");
    const double value = quantity::in_degrees(*angle);
    if (value < 0 || value > 60.0)
      return not_understood(
          "out-of-range",
          fmt::format("{}° was understood; a stop stands at 0 to 60° to the bore", quantity::write_number(value, 6)),
          *q.stop_incline, "write the angle between the stop and the bore, like --stop-incline 20deg",
          "--stop-incline");
    out.stop_incline = *angle;
  }
  return {};
}

Result<std::optional<Force>> read_force_limit(const MaybeText& text, const char* option) {
  if (!text) return std::optional<Force>();
  const auto force = quantity::read_force(*text);
  if (!force) return in_field(force.error(), option);
  if (!(*force > Force()))
    return not_understood("out-of-range", "a force of nothing was understood", *text,
                          fmt::format("write what it may bear, like {} 6kN", option), option);
  return std::optional(*force);
}

Result<void> read_limits(const HoldQuestion& q, HoldReading& out) {
  if (q.tip_limit) {
    const auto limit = quantity::read_stress(*q.tip_limit);
    if (!limit) return in_field(limit.error(), "--tip-limit");
    out.tip_limit = *limit;
  }
  if (q.plug_margin) {
    const auto margin = quantity::read_number(*q.plug_margin);
    if (!margin) return in_field(margin.error(), "--plug-margin");
    if (*margin < 1.0)
      return not_understood("out-of-range",
                            fmt::format("a margin of {} was understood: below 1 the thread is stripped",
                                        quantity::write_number(*margin, 6)),
                            *q.plug_margin, "write how many times the load the thread must bear, like --plug-margin 3",
                            "--plug-margin");
    out.plug_margin = *margin;
  }
  const auto rod = read_force_limit(q.rod_limit, "--rod-limit");
  if (!rod) return Refusal(rod.error());
  out.rod_limit = *rod;
  const auto stop = read_force_limit(q.stop_limit, "--stop-limit");
  if (!stop) return Refusal(stop.error());
  out.stop_limit = *stop;
  return {};
}

Result<void> read_press_fit(const HoldQuestion& q, HoldReading& out) {
  if (q.pin_pressure) {
    const auto pressure = read_stress_band(*q.pin_pressure);
    if (!pressure) return in_field(pressure.error(), "--pin-pressure");
    out.pin_pressure = *pressure;
    out.understood.push_back("pin pressure " + text::quotable(*q.pin_pressure));
  }
  if (q.pin_friction) {
    const auto friction = friction::read_friction_band(*q.pin_friction);
    if (!friction) return in_field(friction.error(), "--pin-friction");
    out.pin_friction = quantity::map(*friction, [](friction::FrictionCoefficient mu) { return mu.value(); });
    out.understood.push_back("pin friction " + text::quotable(*q.pin_friction));
  }
  return {};
}

// What stands behind the number: "MPa".
std::string_view unit_of(std::string_view part) {
  const std::size_t at = part.find_last_of("0123456789.");
  return at == std::string_view::npos ? part : part.substr(at + 1);
}

} // namespace

Result<Way> read_way(std::string_view text) {
  std::string names;
  for (const Way way : {Way::same_end, Way::strap, Way::gear, Way::stop, Way::far_end}) {
    if (text::equal_fold(text, crank::way_name(way))) return way;
    names += fmt::format("{}{}", names.empty() ? "" : ", ", crank::way_name(way));
  }
  return not_understood("not-understood", "that is none of the ways to hold a crank", text,
                        fmt::format("write --by with one of {}", names), "--by");
}

Result<void> check_tool(std::string_view text) {
  if (text::equal_fold(text, "hand")) return {};
  if (text::equal_fold(text, "impact"))
    return not_understood(
        "impact-tool",
        "no figure is given for an impact tool: the peak torque of its blows is not known to anybody, "
        "the inertia of the crank shields rod and crown only in part, and key, tooth, pin or plug "
        "thread take the shock",
        text, "undo it by hand with the part itself held; --tool hand", "--tool");
  return not_understood("not-understood", "a tool is hand or impact", text, "write --tool hand, or leave it out",
                        "--tool");
}

Result<Band<Stress>> read_stress_band(std::string_view original) {
  const std::string hint = "write a pressure like 100MPa, 80..120MPa or 80..100..120MPa";
  std::vector<std::string> parts;
  std::string_view rest = original;
  for (std::size_t at = rest.find(".."); at != std::string_view::npos; at = rest.find("..")) {
    parts.push_back(text::plain_spaces(rest.substr(0, at)));
    rest.remove_prefix(at + 2);
  }
  parts.push_back(text::plain_spaces(rest));
  if (parts.size() > 3) return not_understood("not-understood", "more than three pressures were given", original, hint);
  std::vector<Stress> values;
  for (std::string& part : parts) {
    // The unit of the last stands for those without one.
    if (!part.empty() && unit_of(part).empty()) part += unit_of(parts.back());
    const auto value = quantity::read_stress(part);
    if (!value) {
      Problem problem = value.error();
      problem.input = text::quotable(original);
      problem.hint = hint;
      return Refusal(std::move(problem));
    }
    values.push_back(*value);
  }
  const Stress likely = values.size() == 3 ? values[1] : 0.5 * (values.front() + values.back());
  if (likely < values.front() || values.back() < likely)
    return not_understood("out-of-range", "the pressures do not rise", original, hint);
  return Band<Stress>{values.front(), likely, values.back()};
}

Result<HoldReading> read_hold(const HoldQuestion& q) {
  HoldReading out;
  if (q.tool)
    if (const auto tool = check_tool(*q.tool); !tool) return Refusal(tool.error());
  if (q.by) {
    const auto by = read_way(*q.by);
    if (!by) return Refusal(by.error());
    out.by = *by;
  }
  const auto torque = read_torque_of(q.torque, "--torque", "torque", out);
  if (!torque) return Refusal(torque.error());
  out.torque = *torque;
  const auto undo = read_torque_of(q.undo_torque, "--undo-torque", "torque to undo", out);
  if (!undo) return Refusal(undo.error());
  out.undo_torque = *undo;
  for (const auto read : {read_lengths, read_angles, read_limits, read_press_fit})
    if (const auto done = read(q, out); !done) return Refusal(done.error());
  return out;
}

} // namespace clampwright::specdb
