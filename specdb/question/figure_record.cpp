// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/figure_record.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>
#include <string_view>
#include <tuple>

#include <fmt/format.h>

#include "core/friction/friction.hpp"
#include "core/quantity/read.hpp"
#include "core/quantity/unit.hpp"
#include "core/quantity/write.hpp"
#include "core/text/plain_text.hpp"
#include "specdb/catalogue/surfaces.hpp"
#include "specdb/question/kept_changes.hpp"
#include "specdb/question/kept_words.hpp"
#include "specdb/question/record_lines.hpp"
#include "specdb/workshop/sources.hpp"

namespace clampwright::specdb {

namespace {

using Words = FigureWords;
using quantity::Kind;

constexpr const char* k_like = "write --printed \"42 N·m\" --torque 42Nm --source MM --page \"page 4\"";
constexpr std::size_t k_longest_printed = 500;
constexpr std::array<std::string_view, 4> k_methods{"torque", "torque-angle", "to-shoulder", "by-feel"};
constexpr std::array<std::string_view, 2> k_running_rules{"add", "included"};
constexpr std::array<std::string_view, 2> k_reuse_rules{"never", "while-good"};
constexpr std::array<std::string_view, 4> k_statuses{"maker", "general-table", "shop", "derived"};

constexpr std::array k_fields{WordField<Words>{&Words::printed, "--printed"},
                              WordField<Words>{&Words::torque, "--torque"},
                              WordField<Words>{&Words::tolerance, "--tolerance"},
                              WordField<Words>{&Words::low, "--low"},
                              WordField<Words>{&Words::high, "--high"},
                              WordField<Words>{&Words::method, "--method"},
                              WordField<Words>{&Words::angle, "--angle"},
                              WordField<Words>{&Words::reading, "--reading"},
                              WordField<Words>{&Words::surfaces, "--surfaces"},
                              WordField<Words>{&Words::mu, "--mu"},
                              WordField<Words>{&Words::condition, "--condition"},
                              WordField<Words>{&Words::temperature, "--temperature"},
                              WordField<Words>{&Words::sequence, "--sequence"},
                              WordField<Words>{&Words::passes, "--passes"},
                              WordField<Words>{&Words::running_rule, "--running-rule"},
                              WordField<Words>{&Words::reuse_rule, "--reuse-rule"},
                              WordField<Words>{&Words::reuse, "--reuse"},
                              WordField<Words>{&Words::source, "--source"},
                              WordField<Words>{&Words::page, "--page"},
                              WordField<Words>{&Words::status, "--status"}};

// As it stands on the page: no space or sign of it is made another.
Result<std::string> printed_text(const std::string& text) {
  const std::size_t first = text.find_first_not_of(' ');
  std::string printed = first == std::string::npos ? "" : text.substr(first, text.find_last_not_of(' ') + 1 - first);
  if (!text::is_printable(printed) || printed.size() > k_longest_printed)
    return not_understood("not-understood", "one line of text is wanted, without control characters", text,
                          fmt::format("write what the page prints, in up to {} letters", k_longest_printed));
  return printed;
}

// A torque in the unit of the figure.
Result<double> torque_in_unit(const FigureRecord& figure, const std::string& text, const char* option) {
  if (!figure.unit)
    return refuse(Trouble::usage, "surplus", "a figure without a torque has no limits or passes", text,
                  "give the torque as well, like --torque 42Nm", option);
  return number_in(text, quantity::unit_named(*figure.unit));
}

Result<std::vector<double>> passes_of(const FigureRecord& figure, const std::string& text) {
  const char separator = text.find(';') == std::string::npos ? ',' : ';';
  std::vector<double> passes;
  for (std::size_t from = 0; from <= text.size();) {
    const std::size_t to = std::min(text.find(separator, from), text.size());
    const auto pass = torque_in_unit(figure, text.substr(from, to - from), "--passes");
    if (!pass) return Refusal(pass.error());
    if ((!passes.empty() && *pass <= passes.back()) || *pass > figure.high.value_or(*figure.value))
      return not_understood("out-of-range", "passes rise, and none is above the torque", text,
                            "write them in order, like --passes \"6Nm, 12Nm, 17Nm\"");
    passes.push_back(*pass);
    from = to + 1;
  }
  return passes;
}

// Limits and passes are numbers in the unit of the torque.
Result<void> put_torque(FigureRecord& f, const FigureWords& words) {
  const auto unit_before = f.unit;
  if (words.torque && is_none(*words.torque)) {
    f.value.reset();
    f.unit.reset();
    f.low.reset();
    f.high.reset();
    f.passes.clear();
  } else if (words.torque) {
    const auto read = quantity::read_quantity(*words.torque, Kind::torque);
    if (!read) return in_field(read.error(), "--torque");
    if (!(read->value > 0))
      return not_understood("out-of-range", "a torque of nothing was understood", *words.torque,
                            "write the torque that the page means, like 42Nm; \"none\" where it gives no value",
                            "--torque");
    f.value = read->value;
    f.unit = std::string(read->unit->name);
  }
  if (unit_before && f.unit && *unit_before != *f.unit)
    for (const auto& [is_there, said, option] : {std::tuple(f.low.has_value(), words.low.has_value(), "--low"),
                                                 std::tuple(f.high.has_value(), words.high.has_value(), "--high"),
                                                 std::tuple(!f.passes.empty(), words.passes.has_value(), "--passes")})
      if (is_there && !said)
        return refuse(Trouble::usage, "missing",
                      fmt::format("the torque is now in {}, and this was said in {}", *f.unit, *unit_before), {},
                      fmt::format("say it anew as well, or {} none", option), option);
  const auto torque = [&](const char* option) {
    return [&f, option](const std::string& text) { return torque_in_unit(f, text, option); };
  };
  if (auto done = first_refusal({put_text(f.tolerance, words.tolerance, "--tolerance"),
                                 put(f.low, words.low, "--low", torque("--low")),
                                 put(f.high, words.high, "--high", torque("--high"))});
      !done)
    return done;
  if (f.low.has_value() != f.high.has_value())
    return refuse(Trouble::usage, "missing", "the torque has one limit only", {},
                  "give --low and --high together, or neither", f.low ? "--high" : "--low");
  if (f.low && (*f.low > *f.value || *f.value > *f.high))
    return not_understood(
        "out-of-range",
        fmt::format("a torque of {} between {} and {} {} was understood", *f.value, *f.low, *f.high, *f.unit),
        words.low.value_or(words.high.value_or("")), "write --low 40Nm --torque 42Nm --high 44Nm",
        words.low ? "--low" : "--high");
  std::optional<std::vector<double>> passes = f.passes;
  if (auto done = put(passes, words.passes, "--passes", [&](const std::string& text) { return passes_of(f, text); });
      !done)
    return done;
  f.passes = passes.value_or(std::vector<double>());
  if (!f.passes.empty() && f.passes.back() > f.high.value_or(*f.value))
    return not_understood("out-of-range", "the last pass is above the torque", words.torque.value_or(""),
                          "say the passes anew, or --passes none", "--passes");
  return {};
}

// "2,5 mkg" is read with a point; "1,500 lbf·in" stays as it is, and is not read: the comma may part thousands.
std::string with_point(std::string printed) {
  const std::size_t comma = printed.find(',');
  if (comma == std::string::npos || printed.find_first_of(",.", comma + 1) != std::string::npos) return printed;
  if (printed.find('.') < comma) return printed;
  const std::size_t end = std::min(printed.find_first_not_of("0123456789", comma + 1), printed.size());
  if (end - comma - 1 != 3) printed[comma] = '.';
  return printed;
}

// What the page prints, where it reads as a torque, is what the figure is taken for: apart they may be by the rounding
// of a converted value, and by more only where it is said how the page was understood.
Result<void> check_printed(const FigureRecord& f, const FigureWords& words) {
  constexpr double k_rounding = 0.05; // of values printed in two units side by side; common practice, without source
  const auto printed = quantity::read_quantity(with_point(f.printed), Kind::torque);
  if (!printed || !f.value || f.reading) return {};
  const double page = quantity::to_si(printed->value, *printed->unit);
  const double meant = quantity::to_si(*f.value, quantity::unit_named(*f.unit));
  if (std::abs(page - meant) <= k_rounding * page) return {};
  const quantity::Unit& unit = quantity::unit_named(*f.unit);
  return not_understood(
      "contradiction",
      fmt::format("the page prints {}, which is {}, and is taken for {}", f.printed,
                  quantity::write_si_rounded(page, unit), quantity::write_si_rounded(meant, unit)),
      words.torque.value_or(words.printed.value_or("")),
      "write what the page prints and the torque that it means, or say with --reading why it means another",
      words.torque || !words.printed ? "--torque" : "--printed");
}

// How it is tightened follows from what the page gives, unless it was said.
Result<void> put_method(FigureRecord& f, const FigureWords& words) {
  const auto angle = [](const std::string& text) { return number_in(text, quantity::unit_named("deg")); };
  if (auto done = put(f.angle_deg, words.angle, "--angle", angle); !done) return done;
  if (!words.method) {
    if (f.method == "by-feel" && f.value) f.method = "torque";
    if (f.method == "torque" && f.angle_deg) f.method = "torque-angle";
    if (f.method == "torque-angle" && !f.angle_deg) f.method = "torque";
    if (f.method.starts_with("torque") && !f.value) f.method = "by-feel";
  }
  if (auto done = put_needed(f.method, words.method, "--method", "write --method torque", word_of(k_methods)); !done)
    return done;
  const bool needs_torque = f.method.starts_with("torque");
  if (f.method != "to-shoulder" && needs_torque != f.value.has_value())
    return refuse(Trouble::usage, needs_torque ? "missing" : "surplus",
                  fmt::format("tightening by {} {}", f.method,
                              needs_torque ? "needs a torque" : "has no torque, and one is given"),
                  {}, "give the torque, like --torque 42Nm, or --torque none and --method by-feel", "--method");
  if ((f.method == "torque-angle") != f.angle_deg.has_value())
    return refuse(Trouble::usage, f.angle_deg ? "surplus" : "missing",
                  f.angle_deg ? fmt::format("an angle is given, and the method is {}", f.method)
                              : std::string("the angle that follows the torque is missing"),
                  {}, "write --torque 20Nm --angle 90deg --method torque-angle", "--angle");
  return {};
}

Result<void> put_source(const std::vector<SourceRecord>& sources, FigureRecord& f, const FigureWords& words) {
  if (auto done = put_needed_text(f.source.where, words.page, "--page", k_like); !done) return done;
  if (!words.source) return {};
  const auto source = find_source(sources, *words.source);
  if (!source) return in_field(source.error(), "--source");
  f.source_slug = source->slug;
  f.source = {source->title, source->edition, f.source.where, source->known};
  return {};
}

// Whose figure it is; where the page gives none, it is nobody's.
Result<void> put_status(FigureRecord& f, const FigureWords& words) {
  if (f.value && f.status == "none") f.status = "maker";
  if (!f.value) {
    f.status = "none";
    if (!words.status || is_none(*words.status)) return {};
    return refuse(Trouble::usage, "surplus", "a page that gives no value has no status", *words.status,
                  "leave --status away, or give the torque", "--status");
  }
  return put_needed(f.status, words.status, "--status", "write --status maker, general-table, shop or derived",
                    word_of(k_statuses));
}

Result<void> put_reuse(FigureRecord& f, const FigureWords& words) {
  if (auto done =
          first_refusal({put(f.running_torque_rule, words.running_rule, "--running-rule", word_of(k_running_rules)),
                         put(f.reuse_rule, words.reuse_rule, "--reuse-rule", word_of(k_reuse_rules)),
                         put_text(f.reuse, words.reuse, "--reuse")});
      !done)
    return done;
  if (f.reuse_rule.has_value() == f.reuse.has_value()) return {};
  return refuse(Trouble::usage, "missing", "the rule for using parts again and its words go together", {},
                "write --reuse-rule never --reuse \"a new washer each time\"", f.reuse ? "--reuse-rule" : "--reuse");
}

Result<void> put_recheck(FigureRecord& f, const FigureWords& words) {
  if (!words.recheck) return {};
  f.recheck.clear();
  for (const RecheckWords& said : *words.recheck) {
    RecheckRecord recheck;
    const auto time = [](const char* unit) {
      return [unit](const std::string& text) { return number_in(text, quantity::unit_named(unit)); };
    };
    if (auto done = first_refusal({put_needed_text(recheck.words, said.words, "--recheck",
                                                   "say when: \"cold, after the first hour of running\""),
                                   put(recheck.hours, said.hours, "--recheck", time("h")),
                                   put(recheck.days, said.days, "--recheck", time("d")),
                                   put_text(recheck.event, said.event, "--recheck")});
        !done)
      return done;
    f.recheck.push_back(std::move(recheck));
  }
  return {};
}

std::vector<RecheckWords> recheck_words(const FigureRecord& f) {
  std::vector<RecheckWords> out;
  for (const RecheckRecord& r : f.recheck)
    out.push_back({r.words, maybe_words(r.hours, "h"), maybe_words(r.days, "d"), r.event});
  return out;
}

} // namespace

std::span<const WordField<FigureWords>> figure_fields() { return k_fields; }

FigureWords words_of(const FigureRecord& f) {
  const std::string unit = f.unit.value_or("");
  std::vector<std::string> passes;
  for (const double pass : f.passes)
    passes.push_back(number_words(pass, unit));
  return {.printed = f.printed,
          .torque = f.value ? number_words(*f.value, unit) : "none",
          .tolerance = f.tolerance,
          .low = maybe_words(f.low, unit),
          .high = maybe_words(f.high, unit),
          .method = f.method,
          .angle = maybe_words(f.angle_deg, "deg"),
          .reading = f.reading,
          .surfaces = f.surfaces,
          .mu = f.friction,
          .condition = f.condition,
          .temperature = f.temperature,
          .sequence = f.sequence,
          .passes = in_one_line(passes),
          .running_rule = f.running_torque_rule,
          .reuse_rule = f.reuse_rule,
          .reuse = f.reuse,
          .recheck = recheck_words(f),
          .source = f.source_slug,
          .page = f.source.where,
          .status = f.value ? MaybeText(f.status) : std::nullopt};
}

Result<FigureRecord> with_words(const Catalogue& catalogue, const std::vector<SourceRecord>& sources, FigureRecord f,
                                const FigureWords& words) {
  const auto surfaces = [&](const std::string& text) {
    return find_surfaces(catalogue, text).map([](const friction::Surfaces& found) { return found.name; });
  };
  const auto coefficient = [](const std::string& text) {
    return friction::read_friction_band(text).map([&](const auto&) { return text::plain_spaces(text); });
  };
  if (auto done = put_needed(f.printed, words.printed, "--printed", k_like, printed_text); !done)
    return Refusal(done.error());
  if (auto done = put_torque(f, words); !done) return Refusal(done.error());
  if (auto done = put_method(f, words); !done) return Refusal(done.error());
  if (auto done = put_source(sources, f, words); !done) return Refusal(done.error());
  if (auto done = put_status(f, words); !done) return Refusal(done.error());
  if (auto done = put_reuse(f, words); !done) return Refusal(done.error());
  if (auto done = put_recheck(f, words); !done) return Refusal(done.error());
  if (auto done = first_refusal({put_text(f.reading, words.reading, "--reading"),
                                 put_needed(f.surfaces, words.surfaces, "--surfaces",
                                            "write not-stated where the page does not say", surfaces),
                                 put(f.friction, words.mu, "--mu", coefficient),
                                 put_text(f.condition, words.condition, "--condition"),
                                 put_text(f.temperature, words.temperature, "--temperature"),
                                 put_text(f.sequence, words.sequence, "--sequence")});
      !done)
    return Refusal(done.error());
  if (auto done = check_printed(f, words); !done) return Refusal(done.error());
  return f;
}

Result<FigureRecord> new_figure(const Catalogue& catalogue, const std::vector<SourceRecord>& sources,
                                const FigureWords& words) {
  const auto missing = [](const char* what, const char* option) {
    return refuse(Trouble::usage, "missing", fmt::format("{} is missing", what), {}, k_like, option);
  };
  if (!words.printed) return missing("what the page prints, word for word,", "--printed");
  if (!words.torque)
    return refuse(Trouble::usage, "missing", "the torque that the page means is missing", {},
                  "write --torque 42Nm, or --torque none where the page gives no value", "--torque");
  if (!is_none(*words.torque) && !words.status)
    return refuse(Trouble::usage, "missing", "whose figure it is is missing", {},
                  "write --status maker, general-table, shop or derived", "--status");
  if (!words.source) return missing("the document that the figure stands in", "--source");
  if (!words.page) return missing("the page that the figure stands on", "--page");
  return with_words(catalogue, sources, {}, words);
}

std::vector<std::string> differences(const FigureRecord& was, const FigureRecord& is) {
  std::vector<std::string> out = differences_of(words_of(was), words_of(is), k_fields);
  const MaybeText looks_were = rechecks_line(recheck_words(was));
  const MaybeText looks_are = rechecks_line(recheck_words(is));
  if (looks_were != looks_are) out.push_back(change_words("--recheck", looks_were, looks_are));
  return out;
}

} // namespace clampwright::specdb
