// SPDX-License-Identifier: GPL-3.0-or-later
//
// The menus of the main window: what is done with a file, how it looks, and what there is to know of the program.
#include <algorithm>

#include <QActionGroup>
#include <QClipboard>
#include <QGuiApplication>
#include <QKeySequence>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>

#include "gui/look/utf8.hpp"
#include "gui/models/workshop_opener.hpp"
#include "gui/pages/page.hpp"
#include "gui/printing/print_pages.hpp"
#include "gui/text/wording.hpp"
#include "gui/window/main_window.hpp"

namespace clampwright::desk {

namespace {

QAction* add(QMenu& menu, const QString& text, const QKeySequence& keys) {
  QAction* action = menu.addAction(text);
  action->setShortcut(keys);
  return action;
}

} // namespace

void MainWindow::make_menus() {
  make_workshop_menu();
  make_view_menu();
  make_help_menu();
}

void MainWindow::make_workshop_menu() {
  QMenu& menu = *menuBar()->addMenu(tr("&Workshop"));
  const QString filter = tr("Workshop files (*.clampwright);;All files (*)");
  connect(add(menu, tr("&Open a workshop file …"), QKeySequence::Open), &QAction::triggered, this, [this, filter] {
    asking_.file_to_open(*this, tr("Open a workshop file"), filter, [this](const std::optional<QString>& file) {
      if (file) opener_.open(to_utf8(*file));
    });
  });
  connect(add(menu, tr("&New workshop …"), QKeySequence::New), &QAction::triggered, this, [this, filter] {
    asking_.file_to_save(*this, tr("Where to put the new workshop, empty at first"),
                         QStringLiteral("workshop.clampwright"), filter, [this](const std::optional<QString>& file) {
                           if (file) opener_.make_new(to_utf8(*file));
                         });
  });
  connect(add(menu, tr("Make a &demo workshop …"), {}), &QAction::triggered, this, [this, filter] {
    asking_.file_to_save(*this, tr("Where to put the invented demo workshop"), QStringLiteral("demo.clampwright"),
                         filter, [this](const std::optional<QString>& file) {
                           if (file) opener_.make_demo(to_utf8(*file));
                         });
  });
  menu.addSeparator();
  connect(add(menu, tr("&Find"), QKeySequence::Find), &QAction::triggered, this, [this] {
    line_->setFocus();
    line_->selectAll();
  });
  connect(add(menu, tr("&Copy the figure"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C)), &QAction::triggered, this,
          [this] {
            if (page() == nullptr) return;
            if (const QString text = page()->to_copy(); !text.isEmpty()) QGuiApplication::clipboard()->setText(text);
          });
  menu.addSeparator();
  connect(add(menu, tr("&Print …"), QKeySequence::Print), &QAction::triggered, this, &MainWindow::print_wanted);
  connect(add(menu, tr("Sa&ve as PDF …"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P)), &QAction::triggered, this,
          &MainWindow::pdf_wanted);
  make_paper_menu(*menu.addMenu(tr("P&aper")));
  menu.addSeparator();
  connect(add(menu, tr("&Quit"), QKeySequence(Qt::CTRL | Qt::Key_Q)), &QAction::triggered, this, &MainWindow::close);
}

void MainWindow::make_paper_menu(QMenu& menu) {
  auto* sizes = new QActionGroup(&menu);
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter}) {
    QAction* action = add(menu, paper_name(size), {});
    action->setCheckable(true);
    sizes->addAction(action);
    connect(action, &QAction::triggered, this,
            [this, size] { bench_.memory().keep(Kept::paper_size, paper_name(size)); });
    // Printing may have changed it.
    connect(&menu, &QMenu::aboutToShow, action,
            [this, action, size] { action->setChecked(paper_named(bench_.memory().text(Kept::paper_size)) == size); });
  }
}

void MainWindow::make_view_menu() {
  QMenu& menu = *menuBar()->addMenu(tr("&Look"));
  QAction* bench_mode = add(menu, tr("&Bench mode: large, for gloves and from afar"), QKeySequence(Qt::Key_F9));
  bench_mode->setCheckable(true);
  bench_mode->setChecked(bench_.look().bench);
  connect(bench_mode, &QAction::toggled, this, [this](bool on) {
    Look look = bench_.look();
    look.bench = on;
    bench_.put_on_look(look);
  });
  QAction* dark = add(menu, tr("&Dark"), QKeySequence(Qt::Key_F8));
  dark->setCheckable(true);
  dark->setChecked(bench_.look().theme == Theme::dark);
  connect(dark, &QAction::toggled, this, [this](bool on) {
    Look look = bench_.look();
    look.theme = on ? Theme::dark : Theme::light;
    bench_.put_on_look(look);
  });
  menu.addSeparator();
  const auto scale_to = [this](double scale) {
    Look look = bench_.look();
    look.scale = std::clamp(scale, 1.0, 3.0);
    bench_.put_on_look(look);
  };
  constexpr double k_step = 0.25;
  connect(add(menu, tr("&Larger letters"), QKeySequence::ZoomIn), &QAction::triggered, this,
          [this, scale_to] { scale_to(bench_.look().scale + k_step); });
  connect(add(menu, tr("&Smaller letters"), QKeySequence::ZoomOut), &QAction::triggered, this,
          [this, scale_to] { scale_to(bench_.look().scale - k_step); });
  connect(add(menu, tr("&Normal letters"), QKeySequence(Qt::CTRL | Qt::Key_0)), &QAction::triggered, this,
          [scale_to] { scale_to(1); });
  menu.addSeparator();
  QAction* imperial = add(menu, tr("&Imperial units first"), {});
  imperial->setCheckable(true);
  imperial->setChecked(bench_.imperial());
  connect(imperial, &QAction::toggled, this, [this](bool on) { bench_.use_imperial(on); });
  QMenu& language = *menu.addMenu(tr("Langua&ge"));
  // Each by its own name, or whoever does not know this one cannot find theirs.
  for (const auto& [code, name] : {std::pair{"en", "English"}, std::pair{"de", "Deutsch"}}) {
    QAction* action = add(language, QLatin1String(name), {});
    action->setCheckable(true);
    action->setChecked(spoken() == QLatin1String(code));
    connect(action, &QAction::triggered, this, [this, action, code] {
      action->setChecked(spoken() == QLatin1String(code)); // until the window is made anew, and its forms with it
      const auto speak = [this, code] { bench_.speak_language(QLatin1String(code)); };
      if (const QStringList lost = not_entered(); !lost.isEmpty()) return ask_to_lose(lost, speak);
      speak();
    });
  }
  connect(add(menu, tr("Ne&xt part of the window"), QKeySequence(Qt::Key_F6)), &QAction::triggered, this,
          &MainWindow::move_between_panes);
}

void MainWindow::make_help_menu() {
  QMenu& menu = *menuBar()->addMenu(tr("&Help"));
  connect(add(menu, tr("&Cautions, keys, versions and licences"), QKeySequence::HelpContents), &QAction::triggered,
          this, [this] { open({Target::To::about}); });
}

} // namespace clampwright::desk
