// SPDX-License-Identifier: GPL-3.0-or-later
//
// A PDF file read back by other people's programs (poppler).
#pragma once

#include <vector>

#include <QImage>
#include <QString>

namespace clampwright::desk {

// What a program prints, run on that file; the test fails where it does not end well.
[[nodiscard]] QString asked_about(const QString& program, const QStringList& options, const QString& file);

// The text of all pages in the order in which it was written, all white space taken out: lines break where they will.
[[nodiscard]] QString text_of(const QString& file);
[[nodiscard]] QString squeezed(const QString& text);

[[nodiscard]] int pages_of(const QString& file);

// Every page in grey, so many pixels to the inch.
[[nodiscard]] std::vector<QImage> pictures_of(const QString& file, int pixels_per_inch);

} // namespace clampwright::desk
