// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/as_fitted.hpp"

#include <algorithm>

#include "core/tightening/clamp.hpp"
#include "specdb/catalogue/reductions.hpp"
#include "specdb/catalogue/surfaces.hpp"
#include "specdb/question/joint_question.hpp"

namespace clampwright::specdb {

namespace {

// What the figure itself is in the way of.
std::string obstacle_of_figure(const FigureAnswer& figure) {
  if (figure.figure.angle_deg) return "the angle that follows makes the clamp load, whatever the surfaces";
  if (figure.figure.friction) return "the figure names its own friction";
  return {};
}

} // namespace

locking::RefitPlace place_of(const JointRecord& joint, const tightening::Case& asked) {
  locking::RefitPlace place;
  if (asked.strength.class_name != "unknown") place.stainless = asked.strength.stainless;
  place.taper = joint.taper.has_value();
  place.plug = asked.kind == tightening::JointKind::plug;
  place.compound =
      std::ranges::find(asked.locks, friction::LockFamily::compound, &friction::Lock::family) != asked.locks.end();
  place.soft_part = asked.soft_part;
  return place;
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

  const double factor = locking::ratio_of(stated->k, fitted->k).likely;
  for (std::string obstacle : {unusable_because, obstacle_of_figure(figure),
                               locking::why_not_corrected(place_of(joint, resolved->asked), *stated, *fitted)})
    if (!obstacle.empty()) {
      out.no_correction_because = std::move(obstacle);
      return out;
    }
  const quantity::Torque running = resolved->asked.running_torque.value_or(quantity::Torque{});
  const auto corrected = [&](double share) { return locking::refitted(*figure.set, running, share); };
  out.factor = factor;
  out.torque = corrected(factor);
  if (figure.clamp)
    out.by_thread_friction = tightening::same_load_by_thread_friction(*figure.clamp, *out.clamp_at_figure);
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
