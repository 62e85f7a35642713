// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/record_lines.hpp"

#include <fmt/format.h>

#include "core/quantity/read.hpp"
#include "core/text/plain_text.hpp"
#include "specdb/question/kept_words.hpp"

namespace clampwright::specdb {

namespace {

// One of the things on the line, and what stands in brackets behind it.
struct Item {
  std::string name;
  std::vector<std::string> brackets;
};

// The texts between commas that stand outside of brackets.
Result<std::vector<std::string>> pieces_of(std::string_view line) {
  std::vector<std::string> pieces(1);
  int depth = 0;
  for (const char c : line) {
    depth += c == '(' ? 1 : c == ')' ? -1 : 0;
    if (depth < 0) break;
    if (c == ',' && depth == 0)
      pieces.emplace_back();
    else
      pieces.back() += c;
  }
  if (depth != 0)
    return not_understood("not-understood", "a bracket has no partner", line,
                          "write what belongs to one thing in brackets behind it: compound-medium (on clean thread)");
  return pieces;
}

// "exhaust (runs at 300 degC)" is the name and one bracket. Brackets within brackets stay as they are.
Item item_of(const std::string& piece) {
  Item item{text::plain_spaces(piece.substr(0, piece.find('('))), {}};
  int depth = 0;
  for (const char c : piece) {
    if (c == '(' && depth++ == 0) {
      item.brackets.emplace_back();
      continue;
    }
    if (c == ')' && --depth == 0) continue;
    if (depth > 0) item.brackets.back() += c;
  }
  return item;
}

Result<std::vector<Item>> items_of(std::string_view line) {
  const auto pieces = pieces_of(line);
  if (!pieces) return Refusal(pieces.error());
  std::vector<Item> items;
  for (const std::string& piece : *pieces)
    if (Item item = item_of(piece); !item.name.empty() || !item.brackets.empty()) items.push_back(std::move(item));
  return items;
}

std::string with_brackets(std::string name, std::initializer_list<MaybeText> brackets) {
  for (const MaybeText& bracket : brackets)
    if (bracket) name += fmt::format(" ({})", *bracket);
  return name;
}

MaybeText said_as(const char* lead, const MaybeText& text) {
  return text ? MaybeText(fmt::format("{} {}", lead, *text)) : std::nullopt;
}

constexpr std::string_view k_bears = "bears ";
constexpr std::string_view k_runs_at = "runs at ";

} // namespace

MaybeText locks_line(const std::vector<LockRecord>& locks) {
  std::vector<std::string> lines;
  for (const LockRecord& lock : locks)
    lines.push_back(with_brackets(lock.lock, {lock.note}));
  return in_one_line(lines);
}

Result<std::vector<LockRecord>> read_locks_line(std::string_view line) {
  const auto items = items_of(line);
  if (!items) return Refusal(items.error());
  std::vector<LockRecord> locks;
  for (const Item& item : *items) {
    if (item.brackets.size() > 1)
      return not_understood("not-understood", "a lock has one note in brackets at the most", item.name,
                            "write compound-medium (on clean thread), split-pin");
    locks.push_back({item.name, item.brackets.empty() ? MaybeText() : MaybeText(item.brackets.front())});
  }
  return locks;
}

MaybeText neighbours_line(const std::vector<NeighbourWords>& neighbours) {
  std::vector<std::string> lines;
  for (const NeighbourWords& one : neighbours)
    lines.push_back(with_brackets(one.name, {said_as("bears", one.bears), said_as("runs at", one.runs_at)}));
  return in_one_line(lines);
}

Result<std::vector<NeighbourWords>> read_neighbours_line(std::string_view line) {
  const auto items = items_of(line);
  if (!items) return Refusal(items.error());
  std::vector<NeighbourWords> neighbours;
  for (const Item& item : *items) {
    NeighbourWords words{item.name, {}, {}};
    for (const std::string& bracket : item.brackets) {
      if (bracket.starts_with(k_bears))
        words.bears = bracket.substr(k_bears.size());
      else if (bracket.starts_with(k_runs_at))
        words.runs_at = bracket.substr(k_runs_at.size());
      else
        return not_understood("not-understood", "a part near the joint bears so much, or runs so hot", bracket,
                              "write crank oil seal (bears 120 degC), or exhaust (runs at 300 degC)");
    }
    neighbours.push_back(std::move(words));
  }
  return neighbours;
}

MaybeText rechecks_line(const std::vector<RecheckWords>& rechecks) {
  std::vector<std::string> lines;
  for (const RecheckWords& one : rechecks)
    lines.push_back(with_brackets(one.words, {one.hours, one.days, one.event}));
  return in_one_line(lines);
}

Result<std::vector<RecheckWords>> read_rechecks_line(std::string_view line) {
  const auto items = items_of(line);
  if (!items) return Refusal(items.error());
  std::vector<RecheckWords> rechecks;
  for (const Item& item : *items) {
    RecheckWords words{item.name, {}, {}, {}};
    for (const std::string& bracket : item.brackets) {
      const auto time = quantity::read_quantity(bracket, quantity::Kind::time);
      (!time ? words.event : time->unit->name == "d" ? words.days : words.hours) = bracket;
    }
    rechecks.push_back(std::move(words));
  }
  return rechecks;
}

} // namespace clampwright::specdb
