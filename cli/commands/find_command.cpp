// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/find_command.hpp"

#include <algorithm>

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/commands/opened_workshop.hpp"
#include "cli/json/values_json.hpp"
#include "core/text/plain_text.hpp"
#include "specdb/question/joint_answer.hpp"
#include "specdb/workshop/joints.hpp"
#include "specdb/workshop/search.hpp"

namespace clampwright::cli {

namespace {

// Nothing begins with "plly"; read as: drive pulley
std::string read_as_line(const specdb::Found& found) {
  if (found.unknown.empty()) return fmt::format("No joint has all these words; read as: {}", found.read_as);
  std::string unknown;
  for (const std::string& word : found.unknown)
    unknown += fmt::format("{}\"{}\"", unknown.empty() ? "" : " or ", text::quotable(word));
  return fmt::format("Nothing begins with {}; read as: {}", unknown, found.read_as);
}

// What `show` would say of the torque itself: a list must not show a number alone that show marks as not to be used.
struct Figures {
  std::vector<std::string> also_in_force;
  std::string unusable_because;
};

Figures figures_of(const specdb::Catalogue& catalogue, const specdb::Workshop& workshop, const specdb::Hit& hit) {
  Figures figures;
  const auto joint = specdb::joint_of_slug(workshop, hit.joint);
  if (!joint || !hit.torque_printed) return figures;
  for (const specdb::FigureRecord& other : joint->beside)
    figures.also_in_force.push_back(other.printed);
  if (const auto answer = specdb::answer_for(catalogue, *joint))
    figures.unusable_because = answer->not_to_be_used_because;
  return figures;
}

std::string torque_words(const specdb::Hit& hit, const Figures& figures) {
  if (!hit.torque_printed) return "no torque given";
  std::string words = *hit.torque_printed;
  for (const std::string& other : figures.also_in_force)
    words += " or " + other;
  return figures.unusable_because.empty() ? words
                                          : fmt::format("{}, NOT TO BE USED: {}", words, figures.unusable_because);
}

} // namespace

std::string_view FindCommand::summary() const { return "joints of the workshop by words"; }
std::string_view FindCommand::usage() const { return "find WORDS..."; }
std::vector<Example> FindCommand::examples() const {
  return {{"find head nut", "beginnings of words will do"},
          {"find drive plly", "slips are forgiven"},
          {"find M10x1.25", "a thread"},
          {"find winch", "a machine"}};
}

void FindCommand::declare(CLI::App& app) { declare_words(app); }

Result<Outcome> FindCommand::run(const Context& context) {
  if (words_.empty())
    return refuse(Trouble::usage, "missing", "the words to look for are missing", {},
                  "write clampwright find head nut");
  const std::string words = fmt::format("{}", fmt::join(words_, " "));
  const auto workshop = open_workshop(context);
  if (!workshop) return Refusal(workshop.error());
  const specdb::Found found = specdb::search(*workshop, words);
  const auto& hits = found.hits;

  Outcome out;
  Json list = Json::array();
  report::Section rows{found.read_as.empty() ? "" : read_as_line(found), {}};
  const specdb::Catalogue catalogue;
  for (const specdb::Hit& hit : hits) {
    const Figures figures = figures_of(catalogue, *workshop, hit);
    list.push_back({{"joint", hit.joint},
                    {"machine", hit.machine},
                    {"assembly", hit.assembly},
                    {"name", hit.name},
                    {"thread", hit.thread},
                    {"torque_printed", text_or_null(hit.torque_printed)},
                    {"also_in_force", figures.also_in_force},
                    {"not_to_be_used_because",
                     figures.unusable_because.empty() ? Json(nullptr) : Json(figures.unusable_because)}});
    rows.rows.push_back(
        {hit.joint, fmt::format("{}, {}: {}, {}", hit.name, hit.machine, hit.thread, torque_words(hit, figures))});
  }
  out.input = std::make_shared<Json>(Json{{"words", words}});
  out.result = std::make_shared<Json>(Json{{"invented", workshop->is_invented()},
                                           {"read_as", found.read_as.empty() ? Json() : Json(found.read_as)},
                                           {"hits", std::move(list)}});
  out.document.title = hits.empty() ? fmt::format("Nothing found for \"{}\"", text::quotable(words))
                                    : fmt::format("{} {}", hits.size(), hits.size() == 1 ? "joint" : "joints");
  if (workshop->is_invented()) out.document.banner = "INVENTED, to try the program with.";
  if (std::ranges::any_of(hits, [](const specdb::Hit& hit) { return hit.torque_printed.has_value(); })) {
    out.findings.push_back({finding::Code::maker_first, finding::Severity::note, {}});
    out.document.has_foot = true;
  }
  if (!rows.rows.empty()) out.document.sections.push_back(std::move(rows));
  if (!workshop->note().empty()) out.hints.push_back(workshop->note());
  if (hits.empty()) out.hints.emplace_back("fewer or shorter words find more; a thread is written like M10x1.25");
  return out;
}

} // namespace clampwright::cli
