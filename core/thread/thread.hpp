// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/quantity/quantity.hpp"

namespace clampwright::thread {

enum class Form { metric, unified, whitworth, ba, bsc };
enum class Hand { right, left };

// A thread: what its designation means. `designation` is the form in which we write a right-hand
// thread ("M10" for a coarse pitch, "M10x1.25", "1/4-28 UNF", "5/16 BSW", "2 BA"); `series` is "coarse", "fine", "UNC",
// "UNF", "UNEF", "BSW", "BSF", "BA" or "BSC". `tpi` is set where the standard defines the pitch by threads per inch.
// `tolerance` is the class as given ("6g", "2A"), empty if none was given. A pair of diameter and pitch that no table
// has is not `listed`; it has no series, and of its standard only the form holds for it.
struct Thread {
  std::string designation;
  Form form = Form::metric;
  quantity::Length diameter;
  quantity::Length pitch;
  std::optional<double> tpi;
  std::string series;
  Hand hand = Hand::right;
  std::string tolerance;
  bool listed = true;
};

// "metric", "unified", "whitworth", "ba", "bsc".
[[nodiscard]] std::string_view form_name(Form form);
[[nodiscard]] std::string_view hand_name(Hand hand);

// The standard that gives the form its shape, short: "ISO 68-1", "ASME B1.1".
[[nodiscard]] std::string_view form_standard(Form form);

} // namespace clampwright::thread
