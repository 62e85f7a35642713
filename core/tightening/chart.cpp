// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/chart.hpp"

#include <algorithm>
#include <cmath>
#include <variant>

namespace clampwright::tightening {

namespace {

using finding::Code;
using finding::Finding;
using finding::Severity;

double share(const Finding& finding, std::size_t fact) {
  const double* value = fact < finding.facts.size() ? std::get_if<double>(&finding.facts[fact]) : nullptr;
  return value ? *value : 0.0;
}

double force(const Finding& finding, std::size_t fact) {
  const auto* value = fact < finding.facts.size() ? std::get_if<quantity::Force>(&finding.facts[fact]) : nullptr;
  return value ? quantity::in_newtons(*value) : 0.0;
}

// How much of the same thing, to compare rows by; findings without a measure are all alike.
double amount(const Finding& finding) {
  switch (finding.code) {
  case Code::over_proof:
  case Code::over_yield:
    return share(finding, 1);
  case Code::near_limit:
    return share(finding, 0);
  case Code::low_preload:
    return -share(finding, 0);
  case Code::models_disagree: {
    const double by_k = force(finding, 0);
    const double by_mu = force(finding, 1);
    return by_k > 0.0 && by_mu > 0.0 ? std::abs(std::log(by_k / by_mu)) : 0.0;
  }
  default:
    return 0.0;
  }
}

bool is_graver(const Finding& one, const Finding& other) {
  return one.severity != other.severity ? one.severity < other.severity : amount(one) > amount(other);
}

} // namespace

std::vector<SharedFinding> shared_findings(const Chart& chart) {
  std::vector<SharedFinding> shared;
  for (std::size_t at = 0; at < chart.rows.size(); ++at) {
    if (!chart.rows[at].answer) continue;
    for (const Finding& finding : chart.rows[at].answer->clamp.findings) {
      const auto known =
          std::ranges::find_if(shared, [&](const SharedFinding& s) { return s.finding.code == finding.code; });
      if (known == shared.end()) {
        shared.push_back({finding, at, {at}});
        continue;
      }
      known->rows.push_back(at);
      if (is_graver(finding, known->finding)) {
        known->finding = finding;
        known->at = at;
      }
    }
  }
  // A row without torque has no findings of its own; that of an aircraft class is said all the same.
  const bool said =
      std::ranges::any_of(shared, [](const SharedFinding& s) { return s.finding.code == Code::approved_data; });
  if (!chart.approved_data_class.empty() && !said)
    shared.push_back({{Code::approved_data, Severity::stop, {chart.approved_data_class}}, 0, {}});
  shared.insert(shared.begin(), SharedFinding{{Code::size_chart, Severity::mind, {}}, 0, {}});
  std::ranges::stable_sort(shared, {}, [](const SharedFinding& s) { return finding::rank(s.finding); });
  return shared;
}

bool is_not_to_be_set(const ChartRow& row) { return row.answer && row.answer->clamp.verdict == Verdict::over_limit; }

} // namespace clampwright::tightening
