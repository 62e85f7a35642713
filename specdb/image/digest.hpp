// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace clampwright::specdb {

// SHA-256 (FIPS 180-4) of the bytes, as 64 small hexadecimal digits.
[[nodiscard]] std::string sha256(std::string_view bytes);

} // namespace clampwright::specdb
