// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/source/source.hpp"

namespace clampwright::specdb {

// "TM 10-3930-643-20, para 2-12": a source where it stands within a line. Every answer names it in full at its end.
[[nodiscard]] std::string short_source(const Source& source);

} // namespace clampwright::specdb
