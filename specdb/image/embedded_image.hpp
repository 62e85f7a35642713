// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace clampwright::specdb {

// The reference image as it was built, and the SHA-256 it had then.
[[nodiscard]] std::string_view embedded_image();
[[nodiscard]] std::string_view embedded_image_digest();

} // namespace clampwright::specdb
