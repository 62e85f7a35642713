// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/field_options.hpp"

namespace clampwright::cli {

std::string key_of(std::string_view option) {
  std::string key(option.substr(2));
  for (char& c : key)
    if (c == '-') c = '_';
  return key;
}

} // namespace clampwright::cli
