// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/printing/print_pages.hpp"

#include <QAbstractTextDocumentLayout>
#include <QBuffer>
#include <QCoreApplication>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPdfWriter>

#include "core/report/wording.hpp"
#include "gui/look/utf8.hpp"
#include "gui/printing/paper_layout.hpp"
#include "gui/text/wording.hpp"
#include "specdb/files/write_file.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("PrintPages", english); }

constexpr double k_margin_mm = 18;

// Head and foot of a sheet, measured for one device.
class Sheet {
 public:
  Sheet(QPainter& painter, const QPagedPaintDevice& device, const Printable& printable, const Imprint& imprint)
      : painter_(painter),
        look_(paper_look(device.logicalDpiX())),
        gap_(look_.gap()),
        size_(device.width(), device.height()) {
    const report::Document& document = printable.content.document;
    title_ = worded(document.title);
    where_ = printable.content.where;
    banner_ = worded(document.banner);
    if (document.has_foot) caution_ = worded(report::foot_line());
    left_ = imprint.date.isEmpty() ? imprint.program : QStringLiteral("%1, %2").arg(imprint.program, imprint.date);
    line_ = QFontMetricsF(font(false), painter.device()).height();
    head_ = line_ + (banner_.isEmpty() ? 0 : line_) + gap_;
    foot_ = gap_ + caution_height() + line_;
  }

  // What the content may fill.
  [[nodiscard]] QRectF room() const {
    return {0, head_ + gap_, size_.width(), size_.height() - head_ - foot_ - 2 * gap_};
  }

  void paint(int page, int pages) {
    const Inks& inks = look_.colours();
    painter_.setPen(inks.page.ink);
    painter_.setFont(font(true));
    const QFontMetricsF bold(painter_.font(), painter_.device());
    const double width = size_.width();
    // The place to the right, the title in what is left of the line.
    painter_.setFont(font(false));
    const QFontMetricsF plain(painter_.font(), painter_.device());
    const QString where = plain.elidedText(where_, Qt::ElideMiddle, width / 2);
    const double where_width = plain.horizontalAdvance(where);
    painter_.drawText(QRectF(0, 0, width, line_), Qt::AlignRight | Qt::AlignVCenter, where);
    painter_.setFont(font(true));
    painter_.drawText(QRectF(0, 0, width, line_), Qt::AlignLeft | Qt::AlignVCenter,
                      bold.elidedText(title_, Qt::ElideRight, width - where_width - gap_));
    // On the first sheet it stands large below the title.
    if (!banner_.isEmpty() && page > 1)
      painter_.drawText(QRectF(0, line_, width, line_), Qt::AlignLeft | Qt::AlignVCenter, banner_);
    rule(head_ - gap_ / 2);
    const double foot = size_.height() - foot_;
    rule(foot + gap_ / 2);
    painter_.setPen(inks.page.ink);
    if (!caution_.isEmpty())
      painter_.drawText(QRectF(0, foot + gap_, width, caution_height()), Qt::AlignLeft | Qt::TextWordWrap, caution_);
    painter_.setFont(font(false));
    const QRectF last(0, size_.height() - line_, width, line_);
    painter_.drawText(last, Qt::AlignLeft | Qt::AlignVCenter, left_);
    painter_.drawText(last, Qt::AlignRight | Qt::AlignVCenter, tr("page %1 of %2").arg(page).arg(pages));
  }

 private:
  [[nodiscard]] QFont font(bool bold) const {
    QFont font = text_font(look_);
    font.setPixelSize(look_.small());
    font.setBold(bold);
    return font;
  }
  [[nodiscard]] double caution_height() const {
    if (caution_.isEmpty()) return 0;
    return QFontMetricsF(font(true), painter_.device())
        .boundingRect(QRectF(0, 0, size_.width(), 1e6), Qt::AlignLeft | Qt::TextWordWrap, caution_)
        .height();
  }
  void rule(double y) {
    painter_.setPen(QPen(look_.colours().rule.ink, look_.scale));
    painter_.drawLine(QPointF(0, y), QPointF(size_.width(), y));
  }

  QPainter& painter_;
  Look look_;
  double gap_;
  QSizeF size_;
  QString title_;
  QString where_;
  QString banner_;
  QString caution_;
  QString left_;
  double line_ = 0;
  double head_ = 0;
  double foot_ = 0;
};

void paint_page(QPainter& painter, const PaperLayout& layout, const PaperPage& page, const QRectF& room) {
  double y = room.top();
  for (const Slice& slice : page) {
    const QRectF shown(0, slice.top, room.width(), slice.height());
    painter.save();
    painter.translate(0, y - slice.top);
    painter.setClipRect(shown);
    QAbstractTextDocumentLayout::PaintContext context;
    context.clip = shown;
    layout.text->documentLayout()->draw(&painter, context);
    painter.restore();
    y += slice.height();
  }
}

} // namespace

QString paper_name(PaperSize size) {
  return size == PaperSize::letter ? QStringLiteral("Letter") : QStringLiteral("A4");
}

PaperSize paper_named(const QString& name) {
  return name == paper_name(PaperSize::letter) ? PaperSize::letter : PaperSize::a4;
}

QPageLayout sheet(PaperSize size) {
  return QPageLayout(QPageSize(size == PaperSize::letter ? QPageSize::Letter : QPageSize::A4), QPageLayout::Portrait,
                     QMarginsF(k_margin_mm, k_margin_mm, k_margin_mm, k_margin_mm), QPageLayout::Millimeter);
}

Result<int> print_pages(QPagedPaintDevice& device, const Printable& printable, const Imprint& imprint) {
  QPainter painter;
  if (!painter.begin(&device))
    return refuse(Trouble::cannot_create, "cannot-print", to_utf8(tr("the printer takes nothing")), "",
                  to_utf8(tr("choose another printer, or save as PDF")));
  painter.setRenderHint(QPainter::Antialiasing);
  Sheet sheet(painter, device, printable, imprint);
  const QRectF room = sheet.room();
  const PaperLayout layout = lay_out(printable, room.size(), device.logicalDpiX());
  const int pages = static_cast<int>(layout.pages.size());
  for (int page = 1; page <= pages; ++page) {
    if (page > 1 && !device.newPage())
      return refuse(Trouble::input_output, "cannot-print", to_utf8(tr("the printer stopped")), "",
                    to_utf8(tr("look after the printer, and print again")));
    sheet.paint(page, pages);
    paint_page(painter, layout, layout.pages[static_cast<std::size_t>(page - 1)], room);
  }
  if (!painter.end())
    return refuse(Trouble::input_output, "cannot-print", to_utf8(tr("the printer stopped")), "",
                  to_utf8(tr("look after the printer, and print again")));
  return pages;
}

Result<void> write_pdf(const QString& file, const Printable& printable, PaperSize size, const Imprint& imprint) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  {
    QPdfWriter writer(&buffer);
    writer.setPageLayout(sheet(size));
    writer.setTitle(worded(printable.content.document.title));
    writer.setCreator(imprint.program);
    if (auto printed = print_pages(writer, printable, imprint); !printed) return Refusal(printed.error());
  }
  auto written = specdb::write_file(to_utf8(file), {bytes.constData(), static_cast<std::size_t>(bytes.size())},
                                    specdb::IfThere::replace);
  if (written) return {};
  Problem problem = written.error();
  problem.hint = to_utf8(tr("name a file in a folder that is there and that may be written to"));
  return Refusal(std::move(problem));
}

} // namespace clampwright::desk
