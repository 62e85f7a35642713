// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include <gmock/gmock.h>

#include "cli/command.hpp"
#include "tests/cli/run_cli.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;
using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

struct Refused {
  Arguments arguments;
  int exit;
  const char* code;
  const char* says; // stands in the message or the hint
};

// clang-format off
const std::vector<Refused> k_refused{
    {{"frobnicate"},                                             64, "unknown-command", "--help"},
    {{"conv", "2Nm"},                                            64, "unknown-command", "--help"},
    {{"clmp", "M10"},                                            64, "unknown-command", "clamp"},
    {{"--json"},                                                 64, "missing",         "command"},
    {{"clamp"},                                                  64, "missing",         "thread"},
    {{"clamp", "M10"},                                           64, "missing",         "--torque"},
    {{"clamp", "M10", "--torque"},                               64, "missing",         "--torque"},
    {{"clamp", "M10", "M12", "--torque", "45Nm"},                64, "surplus",         "M10"},
    {{"clamp", "M10", "--torque", "45Nm", "--torque", "50Nm"},   64, "surplus",         "--torque"},
    {{"clamp", "M10", "--torque", "45Nm", "--clas", "8.8"},      64, "unknown-option",  "--class"},
    {{"clamp", "M10", "--torque", "45Nm", "--mu-thread", "0.1"}, 64, "missing",         "--mu-head"},
    {{"clamp", "M10", "--torque", "45Nm", "--mu", "0.1", "--surfaces", "dry"}, 64, "surplus", "--surfaces"},
    {{"clamp", "M10", "--torque", "45Nm", "--face-outer", "20mm"}, 64, "missing",       "--face-inner"},
    {{"torque", "M10"},                                          64, "missing",         "--preload"},
    {{"torque", "M10", "--preload", "9kN", "--proof-fraction", "75%"}, 64, "surplus",   "one"},
    {{"convert"},                                                64, "missing",         "quantity"},
    {{"find"},                                                   64, "missing",         "words"},
    {{"gauge"},                                                  64, "missing",         "--diameter"},
    {{"gauge", "M8"},                                            64, "surplus",         "--diameter"},
    {{"gauge", "--diameter", "8mm", "--pitch", "1mm", "--tpi", "20"}, 64, "surplus",    "--tpi"},
    {{"gauge", "--diameter", "8mm", "--pitch-uncertainty", "2%"}, 64, "missing",        "--pitch"},
    {{"gauge", "--diameter", "8"},                               65, "bare-number",     "mm"},
    {{"gauge", "--diameter", "8Nm"},                             65, "wrong-kind",      "torque"},
    {{"gauge", "--diameter", "7,85mm"},                          65, "comma",           "7.85mm"},
    {{"gauge", "--diameter", "0mm"},                             65, "out-of-range",    "zero"},
    {{"gauge", "--diameter", "8mm", "--pitch", "1.25"},          65, "bare-number",     "mm"},
    {{"gauge", "--diameter", "8mm", "--pitch", "8mm"},           65, "out-of-range",    "ten turns"},
    {{"gauge", "--diameter", "8mm", "--tpi", "20mm"},            65, "not-a-number",    "--tpi 20"},
    {{"gauge", "--diameter", "8mm", "--tpi", "1"},               65, "out-of-range",    "150"},
    {{"gauge", "--diameter", "8mm", "--diameter-uncertainty", "2mm"}, 65, "out-of-range", "calliper"},
    {{"gauge", "--diameter", "8mm", "--pitch", "1mm", "--pitch-uncertainty", "30%"}, 65, "out-of-range", "20%"},
    {{"gauge", "--diameter", "8mm", "--pitch", "1mm", "--pitch-uncertainty", "0"}, 65, "out-of-range", "nothing"},
    {{"gauge", "--diameter", "80mm"},                            66, "no-such-thread",  "68 mm"},
    {{"gauge", "--diameter", "0.5mm"},                           66, "no-such-thread",  "68 mm"},
    {{"show"},                                                   64, "missing",         "joint"},
    {{"demo", "please"},                                         64, "surplus",         "demo"},
    {{"clamp", "M10", "--torque", "45"},                         65, "bare-number",     "24.5N.m"},
    {{"clamp", "M10", "--torque", "45mm"},                       65, "wrong-kind",      "length"},
    {{"clamp", "M10", "--torque", "45J"},                        65, "wrong-kind",      "energy"},
    {{"clamp", "M10", "--torque", "-45Nm"},                      65, "out-of-range",    "negative"},
    {{"clamp", "M10", "--torque", "0Nm"},                        65, "out-of-range",    "nothing"},
    {{"clamp", "M10", "--torque", "2Nm", "--running-torque", "2Nm"}, 65, "out-of-range", "running"},
    {{"clamp", "M10", "--torque", "4,5Nm"},                      65, "comma",           "4.5Nm"},
    {{"clamp", "M10", "--torque", "1,234Nm"},                    65, "comma",           "1234Nm"},
    {{"clamp", "M10", "--torque", "nanNm"},                      65, "not-finite",      "finite"},
    {{"clamp", "M10", "--torque", "0x10Nm"},                     65, "hexadecimal",     "hexadecimal"},
    {{"clamp", "M10", "--torque", "45Nm", "--mu", "1.2"},        65, "out-of-range",    "0 and 1"},
    {{"clamp", "M10", "--torque", "45Nm", "--mu", "0.2..0.1"},   65, "out-of-range",    "rise"},
    {{"clamp", "M10", "--torque", "45Nm", "--kind", "rivet"},    65, "not-understood",  "bolt"},
    {{"clamp", "M10", "--torque", "45Nm", "--shank", "11mm"},    65, "out-of-range",    "thicker"},
    {{"clamp", "M10", "--torque", "45Nm", "--bore", "9mm"},      65, "out-of-range",    "bore"},
    {{"clamp", "M10", "--torque", "45Nm", "--units", "metrical"}, 65, "not-understood", "imperial"},
    {{"clamp", "M10", "--torque", "45Nm", "--unit", "furlong"},  65, "unknown-unit",    "N.m"},
    {{"clamp", "1/4", "--torque", "9Nm"},                        65, "pitch-missing",   "1/4-28 UNF"},
    {{"clamp", "banana", "--torque", "9Nm"},                     65, "not-understood",  "M10x1.25"},
    {{"convert", "45Nm", "kN"},                                  65, "wrong-kind",      "force"},
    {{"convert", "45Nm", "50Nm"},                                65, "second-value",    "one value"},
    {{"clamp", "M10x1.3", "--torque", "45Nm"},                   66, "no-such-thread",  "M10x1.25"},
    {{"clamp", "M11.3", "--torque", "45Nm"},                     66, "no-such-thread",  "M11"},
    {{"clamp", "M10", "--torque", "45Nm", "--class", "8.9"},     66, "no-such-name",    "8.8"},
    {{"clamp", "M10", "--torque", "45Nm", "--class", "SAE 5"},   66, "no-such-class",   "unified"},
    {{"clamp", "M10", "--torque", "45Nm", "--surfaces", "oild"}, 66, "no-such-name",    "oiled"},
    {{"clamp", "M10", "--torque", "45Nm", "--head", "hexx"},     66, "no-such-name",    "hex"},
    {{"clamp", "M10", "--torque", "45Nm", "--lock", "wire"},     66, "no-such-name",    "lock-wire"},
    {{"show", "pump/clutch-hub"},                                66, "no-workshop",     "demo"},
    {{"find", "pump"},                                           66, "no-workshop",     "demo"},
};
// clang-format on

