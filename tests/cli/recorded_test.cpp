// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whole outputs, recorded: what a user sees may change only on purpose. The figures in them are checked elsewhere,
// against sources; here it is the words, the order and the look. tests/cli/record writes the files anew.
#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "specdb/catalogue/catalogue.hpp"
#include "tests/cli/run_cli.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;

struct Recorded {
  const char* name;
  Arguments arguments;
};

const std::vector<Recorded> k_recorded{
    {"bare", {}},
    {"help", {"--help"}},
    {"help-clamp", {"clamp", "--help"}},
    {"convert-mkg", {"convert", "2.5 mkg"}},
    {"convert-explain", {"convert", "30ft-lb", "N.m", "--explain"}},
    {"convert-comma", {"convert", "1,234 Nm"}},
    {"thread-metric", {"thread", "M10x1.25"}},
    {"thread-whitworth", {"thread", "5/16 BSW"}},
    {"thread-unified-left", {"thread", "1/4-28 UNF-LH"}},
    {"thread-ba", {"thread", "2 BA", "--explain"}},
    {"gauge-bolt", {"gauge", "--diameter", "7.85mm", "--pitch", "1.25mm"}},
    {"gauge-alike", {"gauge", "--diameter", "0.247in", "--tpi", "20", "--explain"}},
    {"gauge-diameter-alone", {"gauge", "--diameter", "12.6mm"}},
    {"gauge-nut", {"gauge", "--diameter", "6.8mm", "--internal", "--units", "imperial"}},
    {"gauge-nothing", {"gauge", "--diameter", "11.5mm", "--pitch", "2.5mm"}},
    {"gauge-json", {"gauge", "--diameter", "5.9mm", "--pitch", "1mm", "--json"}},
    {"thread-any-pitch", {"thread", "M8x1.3", "--any-pitch"}},
    {"thread-not-listed", {"thread", "M8x1.3"}},
    {"headmark-maker", {"headmark", "XYZ 8.8 L"}},
    {"headmark-lines", {"headmark", "3 radial lines"}},
    {"headmark-stainless", {"headmark", "A2"}},
    {"headmark-none", {"headmark", "none"}},
    {"headmark-unlisted", {"headmark", "8.6"}},
    {"headmark-nut-json", {"headmark", "8", "--part", "nut", "--json"}},
    {"clamp-any-pitch",
     {"clamp", "5/16-20", "--any-pitch", "--class", "SAE 5", "--torque", "18 lbf.ft", "--surfaces", "oiled"}},
    {"clamp-oiled", {"clamp", "M10", "--class", "8.8", "--torque", "45Nm", "--surfaces", "oiled"}},
    {"clamp-explain", {"clamp", "M10", "--class", "8.8", "--torque", "45Nm", "--surfaces", "oiled", "--explain"}},
    {"clamp-json", {"clamp", "M10", "--class", "8.8", "--torque", "45Nm", "--surfaces", "oiled", "--json"}},
    {"clamp-locking-nut",
     {"clamp", "M8", "--class", "8.8", "--torque", "24Nm", "--surfaces", "zinc-dry", "--turned", "nut", "--lock",
      "locking-nut-insert", "--running-torque", "2Nm"}},
    {"clamp-nothing-stated", {"clamp", "M12", "--torque", "75Nm", "--units", "imperial"}},
    {"clamp-over", {"clamp", "M6", "--class", "8.8", "--torque", "90Nm", "--surfaces", "dry"}},
    {"clamp-button",
     {"clamp", "M8", "--class", "010.9", "--torque", "20Nm", "--surfaces", "oiled", "--head", "button"}},
    {"table", {"table"}},
    {"table-heads", {"table", "heads", "13"}},
    {"table-holes-json", {"table", "holes", "M10", "--json"}},
    {"table-nothing", {"table", "heads", "zeppelin"}},
    {"table-spark-plugs", {"table", "spark-plugs", "M14", "conical"}},
    {"table-unknown", {"table", "spark"}},
    {"table-wrench-sizes", {"table", "wrench-sizes", "M8"}},
    {"torque-proof",
     {"torque", "3/8-24 UNF", "--class", "SAE 5", "--proof-fraction", "75%", "--surfaces", "zinc-dry", "--unit",
      "lbf.ft"}},
    {"sequence", {"sequence", "--bolts", "6", "--torque", "24Nm"}},
    {"sequence-row-inch", {"sequence", "--bolts", "9", "--pattern", "row", "--torque", "18 lbf.ft"}},
    {"sequence-undo", {"sequence", "--bolts", "8", "--undo"}},
    {"sequence-svg", {"sequence", "--bolts", "4", "--torque", "9Nm", "--format", "svg"}},
    {"sequence-joint", {"sequence", "--joint", "pump/head-nuts"}},
    {"angle",
     {"angle", "M10", "--class", "10.9", "--snug", "20Nm", "--angle", "60deg", "--surfaces", "oiled", "--grip", "30mm",
      "--part-material", "cast-aluminium"}},
    {"angle-explain",
     {"angle", "M10", "--class", "10.9", "--snug", "20Nm", "--angle", "15deg", "--surfaces", "oiled", "--grip", "60mm",
      "--bolt-length", "80mm", "--part-material", "steel", "--explain"}},
    {"angle-missing", {"angle", "M10", "--snug", "20Nm", "--angle", "60deg"}},
    {"slot",
     {"slot", "M10", "--class", "8.8", "--low", "30Nm", "--high", "45Nm", "--surfaces", "oiled", "--grip", "25mm",
      "--part-material", "steel"}},
    {"help-strip", {"strip", "--help"}},
    {"strip-cast", {"strip", "M8", "--class", "8.8", "--material", "cast-aluminium", "--length", "12mm"}},
    {"strip-explain",
     {"strip", "1/4-20 UNC", "--class", "SAE 5", "--material", "grey-iron-gjl-250", "--length", "9mm", "--explain"}},
    {"strip-insert-json",
     {"strip", "M8", "--class", "8.8", "--material", "magnesium-die", "--length", "12mm", "--insert", "wire",
      "--json"}},
    {"strip-torque",
     {"strip", "M8", "--class", "8.8", "--material", "cast-aluminium", "--length", "8mm", "--torque", "24Nm",
      "--surfaces", "oiled"}},
    {"strip-no-limits", {"strip", "5/16 BSW", "--material", "steel"}},
    {"chart", {"chart", "--class", "8.8,12.9", "--from", "M6", "--to", "M12", "--surfaces", "zinc-dry"}},
    {"chart-inch",
     {"chart", "--class", "SAE 5", "--from", "1/4", "--to", "1 1/8", "--series", "UNF", "--units", "imperial"}},
    {"chart-yield",
     {"chart", "--class", "A2-70", "--from", "M8", "--to", "M10", "--yield-fraction", "70%", "--surfaces",
      "stainless-lubricated"}},
    {"chart-csv", {"chart", "--class", "8.8", "--from", "M8", "--to", "M8", "--surfaces", "dry", "--format", "csv"}},
    {"chart-html", {"chart", "--class", "8.8", "--from", "M8", "--to", "M10", "--surfaces", "dry", "--format", "html"}},
    {"surfaces", {"surfaces"}},
    {"surfaces-oiled",
     {"surfaces", "--stated", "dry", "--fitted", "oiled", "--torque", "25Nm", "--thread", "M8", "--class", "8.8"}},
    {"surfaces-already", {"surfaces", "--stated", "oiled", "--fitted", "oiled", "--torque", "25Nm"}},
    {"surfaces-taper-json",
     {"surfaces", "--stated", "dry", "--fitted", "oiled", "--torque", "25Nm", "--taper", "--json"}},
    {"lock", {"lock"}},
    {"lock-compound", {"lock", "compound-medium", "--thread", "M8", "--surface", "stainless"}},
    {"lock-pair", {"lock", "compound-medium", "--with", "locking-nut-insert"}},
    {"lock-split-pin-json", {"lock", "split-pin", "--with", "second-nut", "--json"}},
    {"cure-steel",
     {"cure", "--lock", "compound-medium", "--temperature", "10degC", "--surface", "steel", "--fitted-at",
      "2026-11-26 09:30"}},
    {"cure-stainless", {"cure", "--lock", "compound-medium", "--temperature", "20degC", "--surface", "stainless"}},
    {"cure-heat-json", {"cure", "--lock", "compound-high", "--temperature", "93degC", "--surface", "steel", "--json"}},
    {"running", {"running", "M8"}},
    {"running-measured",
     {"running", "7/16-20", "--measured", "10 lbf.in", "--torque", "30 lbf.ft", "--unit", "lbf.in"}},
    {"help-cure", {"cure", "--help"}},
    {"help-hold", {"hold", "--help"}},
    {"hold-top",
     {"hold", "--torque", "30Nm", "--stroke", "50mm", "--rod", "100mm", "--angle", "15deg", "--tip-diameter", "6mm"}},
    {"hold-explain", {"hold",     "--torque",       "30Nm",  "--stroke",        "50mm",           "--rod",
                      "100mm",    "--stop-length",  "23mm",  "--crown-depth",   "14mm",           "--tip-diameter",
                      "8mm",      "--tip-limit",    "60MPa", "--undo-torque",   "90Nm",           "--plug-thread",
                      "M14x1.25", "--plug-engaged", "10mm",  "--plug-material", "cast-aluminium", "--plug-margin",
                      "3",        "--port-depth",   "8mm",   "--stop-incline",  "20deg",          "--strap-radius",
                      "60mm",     "--explain"}},
    {"hold-joint", {"hold", "--joint", "pump/clutch-hub"}},
    {"hold-joint-json", {"hold", "--joint", "pump/flywheel-nut", "--json"}},
    {"hold-far-end",
     {"hold", "--torque", "90Nm", "--by", "far-end", "--pin-diameter", "20mm", "--pin-length", "15mm", "--pin-pressure",
      "80..120MPa", "--pin-friction", "0.10..0.20", "--units", "imperial"}},
    {"hold-impact", {"hold", "--torque", "30Nm", "--tool", "impact"}},
    {"hand", {"hand", "--rotation", "clockwise", "--seen-from", "free-end", "--driver", "shaft"}},
    {"hand-part",
     {"hand", "--rotation", "ccw", "--seen-from", "engine-side", "--driver", "part", "--bore", "20.02mm", "--shaft",
      "20mm"}},
    {"hand-joint-json", {"hand", "--joint", "winch/drum-nut", "--json"}},
    {"demo", {"demo"}},
    {"renew", {"renew", "pump"}},
    {"find", {"find", "nut"}},
    {"find-nothing", {"find", "zeppelin"}},
    {"find-slip", {"find", "drive", "plly"}},
    {"show-hub", {"show", "pump/clutch-hub", "--unit", "lbf.ft"}},
    {"show-head-nuts", {"show", "head", "nuts"}},
    {"show-mounts", {"show", "pump/mounts"}},
    {"show-pulley", {"show", "winch/pulley-bolt"}},
    {"show-frame", {"show", "winch/frame-bolts"}},
    {"show-pivot", {"show", "winch/brake-pivot"}},
    {"show-pivot-json", {"show", "winch/brake-pivot", "--json"}},
    {"show-several", {"show", "pump"}},
    {"show-base-nuts", {"show", "pump/base-nuts"}},
    {"show-as-fitted", {"show", "exhaust", "nuts", "--as-fitted", "anti-seize"}},
    {"show-wrench", {"show", "pump/head-nuts", "--wrench", "A"}},
    {"show-wrench-refused", {"show", "pump/clutch-hub", "--wrench", "A"}},
    {"help-substitute", {"substitute", "--help"}},
    {"substitute-higher", {"substitute", "M10 8.8", "--with", "M10 10.9", "--nut", "10"}},
    {"substitute-finish",
     {"substitute", "M8 8.8", "--with", "M8 8.8", "--torque", "22Nm", "--surfaces", "dry", "--with-surfaces",
      "moly-paste"}},
    {"substitute-stainless",
     {"substitute", "M8 8.8", "--with", "M8 A2-70", "--mating", "cast-aluminium", "--units", "imperial"}},
    {"substitute-joint", {"substitute", "--joint", "winch/gearbox-foot", "--with", "M10 12.9"}},
    {"substitute-joint-json",
     {"substitute", "--joint", "pump/reed-block", "--with", "M6 10.9", "--length", "25mm", "--json"}},
    {"substitute-no-class", {"substitute", "M8 8.8", "--with", "M8 SAE 5"}},
    {"vet", {"vet"}},
    {"help-wrench-set", {"wrench", "set", "--help"}},
    {"wrench-set",
     {"wrench", "set", "--torque", "25Nm", "--arm", "300mm", "--adaptor", "50mm", "--adaptor-angle", "45deg", "--step",
      "0.5Nm", "--range", "10..60Nm"}},
    {"wrench-set-explain",
     {"wrench", "set", "--torque", "40 lbf.ft", "--arm", "12in", "--adaptor", "4in", "--tolerance", "5%", "--step",
      "1lbf.ft", "--units", "imperial", "--explain"}},
    {"wrench-set-none",
     {"wrench", "set", "--torque", "22.6Nm", "--tolerance", "2%", "--arm", "300mm", "--adaptor", "100mm", "--step",
      "2Nm"}},
    {"wrench-set-joint", {"wrench", "set", "--joint", "pump/head-nuts", "--wrench", "A"}},
    {"wrench-set-refused", {"wrench", "set", "--joint", "pump/clutch-hub", "--wrench", "B", "--adaptor", "50mm"}},
    {"wrench-set-json",
     {"wrench", "set", "--torque", "25Nm", "--arm", "300mm", "--adaptor", "50mm", "--range", "10..60Nm", "--json"}},
    {"wrench-set-behind",
     {"wrench", "set", "--torque", "25Nm", "--arm", "300mm", "--adaptor", "320mm", "--adaptor-angle", "180deg"}},
    {"wrench-list", {"wrench", "list"}},
    {"wrench-list-one", {"wrench", "list", "B"}},
    {"show-wrenches", {"show", "pump/clutch-hub", "--wrenches"}},
};

