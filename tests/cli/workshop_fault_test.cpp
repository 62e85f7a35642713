// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whatever lies where the workshop file should be: a sentence of its own, the right exit, nothing touched, and the
// calculators answer beside it.
#include <set>

#include <gmock/gmock.h>

#include "tests/cli/process.hpp"
#include "tests/cli/workshop_files.hpp"

namespace clampwright::cli {
namespace {

using namespace testing_support;
using ::testing::HasSubstr;
using ::testing::Not;

struct Fault {
  const char* what;
  void (*make)(const fs::path&);
  int exit;         // of show, find, vet
  const char* code; // of the same
  const char* says; // on standard error
};

// clang-format off
// The exits are those of cli/CONTRACT.md section 1.
constexpr Fault k_faults[] = {
    {"empty",          make_empty,         65, "damaged",     "the workshop file is empty"},
    {"a beginning",    make_beginning,     65, "damaged",     "only its beginning is left"},
    {"half a file",    make_half,          65, "damaged",     "is damaged: database disk image is malformed"},
    {"an end less",    make_cut,           65, "damaged",     "its end is missing"},
    {"no version",     make_unversioned,   65, "damaged",     "has no version"},
    {"a table less",   make_without_table, 65, "damaged",     "its tables are not those of version"},
    {"nothing",        make_nothing,       66, "no-workshop", "there is no workshop file of that name"},
    {"a link to self", make_ring,          66, "no-workshop", "no workshop file can have that name"},
    {"a letter",       make_text,          78, "wrong-file",  "that is not a workshop file"},
    {"another's",      make_foreign,       78, "wrong-file",  "that database is not a workshop file of this program"},
    {"newer",          make_newer,         78, "newer-file",  "the workshop file has version 99"},
    {"a folder",       make_folder,        78, "wrong-file",  "that is a folder"},
    {"a FIFO",         make_fifo,          78, "wrong-file",  "that is no plain file"},
};
// Of the same kind as one above.
constexpr Fault k_likewise[] = {
    {"zeros",          make_zeros,         78, "wrong-file",  "that is not a workshop file"},
    {"a device",       make_device,        78, "wrong-file",  "that is no plain file"},
    {"a socket",       make_socket,        78, "wrong-file",  "that is no plain file"},
};
const Arguments k_readers[] = {{"show", "pump/clutch-hub"}, {"find", "nut"}, {"vet"}};
const Arguments k_calculators[] = {{"clamp", "M10", "--class", "8.8", "--torque", "45Nm"},
                                   {"convert", "24Nm", "lbf.ft"},
                                   {"thread", "M10x1.25"},
                                   {"torque", "M10", "--class", "8.8", "--proof-fraction", "0.75"}};
// clang-format on

std::vector<Fault> all_faults() {
  std::vector<Fault> faults(std::begin(k_faults), std::end(k_faults));
  faults.insert(faults.end(), std::begin(k_likewise), std::end(k_likewise));
  return faults;
}

Arguments with_workshop(const fs::path& file, Arguments arguments) {
  arguments.insert(arguments.begin(), {"--workshop", file.string()});
  return arguments;
}

TEST(WorkshopFault, EndsEveryReaderWithItsExit) {
  for (const Fault& fault : all_faults()) {
    const test::Scratch scratch;
    fault.make(scratch / "w");
    for (const Arguments& reader : k_readers) {
      const Printed printed = run_in("/nowhere", with_workshop(scratch / "w", reader));
      EXPECT_EQ(static_cast<int>(printed.exit), fault.exit) << reader[0] << ": " << fault.what;
      EXPECT_THAT(printed.err, HasSubstr(fault.says)) << reader[0] << ": " << fault.what;
      EXPECT_EQ(printed.out, "") << reader[0] << ": " << fault.what;
    }
  }
}

TEST(WorkshopFault, IsSaidByTheRealProgramToo) {
  for (const Fault& fault : all_faults()) {
    const test::Scratch scratch;
    fault.make(scratch / "w");
    for (const Arguments& reader : k_readers) {
      const Finished finished = Program(with_workshop(scratch / "w", reader)).run();
      EXPECT_EQ(finished.exit(), fault.exit) << reader[0] << ": " << fault.what;
      EXPECT_THAT(finished.err, HasSubstr(fault.says)) << reader[0] << ": " << fault.what;
      EXPECT_EQ(finished.out, "") << reader[0] << ": " << fault.what;
    }
  }
}

TEST(WorkshopFault, HasASentenceOfItsOwn) {
  std::set<std::string> sentences;
  for (const Fault& fault : k_faults) {
    const test::Scratch scratch;
    fault.make(scratch / "w");
    const std::string err = run_in("/nowhere", with_workshop(scratch / "w", {"vet"})).err;
    sentences.insert(err.substr(0, err.find(" (/"))); // without the path
  }
  EXPECT_EQ(sentences.size(), std::size(k_faults));
}

TEST(WorkshopFault, IsAnErrorInJson) {
  for (const Fault& fault : all_faults()) {
    const test::Scratch scratch;
    fault.make(scratch / "w");
    for (Arguments reader : k_readers) {
      reader.emplace_back("--json");
      const auto document = json_of(run_in("/nowhere", with_workshop(scratch / "w", reader)));
      EXPECT_EQ(document["command"], reader[0]) << fault.what;
      EXPECT_EQ(document["error"]["code"], fault.code) << reader[0] << ": " << fault.what;
      EXPECT_THAT(document["error"]["message"].get<std::string>(), HasSubstr(fault.says)) << fault.what;
      EXPECT_NE(document["error"]["hint"], "") << fault.what;
    }
  }
}

TEST(WorkshopFault, IsNoPlaceForTheDemo) {
  for (const Fault& fault : all_faults()) {
    if (fault.make == make_nothing) continue;
    const test::Scratch scratch;
    fault.make(scratch / "w");
    const Printed printed = run_in("/nowhere", with_workshop(scratch / "w", {"demo"}));
    EXPECT_EQ(printed.exit, ExitCode::cannot_create) << fault.what;
    EXPECT_THAT(printed.err, HasSubstr("--workshop")) << fault.what;
  }
}

TEST(WorkshopFault, LeavesEverythingAsItIs) {
  for (const Fault& fault : all_faults()) {
    if (fault.make == make_nothing) continue;
    const test::Scratch scratch;
    fault.make(scratch / "w");
    const auto before = contents(scratch.folder());
    for (const Arguments& reader : {k_readers[0], k_readers[1], k_readers[2], Arguments{"demo"}})
      (void)run_in("/nowhere", with_workshop(scratch / "w", reader));
    EXPECT_TRUE(contents(scratch.folder()) == before) << fault.what;
  }
}

TEST(WorkshopFault, DoesNotHinderTheCalculators) {
  for (const Fault& fault : all_faults()) {
    const test::Scratch scratch;
    fault.make(scratch / "w");
    const auto before = contents(scratch.folder());
    for (const Arguments& calculator : k_calculators) {
      const Printed alone = run_cli(calculator);
      const Printed beside = run_in("/nowhere", with_workshop(scratch / "w", calculator));
      ASSERT_EQ(alone.exit, ExitCode::answered) << calculator[0];
      EXPECT_EQ(beside.exit, ExitCode::answered) << calculator[0] << ": " << fault.what;
      EXPECT_EQ(beside.out, alone.out) << calculator[0] << ": " << fault.what;
    }
    EXPECT_TRUE(contents(scratch.folder()) == before) << fault.what;
  }
}

TEST(WorkshopFault, DoesNotHinderTheCalculatorsInTheUsualPlace) {
  for (const Fault& fault : k_faults) {
    const test::Scratch scratch;
    fs::create_directory(scratch / "clampwright");
    fault.make(scratch / "clampwright/workshop.clampwright");
    for (const Arguments& calculator : k_calculators) {
      const Finished beside = Program(calculator).environment("XDG_DATA_HOME=" + scratch.folder().string()).run();
      EXPECT_EQ(beside.exit(), 0) << calculator[0] << ": " << fault.what;
      EXPECT_EQ(beside.out, Program(calculator).run().out) << calculator[0] << ": " << fault.what;
    }
  }
}

// Words that no program of ours would have written: they are past the rules of the tables, so the file is damaged.
TEST(WorkshopFault, MayLieInASingleWord) {
  for (const char* change :
       {"UPDATE figure SET unit = 'furlong' WHERE unit IS NOT NULL",
        "UPDATE figure SET unit = 'mm' WHERE unit IS NOT NULL", "UPDATE wrench SET unit = 'N.n'"}) {
    const test::Scratch scratch;
    make_demo(scratch / "w");
    written(scratch / "w").exec(change);
    const Printed printed =
        run_in("/nowhere", with_workshop(scratch / "w", {"show", "pump/clutch-hub", "--wrench", "A"}));
    EXPECT_EQ(static_cast<int>(printed.exit), 65) << change;
    EXPECT_THAT(printed.err, HasSubstr("is no unit of torque")) << change;
  }
}

// One letter of the description of the search table: SQLite calls it a mistake in our question.
TEST(WorkshopFault, MayLieInTheDescriptionOfTheSearch) {
  const test::Scratch scratch;
  std::string bytes = demo_bytes();
  const auto at = bytes.find("unicode61");
  ASSERT_NE(at, std::string::npos);
  for (const char letter : {'2', '\x1b', '\xb1'}) {
    bytes[at + 8] = letter;
    test::write_bytes(scratch / "w", bytes);
    for (const Arguments& reader : k_readers) {
      const Printed printed = run_in("/nowhere", with_workshop(scratch / "w", reader));
      EXPECT_EQ(static_cast<int>(printed.exit), 65) << reader[0];
      EXPECT_THAT(printed.err, Not(HasSubstr(std::string(1, '\x1b')))) << reader[0];
      EXPECT_THAT(printed.err, Not(HasSubstr("\xb1"))) << reader[0];
    }
  }
}

// Bytes that are no UTF-8, signs that mean something in a URI, and a name too long for a log beside it (NAME_MAX 255).
TEST(WorkshopName, MayBeAnything) {
  for (const std::string& name :
       {std::string("100%"), std::string("a?b#c"), std::string("with space"), std::string("%41"),
        std::string("caf\xe9"), std::string("\xff\xfe"), std::string("new\nline"), std::string("file:w")}) {
    const test::Scratch scratch;
    make_demo(scratch / name);
    const Finished shown = Program({"--workshop", (scratch / name).string(), "show", "pump/clutch-hub"}).run();
    EXPECT_EQ(shown.exit(), 0) << name << shown.err;
    const Finished json = Program({"--workshop", (scratch / name).string(), "demo", "--json"}).run();
    EXPECT_EQ(json.exit(), 0) << name;
    EXPECT_TRUE(nlohmann::json::accept(json.out)) << name;
    EXPECT_EQ(scratch.names().size(), 1U) << name;
  }
}

TEST(WorkshopName, IsPrintableWhereItIsRefused) {
  const test::Scratch scratch;
  const Finished finished = Program({"--workshop", (scratch / "caf\xe9\x1b[31m").string(), "vet"}).run();
  EXPECT_EQ(finished.exit(), 66);
  EXPECT_THAT(finished.err, Not(HasSubstr("\x1b")));
  EXPECT_THAT(finished.err, Not(HasSubstr("\xe9")));
}

TEST(WorkshopName, IsRefusedWhereItIsTooLong) {
  const test::Scratch scratch;
  const fs::path name = scratch / std::string(300, 'n');
  EXPECT_EQ(Program({"--workshop", name.string(), "vet"}).run().exit(), 66);
  EXPECT_EQ(Program({"--workshop", name.string(), "demo"}).run().exit(), 73);
}

// The name itself is possible; that of the log beside it is not.
TEST(WorkshopName, IsNoFaultOfOursWhereOnlyTheLogsWouldBeTooLong) {
  const test::Scratch scratch;
  const fs::path name = scratch / std::string(253, 'n');
  EXPECT_EQ(Program({"--workshop", name.string(), "demo"}).run().exit(), 73);
  test::write_bytes(name, demo_bytes());
  EXPECT_EQ(Program({"--workshop", name.string(), "vet"}).run().exit(), 77);
}

TEST(WorkshopName, MayBeRelativeWhereTheWorkingFolderIsGone) {
  const test::Scratch scratch;
  const std::string folder = (scratch / "gone").string();
  fs::create_directory(folder);
  const auto move_in = [&] { return ::chdir(folder.c_str()) == 0 && ::rmdir(folder.c_str()) == 0; };
  EXPECT_EQ(Program({"--workshop", "w", "vet"}).first(move_in).run().exit(), 66);
}

} // namespace
} // namespace clampwright::cli
