// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/printing/curve_print.hpp"

#include <algorithm>

#include <QCoreApplication>
#include <QPainter>
#include <QPicture>
#include <qcustomplot.h>

#include "core/quantity/write.hpp"
#include "gui/look/look.hpp"
#include "gui/look/utf8.hpp"
#include "gui/widgets/plot_pane.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("CurvePrint", english); }

constexpr int k_width = 640;
constexpr int k_height = 360;

bool is_line(const CurveBand& band) {
  // Exactly alike: a line is a band whose three values were set to the same number.
  return std::ranges::all_of(
      band.points, [](const CurvePoint& point) { return !(point.low < point.high) && !(point.high < point.low); });
}

} // namespace

Drawing curve_print(const PlotCurve& curve) {
  Drawing drawing;
  drawing.name = curve.name;
  drawing.in_words = curve.in_words;
  drawing.size = QSizeF(k_width, k_height);
  drawing.paint = [curve](QPainter& painter, const Inks&) {
    QCustomPlot plot;
    plot_curve(plot, curve, Look{.theme = Theme::paper});
    // Recorded first: the plot paints with a painter of its own kind only.
    QPicture picture;
    QCPPainter recorder(&picture);
    recorder.setMode(QCPPainter::pmVectorized);
    recorder.setMode(QCPPainter::pmNoCaching);
    plot.toPainter(&recorder, k_width, k_height);
    recorder.end();
    painter.save();
    // A picture is played back in inches, not in pixels.
    const double own = picture.logicalDpiX();
    painter.scale(own / painter.device()->logicalDpiX(), own / painter.device()->logicalDpiY());
    painter.drawPicture(0, 0, picture);
    painter.restore();
  };
  return drawing;
}

report::Section curve_points(const PlotCurve& curve) {
  report::Section section{to_utf8(tr("The points of the curve")), {}};
  report::Table table;
  table.columns.push_back({"", to_utf8(curve.x_title), true, true});
  for (const CurveBand& band : curve.bands) {
    const std::string name = to_utf8(band.name);
    if (is_line(band)) {
      table.columns.push_back({"", name, true, false});
      continue;
    }
    for (const QString& what : {tr("least"), tr("likely"), tr("most")})
      table.columns.push_back({name, to_utf8(what), true, false});
  }
  const std::size_t rows = curve.bands.empty() ? 0 : curve.bands.front().points.size();
  for (std::size_t row = 0; row < rows; ++row) {
    std::vector<std::string> cells{quantity::write_rounded(curve.bands.front().points[row].x)};
    for (const CurveBand& band : curve.bands) {
      if (row >= band.points.size()) {
        cells.resize(cells.size() + (is_line(band) ? 1 : 3));
        continue;
      }
      const CurvePoint& point = band.points[row];
      if (!is_line(band)) cells.push_back(quantity::write_rounded(point.low));
      cells.push_back(quantity::write_rounded(point.likely));
      if (!is_line(band)) cells.push_back(quantity::write_rounded(point.high));
    }
    table.rows.push_back(std::move(cells));
  }
  table.under = to_utf8(curve.y_title);
  section.table = std::move(table);
  return section;
}

} // namespace clampwright::desk
