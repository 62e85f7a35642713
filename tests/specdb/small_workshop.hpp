// SPDX-License-Identifier: GPL-3.0-or-later
//
// Workshops of a test's own, entered the way the program enters them; a test changes what it is about and leaves the
// rest as it is here.
#pragma once

#include <filesystem>
#include <functional>
#include <stdexcept>
#include <string>

#include <SQLiteCpp/Database.h>

#include "specdb/workshop/entries.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace clampwright::test {

// 9 N·m from a sheet.
inline specdb::FigureRecord small_figure() {
  return {.printed = "9 N·m", .value = 9.0, .unit = "N.m", .source_slug = "sheet", .source = {.where = "page 1"}};
}

// An M8 bolt of class 8.8 with that figure.
inline specdb::JointRecord small_joint(std::string slug, std::string machine) {
  return {.slug = std::move(slug),
          .assembly = "an assembly",
          .name = "a bolt",
          .thread = "M8",
          .strength_class = "8.8",
          .machine = {.slug = std::move(machine)},
          .figure = small_figure()};
}

// A file with the source of that figure and whatever `fill` enters.
inline void make_small_workshop(const std::filesystem::path& path, const std::function<void(SQLite::Database&)>& fill) {
  const auto made = specdb::Workshop::create(path, [&](SQLite::Database& database) {
    specdb::add_source(database, {"sheet", "a sheet", "1st print"});
    fill(database);
  });
  if (!made) throw std::runtime_error(made.error().message);
}

} // namespace clampwright::test
