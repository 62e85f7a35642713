// SPDX-License-Identifier: GPL-3.0-or-later
//
// A chart says in every form what it rests on, and each of its rows is what `torque` says of that bolt.
#include <algorithm>
#include <charconv>
#include <filesystem>
#include <fstream>

#include <gmock/gmock.h>

#include "core/report/chart_report.hpp"
#include "core/report/html_writer.hpp"
#include "specdb/files/csv.hpp"
#include "tests/cli/run_cli.hpp"
#include "tests/core/tags.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;
using Json = nlohmann::json;

const Arguments k_small{"chart", "--class", "8.8,12.9", "--from", "M6", "--to", "M12", "--surfaces", "oiled"};

Arguments with(Arguments arguments, const Arguments& more) {
  arguments.insert(arguments.end(), more.begin(), more.end());
  return arguments;
}

Json row_of(const Json& chart, const std::string& thread, const std::string& strength_class) {
  for (const auto& row : chart["result"]["rows"])
    if (row["thread"] == thread && row["class"] == strength_class) return row;
  ADD_FAILURE() << "no row " << thread << ' ' << strength_class;
  return {};
}

// One bolt of a chart, and the options that both commands take.
struct Cell {
  const char* thread;
  const char* strength_class;
  Arguments options;
};

const std::vector<Cell> k_cells{
    {"M10", "8.8", {"--proof-fraction", "75%", "--surfaces", "oiled"}},
    {"M9", "10.9", {"--proof-fraction", "0.6"}},
    {"M1.6", "12.9", {"--proof-fraction", "75%", "--surfaces", "zinc-dry"}},
    {"M12x1.25", "8.8", {"--proof-fraction", "75%", "--mu", "0.10..0.14", "--nut-factor", "0.15..0.20"}},
    {"M8", "A2-70", {"--yield-fraction", "70%", "--surfaces", "stainless-lubricated"}},
    {"M16", "08.8", {"--proof-fraction", "75%", "--surfaces", "dry", "--head", "socket"}},
    {"3/8-24 UNF", "SAE 5", {"--proof-fraction", "75%", "--surfaces", "dry", "--turned", "nut"}},
    {"#10-32 UNF", "SAE 5.1", {"--proof-fraction", "75%", "--wrench-accuracy", "3%"}},
};

std::vector<std::vector<std::string>> csv_rows(const Arguments& arguments, std::vector<std::string>& header) {
  const auto table = specdb::read_csv(run_cli(with(arguments, {"--format", "csv"})).out).value();
  header = table.header;
  std::vector<std::vector<std::string>> rows;
  for (const auto& row : table.rows)
    rows.push_back(row.fields);
  return rows;
}

std::string field(const std::vector<std::string>& header, const std::vector<std::string>& row, const char* name) {
  const auto at = std::ranges::find(header, name);
  EXPECT_NE(at, header.end()) << name;
  return at == header.end() ? "" : row[static_cast<std::size_t>(at - header.begin())];
}

double number(const std::string& text) {
  double value = -1;
  const auto end = std::from_chars(text.data(), text.data() + text.size(), value);
  EXPECT_EQ(end.ptr, text.data() + text.size()) << text;
  return value;
}

std::string contents(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

} // namespace

TEST(Chart, SaysOfEachBoltWhatTorqueSays) {
  for (const Cell& cell : k_cells) {
    const Json torque = answer_of(with({"torque", cell.thread, "--class", cell.strength_class}, cell.options));
    const Json row = row_of(answer_of(with({"chart", "--class", cell.strength_class, "--from", cell.thread, "--to",
                                            cell.thread, "--series", "all"},
                                           cell.options)),
                            cell.thread, cell.strength_class);
    for (const auto& [key, value] : torque["result"].items())
      if (key != "thread") {
        EXPECT_EQ(row[key], value) << cell.thread << ' ' << key;
      }
    EXPECT_EQ(row["findings"], torque["findings"]) << cell.thread;
    EXPECT_EQ(row["no_torque_because"], nullptr);
  }
}

