// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace clampwright {

// "0.1.0"
extern const char* const k_version;

} // namespace clampwright
