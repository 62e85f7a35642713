// SPDX-License-Identifier: GPL-3.0-or-later
//
// A page of the desk on paper: the same content in the paper theme, with a head and a foot on every sheet. Text stays
// text, so that it can be searched and copied out of a PDF file.
#pragma once

#include <QPageLayout>
#include <QString>

#include "core/problem/problem.hpp"
#include "gui/printing/printable.hpp"

class QPagedPaintDevice;

namespace clampwright::desk {

enum class PaperSize { a4, letter };

// "A4", "Letter", as they are remembered; A4 for anything else.
[[nodiscard]] QString paper_name(PaperSize size);
[[nodiscard]] PaperSize paper_named(const QString& name);

// The sheet with the margins of the desk.
[[nodiscard]] QPageLayout sheet(PaperSize size);

// What stands on every sheet beside the page's own content.
struct Imprint {
  QString program; // "Clampwright 1.2.0"
  QString date;
};

// Prints onto the device in the size and margins that it is set to. Returns how many sheets. Fails with cannot-create
// where the device takes nothing, as a printer that is not there.
[[nodiscard]] Result<int> print_pages(QPagedPaintDevice& device, const Printable& printable, const Imprint& imprint);

// Writes a PDF file in one step: who looks sees the old file or the whole new one. Fails as specdb::write_file does.
[[nodiscard]] Result<void> write_pdf(const QString& file, const Printable& printable, PaperSize size,
                                     const Imprint& imprint);

} // namespace clampwright::desk
