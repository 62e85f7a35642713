// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/quantity/quantity.hpp"
#include "core/source/source.hpp"
#include "core/thread/thread.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::specdb {

// ISO 273: fine, medium, coarse; ASME B18.2.8: close, normal, loose.
struct ClearanceHoles {
  std::optional<quantity::Length> fine;
  std::optional<quantity::Length> medium;
  std::optional<quantity::Length> coarse;
};

// The spanner or key for one kind of fastener.
struct ToolSize {
  std::string fastener; // "hexagon", "small hexagon", "socket"
  std::string standard;
  bool is_key = false;
  quantity::Length width;
  std::string marking; // "1/4 W, 5/16 BS"; may be empty
};

struct NutSize {
  std::string standard;
  std::string kind;
  quantity::Length across_flats;
  quantity::Length height;
  std::optional<quantity::Length> thread_height; // least height of full thread
};

struct WasherSize {
  std::string standard;
  std::string kind;
  quantity::Length inner;
  quantity::Length outer;
  quantity::Length thickness;
};

// What goes with a thread of that size, as far as the tables have it.
struct SizeFacts {
  ClearanceHoles holes;
  std::vector<ToolSize> tools;
  std::vector<NutSize> nuts;
  std::vector<WasherSize> washers;
  std::vector<Source> sources;
};

[[nodiscard]] SizeFacts size_facts(const Catalogue& catalogue, const thread::Thread& thread);

} // namespace clampwright::specdb
