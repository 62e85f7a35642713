// SPDX-License-Identifier: GPL-3.0-or-later
//
// A drawing is a function of an answer: it stands on the screen, in a print and in a picture alike, and says in words
// what it shows for whoever cannot see it.
#pragma once

#include <functional>

#include <QSizeF>
#include <QString>

#include "gui/look/inks.hpp"

class QPainter;

namespace clampwright::desk {

struct Drawing {
  QString name;     // what it shows: "Band picture"
  QString in_words; // the same content in a sentence or two
  QSizeF size;      // in pixels at 100 %; it is painted into (0, 0) to that size, and scaled
  // The painter's font has the size of small print.
  std::function<void(QPainter&, const Inks&)> paint;
};

} // namespace clampwright::desk
