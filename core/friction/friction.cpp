// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/friction/friction.hpp"

#include <vector>

#include <fmt/format.h>

#include "core/quantity/read.hpp"
#include "core/text/plain_text.hpp"

namespace clampwright::friction {

namespace {

std::vector<std::string_view> split_at_dots(std::string_view text) {
  std::vector<std::string_view> parts;
  for (std::size_t at = text.find(".."); at != std::string_view::npos; at = text.find("..")) {
    parts.push_back(text.substr(0, at));
    text.remove_prefix(at + 2);
  }
  parts.push_back(text);
  return parts;
}

// A band of any coefficient type that has try_make.
template<class Coefficient>
Result<quantity::Band<Coefficient>> read_band(std::string_view text, std::string_view hint) {
  const auto parts = split_at_dots(text);
  if (parts.size() > 3)
    return not_understood("not-understood", "more than three numbers were given", text, std::string(hint));
  std::vector<double> numbers;
  for (const std::string_view part : parts) {
    const auto number = quantity::read_number(part);
    if (!number) {
      Problem problem = number.error();
      problem.input = text::quotable(text);
      problem.hint = hint;
      return Refusal(std::move(problem));
    }
    numbers.push_back(*number);
  }
  const double low = numbers.front();
  const double high = numbers.back();
  const double likely = numbers.size() == 3 ? numbers[1] : (low + high) / 2.0;
  if (!(low <= likely && likely <= high))
    return not_understood("out-of-range", fmt::format("{:g} to {:g} by {:g} does not rise", low, high, likely), text,
                          std::string(hint));
  const auto made_low = Coefficient::try_make(low);
  const auto made_high = Coefficient::try_make(high);
  for (const auto* made : {&made_low, &made_high}) {
    if (*made) continue;
    Problem problem = made->error();
    problem.input = text::quotable(text);
    problem.hint = hint;
    return Refusal(std::move(problem));
  }
  return quantity::Band<Coefficient>{*made_low, *Coefficient::try_make(likely), *made_high};
}

} // namespace

Result<FrictionCoefficient> FrictionCoefficient::try_make(double value) {
  if (value >= 0.0 && value <= 1.0) return FrictionCoefficient(value);
  return not_understood("out-of-range", fmt::format("{:g} was understood; friction lies between 0 and 1", value),
                        fmt::format("{:g}", value), "write it like 0.12");
}

Result<NutFactor> NutFactor::try_make(double value) {
  if (value > 0.0 && value <= 1.0) return NutFactor(value);
  return not_understood("out-of-range",
                        fmt::format("{:g} was understood; a nut factor lies above 0 and not above 1", value),
                        fmt::format("{:g}", value), "write it like 0.20");
}

Result<FrictionBand> read_friction_band(std::string_view text) {
  return read_band<FrictionCoefficient>(text, "write friction like 0.12, 0.08..0.16 or 0.08..0.12..0.16");
}

Result<NutFactorBand> read_nut_factor_band(std::string_view text) {
  return read_band<NutFactor>(text, "write a nut factor like 0.20, 0.15..0.25 or 0.15..0.20..0.25");
}

} // namespace clampwright::friction
