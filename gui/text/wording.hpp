// SPDX-License-Identifier: GPL-3.0-or-later
//
// The words of answers come from core in English, numbers and all. Here they are put into the language of the desk: a
// sentence is looked up with its numbers and names taken out, and they are put back into what was found.
#pragma once

#include <string_view>

#include <QString>

namespace clampwright::desk {

// UTF-8 text of an answer as it is to be read. What no translation knows stays English: a wrong word is worse.
[[nodiscard]] QString worded(std::string_view english);

} // namespace clampwright::desk
