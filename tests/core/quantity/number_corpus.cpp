// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/quantity/number_corpus.hpp"

#include <algorithm>
#include <charconv>
#include <fstream>
#include <stdexcept>

#include "core/text/plain_text.hpp"

namespace clampwright::test {

namespace {

using quantity::Kind;

template<class Number>
Number parsed(std::string_view text, int base) {
  Number value{};
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value, base);
  if (error != std::errc{} || end != text.data() + text.size())
    throw std::runtime_error("number_corpus.tsv: no number: " + std::string(text));
  return value;
}

std::string utf8(unsigned point) {
  const auto byte = [](unsigned bits) { return static_cast<char>(static_cast<unsigned char>(bits)); };
  if (point < 0x80) return {byte(point)};
  if (point < 0x800) return {byte(0xC0 | (point >> 6)), byte(0x80 | (point & 0x3F))};
  if (point < 0x10000)
    return {byte(0xE0 | (point >> 12)), byte(0x80 | ((point >> 6) & 0x3F)), byte(0x80 | (point & 0x3F))};
  return {byte(0xF0 | (point >> 18)), byte(0x80 | ((point >> 12) & 0x3F)), byte(0x80 | ((point >> 6) & 0x3F)),
          byte(0x80 | (point & 0x3F))};
}

// One escape at the start of `text`, which is taken off.
std::string take_escape(std::string_view& text) {
  const char letter = text.at(1);
  if (letter == 'x') {
    const auto byte = parsed<unsigned>(text.substr(2, 2), 16);
    text.remove_prefix(4);
    return {static_cast<char>(static_cast<unsigned char>(byte))};
  }
  if (letter == 'u') {
    const std::size_t close = text.find('}');
    const auto point = parsed<unsigned>(text.substr(3, close - 3), 16);
    text.remove_prefix(close + 1);
    return utf8(point);
  }
  text.remove_prefix(2);
  switch (letter) {
  case 'n':
    return "\n";
  case 'r':
    return "\r";
  case 't':
    return "\t";
  case '\\':
    return "\\";
  default:
    throw std::runtime_error("number_corpus.tsv: no such escape: \\" + std::string(1, letter));
  }
}

std::string spelled_out(std::string_view text) {
  std::string out;
  while (!text.empty()) {
    if (text[0] == '\\') {
      out += take_escape(text);
    } else if (text[0] == '{') {
      const std::size_t star = text.find('*');
      const std::size_t close = text.find('}', star);
      const std::string unit = spelled_out(text.substr(1, star - 1));
      for (auto n = parsed<std::size_t>(text.substr(star + 1, close - star - 1), 10); n > 0; --n)
        out += unit;
      text.remove_prefix(close + 1);
    } else {
      out += text[0];
      text.remove_prefix(1);
    }
  }
  return out;
}

std::vector<std::string> split(std::string_view line, char mark) {
  std::vector<std::string> parts;
  for (;;) {
    const std::size_t end = line.find(mark);
    parts.emplace_back(line.substr(0, end));
    if (end == std::string_view::npos) return parts;
    line.remove_prefix(end + 1);
  }
}

// "out-of-range angle=-5": the first word for all kinds, then the exceptions.
std::vector<std::string> decisions(std::string_view column) {
  const std::vector<std::string> words = split(column, ' ');
  std::vector<std::string> out(number_kinds().size(), words.at(0));
  for (std::size_t i = 1; i < words.size(); ++i) {
    const std::vector<std::string> parts = split(words[i], '=');
    const auto kind = std::ranges::find(number_kinds(), parts.at(0), &NumberKind::name);
    if (kind == number_kinds().end()) throw std::runtime_error("number_corpus.tsv: no such kind: " + words[i]);
    out.at(static_cast<std::size_t>(kind - number_kinds().begin())) = parts.at(1);
  }
  return out;
}

std::vector<NumberRow> read_table() {
  std::ifstream in(CLAMPWRIGHT_SOURCE_DIR "/tests/core/quantity/number_corpus.tsv");
  if (!in) throw std::runtime_error("number_corpus.tsv cannot be read");
  std::vector<NumberRow> rows;
  std::string line;
  while (std::getline(in, line)) {
    if (line.empty() || line[0] == '#') continue;
    const std::vector<std::string> columns = split(line, '\t');
    const std::string& name = columns.at(0);
    if (columns.size() < 4 || name.size() < 2 || name.front() != '[' || name.back() != ']')
      throw std::runtime_error("number_corpus.tsv: " + line);
    rows.push_back({name, spelled_out(std::string_view(name).substr(1, name.size() - 2)), decisions(columns[1]),
                    columns[2], columns[3], columns.size() > 4 && columns[4] == "process"});
  }
  return rows;
}

} // namespace

const std::vector<NumberKind>& number_kinds() {
  static const std::vector<NumberKind> k_kinds{
      {Kind::torque, "torque", "N.m"}, {Kind::force, "force", "N"},   {Kind::stress, "stress", "MPa"},
      {Kind::length, "length", "mm"},  {Kind::angle, "angle", "deg"}, {Kind::temperature, "temperature", "degC"},
      {Kind::time, "time", "h"},       {Kind::speed, "speed", "rpm"}};
  return k_kinds;
}

const std::vector<NumberRow>& number_corpus() {
  static const std::vector<NumberRow> k_rows = read_table();
  return k_rows;
}

bool is_value(std::string_view decision) {
  if (decision.starts_with('-')) decision.remove_prefix(1);
  return !decision.empty() && text::is_digit(decision[0]);
}

double value_of(std::string_view decision) {
  double value = 0;
  const auto [end, error] = std::from_chars(decision.data(), decision.data() + decision.size(), value);
  if (error != std::errc{} || end != decision.data() + decision.size())
    throw std::runtime_error("number_corpus.tsv: no value: " + std::string(decision));
  return value;
}

} // namespace clampwright::test
