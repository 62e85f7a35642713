// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/image/embedded_image.hpp"

extern "C" {
extern const char clampwright_image_start[];
extern const char clampwright_image_end[];
}

namespace clampwright::specdb {

std::string_view embedded_image() {
  return {clampwright_image_start, static_cast<std::size_t>(clampwright_image_end - clampwright_image_start)};
}

std::string_view embedded_image_digest() {
  return
#include "reference_image.sha256"
      ;
}

} // namespace clampwright::specdb
