// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/shelf_question.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/calendar/moment.hpp"
#include "core/quantity/read.hpp"
#include "core/quantity/unit.hpp"
#include "core/quantity/write.hpp"
#include "core/text/plain_text.hpp"
#include "specdb/catalogue/surfaces.hpp"
#include "specdb/question/kept_file.hpp"
#include "specdb/question/kept_words.hpp"
#include "specdb/workshop/compounds.hpp"
#include "specdb/workshop/entries.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace clampwright::specdb {

namespace {

constexpr std::size_t k_longest = 200;
constexpr const char* k_example = "write shelf add --label \"bottle on the left\" --grade compound-medium";

Result<std::string> plain_text(const std::string& given, const char* option) {
  std::string plain = text::plain_spaces(given);
  if (!text::is_printable(plain) || plain.size() > k_longest)
    return refuse(Trouble::not_understood, "not-understood",
                  fmt::format("a text of up to {} characters is wanted here", k_longest), given,
                  "leave control characters out", option);
  return plain;
}

Result<void> put_text(const std::optional<std::string>& given, const char* option, MaybeText& into) {
  if (!given) return {};
  auto plain = plain_text(*given, option);
  if (!plain) return Refusal(plain.error());
  if (plain->empty())
    into.reset();
  else
    into = std::move(*plain);
  return {};
}

Result<void> put_day(const std::optional<std::string>& given, const char* option, MaybeText& into) {
  if (!given) return {};
  if (text::plain_spaces(*given).empty()) {
    into.reset();
    return {};
  }
  const auto day = calendar::read_day(*given);
  if (!day) return in_field(day.error(), option);
  into = calendar::write_day(*day);
  return {};
}

Result<void> put_grade(const Catalogue& catalogue, const std::string& given, CompoundRecord& compound) {
  const auto lock = find_lock(catalogue, given);
  if (!lock) return in_field(lock.error(), "--grade");
  if (lock->family != friction::LockFamily::compound)
    return refuse(Trouble::not_understood, "no-compound", "that is no compound", given,
                  "grades are compound-low, compound-medium, compound-high", "--grade");
  compound.grade = lock->name;
  return {};
}

Result<void> put_bears(const std::string& given, CompoundRecord& compound) {
  if (text::plain_spaces(given).empty()) {
    compound.bears_degC.reset();
    return {};
  }
  const auto read = quantity::read_quantity(given, quantity::Kind::temperature);
  if (!read) return in_field(read.error(), "--bears");
  compound.bears_degC = quantity::in_degrees_celsius(quantity::Temperature::from_value(read->si()));
  return {};
}

// What was said, over what is there.
Result<CompoundRecord> with_entry(const Catalogue& catalogue, CompoundRecord compound, const ShelfEntry& entry,
                                  std::chrono::year_month_day today) {
  if (entry.label) {
    auto label = plain_text(*entry.label, "--label");
    if (!label) return Refusal(label.error());
    if (label->empty()) return refuse(Trouble::usage, "missing", "the label is empty", {}, k_example, "--label");
    compound.label = std::move(*label);
  }
  if (entry.grade)
    if (auto done = put_grade(catalogue, *entry.grade, compound); !done) return Refusal(done.error());
  if (entry.bears)
    if (auto done = put_bears(*entry.bears, compound); !done) return Refusal(done.error());
  if (auto done = put_text(entry.batch, "--batch", compound.batch); !done) return Refusal(done.error());
  if (auto done = put_text(entry.sheet, "--sheet", compound.sheet); !done) return Refusal(done.error());
  if (auto done = put_day(entry.expires, "--expires", compound.expires_on); !done) return Refusal(done.error());
  if (auto done = put_day(entry.opened, "--opened", compound.opened_on); !done) return Refusal(done.error());
  if (entry.opened && compound.opened_on && *compound.opened_on > calendar::write_day(today))
    return not_understood(
        "out-of-range", fmt::format("that day is still to come; today is {}", calendar::write_day(today)),
        *entry.opened,
        fmt::format("write the day on which it was opened, like --opened {}", calendar::write_day(today)), "--opened");
  return compound;
}

// "Bottle on the left" is bottle-on-the-left; a second one gets a number.
std::string slug_for(const std::string& label, const std::vector<CompoundRecord>& there) {
  return free_name(short_name_of(label, "compound"), [&](const std::string& one) {
    return std::ranges::any_of(there, [&](const CompoundRecord& compound) {
      return compound.slug == one || text::equal_fold(compound.label, one);
    });
  });
}

// "batch: B-1 → B-2", for the log.
std::string changes(const CompoundRecord& was, const CompoundRecord& is) {
  std::vector<std::string> words;
  const auto compare = [&](const char* what, const std::string& one, const std::string& other) {
    if (one != other)
      words.push_back(fmt::format("{}: {} → {}", what, one.empty() ? "none" : one, other.empty() ? "none" : other));
  };
  const auto degrees = [](const std::optional<double>& value) {
    return value ? fmt::format("{} °C", *value) : std::string();
  };
  compare("label", was.label, is.label);
  compare("grade", was.grade, is.grade);
  compare("batch", was.batch.value_or(""), is.batch.value_or(""));
  compare("expires", was.expires_on.value_or(""), is.expires_on.value_or(""));
  compare("opened", was.opened_on.value_or(""), is.opened_on.value_or(""));
  compare("bears", degrees(was.bears_degC), degrees(is.bears_degC));
  compare("sheet", was.sheet.value_or(""), is.sheet.value_or(""));
  return fmt::format("{}", fmt::join(words, "; "));
}

Result<std::string> reason(const std::string& because) {
  auto plain = plain_text(because, "--because");
  if (!plain) return plain;
  if (plain->empty())
    return refuse(Trouble::usage, "missing", "the reason is missing", {}, "write it with --because \"...\"",
                  "--because");
  return plain;
}

// The one of that name that is in use.
Result<CompoundRecord> standing(const SQLite::Database& database, const std::string& name) {
  auto compound = find_compound(database, name);
  if (!compound) return compound;
  if (compound->retired_on)
    return refuse(
        Trouble::not_understood, "retired",
        fmt::format("it was retired on {}: {}", *compound->retired_on, compound->retired_because.value_or("")), name,
        "enter a new one with clampwright shelf add");
  return compound;
}

void keep(const SQLite::Database& database, CompoundRecord& compound, EventRecord event) {
  revise_compound(database, compound);
  add_compound_event(database, compound.slug, event);
  compound.events.push_back(std::move(event));
}

std::string state_words(const CompoundRecord& compound, std::chrono::year_month_day today) {
  switch (state_of(compound, today)) {
  case ShelfState::retired:
    return fmt::format("retired on {}: {}", *compound.retired_on, compound.retired_because.value_or(""));
  case ShelfState::expired:
    return fmt::format("EXPIRED on {}: do not use it", *compound.expires_on);
  case ShelfState::good:
    return fmt::format("good until {}", *compound.expires_on);
  case ShelfState::not_stated:
    return "no date of expiry recorded";
  }
  return "";
}

} // namespace

