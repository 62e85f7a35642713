// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/hand_question.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/quantity/read.hpp"
#include "core/quantity/write.hpp"
#include "core/text/plain_text.hpp"

namespace clampwright::specdb {

namespace {

using crank::Driver;
using thread::Turn;

constexpr const char* k_example = "clampwright hand --rotation clockwise --seen-from free-end --driver shaft";

template<class Value>
struct Word {
  std::string_view text;
  Value value;
};

constexpr std::array k_drivers{Word<Driver>{"shaft", Driver::shaft}, Word<Driver>{"part", Driver::part}};
// Is the turn seen from the other side than the free end?
constexpr std::array k_sides{Word<bool>{"free-end", false}, Word<bool>{"engine-side", true}};

template<class Words>
auto read_word(std::string_view text, const Words& words, const char* option, const char* choices)
    -> Result<std::decay_t<decltype(words[0].value)>> {
  const auto found = std::ranges::find_if(
      words, [&](const auto& word) { return text::equal_fold(text::plain_spaces(text), word.text); });
  if (found != words.end()) return found->value;
  return not_understood("not-understood", fmt::format("{} takes {}", option, choices), text,
                        fmt::format("write it like {}", k_example), option);
}

template<class Value>
Result<std::optional<Value>> where_said(const MaybeText& text, Result<Value> (*read)(std::string_view)) {
  if (!text) return std::optional<Value>();
  auto value = read(*text);
  if (!value) return Refusal(value.error());
  return std::optional(std::move(*value));
}

Result<std::optional<crank::LooseFit>> read_fit(const HandQuestion& q) {
  if (!q.bore && !q.shaft) return std::optional<crank::LooseFit>();
  if (!q.bore || !q.shaft)
    return refuse(Trouble::usage, "missing",
                  fmt::format("{} is missing; understood: {} {}", q.bore ? "--shaft" : "--bore",
                              q.bore ? "bore" : "shaft", text::quotable(q.bore ? *q.bore : *q.shaft)),
                  {}, "the bound of the creep needs both diameters, like --bore 20.02mm --shaft 20mm",
                  q.bore ? "--shaft" : "--bore");
  const auto bore = quantity::read_length(*q.bore);
  if (!bore) return in_field(bore.error(), "--bore");
  const auto shaft = quantity::read_length(*q.shaft);
  if (!shaft) return in_field(shaft.error(), "--shaft");
  if (*bore < *shaft)
    return not_understood("out-of-range",
                          fmt::format("a bore of {} mm on a shaft of {} mm was understood: without clearance there is "
                                      "no bound by it",
                                      quantity::write_number(quantity::in_millimetres(*bore), 6),
                                      quantity::write_number(quantity::in_millimetres(*shaft), 6)),
                          *q.bore, "give the bore first and the shaft that runs in it; leave both out of a press fit",
                          "--bore");
  return std::optional(crank::LooseFit{*bore, *shaft});
}

Result<void> check_missing(const HandQuestion& q) {
  std::vector<std::string> options;
  std::vector<std::string> understood;
  const auto look = [&](const MaybeText& text, const char* option, const char* name) {
    if (text)
      understood.push_back(fmt::format("{} {}", name, text::quotable(*text)));
    else
      options.emplace_back(option);
  };
  look(q.rotation, "--rotation", "rotation");
  look(q.seen_from, "--seen-from", "seen from");
  look(q.driver, "--driver", "driver");
  if (options.empty()) return {};
  std::string message = fmt::format("{} {} missing", fmt::join(options, ", "), options.size() > 1 ? "are" : "is");
  if (!q.joint.empty()) message += fmt::format(": neither typed nor on record for {}", q.joint);
  if (!understood.empty()) message += fmt::format("; understood: {}", fmt::join(understood, ", "));
  const bool no_side = q.rotation && !q.seen_from;
  return refuse(Trouble::usage, "missing", std::move(message), {},
                fmt::format("{}write it like {}",
                            no_side ? "a rotation says nothing without the side it is seen from: free-end, where the "
                                      "spanner goes, or engine-side; "
                                    : "",
                            k_example),
                options.front());
}

} // namespace

Result<bool> read_engine_side(std::string_view text) {
  return read_word(text, k_sides, "--seen-from", "free-end or engine-side");
}

Result<Driver> read_driver(std::string_view text) {
  return read_word(text, k_drivers, "--driver", "shaft or part: which turns the other in service");
}

Result<HandReply> answer_hand(const HandQuestion& q) {
  std::optional<Turn> turn;
  if (q.rotation) {
    const auto read = thread::read_turn(*q.rotation);
    if (!read) return in_field(read.error(), "--rotation");
    turn = *read;
  }
  const auto other_side = where_said(q.seen_from, &read_engine_side);
  if (!other_side) return Refusal(other_side.error());
  const auto driver = where_said(q.driver, &read_driver);
  if (!driver) return Refusal(driver.error());
  const auto fit = read_fit(q);
  if (!fit) return Refusal(fit.error());
  if (const auto whole = check_missing(q); !whole) return Refusal(whole.error());
  HandReply reply;
  reply.answer = crank::hand_for({{**other_side ? crank::reversed(*turn) : *turn, **driver}, *fit, q.fitted});
  reply.sources = {
      {"Michigan Administrative Code R 408.10115", "", "(1), (5)(a): driven wheels", Known::second_hand},
      {"Relative torque of a steady drive", "", "a load drags the part backwards", Known::computed},
      {"An engineer's text on left-hand threads", "2004", "precession of a pin in a bore", Known::second_hand},
      {"Rolling without slip", "", "bounds of the creep, hub on a shaft", Known::computed}};
  return reply;
}

HandQuestion hand_for_joint(const JointRecord& joint, thread::Hand fitted, HandQuestion typed) {
  typed.joint = joint.slug;
  typed.fitted = fitted;
  // The turn on record is seen from where the fitter stands, the free end; a side that was typed belongs to a turn that
  // was typed.
  if (!typed.rotation && !typed.seen_from && joint.shaft_turn) {
    typed.rotation = joint.shaft_turn;
    typed.seen_from = "free-end";
  }
  if (!typed.driver) typed.driver = joint.driver;
  return typed;
}

} // namespace clampwright::specdb
