// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/machine_record.hpp"

#include <array>

#include <fmt/format.h>

#include "core/thread/turning.hpp"
#include "specdb/catalogue/materials.hpp"
#include "specdb/question/kept_changes.hpp"
#include "specdb/question/kept_words.hpp"

namespace clampwright::specdb {

namespace {

using Words = MachineWords;

constexpr const char* k_like = "write --called \"Pump P3\" --kind \"flood pump, two-stroke single\"";

constexpr std::array k_fields{WordField<Words>{&Words::called, "--called"},
                              WordField<Words>{&Words::kind, "--kind"},
                              WordField<Words>{&Words::serial_from, "--serial-from"},
                              WordField<Words>{&Words::serial_to, "--serial-to"},
                              WordField<Words>{&Words::crank_turn, "--crank-turn"},
                              WordField<Words>{&Words::crank_seen_from, "--crank-seen-from"},
                              WordField<Words>{&Words::stroke, "--stroke"},
                              WordField<Words>{&Words::rod, "--rod"},
                              WordField<Words>{&Words::port_depth, "--port-depth"},
                              WordField<Words>{&Words::plug_reach, "--plug-reach"},
                              WordField<Words>{&Words::regulated_by, "--regulated-by"},
                              WordField<Words>{&Words::crown_depth, "--crown-depth"},
                              WordField<Words>{&Words::stop_length, "--stop-length"},
                              WordField<Words>{&Words::tip_diameter, "--tip-diameter"},
                              WordField<Words>{&Words::tip_limit, "--tip-limit"},
                              WordField<Words>{&Words::plug_thread, "--plug-thread"},
                              WordField<Words>{&Words::plug_material, "--plug-material"}};

Result<std::string> turn_words(const std::string& text) {
  return thread::read_turn(text).map([](thread::Turn turn) { return std::string(thread::turn_name(turn)); });
}

// "44 mm" and "27 mm" of two lengths in a sentence.
std::string both(const char* first, double one, const char* second, double other) {
  return fmt::format("{} {} mm and {} {} mm were understood", first, one, second, other);
}

// What no machine can be: each length is looked at beside those that bound it.
Result<void> check_lengths(const MachineRecord& m) {
  if (m.stroke_mm && m.rod_mm && *m.rod_mm <= *m.stroke_mm / 2.0)
    return not_understood("out-of-range",
                          both("a stroke of", *m.stroke_mm, "a rod of", *m.rod_mm) +
                              ": the rod must be longer than the crank's throw, half the stroke",
                          number_words(*m.rod_mm, "mm"), "write --stroke 44mm --rod 88mm, centre to centre", "--rod");
  if (m.stroke_mm && m.port_below_top_mm && *m.port_below_top_mm >= *m.stroke_mm)
    return not_understood("out-of-range",
                          both("a stroke of", *m.stroke_mm, "a port at", *m.port_below_top_mm) +
                              ": the crown never gets there",
                          number_words(*m.port_below_top_mm, "mm"),
                          "write the crown's way down until the port opens, like --port-depth 27mm", "--port-depth");
  if (!m.crown_depth_mm || !m.stop_length_mm) return {};
  const double below_top = *m.stop_length_mm - *m.crown_depth_mm;
  if (below_top > 0 && (!m.stroke_mm || below_top < *m.stroke_mm)) return {};
  return not_understood("out-of-range",
                        both("a crown at", *m.crown_depth_mm, "a stop of", *m.stop_length_mm) +
                            (below_top > 0 ? ": that is longer than the stroke lets it be" : ": they never meet"),
                        number_words(*m.stop_length_mm, "mm"),
                        "measure both from the plug's seat, like --crown-depth 14mm --stop-length 23mm",
                        "--stop-length");
}

Result<void> check_pairs(const MachineRecord& m) {
  if (m.crank_turn.has_value() == m.crank_seen_from.has_value()) return {};
  const char* missing = m.crank_turn ? "--crank-seen-from" : "--crank-turn";
  return refuse(Trouble::usage, "missing",
                m.crank_turn ? "which way the crank turns says nothing without the side it is seen from"
                             : "the side is given from which the crank is seen, and not which way it turns",
                {}, "write --crank-turn clockwise --crank-seen-from \"looking at the clutch\"", missing);
}

} // namespace

std::span<const WordField<MachineWords>> machine_fields() { return k_fields; }

MachineWords words_of(const MachineRecord& m) {
  return {.called = m.name,
          .kind = m.kind,
          .serial_from = m.serial_from,
          .serial_to = m.serial_to,
          .crank_turn = m.crank_turn,
          .crank_seen_from = m.crank_seen_from,
          .stroke = maybe_words(m.stroke_mm, "mm"),
          .rod = maybe_words(m.rod_mm, "mm"),
          .port_depth = maybe_words(m.port_below_top_mm, "mm"),
          .plug_reach = maybe_words(m.plug_reach_mm, "mm"),
          .regulated_by = m.regulated_by,
          .crown_depth = maybe_words(m.crown_depth_mm, "mm"),
          .stop_length = maybe_words(m.stop_length_mm, "mm"),
          .tip_diameter = maybe_words(m.stop_tip_mm, "mm"),
          .tip_limit = maybe_words(m.stop_tip_limit_MPa, "MPa"),
          .plug_thread = m.plug_thread,
          .plug_material = m.head_material};
}

Result<MachineRecord> with_words(const Catalogue& catalogue, MachineRecord m, const MachineWords& words) {
  const auto mm = [](const std::string& text) { return number_in(text, quantity::unit_named("mm")); };
  const auto mpa = [](const std::string& text) { return number_in(text, quantity::unit_named("MPa")); };
  const auto thread = [&](const std::string& text) { return thread_words(catalogue, text); };
  const auto material = [&](const std::string& text) {
    return find_material(catalogue, text).map([](const strength::PartMaterial& found) { return found.name; });
  };
  if (auto done = first_refusal({put_needed_text(m.name, words.called, "--called", k_like),
                                 put_needed_text(m.kind, words.kind, "--kind", k_like),
                                 put_text(m.serial_from, words.serial_from, "--serial-from"),
                                 put_text(m.serial_to, words.serial_to, "--serial-to"),
                                 put(m.crank_turn, words.crank_turn, "--crank-turn", turn_words),
                                 put_text(m.crank_seen_from, words.crank_seen_from, "--crank-seen-from"),
                                 put(m.stroke_mm, words.stroke, "--stroke", mm), put(m.rod_mm, words.rod, "--rod", mm),
                                 put(m.port_below_top_mm, words.port_depth, "--port-depth", mm),
                                 put(m.plug_reach_mm, words.plug_reach, "--plug-reach", mm),
                                 put_text(m.regulated_by, words.regulated_by, "--regulated-by"),
                                 put(m.crown_depth_mm, words.crown_depth, "--crown-depth", mm),
                                 put(m.stop_length_mm, words.stop_length, "--stop-length", mm),
                                 put(m.stop_tip_mm, words.tip_diameter, "--tip-diameter", mm),
                                 put(m.stop_tip_limit_MPa, words.tip_limit, "--tip-limit", mpa),
                                 put(m.plug_thread, words.plug_thread, "--plug-thread", thread),
                                 put(m.head_material, words.plug_material, "--plug-material", material)});
      !done)
    return Refusal(done.error());
  if (auto done = check_pairs(m); !done) return Refusal(done.error());
  if (auto done = check_lengths(m); !done) return Refusal(done.error());
  return m;
}

Result<MachineRecord> new_machine(const Catalogue& catalogue, const MachineWords& words) {
  if (!words.called)
    return refuse(Trouble::usage, "missing", "the name of the machine is missing", {}, k_like, "--called");
  if (!words.kind)
    return refuse(Trouble::usage, "missing", "what kind of machine it is, is missing", {}, k_like, "--kind");
  auto machine = with_words(catalogue, {}, words);
  if (!machine) return machine;
  if (words.short_name) {
    auto name = read_short_name(*words.short_name);
    if (!name) return Refusal(name.error());
    machine->slug = std::move(*name);
  } else {
    machine->slug = short_name_of(machine->name, "machine");
  }
  return machine;
}

std::vector<std::string> differences(const MachineRecord& was, const MachineRecord& is) {
  return differences_of(words_of(was), words_of(is), k_fields);
}

} // namespace clampwright::specdb
