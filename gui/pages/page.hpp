// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QWidget>

#include "gui/models/bench.hpp"
#include "gui/printing/printable.hpp"

namespace clampwright::desk {

// What stands to the right of the find line's list. A page hears from the bench when something it shows has changed.
class Page : public QWidget {
  Q_OBJECT

 public:
  Page(Bench& bench, QWidget* parent) : QWidget(parent), bench_(bench) {}

  [[nodiscard]] virtual QString title() const = 0;
  // Nothing while there is no answer.
  [[nodiscard]] virtual std::optional<Printable> printable() const { return std::nullopt; }
  // What Ctrl+C takes where nothing is selected: the figure and what it is for. Empty: nothing.
  [[nodiscard]] virtual QString to_copy() const { return {}; }
  // Where the focus goes when the page is opened.
  virtual void take_focus() { setFocus(); }

 protected:
  [[nodiscard]] Bench& bench() const { return bench_; }

 private:
  Bench& bench_;
};

} // namespace clampwright::desk
