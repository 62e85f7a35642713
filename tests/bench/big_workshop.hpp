// SPDX-License-Identifier: GPL-3.0-or-later
//
// A workshop as big as one will ever get, all invented and the same on every machine: its words are put together from
// syllables and the trade's own words by a generator whose seed is given.
#pragma once

#include <cstdint>
#include <filesystem>

namespace clampwright::bench {

struct Size {
  int machines = 2000;
  int joints_of_each = 50;
};

// Makes the workshop file. Throws where it cannot.
void make_big_workshop(const std::filesystem::path& path, const Size& size, std::uint32_t seed);

} // namespace clampwright::bench
