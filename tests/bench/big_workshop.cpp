// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/big_workshop.hpp"

#include <array>
#include <random>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>

#include "specdb/sql/query.hpp"
#include "specdb/workshop/entries.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace clampwright::bench {

namespace {

using namespace std::string_view_literals;

constexpr std::array k_syllables{"mar"sv, "row"sv,   "fen"sv, "tal"sv, "lisk"sv, "os"sv,  "trel"sv, "bri"sv,
                                 "gan"sv, "thorn"sv, "wy"sv,  "dun"sv, "kes"sv,  "mol"sv, "lin"sv,  "pas"sv,
                                 "vel"sv, "hob"sv,   "ter"sv, "sil"sv, "ram"sv,  "kal"sv, "und"sv,  "or"sv};
constexpr std::array k_kinds{"flood pump"sv, "rescue winch"sv, "chain saw"sv,  "flat boat"sv,  "hedge cutter"sv,
                             "generator"sv,  "road saw"sv,     "compactor"sv,  "water pump"sv, "snow blower"sv,
                             "tiller"sv,     "log splitter"sv, "compressor"sv, "mower"sv,      "outboard engine"sv};
constexpr std::array k_assemblies{"clutch"sv,    "flywheel"sv, "cylinder"sv,    "exhaust"sv, "crankcase"sv, "cooling"sv,
                                  "ignition"sv,  "intake"sv,   "gearbox"sv,     "frame"sv,   "brake"sv,     "drum"sv,
                                  "propeller"sv, "rudder"sv,   "carburettor"sv, "starter"sv, "blade"sv,     "handle"sv};
constexpr std::array k_parts{"hub"sv,       "head"sv,     "base"sv,     "cover"sv,      "mount"sv,    "pulley"sv,
                             "bearing"sv,   "pivot"sv,    "clevis"sv,   "muffler"sv,    "shroud"sv,   "plug"sv,
                             "pin"sv,       "lever"sv,    "rotor"sv,    "reed block"sv, "manifold"sv, "guard"sv,
                             "tensioner"sv, "sprocket"sv, "coupling"sv, "housing"sv,    "flange"sv,   "bracket"sv,
                             "cable"sv,     "spring"sv,   "tank"sv};
constexpr std::array k_fasteners{"bolt"sv, "bolts"sv, "nut"sv, "nuts"sv, "screw"sv, "screws"sv, "studs"sv};
constexpr std::array k_more{"gasket"sv, "washer"sv, "taper"sv,   "key"sv,   "shaft"sv,  "belt"sv,
                            "sheave"sv, "cone"sv,   "magneto"sv, "boss"sv,  "barrel"sv, "foot"sv,
                            "valve"sv,  "inlet"sv,  "rear"sv,    "front"sv, "upper"sv,  "lower"sv,
                            "left"sv,   "right"sv,  "inner"sv,   "outer"sv, "long"sv,   "short"sv};
constexpr std::array k_threads{"M5"sv,       "M6"sv,       "M8"sv,         "M10"sv,
                               "M10x1.25"sv, "M12x1.25"sv, "1/4-20 UNC"sv, "5/16-18 UNC"sv};

class Words {
 public:
  explicit Words(std::uint32_t seed) : generator_(seed) {}

  template<class List>
  [[nodiscard]] std::string_view one_of(const List& list) {
    return list[below(list.size())];
  }
  [[nodiscard]] std::size_t below(std::size_t count) { return generator_() % count; }
  // A name of two or three syllables.
  [[nodiscard]] std::string name() {
    std::string made;
    for (std::size_t left = 2 + below(2); left > 0; --left)
      made += one_of(k_syllables);
    made.front() = static_cast<char>(made.front() - 'a' + 'A');
    return made;
  }

 private:
  std::mt19937 generator_; // the same numbers everywhere, which no distribution of the library promises
};

specdb::JointRecord joint(Words& words, const std::string& machine, int number) {
  specdb::JointRecord made{.slug = fmt::format("{}/joint-{}", machine, number),
                           .assembly = std::string(words.one_of(k_assemblies)),
                           .name = fmt::format("{} {}", words.one_of(k_parts), words.one_of(k_fasteners)),
                           .thread = std::string(words.one_of(k_threads)),
                           .words = fmt::format("{} {} {}", words.one_of(k_more), words.one_of(k_more), words.name()),
                           .machine = {.slug = machine}};
  const auto torque = static_cast<double>(5 + words.below(90));
  made.figure = {.printed = fmt::format("{} N·m", torque),
                 .value = torque,
                 .unit = "N.m",
                 .source_slug = "sheet",
                 .source = {.where = fmt::format("page {}", number)}};
  return made;
}

} // namespace

void make_big_workshop(const std::filesystem::path& path, const Size& size, std::uint32_t seed) {
  const auto made = specdb::Workshop::create(path, [&](SQLite::Database& database) {
    specdb::run(database, "INSERT INTO meta VALUES ('invented', 'yes')");
    specdb::add_source(database, {"sheet", "a sheet (invented)", "1st print"});
    Words words(seed);
    for (int m = 0; m < size.machines; ++m) {
      const std::string slug = fmt::format("m{}", m);
      specdb::add_machine(database, {.slug = slug,
                                     .name = fmt::format("{} {}{}", words.name(), char('A' + m % 26), m),
                                     .kind = std::string(words.one_of(k_kinds))});
      for (int j = 0; j < size.joints_of_each; ++j)
        specdb::add_joint(database, joint(words, slug, j));
    }
  });
  if (!made) throw std::runtime_error(made.error().message);
}

} // namespace clampwright::bench