TEST(Chart, SaysItOfEveryRowOfALongOne) {
  const Json chart = answer_of({"chart", "--class", "8.8,10.9", "--from", "M3", "--surfaces", "dry"});
  for (const auto& row : chart["result"]["rows"]) {
    const Json torque =
        answer_of({"torque", row["thread"], "--class", row["class"], "--proof-fraction", "75%", "--surfaces", "dry"});
    EXPECT_EQ(row["set_torque_N_m"], torque["result"]["set_torque_N_m"]) << row["thread"];
  }
}

// By hand: M10 has a proof load of 33 700 N in class 8.8 (ISO 898-1:2013, Table 5, second-hand), three quarters are
// 25 275 N; dry K 0.16/0.20/0.27 and d = 10 mm make 0.16 x 25 275 x 0.010 = 40.44, 50.55 and 68.2425 N.m.
TEST(Chart, HasThreeQuartersOfTheProofLoadIfNothingElseIsSaid) {
  const Json row = row_of(answer_of({"chart", "--class", "8.8", "--to", "M10", "--surfaces", "dry"}), "M10", "8.8");
  EXPECT_DOUBLE_EQ(row["preload_N"], 25275);
  EXPECT_NEAR(row["nut_factor"]["torque_N_m"]["low"], 40.44, 1e-9);
  EXPECT_NEAR(row["nut_factor"]["torque_N_m"]["likely"], 50.55, 1e-9);
  EXPECT_NEAR(row["nut_factor"]["torque_N_m"]["high"], 68.2425, 1e-9);
}

TEST(Chart, CarriesTheCautionsOfAChartAndOfItsRows) {
  const Json chart = answer_of({"chart", "--class", "8.8,12.9", "--from", "M8", "--to", "M9"});
  for (const char* code : {"size-chart", "maker-first", "surfaces-not-stated", "face-not-stated", "over-proof"})
    EXPECT_THAT(codes_of(chart), Contains(code));
  std::vector<std::string> codes = codes_of(chart);
  std::ranges::sort(codes);
  EXPECT_EQ(std::ranges::adjacent_find(codes), codes.end()) << "a finding stands once for all rows";
}

// Of the two models and all rows the gravest: what the text says at the top no row may exceed.
TEST(Chart, TakesTheFactsOfAFindingFromTheGravestRow) {
  const Json plated = answer_of({"chart", "--class", "8.8,12.9", "--to", "M8", "--surfaces", "zinc-dry"});
  EXPECT_EQ(plated["findings"][0]["code"], "embrittlement");
  EXPECT_THAT(plated["findings"][0]["text"], HasSubstr("12.9"));
}

TEST(Chart, HasNullAndAReasonWhereThereIsNoProofLoad) {
  const Json row = row_of(answer_of({"chart", "--class", "A2-70", "--to", "M8"}), "M8", "A2-70");
  EXPECT_EQ(row["set_torque_N_m"], nullptr);
  EXPECT_EQ(row["thread_friction"], nullptr);
  EXPECT_THAT(row["no_torque_because"], HasSubstr("no proof load"));
  EXPECT_THAT(run_cli({"chart", "--class", "A2-70", "--to", "M8"}).out, HasSubstr("No torque"));
}

// ISO 898-1:2013, Table 3 (second-hand): 9.8 up to M16.
TEST(Chart, SaysWhereAClassEnds) {
  const Json chart = answer_of({"chart", "--class", "9.8,10.9", "--from", "M16", "--to", "M20"});
  EXPECT_EQ(chart["result"]["left_out"], Json::parse(R"([{"class": "9.8", "threads": ["M18", "M20"]}])"));
  EXPECT_THAT(run_cli({"chart", "--class", "9.8,10.9", "--from", "M16", "--to", "M22"}).out,
              HasSubstr("9.8: no M18 to M22"));
}