ShelfState state_of(const CompoundRecord& compound, std::chrono::year_month_day today) {
  if (compound.retired_on) return ShelfState::retired;
  if (!compound.expires_on) return ShelfState::not_stated;
  return *compound.expires_on < calendar::write_day(today) ? ShelfState::expired : ShelfState::good;
}

Result<CompoundRecord> add_to_shelf(const Catalogue& catalogue, const std::filesystem::path& file,
                                    const ShelfEntry& entry, std::chrono::year_month_day today) {
  if (!entry.label) return refuse(Trouble::usage, "missing", "the label is missing", {}, k_example, "--label");
  if (!entry.grade) return refuse(Trouble::usage, "missing", "the grade is missing", {}, k_example, "--grade");
  auto compound = with_entry(catalogue, {}, entry, today);
  if (!compound) return compound;
  const auto made = change_or_make(file, [&](SQLite::Database& database) -> Result<void> {
    compound->slug = slug_for(compound->label, all_compounds(database));
    add_compound(database, *compound);
    return {};
  });
  if (!made) return Refusal(made.error());
  return compound;
}

Result<CompoundRecord> revise_on_shelf(const Catalogue& catalogue, const std::filesystem::path& file,
                                       const std::string& name, const ShelfEntry& entry, const std::string& because,
                                       std::chrono::year_month_day today) {
  const auto why = reason(because);
  if (!why) return Refusal(why.error());
  CompoundRecord kept;
  const auto done = Workshop::change(file, [&](SQLite::Database& database) -> Result<void> {
    const auto was = standing(database, name);
    if (!was) return Refusal(was.error());
    auto is = with_entry(catalogue, *was, entry, today);
    if (!is) return Refusal(is.error());
    const std::string changed = changes(*was, *is);
    if (changed.empty())
      return refuse(Trouble::usage, "missing", "nothing would change", name,
                    "say what is different, like --expires 2027-06-30");
    kept = std::move(*is);
    keep(database, kept, {calendar::write_day(today), "revised", fmt::format("{}; because {}", changed, *why), {}});
    return {};
  });
  if (!done) return Refusal(done.error());
  return kept;
}

