// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/thread/turning.hpp"

#include <string>

#include "core/text/plain_text.hpp"

namespace clampwright::thread {

Result<Turn> read_turn(std::string_view text) {
  const std::string word = text::to_lower(text::plain_spaces(text));
  if (word == "clockwise" || word == "cw") return Turn::clockwise;
  for (const std::string_view name :
       {"anticlockwise", "anti-clockwise", "counterclockwise", "counter-clockwise", "acw", "ccw"})
    if (word == name) return Turn::anticlockwise;
  return not_understood("not-understood", "no turn is called that", text,
                        "write clockwise or anticlockwise, looking at what is turned");
}

} // namespace clampwright::thread
