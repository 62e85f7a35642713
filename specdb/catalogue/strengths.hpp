// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/problem/problem.hpp"
#include "core/strength/strength.hpp"
#include "core/thread/thread.hpp"
#include "specdb/catalogue/catalogue.hpp"

namespace clampwright::specdb {

// The strength of a bolt of the named class with that thread. "unknown" is a class: nothing is known then. The name is
// read with or without spaces, in any case, "grade 5" for SAE 5. With a leading zero (08.8) the loads are 0.8 of those
// of the full class. Fails with no-such for a class that does not exist, or that its standard does not have for this
// thread.
[[nodiscard]] Result<strength::Strength> find_strength(const Catalogue& catalogue, std::string_view class_name,
                                                       const thread::Thread& thread);

// A class by itself, before any thread is named.
struct NamedClass {
  std::string name;  // as the tables write it: "SAE 5" for "grade 5"
  thread::Form form; // of the threads that its standard covers
};

// Reads the name as find_strength does. Fails with no-such for a class that does not exist; "unknown" is none here.
[[nodiscard]] Result<NamedClass> find_class(const Catalogue& catalogue, std::string_view class_name);

// Every class name, in the order of the standards, one with a leading zero behind its full class.
[[nodiscard]] std::vector<std::string> class_names(const Catalogue& catalogue);

} // namespace clampwright::specdb
