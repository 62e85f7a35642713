// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/widgets/plot_pane.hpp"

#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>
#include <qcustomplot.h>

#include "gui/models/curve_table.hpp"

namespace clampwright::desk {

namespace {

void dress_axis(QCPAxis& axis, const QString& title, const Look& look) {
  const Inks& inks = look.colours();
  QFont font = text_font(look);
  font.setPixelSize(look.small());
  axis.setLabel(title);
  axis.setLabelFont(font);
  axis.setTickLabelFont(font);
  axis.setLabelColor(inks.page.ink);
  axis.setTickLabelColor(inks.page.ink);
  const QPen pen(inks.rule.ink, 1.5);
  axis.setBasePen(pen);
  axis.setTickPen(pen);
  axis.setSubTickPen(pen);
  axis.grid()->setPen(QPen(inks.rule.ink, 0.5, Qt::DotLine));
}

QCPGraph* line(QCustomPlot& plot, const CurveBand& band, double CurvePoint::*part, const QPen& pen) {
  QCPGraph* graph = plot.addGraph();
  QVector<double> x;
  QVector<double> y;
  for (const CurvePoint& point : band.points) {
    x << point.x;
    y << point.*part;
  }
  graph->setData(x, y, true);
  graph->setPen(pen);
  graph->removeFromLegend();
  return graph;
}

// Filled and hatched, and with whole and broken lines: apart without colour.
void add_band(QCustomPlot& plot, const CurveBand& band, bool first, const Look& look) {
  const Inks& inks = look.colours();
  const QColor ink = first ? inks.friction.ink : inks.factor.ink;
  const Qt::PenStyle style = first ? Qt::SolidLine : Qt::DashLine;
  QCPGraph* low = line(plot, band, &CurvePoint::low, QPen(ink, 1, style));
  QCPGraph* high = line(plot, band, &CurvePoint::high, QPen(ink, 1, style));
  QColor area = ink;
  area.setAlpha(first ? 60 : 160);
  // A printer draws the pattern so fine that it looks filled: on paper the broken lines alone tell.
  if (first || look.theme != Theme::paper) high->setBrush(first ? QBrush(area) : QBrush(area, Qt::BDiagPattern));
  high->setChannelFillGraph(low);
  QCPGraph* likely = line(plot, band, &CurvePoint::likely, QPen(ink, 3, style));
  likely->setName(band.name);
  likely->addToLegend();
}

void add_words(QCustomPlot& plot, double x, double y, Qt::Alignment where, const QString& words, const Look& look) {
  auto* text = new QCPItemText(&plot);
  QFont font = text_font(look);
  font.setPixelSize(look.small());
  text->setFont(font);
  text->setColor(look.colours().page.ink);
  text->setBrush(QBrush(look.colours().page.ground));
  text->setPositionAlignment(where);
  text->setPadding(QMargins(3, 0, 3, 0));
  text->position->setCoords(x, y);
  text->setText(words);
}

void add_line(QCustomPlot& plot, QPointF from, QPointF to, const QPen& pen) {
  auto* item = new QCPItemLine(&plot);
  item->start->setCoords(from);
  item->end->setCoords(to);
  item->setPen(pen);
}

} // namespace

void plot_curve(QCustomPlot& plot, const PlotCurve& curve, const Look& look) {
  const Inks& inks = look.colours();
  plot.clearItems();
  plot.clearGraphs();
  plot.setBackground(QBrush(inks.page.ground));
  dress_axis(*plot.xAxis, curve.x_title, look);
  dress_axis(*plot.yAxis, curve.y_title, look);
  double x_end = 0;
  double y_end = 0;
  for (std::size_t i = 0; i < curve.bands.size(); ++i) {
    add_band(plot, curve.bands[i], i == 0, look);
    for (const CurvePoint& point : curve.bands[i].points) {
      x_end = std::max(x_end, point.x);
      y_end = std::max(y_end, point.high);
    }
  }
  for (const CurveLevel& level : curve.levels)
    y_end = std::max(y_end, level.y);
  y_end *= curve.falls && curve.bands.size() > 1 ? 1.3 : 1.08; // room for the legend
  plot.xAxis->setRange(curve.x_from, x_end);
  plot.yAxis->setRange(0, y_end);
  for (const CurveLevel& level : curve.levels) {
    add_line(plot, {curve.x_from, level.y}, {x_end, level.y}, QPen(inks.limit.ink, 2));
    add_words(plot, curve.falls ? x_end : curve.x_from, level.y,
              (curve.falls ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignBottom, level.name, look);
  }
  if (curve.chosen_x) {
    add_line(plot, {*curve.chosen_x, 0}, {*curve.chosen_x, y_end}, QPen(inks.turn.ink, 2, Qt::DashDotLine));
    // Near an end the name stands on the inner side of its line.
    const double along = (*curve.chosen_x - curve.x_from) / (x_end - curve.x_from);
    constexpr double k_near = 0.08;
    const Qt::Alignment side = along < k_near ? Qt::AlignLeft : along > 1 - k_near ? Qt::AlignRight : Qt::AlignHCenter;
    add_words(plot, *curve.chosen_x, y_end, side | Qt::AlignTop, curve.chosen_name, look);
  }
  QFont font = text_font(look);
  font.setPixelSize(look.small());
  plot.legend->setVisible(curve.bands.size() > 1);
  plot.legend->setFont(font);
  plot.legend->setTextColor(inks.page.ink);
  plot.legend->setBrush(QBrush(inks.page.ground));
  plot.legend->setBorderPen(QPen(inks.rule.ink, 1));
  plot.axisRect()->insetLayout()->setInsetAlignment(0, curve.falls ? Qt::AlignHCenter | Qt::AlignTop
                                                                   : Qt::AlignRight | Qt::AlignBottom);
}

PlotPane::PlotPane(const Look& look, QWidget* parent)
    : QWidget(parent),
      look_(look),
      name_(new QLabel(this)),
      toggle_(new QPushButton(this)),
      plot_(new QCustomPlot(this)),
      view_(new QTableView(this)),
      points_(new CurveTable(this)) {
  auto* column = new QVBoxLayout(this);
  auto* row = new QHBoxLayout;
  set_kind(*name_, "heading");
  name_->setWordWrap(true);
  row->addWidget(name_, 1);
  row->addWidget(toggle_);
  toggle_->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_T));
  connect(toggle_, &QPushButton::clicked, this, [this] { show_table(!shows_table()); });
  column->addLayout(row);
  column->addWidget(plot_);
  column->addWidget(view_);
  view_->setModel(points_);
  view_->setAccessibleName(tr("points of the curve"));
  view_->verticalHeader()->hide();
  view_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  view_->setSelectionBehavior(QAbstractItemView::SelectRows);
  view_->setTabKeyNavigation(false);
  view_->setFocusPolicy(Qt::StrongFocus);
  plot_->setFocusPolicy(Qt::NoFocus);
  plot_->setAttribute(Qt::WA_TransparentForMouseEvents); // it would keep the wheel to itself
  put_on(look);
  show_table(false);
}

void PlotPane::show_curve(const PlotCurve& curve) {
  curve_ = curve;
  name_->setText(curve.name);
  plot_->setAccessibleName(curve.name);
  plot_->setAccessibleDescription(curve.in_words);
  points_->show(curve);
  plot_curve(*plot_, curve_, look_);
  plot_->replot();
}

void PlotPane::put_on(const Look& look) {
  look_ = look;
  plot_->setFixedHeight(look.pixels(320));
  view_->setFixedHeight(look.pixels(320));
  view_->verticalHeader()->setDefaultSectionSize(look.target());
  // Two lines, and what the style sheet puts around them: it is not counted where the header asks for its height.
  QFont font = text_font(look);
  font.setBold(true);
  view_->horizontalHeader()->setMinimumHeight(2 * QFontMetrics(font).lineSpacing() + 2 * look.gap());
  plot_curve(*plot_, curve_, look_);
  plot_->replot();
}

bool PlotPane::shows_table() const { return plot_->isHidden(); }

void PlotPane::show_table(bool table) {
  plot_->setHidden(table);
  view_->setVisible(table);
  toggle_->setText(table ? tr("Show as a curve") : tr("Show the points as a table"));
  toggle_->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_T)); // setText takes it away
}

} // namespace clampwright::desk
