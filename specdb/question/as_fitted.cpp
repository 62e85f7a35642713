// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/as_fitted.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/tightening/clamp.hpp"
#include "specdb/catalogue/reductions.hpp"
#include "specdb/catalogue/surfaces.hpp"
#include "specdb/question/joint_question.hpp"

namespace clampwright::specdb {

namespace {

constexpr std::string_view k_not_stated = "not-stated";

bool is_for_stainless(const friction::Surfaces& surfaces) { return surfaces.name.starts_with("stainless"); }

// What the figure itself is in the way of.
std::string obstacle_of_figure(const FigureAnswer& figure, const friction::Surfaces& fitted) {
  if (figure.figure.surfaces == k_not_stated) return "nobody said which surfaces the figure is for";
  if (fitted.name == k_not_stated) return "what is fitted is not stated";
  if (figure.figure.angle_deg) return "the angle that follows makes the clamp load, whatever the surfaces";
  if (figure.figure.friction) return "the figure names its own friction";
  return {};
}

// Surfaces that this fastener cannot have, or must not be tightened on.
std::string obstacle_of_surfaces(const tightening::Case& asked, const friction::Surfaces& fitted) {
  if (fitted.name == "stainless-dry") return "stainless steel seizes dry: lubricate it";
  return why_not_these_surfaces(asked, fitted);
}

// Where the joint lives by dry surfaces, nothing slippery is reckoned with; where something soft sets the limit, no
// torque is raised.
std::string obstacle_of_joint(const JointRecord& joint, const tightening::Case& asked, const friction::Surfaces& fitted,
                              double factor) {
  if (factor < 1.0) return why_nothing_slippery(joint, asked, fitted);
  if (factor > 1.0 && !asked.soft_part.empty())
    return fmt::format("the {} sets the limit: never above the figure", asked.soft_part);
  return {};
}

} // namespace

std::string why_not_these_surfaces(const tightening::Case& asked, const friction::Surfaces& fitted) {
  const bool known = asked.strength.class_name != "unknown";
  if (known && !asked.strength.stainless && is_for_stainless(fitted))
    return "these surfaces are those of stainless fasteners";
  if (asked.strength.stainless && fitted.electroplated) return "a stainless fastener is not zinc-plated";
  return {};
}

std::string why_nothing_slippery(const JointRecord& joint, const tightening::Case& asked,
                                 const friction::Surfaces& fitted) {
  if (fitted.wet_compound) return {};
  if (joint.taper) return "the taper holds by friction alone: keep it clean and dry, as the figure wants it";
  if (asked.kind == tightening::JointKind::plug)
    return "plugs are tightened dry: their makers advise against lubricant";
  if (std::ranges::find(asked.locks, friction::LockFamily::compound, &friction::Lock::family) != asked.locks.end())
    return "locking compound holds on clean, degreased threads only";
  return {};
}

Result<AsFitted> as_fitted(const Catalogue& catalogue, const JointRecord& joint, const FigureAnswer& figure,
                           const std::string& surfaces, const std::optional<tightening::WrenchAccuracy>& accuracy,
                           const std::string& unusable_because) {
  const auto fitted = find_surfaces(catalogue, surfaces);
  if (!fitted) return in_field(fitted.error(), "--as-fitted");
  AsFitted out;
  out.surfaces = fitted->name;
  out.description = fitted->description;
  out.differs = fitted->name != figure.figure.surfaces;
  if (!out.differs || !figure.set) {
    if (out.differs) out.no_correction_because = unusable_because;
    return out;
  }
  CaseQuestion question = question_of(joint, figure.figure);
  question.mu.reset();
  question.surfaces = fitted->name;
  auto resolved = resolve(catalogue, question);
  if (!resolved) return Refusal(resolved.error());
  const auto stated = find_surfaces(catalogue, figure.figure.surfaces);
  if (!stated) return Refusal(stated.error());
  // Oil does not take a plating away.
  resolved->asked.electroplated = resolved->asked.electroplated || stated->electroplated;
  auto at_figure = tightening::clamp(resolved->asked, *figure.set, accuracy);
  if (!at_figure) return Refusal(at_figure.error());
  out.clamp_at_figure = std::move(*at_figure);

  const double factor = fitted->k.likely.value() / stated->k.likely.value();
  for (std::string obstacle :
       {unusable_because, obstacle_of_figure(figure, *fitted), obstacle_of_surfaces(resolved->asked, *fitted),
        obstacle_of_joint(joint, resolved->asked, *fitted, factor)})
    if (!obstacle.empty()) {
      out.no_correction_because = std::move(obstacle);
      return out;
    }
  const quantity::Torque running = resolved->asked.running_torque.value_or(quantity::Torque{});
  const auto corrected = [&](double share) { return running + share * (*figure.set - running); };
  out.factor = factor;
  out.torque = corrected(factor);
  for (const quantity::Torque& pass : figure.passes)
    out.passes.push_back(*out.torque * double(pass / *figure.set));
  for (friction::Reduction& published : reductions_between(catalogue, stated->name, fitted->name)) {
    const quantity::Torque torque = corrected(published.factor);
    out.rivals.push_back({std::move(published), torque});
  }
  auto clamp = tightening::clamp(resolved->asked, *out.torque, accuracy);
  if (!clamp) return Refusal(clamp.error());
  out.clamp = std::move(*clamp);
  return out;
}

} // namespace clampwright::specdb
