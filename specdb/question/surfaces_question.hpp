// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/finding/finding.hpp"
#include "core/friction/friction.hpp"
#include "core/friction/reduction.hpp"
#include "core/problem/problem.hpp"
#include "core/quantity/band.hpp"
#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "core/tightening/answer.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/question/joint_answer.hpp"
#include "specdb/question/text_field.hpp"

namespace clampwright::specdb {

// A torque and the two states of the surfaces, as text.
struct SurfacesQuestion {
  std::optional<std::string> stated;            // what the torque is for
  std::optional<std::string> fitted;            // what is on the bench
  std::optional<std::string> stated_nut_factor; // where K is known by test
  std::optional<std::string> fitted_nut_factor;
  std::optional<std::string> torque;
  std::optional<std::string> running_torque;
  std::optional<std::string> thread; // for the clamp load
  std::optional<std::string> strength_class;
  std::vector<std::string> locks;
  std::optional<std::string> kind; // bolt, plug, …
  bool taper = false;
  std::optional<std::string> into; // what it screws into: a name of the table of materials
};

// Without locks and taper, which are no single text.
inline constexpr std::array k_surfaces_fields{
    TextField<SurfacesQuestion>{"--stated", &SurfacesQuestion::stated},
    TextField<SurfacesQuestion>{"--fitted", &SurfacesQuestion::fitted},
    TextField<SurfacesQuestion>{"--stated-nut-factor", &SurfacesQuestion::stated_nut_factor},
    TextField<SurfacesQuestion>{"--fitted-nut-factor", &SurfacesQuestion::fitted_nut_factor},
    TextField<SurfacesQuestion>{"--torque", &SurfacesQuestion::torque},
    TextField<SurfacesQuestion>{"--running-torque", &SurfacesQuestion::running_torque},
    TextField<SurfacesQuestion>{"--kind", &SurfacesQuestion::kind},
    TextField<SurfacesQuestion>{"--into", &SurfacesQuestion::into},
    TextField<SurfacesQuestion>{"--thread", &SurfacesQuestion::thread},
    TextField<SurfacesQuestion>{"--class", &SurfacesQuestion::strength_class},
};

struct SurfacesReply {
  friction::Surfaces stated;
  friction::Surfaces fitted;
  quantity::Torque torque = {};
  quantity::Torque running = {};
  bool differs = false;
  quantity::Band<double> ratio{1, 1, 1};                    // fitted over stated, by nut factor
  std::optional<quantity::Torque> corrected = {};           // once; the torque itself where nothing differs
  std::optional<quantity::Torque> by_thread_friction = {};  // the same by the likely thread friction, with a thread
  std::string no_correction_because = {};                   // empty where there is one
  std::vector<RivalReduction> published = {};               // for this change
  std::vector<RivalReduction> for_part = {};                // for the material of the part, whatever the surfaces
  std::optional<tightening::ClampAnswer> as_stated = {};    // with a thread: the torque on its own surfaces
  std::optional<tightening::ClampAnswer> uncorrected = {};  // the torque on what is fitted
  std::optional<tightening::ClampAnswer> as_corrected = {}; // the corrected torque on what is fitted
  finding::Findings findings = {};
  std::vector<Source> sources = {};
};

// Fails with usage for what is missing, with not-understood and no-such for the texts.
[[nodiscard]] Result<SurfacesReply> answer_surfaces(const Catalogue& catalogue, const SurfacesQuestion& question);

[[nodiscard]] report::Document surfaces_document(const SurfacesReply& reply, const quantity::DisplayUnits& units);

// All states of surfaces with their bands.
[[nodiscard]] std::vector<friction::Surfaces> all_surfaces(const Catalogue& catalogue);
[[nodiscard]] report::Document all_surfaces_document(const std::vector<friction::Surfaces>& surfaces);

} // namespace clampwright::specdb
