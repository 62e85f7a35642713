// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/json/size_json.hpp"

#include <nlohmann/json.hpp>

#include "core/thread/geometry.hpp"

namespace clampwright::cli {

using quantity::in_millimetres;

namespace {

Json millimetres_or_null(const std::optional<quantity::Length>& length) {
  return length ? Json(in_millimetres(*length)) : Json(nullptr);
}

Json tools_json(const specdb::SizeFacts& facts, bool keys) {
  Json list = Json::array();
  for (const specdb::ToolSize& tool : facts.tools) {
    if (tool.is_key != keys) continue;
    Json one{{"fastener", tool.fastener}, {"standard", tool.standard}};
    one[keys ? "key_mm" : "across_flats_mm"] = in_millimetres(tool.width);
    if (!keys) one["marking"] = tool.marking.empty() ? Json(nullptr) : Json(tool.marking);
    list.push_back(std::move(one));
  }
  return list;
}

} // namespace

Json size_json(const thread::Thread& thread, const specdb::SizeFacts& facts) {
  Json out = Json::object();
  const auto section = thread::section_by_analogy(thread);
  out["section_by_analogy_mm2"] = section ? Json(quantity::in_square_millimetres(*section)) : Json(nullptr);
  out["section_by_analogy_basis"] =
      section ? Json("by analogy, no standard gives one: the circle of (pitch diameter + minor diameter)/2")
              : Json(nullptr);
  out["tapping_hole_mm"] = millimetres_or_null(thread::tapping_hole(thread));
  out["clearance_hole"] = facts.holes.medium ? Json{{"fine_mm", millimetres_or_null(facts.holes.fine)},
                                                    {"medium_mm", millimetres_or_null(facts.holes.medium)},
                                                    {"coarse_mm", millimetres_or_null(facts.holes.coarse)}}
                                             : Json(nullptr);
  out["spanners"] = tools_json(facts, false);
  out["hexagon_keys"] = tools_json(facts, true);
  Json nuts = Json::array();
  for (const specdb::NutSize& nut : facts.nuts)
    nuts.push_back({{"standard", nut.standard},
                    {"kind", nut.kind},
                    {"across_flats_mm", in_millimetres(nut.across_flats)},
                    {"height_mm", in_millimetres(nut.height)},
                    {"thread_height_mm", millimetres_or_null(nut.thread_height)}});
  out["nuts"] = std::move(nuts);
  Json washers = Json::array();
  for (const specdb::WasherSize& washer : facts.washers)
    washers.push_back({{"standard", washer.standard},
                       {"kind", washer.kind},
                       {"outer_mm", in_millimetres(washer.outer)},
                       {"inner_mm", in_millimetres(washer.inner)},
                       {"thickness_mm", in_millimetres(washer.thickness)}});
  out["washers"] = std::move(washers);
  return out;
}

} // namespace clampwright::cli
