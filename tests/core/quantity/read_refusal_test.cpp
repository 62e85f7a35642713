// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the contract, section 1, says must be refused: "with what was understood and an example of a good entry".
#include "core/quantity/read.hpp"
#include "tests/core/problem_of.hpp"

#include <gtest/gtest.h>

#include <optional>
#include <string>

namespace clampwright::quantity {
namespace {

using test::problem_of;
using test::says;

struct Row {
  const char* text;
  const char* code;
};

// clang-format off
constexpr Row k_torques_refused[] = {
    {"24",              "bare-number"},    {"24.5",            "bare-number"},    {" 24 ",           "bare-number"},
    {"1e3",             "bare-number"},    {"24N",             "wrong-kind"},     {"10mm",           "wrong-kind"},
    {"640MPa",          "wrong-kind"},     {"24J",             "wrong-kind"},     {"24 kJ",          "wrong-kind"},
    {"24 joules",       "wrong-kind"},     {"24Wh",            "wrong-kind"},     {"24 kWh",         "wrong-kind"},
    {"24 kcal",         "wrong-kind"},     {"2.5kg",           "wrong-kind"},     {"30 lb",          "wrong-kind"},
    {"75%",             "wrong-kind"},     {"24,5Nm",          "comma"},          {"1,500Nm",        "comma"},
    {"24, Nm",          "comma"},          {"24Nm, 30Nm",      "comma"},          {"nan",            "not-finite"},
    {"NaN Nm",          "not-finite"},     {"inf Nm",          "not-finite"},     {"-inf Nm",        "not-finite"},
    {"Infinity Nm",     "not-finite"},     {"∞ Nm",            "not-finite"},     {"0x10Nm",         "hexadecimal"},
    {"0X1p3 Nm",        "hexadecimal"},    {"-0x10Nm",         "hexadecimal"},    {"٢٤Nm",           "foreign-digits"},
    {"２４Nm",          "foreign-digits"}, {"¼ Nm",            "foreign-digits"}, {"২৪ Nm",          "foreign-digits"},
    {"24Nm 30Nm",       "unknown-unit"},   {"24Nm foo",        "unknown-unit"},   {"24 N.m.",        "unknown-unit"},
    {"24 30 Nm",        "second-value"},   {"20-25Nm",         "second-value"},   {"20..25Nm",       "second-value"},
    {"20 - 25 Nm",      "second-value"},   {"25±5Nm",          "second-value"},   {"25 +5Nm",        "second-value"},
    {"12.5.3Nm",        "second-value"},   {"1_000Nm",         "second-value"},   {"1'000Nm",        "second-value"},
    {"5 ¼ Nm",          "second-value"},   {"20–25Nm",         "second-value"},   {"20 to 25 Nm",    "second-value"},
    {"24/2Nm",          "fraction"},       {"MN.m",            "not-a-number"},   {"Nm",             "not-a-number"},
    {"Nm24",            "not-a-number"},   {"about 24Nm",      "not-a-number"},   {"-",              "not-a-number"},
    {"=24Nm",           "not-a-number"},   {".Nm",             "not-a-number"},   {"e5Nm",           "not-a-number"},
    {"5..Nm",           "second-value"},   {"5.5.Nm",          "second-value"},   {"1’000Nm",        "second-value"},
    {"12:30Nm",         "second-value"},   {"10^3Nm",          "second-value"},   {"24x13Nm",        "second-value"},
    {"5⅛Nm",           "second-value"},   {"12；5Nm",         "second-value"},   {"1*2Nm",          "second-value"},
    {"24MN.m",          "ambiguous-unit"}, {"24mN",            "ambiguous-unit"}, {"24 mPa",         "ambiguous-unit"},
    {"24Mm",            "ambiguous-unit"}, {"24foo",           "unknown-unit"},   {"24N.m2",         "unknown-unit"},
    {"24 N/m",          "unknown-unit"},   {"24 Nm/",          "unknown-unit"},   {"2４Nm",          "unknown-unit"},
    {"-24Nm",           "out-of-range"},   {"−24Nm",           "out-of-range"},   {"-1e-9Nm",        "out-of-range"},
    {"1e400Nm",         "out-of-range"},   {"1e-400Nm",        "out-of-range"},   {"1e13Nm",         "out-of-range"},
    {"1e-13Nm",         "out-of-range"},   {"",                "empty"},          {"   ",            "empty"},
    {"\xFF" "24Nm",     "not-plain-text"}, {"24\x01Nm",        "not-plain-text"}, {"24Nm\x1B[31m",   "not-plain-text"},
    {"\u202E24Nm",      "not-plain-text"}, {"24\xC3",          "not-plain-text"}, {"\n24Nm",         "not-plain-text"},
};

// Refused whatever is wanted: the number's range hangs on its kind.
struct KindRow {
  Kind kind;
  const char* text;
};
constexpr KindRow k_below_nothing[] = {
    {Kind::force,       "-1N"},        {Kind::stress, "-1MPa"}, {Kind::length,      "-1mm"},
    {Kind::time,        "-1h"},        {Kind::speed,  "-1rpm"}, {Kind::temperature, "-273.16degC"},
    {Kind::temperature, "-1e-12K"},    {Kind::temperature, "-273.1500000000001degC"},
    {Kind::temperature, "-459.6700000000001degF"},
    {Kind::temperature, "-459.68degF"}, {Kind::torque, "-1Nm"}, {Kind::temperature, "-0.1K"},
};
// clang-format on

Problem refusal(std::string_view text) { return problem_of(read_quantity(text, Kind::torque)); }

} // namespace

TEST(ReadTorque, IsRefusedWithItsReason) {
  for (const Row& row : k_torques_refused)
    EXPECT_EQ(refusal(row.text).code, row.code) << row.text;
}

TEST(ReadTorque, IsRefusedAsTextNotUnderstood) {
  for (const Row& row : k_torques_refused)
    EXPECT_EQ(refusal(row.text).trouble, Trouble::not_understood) << row.text;
}

TEST(ReadTorque, ThatIsRefusedSaysWhatIsWrong) {
  for (const Row& row : k_torques_refused)
    EXPECT_FALSE(refusal(row.text).message.empty()) << row.text;
}

TEST(ReadTorque, ThatIsRefusedGivesAHint) {
  for (const Row& row : k_torques_refused)
    EXPECT_FALSE(refusal(row.text).hint.empty()) << row.text;
}

TEST(ReadTorque, ThatIsRefusedIsQuotedWithoutControlCharacters) {
  for (const Row& row : k_torques_refused)
    EXPECT_EQ(refusal(row.text).input.find_first_of("\x01\x1B\n\t"), std::string::npos) << row.text;
}

TEST(ReadQuantity, IsRefusedBelowNothing) {
  for (const KindRow& row : k_below_nothing)
    EXPECT_EQ(problem_of(read_quantity(row.text, row.kind)).code, "out-of-range") << row.text;
}

TEST(RefusedComma, SpellsOutBothReadings) {
  const std::string message = refusal("24,5Nm").message;
  EXPECT_TRUE(says(message, "24.5Nm")) << message;
  EXPECT_TRUE(says(message, "245Nm")) << message;
}

TEST(RefusedComma, OfThousandsSpellsOutBothReadings) {
  const std::string message = refusal("1,500 lbf.ft").message;
  EXPECT_TRUE(says(message, "1.500 lbf.ft")) << message;
  EXPECT_TRUE(says(message, "1500 lbf.ft")) << message;
}

// A reading with a comma left in it is refused in its turn.
TEST(RefusedComma, NeverProposesAnotherComma) {
  const Problem problem = refusal("1,234,5Nm");
  EXPECT_FALSE(says(problem.hint, ",5Nm")) << problem.hint;
}

TEST(RefusedBareNumber, NamesTheNumber) { EXPECT_TRUE(says(refusal("24").message, "24")); }

TEST(RefusedBareNumber, GivesAnExampleOfTheWantedKind) {
  EXPECT_TRUE(says(problem_of(read_quantity("24", Kind::force)).hint, "15kN"));
  EXPECT_TRUE(says(problem_of(read_quantity("24", Kind::torque)).hint, "24.5N.m"));
}

TEST(RefusedWrongKind, SaysWhatWasUnderstoodAndWanted) {
  const std::string message = refusal("24N").message;
  EXPECT_TRUE(says(message, "force")) << message;
  EXPECT_TRUE(says(message, "torque")) << message;
}

TEST(RefusedEnergy, SaysThatItIsOne) { EXPECT_TRUE(says(refusal("24J").message, "energy")); }

TEST(RefusedMass, SaysThatItIsOne) { EXPECT_TRUE(says(refusal("2.5kg").message, "mass")); }

TEST(RefusedSecondValue, NamesTheFirst) {
  const std::string message = refusal("20-25Nm").message;
  EXPECT_TRUE(says(message, "20")) << message;
}

TEST(RefusedText, OfTwoHundredAndOneCharactersIsTooLong) {
  std::string text("24Nm");
  text.append(197, ' ');
  EXPECT_EQ(refusal(text).code, "too-long");
}

// Of a long text only the beginning used to be looked at: "75 … %" was a share of 75, "24x … 13mm" ended in metres.
TEST(RefusedText, IsNeverReadFromItsBeginningAlone) {
  const std::string gap(194, ' ');
  EXPECT_EQ(problem_of(read_share("75" + gap + "    %")).code, "too-long");
  EXPECT_EQ(problem_of(read_share("0." + std::string(200, '0') + "5")).code, "too-long");
  EXPECT_EQ(problem_of(read_number(gap + "    " + "12.5")).code, "too-long");
  EXPECT_EQ(problem_of(read_length_pair("24x" + gap + "  13mm")).code, "too-long");
  EXPECT_EQ(problem_of(read_length_pair("24x13mm" + gap)).code, "too-long");
  EXPECT_EQ(refusal(gap + gap + "24Nm").code, "too-long");
}

TEST(RefusedText, IsQuotedInAFewWords) { EXPECT_LE(refusal(std::string(5000, '9')).input.size(), 63U); }

// The contract: every refusal comes with an example of a good entry, also where no kind was asked for.
TEST(RefusedUnknownUnit, GivesAnExampleWhateverIsWanted) {
  for (const Kind kind : {Kind::torque, Kind::force, Kind::length})
    EXPECT_TRUE(says(problem_of(read_quantity("24foo", kind)).hint, example_of(kind))) << kind_name(kind);
  const std::string hint = problem_of(read_quantity("24foo")).hint;
  EXPECT_TRUE(says(hint, example_of(Kind::torque))) << hint;
}

} // namespace clampwright::quantity
