// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/friction/friction.hpp"
#include "core/quantity/quantity.hpp"
#include "core/source/source.hpp"
#include "core/strength/strength.hpp"
#include "core/thread/geometry.hpp"
#include "core/thread/thread.hpp"

namespace clampwright::tightening {

// What is tightened. Only a bolt (or a nut on a stud) that clamps is judged by its proof load and yield.
enum class JointKind { bolt, hub, plug, stud_set, union_nut };

// "bolt", "hub", "plug", "stud-set", "union".
[[nodiscard]] std::string_view joint_kind_name(JointKind kind);

// The ring on which the turned part rubs. `outer` is the smaller of the head's face and the washer.
struct Face {
  quantity::Length outer;
  quantity::Length inner;
  std::string basis; // how the two diameters are known, in words
  std::vector<Source> sources;

  [[nodiscard]] quantity::Length mean_diameter() const { return (outer + inner) / 2.0; }
};

// By how much the torque that is reached may miss the one that is set: a share of it, and where that share comes from.
struct WrenchAccuracy {
  double share;
  std::string basis;
};

// ISO 6789:2003 (as set out in a tool handbook, second hand): 6 % for tools of up to 10 N·m, 4 % above. With the tool
// unknown the torque stands for it.
[[nodiscard]] WrenchAccuracy standard_accuracy(quantity::Torque torque);

// The same for a tool whose greatest torque is known.
[[nodiscard]] WrenchAccuracy tool_accuracy(quantity::Torque maximum);

// One fastener and how it is tightened: everything the two models need. What is not known is left out; nothing is
// filled in here.
struct Case {
  thread::Thread thread;
  strength::Strength strength = strength::unknown_strength();
  JointKind kind = JointKind::bolt;

  std::string surfaces; // the name, or "" where coefficients were given
  bool friction_stated = false;
  bool wet_compound = false;
  bool electroplated = false;
  std::optional<friction::FrictionBand> mu_thread;
  std::optional<friction::FrictionBand> mu_head;
  std::optional<friction::NutFactorBand> nut_factor;
  std::vector<Source> friction_sources;

  std::optional<Face> face;
  std::vector<friction::Lock> locks;
  std::optional<quantity::Torque> running_torque; // prevailing torque of a locking nut
  std::optional<quantity::Length> shank;          // waisted: thinner than the thread
  std::optional<quantity::Length> bore;           // hollow
  bool mass_as_force = false;                     // a mass spelling was read as a force

  std::optional<bool> mates_with_stainless; // the nut or the part that it screws into; empty: not known
  bool angle_follows = false;               // the torque only snugs; an angle makes the clamp load
  std::string soft_part;                    // wood, plastic, a gasket that sets the limit; empty: none known
  bool weak_head = false;                   // a head that its standard makes with reduced loadability
  std::string no_face_because;              // why the named head has no flat face; empty: it has, or none was named
};

// Is the section that bears the load (A0) known, and greater than nothing? The smaller of stress area and shank, less
// the bore; without a stress area (Whitworth, BA) there is none.
[[nodiscard]] std::optional<quantity::Area> bearing_section(const Case& c);

// The loads that a standard prints hold for full bolts. Where shank or bore weaken the section, the case comes back
// with loads by stress × section.
[[nodiscard]] Case with_true_loads(Case c);

// Fails with out-of-range where shank or bore do not fit the thread.
[[nodiscard]] Result<void> check_section(const Case& c);

} // namespace clampwright::tightening
