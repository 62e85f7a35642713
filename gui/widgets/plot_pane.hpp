// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "gui/drawings/plot_curve.hpp"
#include "gui/look/look.hpp"

class QCustomPlot;
class QLabel;
class QPushButton;
class QTableView;

namespace clampwright::desk {

class CurveTable;

// A curve to look at, and the same points as a table.
class PlotPane : public QWidget {
  Q_OBJECT

 public:
  explicit PlotPane(const Look& look, QWidget* parent = nullptr);

  void show_curve(const PlotCurve& curve);
  void put_on(const Look& look);
  [[nodiscard]] bool shows_table() const;
  void show_table(bool table);
  [[nodiscard]] const CurveTable& table() const { return *points_; }
  [[nodiscard]] QCustomPlot& plot() { return *plot_; }

 private:
  Look look_;
  PlotCurve curve_;
  QLabel* name_;
  QPushButton* toggle_;
  QCustomPlot* plot_;
  QTableView* view_;
  CurveTable* points_;
};

// Draws the curve into the plot in that look; for the pane and for prints.
void plot_curve(QCustomPlot& plot, const PlotCurve& curve, const Look& look);

} // namespace clampwright::desk