// 95 % of the proof load brings a dry 8.8 past yield: 0.95 x 580/640 = 0.86 of it in tension, and torsion adds a fifth.
TEST(Chart, ShowsNoTorqueThatPassesTheLimitAndEndsWithOne) {
  const Arguments arguments{"chart", "--class",    "8.8", "--from",           "M8", "--to",
                            "M8",    "--surfaces", "dry", "--proof-fraction", "95%"};
  const Printed text = run_cli(arguments);
  EXPECT_EQ(text.exit, ExitCode::check_failed);
  const Json row = row_of(answer_of(arguments), "M8", "8.8");
  EXPECT_EQ(row["verdict"], "over-limit");
  EXPECT_THAT(text.out, HasSubstr("have no torque to set"));
  std::vector<std::string> header;
  const auto rows = csv_rows(arguments, header);
  EXPECT_THAT(field(header, rows.at(0), "caution"), HasSubstr("DO NOT SET"));
}

TEST(ChartText, IsNeverABareGrid) {
  const std::string text = run_cli(k_small).out;
  for (const char* part :
       {"Torque chart: M6 to M12, class 8.8, 12.9, 75 % of the proof load, oiled", "T = K·F·d",
        "μ 0.08 / 0.12 / 0.16; K 0.12 / 0.18 / 0.22", "ISO 4014", "ISO 273", "± 4 %", "ISO 6789", "size-chart",
        "maker's current instruction", "castings", "[second-hand]", "2026-11-25", "clampwright 0"})
    EXPECT_THAT(text, HasSubstr(part)) << text;
}

TEST(ChartText, NamesItsBasisOverEveryClass) {
  const std::string text = run_cli(k_small).out;
  for (const char* heading :
       {"Class 8.8, 75 % of the proof load, oiled; μ", "Class 12.9, 75 % of the proof load, oiled; μ"})
    EXPECT_THAT(text, HasSubstr(heading));
}

TEST(ChartText, FitsAHundredColumns) {
  for (const Arguments& arguments :
       {k_small, Arguments{"chart", "--class", "12.9", "--surfaces", "zinc-dry"},
        Arguments{"chart", "--class", "SAE 5", "--units", "imperial", "--surfaces", "zinc-dry"}}) {
    std::istringstream lines(run_cli(arguments).out);
    for (std::string line; std::getline(lines, line);)
      EXPECT_LE(std::ranges::count_if(line, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }), 100)
          << line;
  }
}

TEST(ChartText, IsInTheUnitsWanted) {
  EXPECT_THAT(run_cli(with(k_small, {"--units", "imperial"})).out, HasSubstr("lbf·ft"));
  EXPECT_THAT(run_cli(with(k_small, {"--unit", "lbf.in"})).out, HasSubstr("lbf·in"));
}

TEST(ChartText, WorksOneBoltThroughAsAnExample) {
  EXPECT_THAT(run_cli(with(k_small, {"--explain"})).out, HasSubstr("Working for M6, class 8.8\n"));
  EXPECT_THAT(run_cli(k_small).out, Not(HasSubstr("Working")));
}

TEST(ChartCsv, CarriesItsBasisInEveryRow) {
  std::vector<std::string> header;
  const auto rows = csv_rows(k_small, header);
  EXPECT_EQ(rows.size(), 14U); // M6 M7 M8 M9 M10 M11 M12 in two classes
  for (const auto& row : rows) {
    EXPECT_THAT(field(header, row, "basis"), HasSubstr("75 % of the proof load"));
    EXPECT_EQ(field(header, row, "surfaces"), "oiled");
    EXPECT_EQ(field(header, row, "mu_thread_likely"), "0.12");
    EXPECT_EQ(field(header, row, "k_high"), "0.22");
    EXPECT_EQ(field(header, row, "caution"), report::chart_caution());
    EXPECT_THAT(field(header, row, "findings"), HasSubstr("size-chart"));
    EXPECT_THAT(field(header, row, "sources"), HasSubstr("ISO 898-1"));
    EXPECT_THAT(field(header, row, "wrench_basis"), HasSubstr("ISO 6789"));
    EXPECT_EQ(field(header, row, "data_version").size(), 64U);
  }
}

