// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/html_writer.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/report/wording.hpp"
#include "tests/core/tags.hpp"

namespace clampwright::report {
namespace {

using testing::HasSubstr;
using testing::Not;

Document document_with_everything() {
  Document document;
  document.title = "A <b>title</b> & \"more\"";
  document.banner = "INVENTED";
  document.sections.push_back({"First", {{"Label", "one"}, {"", "two"}}});
  document.sections.push_back({"Second",
                               {},
                               Table{{{"", "Thread", false},
                                      {"", "Set", true, true},
                                      {"load, kN", "low"},
                                      {"load, kN", "high"},
                                      {"", "Note", false}},
                                     {{"M8", "24.5", "9.1", "20", "a"}, {"M10", "45", "18", "40", ""}},
                                     "rests on this",
                                     "mind that"}});
  document.remarks.push_back({finding::Severity::stop, "over-yield", "too much"});
  document.working.push_back({"F", "clamp load", "T/(K·d)", 27450.0, "N", "textbook"});
  document.sources.push_back({"ISO 898-1", "2013", "Table 4", Known::second_hand});
  document.has_foot = true;
  return document;
}

std::string page() { return write_html(document_with_everything()); }

} // namespace

TEST(HtmlWriter, ClosesEveryTagThatItOpens) {
  EXPECT_EQ(test::tag_fault(page()), "");
  EXPECT_EQ(test::tag_fault(write_html({})), "");
}

TEST(HtmlWriter, NamesItsLanguage) {
  EXPECT_THAT(page(), HasSubstr("<html lang=\"en\">"));
  EXPECT_THAT(write_html({}, "de"), HasSubstr("<html lang=\"de\">"));
}

TEST(HtmlWriter, FetchesNothingAndRunsNothing) {
  for (const char* word : {"<script", "src=", "href=", "http:", "https:", "url(", "@import", "<link", "onload"})
    EXPECT_THAT(page(), Not(HasSubstr(word)));
}

TEST(HtmlWriter, ShowsMarkupInATextAsItIs) {
  EXPECT_THAT(page(), HasSubstr("<h1>A &lt;b&gt;title&lt;/b&gt; &amp; &quot;more&quot;</h1>"));
  EXPECT_THAT(page(), Not(HasSubstr("<b>")));
}

TEST(HtmlWriter, LetsNoControlCharacterThrough) {
  EXPECT_EQ(html_escaped("a\x1b[31m\xff'"), "a?[31m?&#39;");
  EXPECT_EQ(html_escaped("μ ≤ 0.1 – N·m"), "μ ≤ 0.1 – N·m");
}

TEST(HtmlWriter, PutsWhatATableRestsOnIntoTheHeadThatComesAgainOnEverySheet) {
  const std::string text = page();
  const std::string head = text.substr(text.find("<thead>"), text.find("</thead>") - text.find("<thead>"));
  EXPECT_THAT(head, HasSubstr("Second"));
  EXPECT_THAT(head, HasSubstr("rests on this"));
  EXPECT_THAT(head, HasSubstr("load, kN"));
  EXPECT_THAT(text, HasSubstr("<tfoot>\n<tr><td colspan=\"5\">mind that</td></tr>\n</tfoot>"));
  EXPECT_THAT(text, HasSubstr("thead { display: table-header-group; }"));
  EXPECT_THAT(text, HasSubstr("tfoot { display: table-footer-group; }"));
}

TEST(HtmlWriter, NamesEveryRowByItsFirstCell) {
  EXPECT_THAT(page(), HasSubstr("<th scope=\"row\">M8</th><td class=\"number first main\">24.5</td>"));
  EXPECT_THAT(page(), HasSubstr("<th scope=\"row\">M10</th>"));
}

TEST(HtmlWriter, SpansAHeadingOverItsColumns) {
  EXPECT_THAT(page(), HasSubstr("colspan=\"2\" class=\"group\">load, kN</th>"));
  EXPECT_THAT(page(), HasSubstr("rowspan=\"2\">Thread</th>"));
}

TEST(HtmlWriter, SaysHowGraveAFindingIsInWords) {
  EXPECT_THAT(page(), HasSubstr("<strong>Stop</strong> too much <span class=\"code\">[over-yield]</span>"));
}

TEST(HtmlWriter, NamesEverySourceWithHowItIsKnown) {
  EXPECT_THAT(page(), HasSubstr("<li>ISO 898-1 (2013), Table 4 [second-hand]</li>"));
}

TEST(HtmlWriter, EndsWithTheFootLine) { EXPECT_THAT(page(), HasSubstr(html_escaped(foot_line()))); }

} // namespace clampwright::report
