// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/case.hpp"

#include <algorithm>
#include <numbers>
#include <utility>

#include <fmt/format.h>

namespace clampwright::tightening {

namespace {

quantity::Area circle(quantity::Length diameter) { return std::numbers::pi / 4.0 * diameter * diameter; }

Refusal out_of_range(std::string message, std::string hint, std::string field) {
  return refuse(Trouble::not_understood, "out-of-range", std::move(message), {}, std::move(hint), std::move(field));
}

} // namespace

std::string_view joint_kind_name(JointKind kind) {
  switch (kind) {
  case JointKind::bolt:
    return "bolt";
  case JointKind::hub:
    return "hub";
  case JointKind::plug:
    return "plug";
  case JointKind::stud_set:
    return "stud-set";
  case JointKind::union_nut:
    return "union";
  }
  return "";
}

WrenchAccuracy standard_accuracy(quantity::Torque torque) {
  if (torque <= quantity::newton_metres(10.0)) return {0.06, "ISO 6789: 6 % up to 10 N·m, the tool not being stated"};
  return {0.04, "ISO 6789: 4 % above 10 N·m, the tool not being stated"};
}

WrenchAccuracy tool_accuracy(quantity::Torque maximum) {
  if (maximum <= quantity::newton_metres(10.0))
    return {0.06, "ISO 6789:2003: 6 % for a setting tool with scale of up to 10 N·m"};
  return {0.04, "ISO 6789:2003: 4 % for a setting tool with scale of more than 10 N·m"};
}

std::optional<quantity::Area> bearing_section(const Case& c) {
  const auto stress_area = thread::geometry_of(c.thread).stress_area;
  if (!stress_area) return std::nullopt;
  quantity::Area section = *stress_area;
  if (c.shank) section = std::min(section, circle(*c.shank));
  if (c.bore) section -= circle(*c.bore);
  if (!(section > quantity::Area{})) return std::nullopt;
  return section;
}

Case with_true_loads(Case c) {
  if (!c.shank && !c.bore) return c;
  const auto section = bearing_section(c);
  if (section && *section < *thread::geometry_of(c.thread).stress_area)
    c.strength = strength::weakened(std::move(c.strength), *section);
  return c;
}

Result<void> check_section(const Case& c) {
  const auto mm = [](quantity::Length length) { return quantity::in_millimetres(length); };
  if (c.shank && *c.shank > c.thread.diameter)
    return out_of_range(
        fmt::format("a shank of {:g} mm is thicker than the thread of {:g} mm", mm(*c.shank), mm(c.thread.diameter)),
        "give the thinnest diameter of the waisted shank", "--shank");
  if (c.bore && thread::geometry_of(c.thread).stress_area && !bearing_section(c))
    return out_of_range(fmt::format("a bore of {:g} mm leaves nothing of the bolt", mm(*c.bore)),
                        "give the bore of the hollow bolt", "--bore");
  return {};
}

} // namespace clampwright::tightening
