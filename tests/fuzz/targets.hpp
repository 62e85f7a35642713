// SPDX-License-Identifier: GPL-3.0-or-later
//
// The fuzz targets as functions, one a file beside this one: each puts any text to a reader and throws where a property
// does not hold. The file also gives it the name that libFuzzer calls; several of them in one program leave that out.
#pragma once

#include <string_view>

namespace clampwright::fuzz {

void try_quantity(std::string_view text);
void try_thread(std::string_view text);
void try_search(std::string_view text);

} // namespace clampwright::fuzz
