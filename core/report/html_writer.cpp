// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/html_writer.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/quantity/write.hpp"
#include "core/report/wording.hpp"
#include "core/text/plain_text.hpp"

namespace clampwright::report {

namespace {

// The paper's size is left to the printer: A4 and Letter both hold it. Rules and weight carry the meaning, not colour.
constexpr std::string_view k_style = R"(
body { margin: 1.5rem auto; max-width: 56rem; padding: 0 1rem; background: #fff; color: #000;
  font: 1rem/1.4 "Noto Sans", "DejaVu Sans", "Liberation Sans", Arial, sans-serif; }
h1 { font-size: 1.4rem; line-height: 1.25; margin: 0 0 .6rem; }
h2 { font-size: 1.05rem; margin: 1.2rem 0 .3rem; break-after: avoid; }
dl { margin: 0 0 .8rem; font-size: .9rem; }
dt { font-weight: 600; float: left; clear: left; width: 9.5rem; }
dd { margin: 0 0 .15rem 10rem; }
.banner { border: 2px solid #000; padding: .2rem .6rem; font-weight: 700; display: inline-block; }
table { border-collapse: collapse; width: 100%; margin: 1.2rem 0; font-size: .9rem;
  font-variant-numeric: tabular-nums; }
thead { display: table-header-group; }
tfoot { display: table-footer-group; }
tr { break-inside: avoid; }
th, td { padding: .16rem .4rem; text-align: left; vertical-align: baseline; font-weight: 400; }
thead .over th { font-size: .8rem; padding: 0 0 .3rem; }
thead .over strong { display: block; font-size: 1rem; }
thead .heads th { font-size: .8rem; font-weight: 600; line-height: 1.2; vertical-align: bottom; }
.heads + .heads th { white-space: nowrap; }
thead .heads:last-child th { border-bottom: 1.5px solid #000; }
.number { text-align: right; }
td { white-space: nowrap; }
.group { text-align: center; border-bottom: 1px solid #000; }
.first { padding-left: 1rem; }
.main { font-weight: 700; }
thead .heads th.main { font-weight: 700; }
td.main { font-size: 1.08em; }
tbody th { white-space: nowrap; font-weight: 600; }
tbody tr { border-bottom: 1px solid #999; }
tfoot td { white-space: normal; font-size: .75rem; border-top: 1.5px solid #000; padding: .25rem 0 0; }
.remarks { list-style: none; margin: 1rem 0; padding: 0; font-size: .9rem; }
.remarks li { margin: 0 0 .35rem; padding-left: .6rem; border-left: 1px solid #000; break-inside: avoid; }
.remarks .stop { border-left-width: 6px; }
.remarks .mind { border-left-width: 3px; }
.code { font-size: .85em; white-space: nowrap; }
.sources, .working { font-size: .8rem; padding-left: 1.2rem; }
.foot { border-top: 1.5px solid #000; padding-top: .4rem; font-weight: 600; font-size: .9rem; }
@page { margin: 12mm 12mm 14mm; @bottom-right { content: counter(page) " / " counter(pages); font-size: 8pt; } }
@media print {
  body { margin: 0; max-width: none; padding: 0; font-size: 9.5pt; }
  table { margin: 4mm 0; }
}
)";

std::string classes_of(const Column& column, bool is_first) {
  std::string classes = column.is_number ? "number" : "";
  const auto add = [&](const char* name) { classes += classes.empty() ? name : fmt::format(" {}", name); };
  if (is_first) add("first");
  if (column.is_main) add("main");
  return classes.empty() ? classes : fmt::format(" class=\"{}\"", classes);
}

class HtmlPage {
 public:
  template<class... Arguments>
  void line(fmt::format_string<Arguments...> format, Arguments&&... arguments) {
    fmt::format_to(std::back_inserter(out_), format, std::forward<Arguments>(arguments)...);
    out_ += '\n';
  }
  void raw(std::string_view text) { out_ += text; }
  [[nodiscard]] std::string take() { return std::move(out_); }

 private:
  std::string out_;
};

bool starts_group(const Table& table, std::size_t c) {
  return c > 0 && (table.columns[c].group.empty() || table.columns[c].group != table.columns[c - 1].group);
}

// Two lines of headings where columns share one, else one.
void write_headings(HtmlPage& page, const Table& table) {
  const auto& columns = table.columns;
  const bool grouped = std::ranges::any_of(columns, [](const Column& column) { return !column.group.empty(); });
  if (grouped) {
    page.line("<tr class=\"heads\">");
    for (std::size_t c = 0; c < columns.size();) {
      std::size_t end = c + 1;
      if (columns[c].group.empty()) {
        page.line("<th scope=\"col\" rowspan=\"2\"{}>{}</th>", classes_of(columns[c], starts_group(table, c)),
                  html_escaped(columns[c].heading));
      } else {
        while (end < columns.size() && columns[end].group == columns[c].group)
          ++end;
        page.line("<th scope=\"colgroup\" colspan=\"{}\" class=\"group\">{}</th>", end - c,
                  html_escaped(columns[c].group));
      }
      c = end;
    }
    page.line("</tr>");
  }
  page.line("<tr class=\"heads\">");
  for (std::size_t c = 0; c < columns.size(); ++c)
    if (!grouped || !columns[c].group.empty())
      page.line("<th scope=\"col\"{}>{}</th>", classes_of(columns[c], starts_group(table, c)),
                html_escaped(columns[c].heading));
  page.line("</tr>");
}

void write_table(HtmlPage& page, const Table& table, std::string_view heading) {
  page.line("<table>\n<thead>");
  if (!heading.empty() || !table.over.empty())
    page.line("<tr class=\"over\"><th colspan=\"{}\" scope=\"colgroup\"><strong>{}</strong> {}</th></tr>",
              table.columns.size(), html_escaped(heading), html_escaped(table.over));
  write_headings(page, table);
  page.line("</thead>");
  if (!table.under.empty())
    page.line("<tfoot>\n<tr><td colspan=\"{}\">{}</td></tr>\n</tfoot>", table.columns.size(),
              html_escaped(table.under));
  page.line("<tbody>");
  for (const auto& row : table.rows) {
    page.raw("<tr>");
    for (std::size_t c = 0; c < row.size(); ++c) {
      const std::string classes = classes_of(table.columns[c], starts_group(table, c));
      page.raw(c == 0 ? fmt::format("<th scope=\"row\"{}>{}</th>", classes, html_escaped(row[c]))
                      : fmt::format("<td{}>{}</td>", classes, html_escaped(row[c])));
    }
    page.line("</tr>");
  }
  page.line("</tbody>\n</table>");
}

void write_section(HtmlPage& page, const Section& section) {
  // A table carries its heading itself, so that it comes again on the next sheet.
  if (!section.heading.empty() && !section.table) page.line("<h2>{}</h2>", html_escaped(section.heading));
  if (section.table) write_table(page, *section.table, section.heading);
  if (section.rows.empty()) return;
  page.line("<dl>");
  for (std::size_t r = 0; r < section.rows.size();) {
    page.line("<dt>{}</dt>", html_escaped(section.rows[r].label));
    // A row without a label goes on where the one above ended.
    do
      page.line("<dd>{}</dd>", html_escaped(section.rows[r].value));
    while (++r < section.rows.size() && section.rows[r].label.empty());
  }
  page.line("</dl>");
}

void write_remarks(HtmlPage& page, const std::vector<Remark>& remarks) {
  if (remarks.empty()) return;
  page.line("<ul class=\"remarks\">");
  for (const Remark& remark : remarks)
    page.line("<li class=\"{}\"><strong>{}</strong> {} <span class=\"code\">[{}]</span></li>",
              finding::severity_name(remark.severity), severity_word(remark.severity), html_escaped(remark.text),
              html_escaped(remark.code));
  page.line("</ul>");
}

void write_working(HtmlPage& page, const Document& document) {
  if (document.working.empty()) return;
  page.line("<h2>{}</h2>\n<ul class=\"working\">",
            html_escaped(document.working_for.empty() ? "Working" : "Working for " + document.working_for));
  for (const Step& step : document.working) {
    const std::string unit = step.unit.empty() || step.unit == "°" ? step.unit : " " + step.unit;
    page.line("<li>{}</li>",
              html_escaped(fmt::format("{} = {} = {}{} ({}; {})", step.symbol, step.formula,
                                       quantity::write_number(step.value, 7), unit, step.meaning, step.source)));
  }
  page.line("</ul>");
}

void write_sources(HtmlPage& page, const std::vector<Source>& sources) {
  if (sources.empty()) return;
  page.line("<h2>Sources, and how each is known</h2>\n<ul class=\"sources\">");
  for (const Source& source : sources)
    page.line("<li>{}</li>", html_escaped(full_source(source)));
  page.line("</ul>");
}

} // namespace

std::string html_escaped(std::string_view text) {
  std::string out;
  for (const char c : text::printable(text)) {
    switch (c) {
    case '&':
      out += "&amp;";
      break;
    case '<':
      out += "&lt;";
      break;
    case '>':
      out += "&gt;";
      break;
    case '"':
      out += "&quot;";
      break;
    case '\'':
      out += "&#39;";
      break;
    default:
      out += c;
    }
  }
  return out;
}

std::string write_html(const Document& document, std::string_view language) {
  HtmlPage page;
  const std::string title = html_escaped(document.title);
  page.line("<!DOCTYPE html>\n<html lang=\"{}\">\n<head>\n<meta charset=\"utf-8\"/>\n<meta name=\"viewport\" "
            "content=\"width=device-width\"/>\n<title>{}</title>\n<style>{}</style>\n</head>\n<body>",
            html_escaped(language), title, k_style);
  page.line("<h1>{}</h1>", title);
  if (!document.banner.empty()) page.line("<p class=\"banner\">{}</p>", html_escaped(document.banner));
  for (const Section& section : document.sections)
    write_section(page, section);
  write_remarks(page, document.remarks);
  write_working(page, document);
  write_sources(page, document.sources);
  if (document.has_foot) page.line("<p class=\"foot\">{}</p>", html_escaped(foot_line()));
  page.line("</body>\n</html>");
  return page.take();
}

} // namespace clampwright::report
