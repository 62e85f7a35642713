// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/gui/drawn.hpp"

#include <cmath>

#include <QPainter>

#include "gui/look/look.hpp"

namespace clampwright::desk {

namespace {

bool is_white(const QImage& image, int x, int y) { return image.pixelColor(x, y) == QColor(Qt::white); }

} // namespace

QImage painted(const Drawing& drawing) {
  const QSize size(static_cast<int>(std::ceil(drawing.size.width())),
                   static_cast<int>(std::ceil(drawing.size.height())));
  QImage image(size + QSize(2 * k_around, 2 * k_around), QImage::Format_RGB32);
  image.fill(Qt::white);
  const Look look{.theme = Theme::paper};
  QPainter painter(&image);
  painter.translate(k_around, k_around);
  painter.setRenderHint(QPainter::Antialiasing);
  QFont font = text_font(look);
  font.setPixelSize(look.small());
  painter.setFont(font);
  drawing.paint(painter, look.colours());
  return image;
}

bool has_ink(const QImage& image, const QRect& area) {
  const QRect within = area & image.rect();
  for (int y = within.top(); y <= within.bottom(); ++y)
    for (int x = within.left(); x <= within.right(); ++x)
      if (!is_white(image, x, y)) return true;
  return false;
}

bool has_ink_at(const QImage& image, QPointF place) {
  const QPoint at = place.toPoint() + QPoint(k_around, k_around);
  return has_ink(image, QRect(at - QPoint(2, 2), at + QPoint(2, 2)));
}

int ink_outside(const QImage& image) {
  const QRect inside = image.rect().adjusted(k_around, k_around, -k_around, -k_around);
  int found = 0;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x)
      if (!inside.contains(x, y) && !is_white(image, x, y)) ++found;
  return found;
}

} // namespace clampwright::desk
