// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <stdexcept>

#include "specdb/demo/demo_workshop.hpp"
#include "specdb/workshop/workshop_file.hpp"
#include "tests/specdb/scratch.hpp"

namespace clampwright::test {

// The demo workshop, in a folder of its own.
struct DemoFile {
  Scratch scratch;
  std::filesystem::path path = scratch / "demo.clampwright";

  DemoFile() {
    if (const auto made = specdb::make_demo_workshop(path); !made) throw std::runtime_error(made.error().message);
  }
  [[nodiscard]] specdb::Workshop open() const {
    auto workshop = specdb::Workshop::open(path);
    if (!workshop) throw std::runtime_error(workshop.error().message);
    return std::move(*workshop);
  }
};

} // namespace clampwright::test