TEST(Refusal, EndsWithTheCodeOfTheContractAndSaysWhatToWrite) {
  for (const Refused& refused : k_refused) {
    const Printed printed = run_cli(refused.arguments);
    const std::string line = ::testing::PrintToString(refused.arguments);
    EXPECT_EQ(static_cast<int>(printed.exit), refused.exit) << line << printed.err;
    if (std::ranges::find(refused.arguments, "--json") != refused.arguments.end()) continue;
    EXPECT_THAT(printed.out, IsEmpty()) << line;
    EXPECT_THAT(printed.err, AllOf(HasSubstr("clampwright: "), HasSubstr(refused.says))) << line;
  }
}

TEST(Refusal, IsOneJsonDocumentOnRequest) {
  for (const Refused& refused : k_refused) {
    Arguments arguments = refused.arguments;
    arguments.insert(arguments.begin(), "--json");
    const Printed printed = run_cli(arguments);
    const std::string line = ::testing::PrintToString(arguments);
    EXPECT_EQ(static_cast<int>(printed.exit), refused.exit) << line;
    const auto document = json_of(printed);
    EXPECT_EQ(document["schema"], 1) << line;
    EXPECT_EQ(document["error"]["code"], refused.code) << line;
    for (const char* key : {"code", "message", "input", "hint"})
      EXPECT_TRUE(document["error"].contains(key)) << line;
    EXPECT_THAT(document["error"]["message"].get<std::string>() + document["error"]["hint"].get<std::string>(),
                HasSubstr(refused.says))
        << line;
    EXPECT_THAT(printed.err, IsEmpty()) << line;
  }
}

