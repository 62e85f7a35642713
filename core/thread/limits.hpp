// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/quantity/quantity.hpp"
#include "core/source/source.hpp"

namespace clampwright::thread {

// Limits of size of an external and an internal thread of the usual classes: 6g and 6H, 2A and 2B.
struct Limits {
  std::string external_class;
  quantity::Length d_max, d_min;   // crest
  quantity::Length d2_max, d2_min; // pitch diameter
  quantity::Length d3_max;         // root
  std::string internal_class;
  quantity::Length D_min;          // root, no upper limit
  quantity::Length D2_min, D2_max; // pitch diameter
  quantity::Length D1_min, D1_max; // crest
  Source source;
};

} // namespace clampwright::thread