TEST(ChartCsv, HasTheFiguresOfTheJsonToTheLastBit) {
  std::vector<std::string> header;
  const auto rows = csv_rows(k_small, header);
  const Json chart = answer_of(k_small);
  ASSERT_EQ(rows.size(), chart["result"]["rows"].size());
  for (std::size_t r = 0; r < rows.size(); ++r) {
    const Json& row = chart["result"]["rows"][r];
    EXPECT_EQ(field(header, rows[r], "thread"), row["thread"]);
    EXPECT_EQ(number(field(header, rows[r], "set_torque_N_m")), row["set_torque_N_m"]);
    EXPECT_EQ(number(field(header, rows[r], "torque_by_nut_factor_high_N_m")), row["nut_factor"]["torque_N_m"]["high"]);
    if (row["thread_friction"].is_null()) {
      EXPECT_EQ(field(header, rows[r], "torque_by_friction_low_N_m"), "");
      EXPECT_EQ(field(header, rows[r], "face_outer_mm"), "");
    } else {
      EXPECT_EQ(number(field(header, rows[r], "preload_at_set_low_N")), row["thread_friction"]["preload_N"]["low"]);
      EXPECT_EQ(number(field(header, rows[r], "use_of_yield_high")), row["thread_friction"]["use_of_yield"]["high"]);
    }
  }
}

TEST(ChartHtml, IsOneWellFormedPageWithItsBasisInEveryTable) {
  const std::string page = run_cli(with(k_small, {"--format", "html"})).out;
  EXPECT_EQ(test::tag_fault(page), "");
  std::size_t tables = 0;
  for (auto at = page.find("<table>"); at != std::string::npos; at = page.find("<table>", at + 1)) {
    const std::string table = page.substr(at, page.find("</table>", at) - at);
    EXPECT_THAT(table, HasSubstr("75 % of the proof load, oiled; μ 0.08 / 0.12 / 0.16"));
    EXPECT_THAT(table, HasSubstr("ISO 4014"));
    EXPECT_THAT(table, HasSubstr(report::html_escaped(report::chart_caution())));
    ++tables;
  }
  EXPECT_EQ(tables, 2U);
}

TEST(ChartHtml, HasEveryCellOfTheText) {
  const std::string page = run_cli(with(k_small, {"--format", "html"})).out;
  const std::string text = run_cli(k_small).out;
  const std::string row =
      text.substr(text.find("\n  M8 ") + 1, text.find('\n', text.find("\n  M8 ") + 1) - text.find("\n  M8 ") - 1);
  std::istringstream cells(row);
  int count = 0;
  for (std::string cell; cells >> cell; ++count)
    if (cell != "%") {
      EXPECT_THAT(page, HasSubstr(">" + cell)) << row;
    }
  EXPECT_GE(count, 11);
}

TEST(ChartHtml, SaysTheFindingsAndTheSources) {
  const std::string page =
      run_cli({"chart", "--class", "12.9", "--to", "M8", "--surfaces", "zinc-dry", "--format", "html"}).out;
  EXPECT_THAT(page, HasSubstr("<strong>Stop</strong> Do not fit an electroplated bolt"));
  EXPECT_THAT(page, HasSubstr("VDI 2230-1"));
  EXPECT_THAT(page, HasSubstr("[second-hand]"));
}

TEST(ChartOutput, GoesToAFileAndNotToStandardOutput) {
  const TemporaryFolder folder;
  const std::string file = folder.path() + "/chart.html";
  const Printed printed = run_cli(with(k_small, {"--format", "html", "--output", file}));
  EXPECT_EQ(printed.exit, ExitCode::answered);
  EXPECT_EQ(printed.out, "");
  EXPECT_THAT(printed.err, HasSubstr("14 rows written to"));
  EXPECT_EQ(contents(file), run_cli(with(k_small, {"--format", "html"})).out);
}