TEST(Refusal, NamesNoCommandWhereNoneWasRecognised) {
  EXPECT_TRUE(json_of(run_cli({"frobnicate", "--json"}))["command"].is_null());
  EXPECT_EQ(json_of(run_cli({"clamp", "--json"}))["command"], "clamp");
}

TEST(Json, HasTheEnvelopeOfTheContract) {
  const auto answer = answer_of({"clamp", "M10", "--torque", "45Nm"});
  for (const char* key : {"schema", "command", "version", "input", "result", "findings", "sources"})
    EXPECT_TRUE(answer.contains(key)) << key;
  for (const auto& finding : answer["findings"])
    for (const char* key : {"code", "severity", "text", "basis"})
      EXPECT_TRUE(finding.contains(key)) << finding;
  for (const auto& source : answer["sources"])
    for (const char* key : {"title", "edition", "where", "known"})
      EXPECT_TRUE(source.contains(key)) << source;
}

TEST(Json, MayBeAskedForAnywhere) {
  const std::string last = run_cli({"convert", "2Nm", "lbf.in", "--json"}).out;
  EXPECT_EQ(run_cli({"--json", "convert", "2Nm", "lbf.in"}).out, last);
  EXPECT_EQ(run_cli({"convert", "--json", "2Nm", "lbf.in"}).out, last);
}

TEST(Json, StaysMetricWhateverUnitIsWanted) {
  const auto metric = answer_of({"clamp", "M10", "--torque", "45Nm"})["result"];
  EXPECT_EQ(answer_of({"clamp", "M10", "--torque", "45Nm", "--units", "imperial"})["result"], metric);
  EXPECT_EQ(answer_of({"clamp", "M10", "--torque", "45Nm", "--unit", "lbf.ft"})["result"], metric);
}

TEST(Text, ShowsTheUnitThatIsWanted) {
  EXPECT_THAT(run_cli({"clamp", "M10", "--torque", "45Nm", "--units", "imperial"}).out, HasSubstr(" lbf"));
  EXPECT_THAT(run_cli({"clamp", "M10", "--torque", "45Nm", "--unit", "kgf.m"}).out, HasSubstr("4.59 kgf·m"));
}

TEST(Text, CarriesTheFootLineUnderEveryTorque) {
  for (const Arguments& arguments :
       {Arguments{"clamp", "M10", "--torque", "45Nm"}, Arguments{"torque", "M10", "--preload", "9kN"}})
    EXPECT_THAT(run_cli(arguments).out, HasSubstr("maker's current instruction ranks above"));
}

TEST(Text, IsPlainAsciiWhereTheTerminalKnowsNoMore) {
  for (const Arguments& arguments :
       {Arguments{"clamp", "M10", "--class", "8.8", "--torque", "45Nm", "--explain"}, Arguments{"thread", "M10x1.25"},
        Arguments{"clamp", "--help"}, Arguments{"convert", "2Nm"}, Arguments{"clamp", "M10", "--torque", "4·Nm"}}) {
    const Printed printed = run(arguments, Environment{"/nowhere", "/nowhere", false, 80});
    for (const std::string& text : {printed.out, printed.err})
      EXPECT_TRUE(std::ranges::all_of(text, [](char c) { return static_cast<unsigned char>(c) < 0x80; })) << text;
    EXPECT_THAT(printed.out, Not(HasSubstr("?"))) << "a sign without a stand-in";
  }
}

