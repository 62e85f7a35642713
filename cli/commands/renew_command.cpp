// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/renew_command.hpp"

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "cli/commands/opened_workshop.hpp"
#include "cli/json/values_json.hpp"
#include "specdb/question/renew_question.hpp"

namespace clampwright::cli {

namespace {

Json parts_json(const std::vector<specdb::RenewedPart>& parts) {
  Json list = Json::array();
  for (const specdb::RenewedPart& part : parts)
    list.push_back({{"joint", part.joint},
                    {"machine", part.machine},
                    {"name", part.name},
                    {"part", part.part},
                    {"thread", part.thread},
                    {"count", part.quantity},
                    {"because", part.because},
                    {"source", source_json(part.source)}});
  return list;
}

Json totals_json(const std::vector<specdb::RenewedPart>& parts) {
  Json list = Json::array();
  for (const specdb::RenewedTotal& total : specdb::totals_of(parts))
    list.push_back({{"part", total.part}, {"thread", total.thread}, {"count", total.quantity}});
  return list;
}

} // namespace

std::string_view RenewCommand::summary() const { return "parts that are new each time, before a strip-down"; }
std::string_view RenewCommand::usage() const { return "renew [MACHINE or JOINT]"; }
std::vector<Example> RenewCommand::examples() const {
  return {{"renew pump", "all that must be at hand for one machine"},
          {"renew head nuts", "for one joint"},
          {"renew", "for the whole workshop"}};
}

void RenewCommand::declare(CLI::App& app) { declare_words(app); }

Result<Outcome> RenewCommand::run(const Context& context) {
  const std::string words = fmt::format("{}", fmt::join(words_, " "));
  const auto workshop = open_workshop(context);
  if (!workshop) return Refusal(workshop.error());
  const specdb::Catalogue catalogue;
  const auto parts = specdb::parts_to_renew(catalogue, *workshop, words);
  if (!parts) return Refusal(parts.error());
  Outcome out;
  out.input = std::make_shared<Json>(Json{{"words", words.empty() ? Json(nullptr) : Json(words)}});
  out.result = std::make_shared<Json>(
      Json{{"invented", workshop->is_invented()}, {"totals", totals_json(*parts)}, {"parts", parts_json(*parts)}});
  out.document = specdb::renew_document(words, *parts);
  out.sources = out.document.sources;
  if (!workshop->note().empty()) out.hints.push_back(workshop->note());
  return out;
}

} // namespace clampwright::cli
