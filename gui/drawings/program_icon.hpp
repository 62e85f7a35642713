// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QIcon>

namespace clampwright::desk {

// The program's sign: a hexagon that an arrow tightens. gui/desktop/clampwright-desk.svg is the same for menus.
[[nodiscard]] QIcon program_icon();

} // namespace clampwright::desk
