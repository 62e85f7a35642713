// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/text_writer.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/quantity/unit.hpp"
#include "core/quantity/write.hpp"
#include "core/report/text_table.hpp"
#include "core/report/wording.hpp"

namespace clampwright::report {

namespace {

struct StandIn {
  std::string_view sign;
  std::string_view ascii;
};

constexpr std::array k_stand_ins{
    StandIn{"·", "."},     StandIn{"²", "^2"},  StandIn{"³", "^3"},   StandIn{"°", " deg"}, StandIn{"µ", "u"},
    StandIn{"μ", "mu"},    StandIn{"ρ", "rho"}, StandIn{"φ", "phi"},  StandIn{"π", "pi"},   StandIn{"α", "alpha"},
    StandIn{"σ", "sigma"}, StandIn{"τ", "tau"}, StandIn{"√", "sqrt"}, StandIn{"′", "'"},    StandIn{"×", "x"},
    StandIn{"±", "+/-"},   StandIn{"–", "-"},   StandIn{"—", "-"},    StandIn{"…", "..."},  StandIn{"“", "\""},
    StandIn{"”", "\""},    StandIn{"’", "'"},
};

// Is this what stands behind a number: "%", "kN", "°C"?
bool is_unit_sign(std::string_view word) {
  while (word.ends_with(',') || word.ends_with('.') || word.ends_with(';') || word.ends_with(':') ||
         word.ends_with(')'))
    word.remove_suffix(1);
  if (word == "%") return true;
  return std::ranges::any_of(quantity::all_units(),
                             [&](const quantity::Unit& unit) { return word == unit.symbol || word == unit.name; });
}

// Where the first word ends; a number and its unit are one.
std::size_t end_of_word(std::string_view text) {
  const std::size_t space = text.find(' ');
  if (space == 0 || space == std::string_view::npos || text[space - 1] < '0' || text[space - 1] > '9') return space;
  const std::size_t next = text.find(' ', space + 1);
  return is_unit_sign(text.substr(space + 1, next == std::string_view::npos ? next : next - space - 1)) ? next : space;
}

class TextPage {
 public:
  explicit TextPage(std::size_t width) : width_(width) {}

  void line(std::string_view text) {
    out_ += text;
    out_ += '\n';
  }

  // Words flow into lines; the first begins with `lead`, the others are indented as far.
  void flow(std::string_view lead, std::string_view text) {
    const std::size_t indent = text_width(lead);
    std::string current(lead);
    std::size_t used = indent;
    bool empty = true;
    while (!text.empty()) {
      const std::size_t space = end_of_word(text);
      const std::string_view word = text.substr(0, space);
      text.remove_prefix(space == std::string_view::npos ? text.size() : space + 1);
      if (word.empty()) continue;
      const std::size_t needed = text_width(word) + (empty ? 0 : 1);
      if (!empty && used + needed > width_) {
        line(current);
        current.assign(indent, ' ');
        used = indent;
        empty = true;
      }
      if (!empty) current += ' ';
      current += word;
      used += text_width(word) + (empty ? 0 : 1);
      empty = false;
    }
    line(current);
  }

  [[nodiscard]] std::string take() { return std::move(out_); }