const std::filesystem::path k_folder = CLAMPWRIGHT_SOURCE_DIR "/tests/cli/recorded";

std::string replaced(std::string text, const std::string& what, const std::string& by) {
  for (std::size_t at = 0; (at = text.find(what, at)) != std::string::npos; at += by.size())
    text.replace(at, what.size(), by);
  return text;
}

// The command, its exit status and both streams as one text; the test's own folder is called DATA, the version of
// the data DIGEST.
std::string transcript(const Recorded& recorded, const std::string& data) {
  std::ostringstream text;
  text << "$ clampwright";
  for (const std::string& argument : recorded.arguments) {
    const bool plain = argument.find(' ') == std::string::npos;
    text << ' ' << (plain ? argument : "\"" + argument + "\"");
  }
  const Printed printed = run_in(data, recorded.arguments);
  text << "\n# exit " << static_cast<int>(printed.exit) << "\n" << printed.out;
  if (!printed.err.empty()) text << "# standard error\n" << printed.err;
  // The version of the data changes with every row of a table.
  const std::string version = specdb::Catalogue().data_version();
  const std::string plain = replaced(replaced(text.str(), version, "DIGEST"), version.substr(0, 12), "DIGEST");
  return replaced(plain, data, "DATA");
}

TEST(Output, IsAsRecorded) {
  const TemporaryFolder folder;
  for (const Recorded& recorded : k_recorded) {
    // The workshop is there for the commands that read it; "demo" itself is recorded in a folder without one.
    const TemporaryFolder empty;
    const bool makes = recorded.arguments == Arguments{"demo"};
    if (!makes) {
      ASSERT_EQ(run_in(folder.path(), {"demo"}).exit, ExitCode::answered);
    }
    const std::string now = transcript(recorded, makes ? empty.path() : folder.path());
    const std::filesystem::path file = k_folder / (std::string(recorded.name) + ".txt");
    if (std::getenv("CLAMPWRIGHT_RECORD") != nullptr) {
      std::ofstream(file, std::ios::binary) << now;
      continue;
    }
    std::ifstream in(file, std::ios::binary);
    ASSERT_TRUE(in) << file << " is missing; tests/cli/record writes it";
    EXPECT_EQ(now, std::string(std::istreambuf_iterator<char>(in), {}))
        << "if that is meant, run tests/cli/record and read the difference";
  }
}

TEST(Output, HasNoRecordWithoutACommand) {
  for (const auto& entry : std::filesystem::directory_iterator(k_folder))
    EXPECT_TRUE(std::ranges::any_of(k_recorded, [&](const Recorded& r) { return entry.path().stem() == r.name; }))
        << entry.path();
}

} // namespace
} // namespace clampwright::cli
