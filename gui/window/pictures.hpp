// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>

#include <QString>

#include "core/problem/problem.hpp"

class QApplication;

namespace clampwright::desk {

// Every page with the demo workshop, in every look, as PNG files in that folder, which is made, and the prints as PDF
// files; for the documentation and for looking at. `today` decides what is due. Fails where the folder cannot be
// written.
[[nodiscard]] Result<void> make_pictures(QApplication& application, const QString& folder,
                                         std::chrono::year_month_day today);

} // namespace clampwright::desk
