// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/wording.hpp"

#include <fmt/format.h>

namespace clampwright::report {

std::string_view severity_word(finding::Severity severity) {
  switch (severity) {
  case finding::Severity::stop:
    return "Stop";
  case finding::Severity::mind:
    return "Mind";
  case finding::Severity::note:
    return "Note";
  }
  return "";
}

std::string verdict_text(const tightening::ClampAnswer& answer) {
  using tightening::Governs;
  using tightening::Verdict;
  const std::string_view limit =
      answer.governed_by == Governs::yield ? "yield (by thread friction)" : "proof (by nut factor)";
  const auto& use = answer.governed_by == Governs::yield   ? answer.thread_friction->use_of_yield
                    : answer.governed_by == Governs::proof ? answer.nut_factor->use_of_proof
                                                           : std::optional<quantity::Band<double>>();
  const std::string shares = use ? fmt::format("likely {}, at the most {}", quantity::write_share(use->likely),
                                               quantity::write_share(use->high))
                                 : "";
  switch (answer.verdict) {
  case Verdict::within:
    if (!answer.asked.soft_part.empty())
      return fmt::format("the bolt is within {}: {}; but the {} sets the limit", limit, shares, answer.asked.soft_part);
    return fmt::format("within {}: {}", limit, shares);
  case Verdict::near_limit:
    return fmt::format("near {}: {}", limit, shares);
  case Verdict::may_exceed:
    return fmt::format("may exceed {}: {}", limit, shares);
  case Verdict::over_limit:
    return fmt::format("over {}: {}", limit, shares);
  case Verdict::not_known:
    break;
  }
  if (use) return fmt::format("not known: friction was not stated, and {} of {}", shares, limit);
  if (answer.asked.angle_follows) return "not known: the angle that follows makes the clamp load";
  if (answer.asked.kind != tightening::JointKind::bolt)
    return answer.asked.kind == tightening::JointKind::stud_set
               ? "not known: setting a stud is not judged by proof or yield"
               : fmt::format("not known: a {} is not judged by proof or yield",
                             tightening::joint_kind_name(answer.asked.kind));
  if (answer.asked.strength.class_name == "unknown") return "not known: the strength class is not known";
  return fmt::format("not known: class {} has no limit here that the known model can be held to",
                     answer.asked.strength.class_name);
}

std::string full_source(const Source& source) {
  std::string text = source.title;
  if (!source.edition.empty()) text += fmt::format(" ({})", source.edition);
  if (!source.where.empty() && !source.title.ends_with(source.where)) text += ", " + source.where;
  return fmt::format("{} [{}]", text, known_name(source.known));
}

std::string_view foot_line() {
  return "The maker's current instruction ranks above this figure. Local rules and licensed practice decide who may do "
         "the work.";
}

} // namespace clampwright::report
