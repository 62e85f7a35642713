// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/wrench_record.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/calendar/moment.hpp"
#include "core/quantity/read.hpp"
#include "core/quantity/write.hpp"
#include "core/text/plain_text.hpp"
#include "core/tightening/case.hpp"
#include "core/tightening/upkeep.hpp"
#include "specdb/question/kept_words.hpp"
#include "specdb/question/wrench_words.hpp"

namespace clampwright::specdb {

namespace {

using std::chrono::year_month_day;
constexpr const char* k_like = "clampwright wrench add A --range 10..60Nm --step 0.5Nm --turns both";
constexpr std::size_t k_longest_slug = 40;
constexpr int k_most_months = 120;
constexpr int k_most_cycles = 1'000'000;

constexpr std::array k_fields{WordField<WrenchWords>{&WrenchWords::called, "--called"},
                              WordField<WrenchWords>{&WrenchWords::range, "--range"},
                              WordField<WrenchWords>{&WrenchWords::step, "--step"},
                              WordField<WrenchWords>{&WrenchWords::wrench_class, "--class"},
                              WordField<WrenchWords>{&WrenchWords::accuracy, "--accuracy"},
                              WordField<WrenchWords>{&WrenchWords::accuracy_basis, "--accuracy-basis"},
                              WordField<WrenchWords>{&WrenchWords::turns, "--turns"},
                              WordField<WrenchWords>{&WrenchWords::arm, "--arm"},
                              WordField<WrenchWords>{&WrenchWords::months, "--months"},
                              WordField<WrenchWords>{&WrenchWords::cycles, "--cycles"},
                              WordField<WrenchWords>{&WrenchWords::due, "--due"}};

Result<std::string> turns_of(const std::string& text) {
  if (text::equal_fold(text::plain_spaces(text), "both")) return std::string("both");
  const auto turn = thread::read_turn(text);
  if (!turn)
    return not_understood("not-understood", "no direction is called that", text,
                          "write --turns clockwise, --turns anticlockwise or --turns both: what its calibration sheet "
                          "covers");
  return std::string(thread::turn_name(*turn));
}

Result<std::string> day_text(const std::string& text) {
  const auto day = calendar::read_day(text);
  if (!day) return Refusal(day.error());
  return calendar::write_day(*day);
}

Result<void> put_scale(WrenchRecord& record, const WrenchWords& words) {
  const std::string unit_before = record.unit;
  if (words.range) {
    const auto range = read_scale_range(*words.range);
    if (!range) return in_field(range.error(), "--range");
    record.low = range->low;
    record.high = range->high;
    record.unit = range->unit->name;
  }
  if (auto step =
          put(record.step, words.step, "--step",
              [&](const std::string& text) { return read_scale_step(text, quantity::unit_named(record.unit)); });
      !step)
    return step;
  // Half a newton-metre is not half a foot-pound.
  if (record.step && record.unit != unit_before && !words.step)
    return refuse(
        Trouble::usage, "missing",
        fmt::format("the scale is now in {}, and the distance of its marks was said in {}", record.unit, unit_before),
        {}, fmt::format("say it anew with --step 0.5{}, or --step none", record.unit), "--step");
  if (record.step && *record.step > record.high)
    return not_understood("out-of-range", "the first mark would lie beyond the end of the scale",
                          words.step.value_or(""), "write the distance of two marks, like 0.5Nm", "--step");
  return {};
}

Result<void> put_accuracy(WrenchRecord& record, const WrenchWords& words) {
  if (words.accuracy) {
    const auto share = read_accuracy(*words.accuracy);
    if (!share) return in_field(share.error(), "--accuracy");
    record.accuracy = *share;
    record.accuracy_basis = "as entered in the register";
  }
  if (words.accuracy_basis) {
    const auto basis = kept_text(*words.accuracy_basis, "--accuracy-basis");
    if (!basis) return Refusal(basis.error());
    record.accuracy_basis = *basis;
  }
  return {};
}

std::string number_text(const std::optional<double>& value) {
  return value ? quantity::write_number(*value, 9) : "none";
}
std::string count_text(const std::optional<int>& value) { return value ? fmt::format("{}", *value) : "none"; }

bool same(const std::optional<double>& one, const std::optional<double>& other) {
  return number_text(one) == number_text(other);
}

} // namespace

Result<WrenchRecord> with_words(WrenchRecord record, const WrenchWords& words) {
  if (words.called) {
    auto name = kept_text(*words.called, "--called");
    if (!name) return Refusal(name.error());
    record.name = std::move(*name);
  }
  if (auto scale = put_scale(record, words); !scale) return Refusal(scale.error());
  if (auto accuracy = put_accuracy(record, words); !accuracy) return Refusal(accuracy.error());
  if (words.turns) {
    auto turns = turns_of(*words.turns);
    if (!turns) return in_field(turns.error(), "--turns");
    record.turns = std::move(*turns);
  }
  const auto mm = [](const std::string& text) { return number_in(text, quantity::unit_named("mm")); };
  const auto words_of_class = [](const std::string& text) { return kept_text(text, "--class"); };
  for (const auto& done : {put(record.accuracy_class, words.wrench_class, "--class", words_of_class),
                           put(record.arm_mm, words.arm, "--arm", mm),
                           put(record.calibration_months, words.months, "--months",
                               [](const std::string& text) { return quantity::read_count(text, 1, k_most_months); }),
                           put(record.calibration_cycles, words.cycles, "--cycles",
                               [](const std::string& text) { return quantity::read_count(text, 1, k_most_cycles); }),
                           put(record.due_on, words.due, "--due", day_text)})
    if (!done) return Refusal(done.error());
  if (words.in_use) {
    record.retired_on.reset();
    record.retired_because.reset();
  }
  return record;
}

Result<WrenchRecord> new_wrench(const std::string& slug, const WrenchWords& words, year_month_day today) {
  const auto allowed = [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || text::is_digit(c) || c == '-' || c == '_' || c == '.';
  };
  if (slug.empty() || slug.size() > k_longest_slug || slug.front() == '-' || !std::ranges::all_of(slug, allowed))
    return not_understood(
        "not-understood",
        fmt::format("a short name of letters, digits, '-', '_' and '.' is wanted, up to {} of them", k_longest_slug),
        slug, fmt::format("write {} --called \"Bench wrench A\"", k_like));
  if (!words.range)
    return refuse(Trouble::usage, "missing", "the range of its scale is missing", {}, fmt::format("write {}", k_like),
                  "--range");
  if (!words.turns)
    return refuse(Trouble::usage, "missing", "the direction for which it is calibrated is missing", {},
                  "write --turns clockwise, anticlockwise or both: what its calibration sheet covers; many wrenches "
                  "click one way only",
                  "--turns");
  WrenchRecord record;
  record.slug = slug;
  record.name = slug;
  auto range = read_scale_range(*words.range);
  if (!range) return in_field(range.error(), "--range");
  record.unit = range->unit->name;
  auto said = with_words(std::move(record), words);
  if (!said) return said;
  if (!words.accuracy) {
    const auto standard = tightening::tool_accuracy(
        quantity::newton_metres(quantity::to_si(said->high, quantity::unit_named(said->unit))));
    said->accuracy = standard.share;
    said->accuracy_basis = words.accuracy_basis ? said->accuracy_basis : standard.basis;
  }
  if (words.calibrated) {
    const auto day = read_past_day(*words.calibrated, today);
    if (!day) return in_field(day.error(), "--calibrated");
    said->calibrated_on = calendar::write_day(*day);
  }
  return said;
}

std::span<const WordField<WrenchWords>> wrench_fields() { return k_fields; }

WrenchWords words_of(const WrenchRecord& record) {
  const auto count = [](const std::optional<int>& value) {
    return value ? MaybeText(fmt::format("{}", *value)) : std::nullopt;
  };
  return {.called = record.name,
          .range = fmt::format("{}..{}{}", record.low, record.high, record.unit),
          .step = maybe_words(record.step, record.unit),
          .wrench_class = record.accuracy_class,
          .accuracy = fmt::format("{}", record.accuracy),
          .accuracy_basis = record.accuracy_basis,
          .turns = record.turns,
          .arm = maybe_words(record.arm_mm, "mm"),
          .months = count(record.calibration_months),
          .cycles = count(record.calibration_cycles),
          .due = record.due_on};
}

std::vector<std::string> differences(const WrenchRecord& was, const WrenchRecord& is) {
  std::vector<std::string> out;
  const auto note = [&](const char* field, const std::string& before, const std::string& after) {
    if (before != after) out.push_back(fmt::format("{}: {} -> {}", field, before, after));
  };
  const auto text = [](const MaybeText& value) { return value.value_or("none"); };
  const auto range = [](const WrenchRecord& wrench) {
    return fmt::format("{} to {} {}", number_text(wrench.low), number_text(wrench.high), wrench.unit);
  };
  note("name", was.name, is.name);
  note("range", range(was), range(is));
  if (!same(was.step, is.step)) note("step", number_text(was.step), number_text(is.step));
  note("class", text(was.accuracy_class), text(is.accuracy_class));
  note("accuracy", number_text(was.accuracy), number_text(is.accuracy));
  note("basis of accuracy", was.accuracy_basis, is.accuracy_basis);
  note("turns", was.turns, is.turns);
  note("arm in mm", number_text(was.arm_mm), number_text(is.arm_mm));
  note("calibrated", text(was.calibrated_on), text(is.calibrated_on));
  note("months between calibrations", count_text(was.calibration_months), count_text(is.calibration_months));
  note("cycles between calibrations", count_text(was.calibration_cycles), count_text(is.calibration_cycles));
  note("due", text(was.due_on), text(is.due_on));
  note("retired", text(was.retired_on), text(is.retired_on));
  return out;
}

} // namespace clampwright::specdb
