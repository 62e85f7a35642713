// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/printing.hpp"

#include <QCoreApplication>
#include <QDate>
#include <QPrinter>

#include "gui/look/utf8.hpp"
#include "gui/models/bench.hpp"
#include "gui/pages/page.hpp"
#include "gui/text/wording.hpp"
#include "gui/widgets/asking.hpp"
#include "gui/window/main_window.hpp"

namespace clampwright::desk {

Imprint imprint_of(std::chrono::year_month_day today) {
  const QDate day(static_cast<int>(today.year()), static_cast<int>(static_cast<unsigned>(today.month())),
                  static_cast<int>(static_cast<unsigned>(today.day())));
  return {QStringLiteral("Clampwright %1").arg(QCoreApplication::applicationVersion()), day.toString(Qt::ISODate)};
}

QString suggested_file(const QString& title) {
  QString name;
  for (const QChar letter : title.toLower()) {
    if (letter.isLetterOrNumber())
      name += letter;
    else if (!name.isEmpty() && !name.endsWith(QLatin1Char('-')))
      name += QLatin1Char('-');
  }
  while (name.endsWith(QLatin1Char('-')))
    name.chop(1);
  return (name.isEmpty() ? QStringLiteral("page") : name) + QStringLiteral(".pdf");
}

Printing::Printing(MainWindow& window, Bench& bench, Asking& asking)
    : QObject(&window), window_(window), bench_(bench), asking_(asking) {
  connect(&window, &MainWindow::print_wanted, this, &Printing::print);
  connect(&window, &MainWindow::pdf_wanted, this, &Printing::save_pdf);
}

std::optional<Printable> Printing::shown() {
  auto printable = window_.page() == nullptr ? std::nullopt : window_.page()->printable();
  if (!printable)
    asking_.tell(window_, tr("Nothing to print"),
                 tr("No answer is shown yet. Open a joint, or fill in a sentence until its answer stands below it."));
  return printable;
}

void Printing::refuse_with(const Problem& problem) {
  QString text = worded(problem.message);
  if (!problem.input.empty()) text += QStringLiteral(" (%1)").arg(from_utf8(problem.input));
  if (!problem.hint.empty()) text += QStringLiteral("\n") + worded(problem.hint);
  asking_.tell(window_, tr("It could not be printed"), text);
}

void Printing::save_pdf() {
  auto printable = shown();
  if (!printable) return;
  const PaperSize size = paper_named(bench_.memory().text(Kept::paper_size));
  asking_.file_to_save(window_, tr("Save as PDF (%1)").arg(paper_name(size)), suggested_file(window_.page()->title()),
                       tr("PDF files (*.pdf)"),
                       [this, size, printable = std::move(*printable)](const std::optional<QString>& file) {
                         if (!file) return;
                         const Imprint imprint = imprint_of(bench_.place().today);
                         if (auto done = write_pdf(*file, printable, size, imprint); !done) refuse_with(done.error());
                       });
}

void Printing::print() {
  auto printable = shown();
  if (!printable) return;
  const PaperSize size = paper_named(bench_.memory().text(Kept::paper_size));
  asking_.printer(window_, sheet(size),
                  [this, title = window_.page()->title(), printable = std::move(*printable)](QPrinter* printer) {
                    if (printer == nullptr) return;
                    const QPageSize::PageSizeId chosen = printer->pageLayout().pageSize().id();
                    if (chosen == QPageSize::A4 || chosen == QPageSize::Letter)
                      bench_.memory().keep(Kept::paper_size,
                                           paper_name(chosen == QPageSize::Letter ? PaperSize::letter : PaperSize::a4));
                    printer->setDocName(title);
                    if (auto done = print_pages(*printer, printable, imprint_of(bench_.place().today)); !done)
                      refuse_with(done.error());
                  });
}

} // namespace clampwright::desk
