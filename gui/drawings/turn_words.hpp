// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QString>

#include "core/thread/turning.hpp"

namespace clampwright::desk {

// "clockwise", "anticlockwise".
[[nodiscard]] inline QString turn_word(thread::Turn turn) {
  return turn == thread::Turn::clockwise ? QCoreApplication::translate("Turn", "clockwise")
                                         : QCoreApplication::translate("Turn", "anticlockwise");
}

} // namespace clampwright::desk
