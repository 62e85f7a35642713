// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/problem/problem.hpp"

#include "core/text/plain_text.hpp"

namespace clampwright {

Refusal refuse(Trouble trouble, std::string code, std::string message, std::string_view input, std::string hint,
               std::string field) {
  return Refusal(Problem{trouble, std::move(code), text::printable(message), text::quotable(input), std::move(hint),
                         std::move(field)});
}

} // namespace clampwright
