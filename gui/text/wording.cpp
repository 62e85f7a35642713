// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/text/wording.hpp"

#include "gui/look/utf8.hpp"

namespace clampwright::desk {

QString worded(std::string_view english) { return from_utf8(english); }

} // namespace clampwright::desk