 private:
  std::size_t width_;
  std::string out_;
};

std::string padded(std::string_view text, std::size_t width) {
  std::string out(text);
  const std::size_t used = text_width(text);
  if (used < width) out.append(width - used, ' ');
  return out;
}

void write_section(TextPage& page, const Section& section, std::size_t label_width, std::size_t width) {
  page.line("");
  if (!section.heading.empty()) page.flow("", section.heading);
  for (const Row& row : section.rows)
    page.flow(fmt::format("  {}  ", padded(row.label, label_width)), row.value);
  if (section.table)
    for (const std::string& line : table_lines(*section.table, width))
      page.line(line);
}

void write_working(TextPage& page, const Working& working, const std::string& heading) {
  if (working.empty()) return;
  page.line("");
  page.line(heading);
  std::size_t symbol_width = 0;
  for (const Step& step : working)
    symbol_width = std::max(symbol_width, text_width(step.symbol));
  for (const Step& step : working) {
    const std::string value =
        quantity::write_number(step.value, 7) + (step.unit.empty() ? "" : (step.unit == "°" ? "" : " ") + step.unit);
    const std::string lead = fmt::format("  {} = ", padded(step.symbol, symbol_width));
    page.flow(lead, fmt::format("{} = {}   ({}; {})", step.formula, value, step.meaning, step.source));
  }
}

// Every text that is ours to put in other words.
void change_words(Document& document, const Say& say) {
  const auto change = [&](std::string& text) { text = say(text); };
  const auto change_table = [&](Table& table) {
    for (Column& column : table.columns) {
      change(column.group);
      change(column.heading);
    }
    for (auto& row : table.rows)
      for (std::string& cell : row)
        change(cell);
    change(table.over);
    change(table.under);
  };
  change(document.title);
  change(document.banner);
  change(document.working_for);
  for (Section& section : document.sections) {
    change(section.heading);
    for (Row& row : section.rows) {
      change(row.label);
      change(row.value);
    }
    if (section.table) change_table(*section.table);
  }
  for (Remark& remark : document.remarks)
    change(remark.text);
  for (Step& step : document.working)
    for (std::string* text : {&step.meaning, &step.source})
      change(*text);
}

Document in_ascii(Document document) {
  change_words(document, to_ascii);
  for (Step& step : document.working)
    for (std::string* text : {&step.symbol, &step.formula, &step.unit})
      *text = to_ascii(*text);
  for (Source& source : document.sources)
    for (std::string* text : {&source.title, &source.edition, &source.where})
      *text = to_ascii(*text);
  return document;
}

// The designation or name with which a title begins: "ISO 898-1".
std::string short_title(const Source& source) {
  std::string text = source.title.substr(0, source.title.find(','));
  if (!source.edition.empty()) text += fmt::format(" ({})", source.edition);
  return text;
}

// With the working, or away from the program, every source in full; without it the first few by name.
void write_sources(TextPage& page, const Document& document, const Say& say) {
  if (document.sources.empty()) return;
  page.line("");
  if (document.working.empty() && !document.stands_alone) {
    constexpr std::size_t k_most = 4;
    std::vector<std::string> names;
    for (const Source& source : document.sources)
      if (std::string name = fmt::format("{} [{}]", short_title(source), known_name(source.known));
          std::ranges::find(names, name) == names.end())
        names.push_back(std::move(name));
    const std::size_t shown = std::min(names.size(), k_most);
    std::string line;
    for (std::size_t i = 0; i < shown; ++i)
      line += (i == 0 ? "" : "; ") + names[i];
    if (shown < names.size()) line += "; " + say(fmt::format("and {} more, named by --explain", names.size() - shown));
    page.flow(say("Rests on") + "  ", line);
    return;
  }
  page.line(say("Sources"));
  for (const Source& source : document.sources)
    page.flow("  ", full_source(source));
}

} // namespace

std::size_t text_width(std::string_view text) {
  return static_cast<std::size_t>(
      std::ranges::count_if(text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

std::string to_ascii(std::string_view text) {
  std::string out;
  while (!text.empty()) {
    if (static_cast<unsigned char>(text[0]) < 0x80) {
      out += text[0];
      text.remove_prefix(1);
      continue;
    }
    const auto found = std::ranges::find_if(k_stand_ins, [&](const StandIn& s) { return text.starts_with(s.sign); });
    if (found != k_stand_ins.end()) {
      out += found->ascii;
      text.remove_prefix(found->sign.size());
      continue;
    }
    out += '?';
    text.remove_prefix(1);
    while (!text.empty() && (static_cast<unsigned char>(text[0]) & 0xC0) == 0x80)
      text.remove_prefix(1);
  }
  return out;
}

std::string write_text(const Document& document, int width, Charset charset) {
  if (charset == Charset::utf8)
    return write_text_in(
        document, [](std::string_view text) { return std::string(text); }, width);
  // Before the lines are laid out: a stand-in may be longer than its sign.
  return write_text_in(in_ascii(document), to_ascii, width);
}

std::string write_text_in(const Document& given, const Say& say, int width) {
  Document document = given;
  change_words(document, say);
  const auto page_width = static_cast<std::size_t>(std::max(width, 40));
  TextPage page(page_width);
  page.flow("", document.title);
  if (!document.banner.empty()) page.flow("", document.banner);
  std::size_t label_width = 0;
  for (const Section& section : document.sections)
    for (const Row& row : section.rows)
      label_width = std::max(label_width, text_width(row.label));
  for (const Section& section : document.sections)
    write_section(page, section, label_width, page_width);
  if (!document.remarks.empty()) page.line("");
  for (const Remark& remark : document.remarks)
    page.flow(say(severity_word(remark.severity)) + "  ", fmt::format("{} [{}]", remark.text, remark.code));
  write_working(page, document.working,
                say(given.working_for.empty() ? "Working" : fmt::format("Working for {}", given.working_for)));
  write_sources(page, document, say);
  if (document.has_foot) {
    page.line("");
    page.flow("", say(foot_line()));
  }
  return page.take();
}

} // namespace clampwright::report
