// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <filesystem>
#include <stdexcept>

#include "specdb/demo/demo_workshop.hpp"
#include "specdb/workshop/workshop_file.hpp"
#include "tests/specdb/scratch.hpp"

namespace clampwright::test {

// Its wrench B fell due on the first of October, A and C fall due in April and July.
inline constexpr std::chrono::year_month_day k_demo_day{std::chrono::year(2026), std::chrono::November,
                                                        std::chrono::day(25)};

// The demo workshop, in a folder of its own.
struct DemoFile {
  Scratch scratch;
  std::filesystem::path path = scratch / "demo.clampwright";

  DemoFile() {
    if (const auto made = specdb::make_demo_workshop(path, k_demo_day); !made)
      throw std::runtime_error(made.error().message);
  }
  [[nodiscard]] specdb::Workshop open() const {
    auto workshop = specdb::Workshop::open(path);
    if (!workshop) throw std::runtime_error(workshop.error().message);
    return std::move(*workshop);
  }
};

} // namespace clampwright::test
