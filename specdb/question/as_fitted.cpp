// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/as_fitted.hpp"

#include "core/tightening/clamp.hpp"
#include "specdb/catalogue/reductions.hpp"
#include "specdb/catalogue/surfaces.hpp"
#include "specdb/question/joint_question.hpp"

namespace clampwright::specdb {

namespace {

constexpr std::string_view k_not_stated = "not-stated";

// Why the torque cannot be corrected for other surfaces; empty where it can.
std::string obstacle(const FigureAnswer& figure, const friction::Surfaces& fitted,
                     const std::string& unusable_because) {
  if (!unusable_because.empty()) return unusable_because;
  if (figure.figure.surfaces == k_not_stated) return "nobody said which surfaces the figure is for";
  if (fitted.name == k_not_stated) return "what is fitted is not stated";
  if (figure.figure.angle_deg) return "the angle that follows makes the clamp load, whatever the surfaces";
  if (figure.figure.friction) return "the figure names its own friction";
  return {};
}

} // namespace

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
    if (out.differs) out.no_correction_because = obstacle(figure, *fitted, unusable_because);
    return out;
  }
  CaseQuestion question = question_of(joint, figure.figure);
  question.mu.reset();
  question.surfaces = fitted->name;
  const auto resolved = resolve(catalogue, question);
  if (!resolved) return Refusal(resolved.error());
  auto at_figure = tightening::clamp(resolved->asked, *figure.set, accuracy);
  if (!at_figure) return Refusal(at_figure.error());
  out.clamp_at_figure = std::move(*at_figure);
  out.no_correction_because = obstacle(figure, *fitted, unusable_because);
  if (!out.no_correction_because.empty()) return out;

  const auto stated = find_surfaces(catalogue, figure.figure.surfaces);
  if (!stated) return Refusal(stated.error());
  const quantity::Torque running = resolved->asked.running_torque.value_or(quantity::Torque{});
  const auto corrected = [&](double factor) { return running + factor * (*figure.set - running); };
  out.factor = fitted->k.likely.value() / stated->k.likely.value();
  out.torque = corrected(*out.factor);
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
