// SPDX-License-Identifier: GPL-3.0-or-later
//
// A curve as data: what is plotted, what is listed as a table, and what is said of it in words.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include <QString>

namespace clampwright::desk {

// A band over x: low to high as an area, likely as a line in it. Without a band all three are alike.
struct CurvePoint {
  double x = 0;
  double low = 0;
  double likely = 0;
  double high = 0;
};

struct CurveBand {
  QString name;
  std::vector<CurvePoint> points; // x rises
};

// A named level of y: proof, yield.
struct CurveLevel {
  QString name;
  double y = 0;
};

struct PlotCurve {
  QString name;
  QString in_words;
  QString x_title; // "Torque, N·m"
  QString y_title;
  double x_from = 0; // where the axis begins
  std::vector<CurveBand> bands;
  std::vector<CurveLevel> levels;
  std::optional<double> chosen_x; // what was asked about
  QString chosen_name;
  bool falls = false; // from high at the left: the names of levels stand at the right, where there is room
};

} // namespace clampwright::desk
