// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/version/version.hpp"

namespace clampwright {

const char* const k_version = CLAMPWRIGHT_VERSION;

} // namespace clampwright
