// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/vet_command.hpp"

#include <algorithm>

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "cli/commands/opened_workshop.hpp"
#include "cli/json/values_json.hpp"
#include "core/report/wording.hpp"
#include "specdb/question/joint_answer.hpp"
#include "specdb/sql/error.hpp"
#include "specdb/workshop/joints.hpp"

namespace clampwright::cli {

namespace {

using finding::Code;
using finding::Finding;
using finding::Severity;

bool is_over_limit(const specdb::FigureAnswer& figure) {
  return figure.clamp && figure.clamp->verdict == tightening::Verdict::over_limit;
}

// What holds for the joint whatever its figure says: no reason for a second look.
bool is_standing_caution(Code code) {
  switch (code) {
  case Code::left_hand:
  case Code::crank_reaction:
  case Code::locking_compound:
  case Code::galling:
  case Code::soft_part:
  case Code::angle_final:
    return true;
  default:
    return false;
  }
}

// Slips of the unit first, then figures past the bolt's limit, then other stops, then what is to be minded.
constexpr int k_last = 3;

int rank_of(const Finding& finding) {
  if (finding.severity != Severity::stop) return k_last;
  if (finding.code == Code::unit_slip) return 0;
  return finding.code == Code::over_proof || finding.code == Code::over_yield ? 1 : 2;
}

// One joint that asks for a second look.
struct Look {
  std::string slug;
  int rank = k_last; // what comes first in the list
  std::vector<std::string> lines;
};

Look look_at(const specdb::JointAnswer& answer, const quantity::DisplayUnits& units) {
  Look look{answer.joint.slug, k_last, {}};
  for (const Finding& finding : answer.findings) {
    if (finding.severity == Severity::note || is_standing_caution(finding.code)) continue;
    look.rank = std::min(look.rank, rank_of(finding));
    look.lines.push_back(fmt::format("{}: {} [{}]", report::severity_word(finding.severity),
                                     report::finding_brief(finding, units), finding::code_name(finding.code)));
  }
  return look;
}

report::Section section_of(std::vector<Look> looks) {
  std::ranges::stable_sort(looks, {}, &Look::rank);
  report::Section section;
  for (const Look& look : looks)
    for (const std::string& line : look.lines)
      section.rows.push_back({&line == &look.lines.front() ? look.slug : "", line});
  return section;
}

// Without the foot line, which stands once for all.
Json findings_list(finding::Findings findings) {
  std::erase_if(findings, [](const Finding& finding) { return finding.code == Code::maker_first; });
  return findings_json(findings);
}

} // namespace

std::string_view VetCommand::summary() const { return "every figure of the workshop, looked at for sense"; }
std::string_view VetCommand::usage() const { return "vet"; }
std::vector<Example> VetCommand::examples() const { return {{"vet", "what asks for a second look"}}; }

void VetCommand::declare(CLI::App& app) { declare_words(app); }

Result<Outcome> VetCommand::run(const Context& context) {
  if (!words_.empty())
    return refuse(Trouble::usage, "surplus", "vet takes no words: it looks at every joint", words_.front(),
                  "write clampwright vet, or clampwright show JOINT for one");
  const auto workshop = open_workshop(context);
  if (!workshop) return Refusal(workshop.error());
  const specdb::Catalogue catalogue;

  Outcome out;
  Json specifications = Json::array();
  std::vector<Look> looks;
  const auto slugs = specdb::joint_slugs(*workshop);
  for (const std::string& slug : slugs) {
    const auto joint = specdb::joint_of_slug(*workshop, slug);
    if (!joint) throw specdb::DatabaseError("the list of joints has one that is not there", Trouble::not_understood);
    const auto answer = specdb::answer_for(catalogue, *joint, {{}, {}, context.today});
    if (!answer) {
      specifications.push_back({{"joint", slug}, {"findings", Json::array()}, {"error", answer.error().message}});
      looks.push_back(
          {slug,
           0,
           {fmt::format("Stop: it cannot be answered: {} ({})", answer.error().message, answer.error().input)}});
      out.exit = ExitCode::check_failed;
      continue;
    }
    specifications.push_back({{"joint", slug}, {"findings", findings_list(answer->findings)}});
    if (Look look = look_at(*answer, context.units); !look.lines.empty()) looks.push_back(std::move(look));
    const auto& beside = answer->beside;
    if (is_over_limit(answer->figure) || std::ranges::any_of(beside, is_over_limit)) out.exit = ExitCode::check_failed;
  }
  out.input = std::make_shared<Json>(Json::object());
  out.result = std::make_shared<Json>(
      Json{{"invented", workshop->is_invented()}, {"specifications", std::move(specifications)}});
  out.findings.push_back({Code::maker_first, Severity::note, {}});
  out.document.title = fmt::format("{} joints looked at; {} ask for a second look", slugs.size(), looks.size());
  if (workshop->is_invented()) out.document.banner = "INVENTED, to try the program with.";
  if (!looks.empty()) out.document.sections.push_back(section_of(std::move(looks)));
  out.document.has_foot = true;
  out.hints.emplace_back("clampwright show JOINT gives the whole answer, --explain its working");
  if (!workshop->note().empty()) out.hints.push_back(workshop->note());
  return out;
}

} // namespace clampwright::cli
