// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/text_table.hpp"

#include <algorithm>
#include <string_view>

#include "core/report/text_writer.hpp"

namespace clampwright::report {

namespace {

// Columns `first` to before `end`, under one heading.
struct Group {
  std::size_t first;
  std::size_t end;
  std::size_t width = 0;
  std::vector<std::string> heading; // folded to the width
};

// A heading as short as this is not folded.
constexpr std::size_t k_short = 6;

std::vector<std::string> folded(std::string_view text, std::size_t width) {
  std::vector<std::string> lines;
  while (!text.empty()) {
    const std::size_t space = text.find(' ');
    const std::string_view word = text.substr(0, space);
    text.remove_prefix(space == std::string_view::npos ? text.size() : space + 1);
    if (lines.empty() || text_width(lines.back()) + 1 + text_width(word) > width)
      lines.emplace_back(word);
    else
      lines.back().append(" ").append(word);
  }
  return lines;
}

std::size_t longest_word(std::string_view text) {
  std::size_t longest = 0;
  for (const std::string& word : folded(text, 0))
    longest = std::max(longest, text_width(word));
  return longest;
}

std::string placed(std::string_view text, std::size_t width, bool right) {
  const std::size_t used = text_width(text);
  const std::string space(used < width ? width - used : 0, ' ');
  return right ? space + std::string(text) : std::string(text) + space;
}

class Layout {
 public:
  Layout(const Table& table, std::size_t width) : table_(table) {
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
      const std::string& heading = table.columns[c].heading;
      std::size_t widest = text_width(heading) <= k_short ? text_width(heading) : longest_word(heading);
      for (const auto& row : table.rows)
        widest = std::max(widest, text_width(row[c]));
      widths_.push_back(widest);
      const std::string& group = table.columns[c].group;
      if (groups_.empty() || group.empty() || group != table.columns[groups_.back().first].group)
        groups_.push_back({c, c + 1, 0, {}});
      else
        groups_.back().end = c + 1;
    }
    for (Group& group : groups_)
      measure(group);
    if (full_width() > width) between_ = 1;
    if (full_width() > width) indent_ = 0;
  }

  [[nodiscard]] std::vector<std::string> lines() const {
    std::vector<std::string> out = heading_lines();
    out.push_back(std::string(indent_, ' ') + std::string(full_width() - indent_, '-'));
    for (const auto& row : table_.rows)
      out.push_back(line([&](std::size_t c) { return row[c]; }));
    return out;
  }

 private:
  // The width of its columns and of the longest word above them; the first column takes what is missing.
  void measure(Group& group) {
    const std::string& heading = table_.columns[group.first].group;
    const auto sum = [&] {
      std::size_t total = group.end - group.first - 1;
      for (std::size_t c = group.first; c < group.end; ++c)
        total += widths_[c];
      return total;
    };
    if (const std::size_t word = longest_word(heading); word > sum()) widths_[group.first] += word - sum();
    group.width = sum();
    group.heading = folded(heading, group.width);
  }

  [[nodiscard]] std::size_t full_width() const {
    std::size_t total = indent_ + between_ * (groups_.size() - 1);
    for (const Group& group : groups_)
      total += group.width;
    return total;
  }

  static std::string trimmed(std::string text) {
    text.erase(text.find_last_not_of(' ') + 1);
    return text;
  }

  template<class Cell>
  [[nodiscard]] std::string line(Cell cell) const {
    std::string out(indent_, ' ');
    for (const Group& group : groups_) {
      if (group.first > 0) out.append(between_, ' ');
      for (std::size_t c = group.first; c < group.end; ++c) {
        if (c > group.first) out += ' ';
        out += placed(cell(c), widths_[c], table_.columns[c].is_number);
      }
    }
    return trimmed(std::move(out));
  }

  // The headings of the groups over those of the columns, both standing on the line.
  [[nodiscard]] std::vector<std::string> heading_lines() const {
    std::vector<std::vector<std::string>> own;
    std::size_t own_height = 0;
    std::size_t group_height = 0;
    for (std::size_t c = 0; c < widths_.size(); ++c) {
      own.push_back(folded(table_.columns[c].heading, widths_[c]));
      // A column without a group may use the lines of the groups.
      if (!table_.columns[c].group.empty()) own_height = std::max(own_height, own.back().size());
    }
    for (const Group& group : groups_)
      group_height = std::max(group_height, group.heading.size());
    std::size_t height = group_height + own_height;
    for (const auto& lines : own)
      height = std::max(height, lines.size());

    const auto at = [](const std::vector<std::string>& lines, std::size_t from_below) {
      return from_below < lines.size() ? lines[lines.size() - 1 - from_below] : std::string();
    };
    std::vector<std::string> out;
    for (std::size_t l = 0; l < height; ++l) {
      const std::size_t from_below = height - 1 - l;
      std::string text(indent_, ' ');
      for (const Group& group : groups_) {
        if (group.first > 0) text.append(between_, ' ');
        if (from_below >= own_height && !group.heading.empty()) {
          text += placed(at(group.heading, from_below - own_height), group.width, false);
          continue;
        }
        for (std::size_t c = group.first; c < group.end; ++c) {
          if (c > group.first) text += ' ';
          text += placed(at(own[c], from_below), widths_[c], table_.columns[c].is_number);
        }
      }
      out.push_back(trimmed(std::move(text)));
    }
    return out;
  }

  const Table& table_;
  std::vector<std::size_t> widths_;
  std::vector<Group> groups_;
  std::size_t between_ = 2;
  std::size_t indent_ = 2;
};

} // namespace

std::vector<std::string> table_lines(const Table& table, std::size_t width) {
  if (table.columns.empty()) return {};
  return Layout(table, width).lines();
}

} // namespace clampwright::report
