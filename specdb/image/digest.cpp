// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/image/digest.hpp"

#include <array>
#include <cstdint>

#include <fmt/format.h>
#include <nettle/sha2.h>

namespace clampwright::specdb {

std::string sha256(std::string_view bytes) {
  sha256_ctx context;
  sha256_init(&context);
  sha256_update(&context, bytes.size(), reinterpret_cast<const std::uint8_t*>(bytes.data()));
  std::array<std::uint8_t, SHA256_DIGEST_SIZE> digest{};
  sha256_digest(&context, digest.size(), digest.data());
  std::string out;
  for (const std::uint8_t byte : digest)
    out += fmt::format("{:02x}", byte);
  return out;
}

} // namespace clampwright::specdb