TEST(ChartOutput, ReplacesAFileOnlyWhereThatIsSaid) {
  const TemporaryFolder folder;
  const std::string file = folder.path() + "/chart.csv";
  std::ofstream(file) << "mine";
  const Arguments arguments = with(k_small, {"--format", "csv", "--output", file});
  const Printed refused = run_cli(arguments);
  EXPECT_EQ(refused.exit, ExitCode::cannot_create);
  EXPECT_THAT(refused.err, HasSubstr("--replace"));
  EXPECT_EQ(contents(file), "mine");
  EXPECT_EQ(run_cli(with(arguments, {"--replace"})).exit, ExitCode::answered);
  EXPECT_THAT(contents(file), HasSubstr("set_torque_N_m"));
}

TEST(ChartOutput, LeavesStandardOutputToJsonBesideAFile) {
  const TemporaryFolder folder;
  const std::string file = folder.path() + "/chart.csv";
  const Json chart = answer_of(with(k_small, {"--format", "csv", "--output", file}));
  EXPECT_EQ(chart["result"]["rows"].size(), 14U);
  EXPECT_THAT(contents(file), HasSubstr("set_torque_N_m"));
}

TEST(Chart, RefusesWhatItCannotDo) {
  struct Row {
    Arguments arguments;
    ExitCode exit;
    const char* says;
  };
  // clang-format off
  const std::vector<Row> rows{
      {{},                                                             ExitCode::usage,         "--class"},
      {{"--class", "8.8", "M10"},                                      ExitCode::usage,         "no words"},
      {{"--class", "8.8,SAE 5"},                                       ExitCode::usage,         "each of the two systems"},
      {{"--class", "unknown"},                                         ExitCode::usage,         "needs the class"},
      {{"--class", "8.9"},                                             ExitCode::no_such,       "8.8"},
      {{"--class", "8.8", "--from", "M10", "--to", "M6"},              ExitCode::data_error,    "--from M6 --to M10"},
      {{"--class", "8.8", "--from", "3/8-16"},                         ExitCode::no_such,       "metric"},
      {{"--class", "8.8", "--series", "UNF"},                          ExitCode::no_such,       "coarse"},
      {{"--class", "8.8", "--proof-fraction", "120%"},                 ExitCode::data_error,    "120%"},
      {{"--class", "8.8", "--proof-fraction", "0"},                    ExitCode::data_error,    "--proof-fraction"},
      {{"--class", "8.8", "--yield-fraction", "90%"},                  ExitCode::usage,         "none was stated"},
      {{"--class", "8.8", "--yield-fraction", "90%", "--proof-fraction", "75%"}, ExitCode::usage, "one thing only"},
      {{"--class", "8.8", "--surfaces", "oily"},                       ExitCode::no_such,       "oiled"},
      {{"--class", "8.8", "--format", "pdf"},                          ExitCode::data_error,    "text, csv or html"},
      {{"--class", "8.8", "--format", "csv", "--json"},                ExitCode::usage,         "--output"},
      {{"--class", "8.8", "--replace"},                                ExitCode::usage,         "--output"},
      {{"--class", "8.8", "--output", ""},                             ExitCode::usage,         "empty"},
      {{"--class", "8.8", "--output", "/nowhere/at/all.txt"},          ExitCode::cannot_create, "cannot be made"},
      {{"--class", "8.8", "--face-outer", "14mm"},                     ExitCode::usage,         "no such option"},
  };
  // clang-format on
  for (const Row& row : rows) {
    const Printed printed = run_cli(with({"chart"}, row.arguments));
    EXPECT_EQ(printed.exit, row.exit) << printed.out << printed.err;
    EXPECT_THAT(printed.out + printed.err, HasSubstr(row.says));
  }
}

} // namespace clampwright::cli