TEST(Text, KeepsToTheWidth) {
  for (const int width : {40, 80, 100}) {
    const Printed printed =
        run({"clamp", "M10", "--class", "8.8", "--torque", "45Nm"}, Environment{"/nowhere", "/nowhere", false, width});
    std::size_t start = 0;
    while (start < printed.out.size()) {
      const std::size_t end = printed.out.find('\n', start);
      EXPECT_LE(end - start, static_cast<std::size_t>(width)) << printed.out.substr(start, end - start);
      start = end + 1;
    }
  }
}

TEST(Help, IsTheSameHoweverItIsAskedFor) {
  const std::string help = run_cli({"clamp", "--help"}).out;
  EXPECT_EQ(run_cli({"help", "clamp"}).out, help);
  EXPECT_EQ(run_cli({"clamp", "-h"}).out, help);
  EXPECT_EQ(run_cli({"--help", "clamp"}).out, help);
  EXPECT_EQ(run_cli({"clamp", "--help", "--nosuch", "x"}).out, help);
  EXPECT_EQ(run_cli({"clamp", "--help"}).exit, ExitCode::answered);
}

TEST(TwoWords, NameACommandAndTheFirstAloneIsNotEnough) {
  EXPECT_EQ(answer_of({"wrench", "set", "--torque", "25Nm", "--arm", "300mm"})["command"], "wrench set");
  const Printed alone = run_cli({"wrench"});
  EXPECT_EQ(static_cast<int>(alone.exit), 64);
  EXPECT_THAT(alone.err, HasSubstr("wrench list"));
  EXPECT_THAT(run_cli({"wrnch"}).err, HasSubstr("did you mean wrench"));
  EXPECT_THAT(run_cli({"wrench", "--help"}).out, HasSubstr("wrench retire"));
  EXPECT_EQ(run_cli({"help", "wrench", "set"}).out, run_cli({"wrench", "set", "--help"}).out);
}

TEST(Help, ShowsExamplesBeforeOptions) {
  for (const auto& command : make_commands()) {
    const std::string help = run_cli({std::string(command->name()), "--help"}).out;
    ASSERT_THAT(help, HasSubstr("EXAMPLES")) << command->name();
    EXPECT_LT(help.find("EXAMPLES"), help.find("OPTIONS")) << command->name();
  }
}

TEST(Help, ShowsExamplesThatAreAnswered) {
  const TemporaryFolder folder;
  ASSERT_EQ(run_in(folder.path(), {"demo"}).exit, ExitCode::answered);
  for (const auto& command : make_commands())
    for (const Example& example : command->examples()) {
      const Printed printed = run_in(folder.path(), words_of(example.line));
      // A look over the demo workshop finds what is wrong there, and says so in its code.
      const ExitCode expected = example.line == "vet" ? ExitCode::check_failed : ExitCode::answered;
      EXPECT_EQ(printed.exit, expected) << example.line << '\n' << printed.err;
    }
}

TEST(Help, IsShortForABareCall) {
  const Printed printed = run_cli({});
  EXPECT_EQ(printed.exit, ExitCode::answered);
  EXPECT_LE(std::ranges::count(printed.out, '\n'), 25);
}

TEST(Version, StandsOnTheFirstLineAfterTheName) {
  EXPECT_THAT(run_cli({"--version", "--nosuch"}).out, ::testing::StartsWith("clampwright 0."));
}

TEST(Words, AreNoOptionsBehindTwoDashes) {
  const Printed printed = run_cli({"convert", "--", "-5 N·m"});
  EXPECT_EQ(printed.exit, ExitCode::data_error);
  EXPECT_THAT(printed.err, HasSubstr("not negative"));
}

} // namespace
} // namespace clampwright::cli
