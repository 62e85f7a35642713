// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every number that a question takes, from nothing to far beyond anything that is built: a fault that shows at one end
// only (no published line left, no limit reached) must not wait for a fitter to find it. Under the sanitizers and with
// the library's own checks such a fault ends the test.
#include <regex>

#include <gtest/gtest.h>

#include "tests/cli/run_cli.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;

// "@" is where the numbers go.
struct Question {
  const char* line;
  const char* unit;
};

constexpr Question k_questions[] = {
    {"cure --lock compound-medium --temperature @ --surface steel", "degC"},
    {"cure --lock compound-high --temperature @ --fitted-at \"2026-11-26 09:30\"", "degC"},
    {"cure --lock compound-low --temperature @ --surface stainless", "degC"},
    {"lock compound-medium --temperature @", "degC"},
    {"lock locking-nut-insert --temperature @ --thread M8", "degC"},
    {"running M8 --measured @ --torque 20Nm", "Nm"},
    {"running M8 --measured 3Nm --torque @", "Nm"},
    {"running 1/4-28 --insert --measured @", "lbf.in"},
    {"surfaces --stated dry --fitted oiled --torque @ --thread M8 --class 8.8", "Nm"},
    {"surfaces --stated dry --fitted oiled --torque 25Nm --running-torque @", "Nm"},
    {"clamp M8 --class 8.8 --surfaces oiled --torque @", "Nm"},
    {"clamp M8 --class 8.8 --surfaces oiled --torque 20Nm --running-torque @", "Nm"},
    {"torque M8 --class 8.8 --surfaces oiled --preload @", "kN"},
    {"strip M8 --class 8.8 --material cast-aluminium --length @", "mm"},
    {"strip M8 --class 8.8 --material cast-aluminium --length 12mm --surfaces oiled --torque @", "Nm"},
    {"hold --torque @ --stroke 50mm --rod 100mm --angle 40deg --undo-torque 60Nm --tip-diameter 8mm", "Nm"},
    {"hold --torque 30Nm --stroke @ --rod 100mm --angle 40deg", "mm"},
    {"hold --torque 30Nm --stroke 50mm --rod @ --below-tdc 5mm", "mm"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --angle @", "deg"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --below-tdc @", "mm"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --stop-length @ --crown-depth 14mm", "mm"},
    {"hold --torque 30Nm --stroke 50mm --rod 100mm --angle 40deg --plug-thread M14x1.25 --plug-material "
     "cast-aluminium --plug-engaged @",
     "mm"},
    {"hold --torque 30Nm --by strap --strap-radius @", "mm"},
    {"hold --torque 30Nm --by gear --gear-diameter @", "mm"},
    {"hand --rotation clockwise --seen-from free-end --driver shaft --bore 20.02mm --shaft @", "mm"},
    {"sequence --bolts 6 --torque @", "Nm"},
    {"angle M10 --class 10.9 --surfaces oiled --grip 30mm --part-material steel --snug @ --angle 60deg", "Nm"},
    {"angle M10 --class 10.9 --surfaces oiled --grip 30mm --part-material steel --snug 20Nm --angle @", "deg"},
    {"angle M10 --class 10.9 --surfaces oiled --grip @ --part-material steel --snug 20Nm --angle 60deg", "mm"},
    {"slot M8 --class 8.8 --surfaces oiled --grip 20mm --part-material steel --torque @", "Nm"},
    {"slot M8 --class 8.8 --surfaces oiled --grip 20mm --part-material steel --low 15Nm --high @", "Nm"},
    {"slot M8 --class 8.8 --surfaces oiled --grip @ --part-material steel --torque 20Nm", "mm"},
    {"wrench set --torque @ --arm 300mm --range 10..60Nm --step 0.5Nm", "Nm"},
    {"wrench set --torque 25Nm --arm @ --adaptor 50mm --adaptor-angle 45deg", "mm"},
    {"wrench set --torque 25Nm --arm 300mm --adaptor @", "mm"},
    {"wrench set --torque 25Nm --arm 300mm --adaptor 50mm --adaptor-angle @", "deg"},
    {"workup --thread M8 --class 8.8 --surfaces oiled --nut 8 --seat steel-s235 --must-clamp @", "kN"},
    {"workup --thread M8 --class 8.8 --surfaces oiled --material cast-aluminium --engagement @", "mm"},
    {"workup --thread M8 --class 8.8 --surfaces oiled --nut 8 --seat steel-s235 --pressure @ --sealed-diameter 54mm",
     "MPa"},
    {"gauge --diameter @ --pitch 1.25mm", "mm"},
    {"gauge --diameter 7.9mm --pitch @", "mm"},
    {"convert @ mm", "mm"},
};

constexpr const char* k_numbers[] = {"-1e9",  "-300", "-20", "-1",    "0",   "1e-9", "0.001", "0.5", "1",   "3",
                                     "9.999", "10",   "25",  "49.99", "50",  "64.9", "65",    "90",  "93",  "120",
                                     "121",   "149",  "150", "180",   "181", "232",  "400",   "1e3", "1e5", "1e12"};

const std::regex k_no_number("\\b(nan|inf)\\b");

TEST(ExtremeValues, AreAnsweredOrRefused) {
  for (const Question& question : k_questions)
    for (const char* number : k_numbers) {
      std::string line = question.line;
      line.replace(line.find('@'), 1, std::string(number) + question.unit);
      const Printed printed = run_cli(words_of(line));
      const bool answered = printed.exit == ExitCode::answered || printed.exit == ExitCode::check_failed;
      EXPECT_TRUE(answered || printed.exit == ExitCode::data_error || printed.exit == ExitCode::no_such) << line << "\n"
                                                                                                         << printed.err;
      EXPECT_EQ(printed.out.empty(), !answered) << line;
      EXPECT_FALSE(std::regex_search(printed.out, k_no_number)) << line << "\n" << printed.out;
    }
}

} // namespace
} // namespace clampwright::cli
