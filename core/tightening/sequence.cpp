// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightening/sequence.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

#include "core/quantity/read.hpp"
#include "core/quantity/write.hpp"
#include "core/text/plain_text.hpp"

namespace clampwright::tightening {

namespace {

constexpr std::array k_patterns{Pattern::circle, Pattern::row, Pattern::two_rows};
constexpr double k_rounds_to = 0.02; // of the final torque: what rounding a round down may take from it
constexpr std::size_t k_most_passes = 10;
constexpr const char* k_like_passes = "write them like --passes 50%,75%,100%";

std::vector<int> circle(int bolts) {
  std::vector<int> order;
  if (bolts == 1) return {1};
  if (bolts % 2 == 1) {
    const int step = (bolts - 1) / 2;
    for (int i = 0; i < bolts; ++i)
      order.push_back(i * step % bolts + 1);
    return order;
  }
  for (const int first : circle(bolts / 2)) {
    order.push_back(first);
    order.push_back(first + bolts / 2);
  }
  return order;
}

std::vector<int> row(int bolts) {
  std::vector<int> order;
  int left = (bolts + 1) / 2;
  int right = left + 1;
  if (bolts % 2 == 1) order.push_back(left--);
  while (left >= 1) {
    order.push_back(left--);
    order.push_back(right++);
  }
  return order;
}

std::vector<int> two_rows(int bolts) {
  const int columns = bolts / 2;
  std::vector<int> order;
  int left = (columns + 1) / 2;
  int right = left + 1;
  if (columns % 2 == 1) {
    order.insert(order.end(), {left, left + columns});
    --left;
  }
  for (; left >= 1; --left, ++right)
    order.insert(order.end(), {left, right + columns, right, left + columns});
  return order;
}

// The largest of 1, 2, 5 times a power of ten that is not above `most`.
double round_step(double most) {
  const double decade = std::pow(10.0, std::floor(std::log10(most)));
  for (const double digit : {5.0, 2.0})
    if (digit * decade <= most) return digit * decade;
  return decade;
}

Refusal refuse_passes(std::string message, std::string_view text) {
  return not_understood("out-of-range", std::move(message), text, k_like_passes, "--passes");
}

} // namespace

std::string_view pattern_name(Pattern pattern) {
  switch (pattern) {
  case Pattern::circle:
    return "circle";
  case Pattern::row:
    return "row";
  case Pattern::two_rows:
    return "rows";
  }
  return "";
}

Result<Pattern> read_pattern(std::string_view text) {
  for (const Pattern pattern : k_patterns)
    if (text::equal_fold(text, pattern_name(pattern))) return pattern;
  return not_understood("not-understood", "no pattern that is known here", text,
                        "write --pattern circle, row or rows (two rows)", "--pattern");
}

Result<void> check_bolts(Pattern pattern, int bolts) {
  if (bolts < k_fewest_bolts || bolts > k_most_bolts)
    return not_understood(
        "out-of-range",
        fmt::format("{} bolts were understood; there is an order for {} to {}", bolts, k_fewest_bolts, k_most_bolts),
        fmt::format("{}", bolts), "write --bolts 6", "--bolts");
  if (pattern == Pattern::two_rows && (bolts % 2 == 1 || bolts < 4))
    return not_understood("out-of-range",
                          fmt::format("two rows have an even number of bolts, 4 or more, not {}", bolts),
                          fmt::format("{}", bolts), "give the bolts of both rows together, like --bolts 10", "--bolts");
  return {};
}

std::vector<int> order_of(Pattern pattern, int bolts) {
  switch (pattern) {
  case Pattern::circle:
    return circle(bolts);
  case Pattern::row:
    return row(bolts);
  case Pattern::two_rows:
    return two_rows(bolts);
  }
  return {};
}

std::vector<int> undoing_order(std::vector<int> order) {
  std::ranges::reverse(order);
  return order;
}

Result<std::vector<double>> read_passes(std::string_view text) {
  std::vector<double> passes;
  for (std::string_view rest = text;;) {
    const std::size_t comma = rest.find(',');
    const auto share = quantity::read_share(rest.substr(0, comma));
    if (!share) {
      Problem problem = share.error();
      problem.hint = k_like_passes;
      return in_field(std::move(problem), "--passes");
    }
    if (!(*share > 0.0)) return refuse_passes("a round of nothing was understood", text);
    if (!passes.empty() && *share <= passes.back())
      return refuse_passes(fmt::format("the rounds do not rise: {} follows {}", quantity::write_share(*share),
                                       quantity::write_share(passes.back())),
                           text);
    passes.push_back(*share);
    if (passes.size() > k_most_passes)
      return refuse_passes(fmt::format("more than {} rounds were understood", k_most_passes), text);
    if (comma == std::string_view::npos) break;
    rest.remove_prefix(comma + 1);
  }
  if (passes.back() < 1.0 || passes.back() > 1.0)
    return refuse_passes(fmt::format("the last round ends at {}, not at 100 %", quantity::write_share(passes.back())),
                         text);
  return passes;
}

quantity::Torque small_torque() { return quantity::newton_metres(10.0); }

std::vector<double> usual_passes(const std::optional<quantity::Torque>& torque) {
  if (torque && *torque <= small_torque()) return {0.5, 1.0};
  return {0.5, 0.75, 1.0};
}

std::vector<double> wrench_marks(const std::vector<double>& passes, double torque) {
  std::vector<double> marks;
  if (!(torque > 0.0)) return marks;
  const double step = round_step(k_rounds_to * torque);
  // A product that should be a whole number of steps may miss it by the last bits; so may a tenth times a whole number.
  const auto rounded_down = [&](double value) {
    const double steps = std::floor(value / step * (1.0 + 1e-12));
    return step < 1.0 ? steps / std::round(1.0 / step) : steps * step;
  };
  for (const double pass : passes)
    marks.push_back(pass < 1.0 ? rounded_down(pass * torque) : torque);
  return marks;
}

std::vector<PassRule> published_passes() {
  return {
      {"where the page gives no order: above 41 N·m round at 70 %, then round again at 100 %; up to that at once",
       {0.7, 1.0},
       {"TB 9-2320-279-13&P-2, torque limits", "", "item 4", Known::second_hand}},
      {"pressure flanges: rounds at 20 to 30 %, 50 to 70 % and 100 %, then round the circle until nothing moves, and "
       "again after some hours",
       {0.3, 0.7, 1.0},
       {"ASME PCC-1, legacy cross-pattern tightening", "", "star pattern", Known::memory}}};
}

} // namespace clampwright::tightening