Result<CompoundRecord> retire_from_shelf(const std::filesystem::path& file, const std::string& name,
                                         const std::string& because, std::chrono::year_month_day today) {
  const auto why = reason(because);
  if (!why) return Refusal(why.error());
  CompoundRecord kept;
  const auto done = Workshop::change(file, [&](SQLite::Database& database) -> Result<void> {
    auto compound = standing(database, name);
    if (!compound) return Refusal(compound.error());
    kept = std::move(*compound);
    kept.retired_on = calendar::write_day(today);
    kept.retired_because = *why;
    keep(database, kept, {*kept.retired_on, "retired", *why, {}});
    return {};
  });
  if (!done) return Refusal(done.error());
  return kept;
}

finding::Findings shelf_findings(const std::vector<CompoundRecord>& compounds, std::chrono::year_month_day today) {
  finding::Findings findings;
  for (const CompoundRecord& compound : compounds)
    if (state_of(compound, today) == ShelfState::expired)
      findings.push_back(
          {finding::Code::compound_expired, finding::Severity::stop, {compound.label, *compound.expires_on}});
  return findings;
}

report::Document shelf_document(const std::string& title, const std::vector<CompoundRecord>& compounds,
                                std::chrono::year_month_day today) {
  report::Document document;
  document.title = title;
  if (compounds.empty()) document.sections.push_back({"", {{"", "nothing stands on the shelf"}}});
  for (const CompoundRecord& compound : compounds) {
    report::Section section{fmt::format("\"{}\" [{}]", compound.label, compound.slug), {}};
    section.rows.push_back({"Grade", compound.grade});
    section.rows.push_back({"State", state_words(compound, today)});
    section.rows.push_back({"Batch", compound.batch.value_or("not recorded")});
    if (compound.opened_on) section.rows.push_back({"Opened", *compound.opened_on});
    if (compound.bears_degC)
      section.rows.push_back(
          {"Bears", fmt::format("{} °C, by its sheet", quantity::write_number(*compound.bears_degC, 4))});
    if (compound.sheet) section.rows.push_back({"Its sheet", *compound.sheet});
    for (const EventRecord& event : compound.events)
      section.rows.push_back({&event == &compound.events.front() ? "Log" : "",
                              fmt::format("{} {}: {}", event.on_date, event.kind, event.words)});
    document.sections.push_back(std::move(section));
  }
  return document;
}

} // namespace clampwright::specdb
