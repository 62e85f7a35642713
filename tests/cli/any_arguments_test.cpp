// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whatever is typed, the program ends with a code of the contract, and with --json its answer is one document.
#include <array>
#include <random>
#include <set>

#include "tests/cli/run_cli.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;

constexpr std::array k_pieces{"convert",
                              "thread",
                              "clamp",
                              "torque",
                              "chart",
                              "--from",
                              "--to",
                              "--series",
                              "--format",
                              "html",
                              "find",
                              "show",
                              "demo",
                              "help",
                              "M10",
                              "M8x1",
                              "1/4-20",
                              "#10-32",
                              "2 BA",
                              "45Nm",
                              "9kN",
                              "8.8",
                              "SAE 5",
                              "dry",
                              "oiled",
                              "0.12",
                              "0.08..0.16",
                              "75%",
                              "--json",
                              "--torque",
                              "--class",
                              "--mu",
                              "--kind",
                              "--lock",
                              "--washer",
                              "--explain",
                              "--unit",
                              "--units",
                              "--quiet",
                              "--",
                              "-",
                              "",
                              "--nosuch",
                              "-x",
                              "24x13mm",
                              "hub",
                              "imperial",
                              "lbf.ft",
                              "--proof-fraction",
                              "--preload",
                              "--help",
                              "\xff\xfe",
                              "\"",
                              "'; DROP",
                              "1e999Nm",
                              "-5",
                              "½in",
                              "M10x1,25",
                              "pump/*",
                              "--surfaces",
                              "--mu-thread=0.1",
                              "--json=",
                              "=",
                              "--version",
                              "\x1b[31m",
                              "∞",
                              "nan",
                              "--no-input",
                              "--face-outer",
                              "13mm",
                              "--face-inner",
                              "9mm",
                              "headmark",
                              "--any-pitch",
                              "M8x1.3",
                              "5/16-20",
                              "--part",
                              "nut",
                              "|8|",
                              "3 lines"};

// For the commands about wrenches, which say little by chance.
constexpr std::array k_wrench_pieces{"A",
                                     "B",
                                     "Z9",
                                     "--torque",
                                     "25Nm",
                                     "--arm",
                                     "300mm",
                                     "--adaptor",
                                     "50mm",
                                     "--adaptor-angle",
                                     "45deg",
                                     "-180deg",
                                     "--range",
                                     "10..60Nm",
                                     "..",
                                     "1e300..1e308Nm",
                                     "--step",
                                     "0.5Nm",
                                     "1e-12Nm",
                                     "--tolerance",
                                     "10%",
                                     "--low",
                                     "--high",
                                     "--turn",
                                     "--turns",
                                     "both",
                                     "ccw",
                                     "--wrench",
                                     "--joint",
                                     "pump/head-nuts",
                                     "pump/blower-cover",
                                     "--operator",
                                     "--lever-error",
                                     "--nut-factor-spread",
                                     "--because",
                                     "--words",
                                     "\xff\xfe",
                                     "",
                                     "none",
                                     "--used",
                                     "40",
                                     "--drop",
                                     "--overload",
                                     "--calibrated",
                                     "2026-11-20",
                                     "0000-00-00",
                                     "9999-12-31",
                                     "--due",
                                     "--on",
                                     "--months",
                                     "--cycles",
                                     "--note",
                                     "--in-use",
                                     "--called",
                                     "--json",
                                     "--explain"};

TEST(AnyArguments, EndWithACodeOfTheContract) {
  const TemporaryFolder folder;
  ASSERT_EQ(run_in(folder.path(), {"demo"}).exit, ExitCode::answered);
  const std::set<int> allowed{0, 1, 64, 65, 66, 73, 78};
  constexpr unsigned k_seed = 20261125;
  std::mt19937 random(k_seed);
  for (int i = 0; i < 10'000; ++i) {
    Arguments arguments;
    const std::size_t count = random() % 8;
    for (std::size_t n = 0; n < count; ++n)
      arguments.emplace_back(k_pieces.at(random() % k_pieces.size()));
    const Printed printed = run_in(folder.path(), arguments);
    ASSERT_TRUE(allowed.contains(static_cast<int>(printed.exit)))
        << "seed " << k_seed << ", case " << i << ": " << ::testing::PrintToString(arguments) << " gives "
        << static_cast<int>(printed.exit);
    ASSERT_EQ((printed.out + printed.err).find('\x1b'), std::string::npos) << ::testing::PrintToString(arguments);
    if (printed.out.starts_with('{')) (void)json_of(printed);
  }
}

TEST(AnyArguments, OfTheWrenchCommandsEndWithACodeOfTheContract) {
  const TemporaryFolder folder;
  ASSERT_EQ(run_in(folder.path(), {"demo"}).exit, ExitCode::answered);
  const std::set<int> allowed{0, 1, 64, 65, 66, 73};
  constexpr std::array k_verbs{"set", "set", "set", "add", "list", "revise", "retire", "log"};
  constexpr unsigned k_seed = 20261126;
  std::mt19937 random(k_seed);
  for (int i = 0; i < 4000; ++i) {
    Arguments arguments{"wrench", k_verbs.at(random() % k_verbs.size())};
    const std::size_t count = random() % 10;
    for (std::size_t n = 0; n < count; ++n)
      arguments.emplace_back(k_wrench_pieces.at(random() % k_wrench_pieces.size()));
    const Printed printed = run_in(folder.path(), arguments);
    ASSERT_TRUE(allowed.contains(static_cast<int>(printed.exit)))
        << "seed " << k_seed << ", case " << i << ": " << ::testing::PrintToString(arguments) << " gives "
        << static_cast<int>(printed.exit) << printed.err;
    if (printed.out.starts_with('{')) (void)json_of(printed);
  }
}

} // namespace
} // namespace clampwright::cli
