// SPDX-License-Identifier: GPL-3.0-or-later
#include <chrono>
#include <cstdio>
#include <memory>

#include <QApplication>
#include <QCommandLineParser>
#include <QDate>

#include "core/version/version.hpp"
#include "gui/drawings/program_icon.hpp"
#include "gui/models/workshop_opener.hpp"
#include "gui/window/main_window.hpp"
#include "gui/window/pictures.hpp"
#include "gui/window/printing.hpp"
#include "specdb/workshop/usual_place.hpp"

namespace {

using namespace clampwright;

std::chrono::year_month_day today() {
  const QDate now = QDate::currentDate();
  return std::chrono::year_month_day{std::chrono::year(now.year()),
                                     std::chrono::month(static_cast<unsigned>(now.month())),
                                     std::chrono::day(static_cast<unsigned>(now.day()))};
}

std::optional<std::string> variable(const char* name) {
  const QByteArray value = qgetenv(name);
  if (value.isEmpty()) return std::nullopt;
  return value.toStdString();
}

} // namespace

int main(int argc, char** argv) {
  QApplication application(argc, argv);
  QCoreApplication::setApplicationName(QStringLiteral("clampwright-desk"));
  QCoreApplication::setApplicationVersion(QString::fromLatin1(clampwright::k_version));
  QGuiApplication::setApplicationDisplayName(QStringLiteral("Clampwright"));
  QGuiApplication::setWindowIcon(desk::program_icon());
  QGuiApplication::setDesktopFileName(QStringLiteral("org.clampwright.desk"));
  QCommandLineParser parser;
  parser.setApplicationDescription(
      QCoreApplication::translate("main", "Torque and clamp load for the service bench, to look at and to click."));
  parser.addHelpOption();
  parser.addVersionOption();
  parser.addPositionalArgument(QStringLiteral("file"), QCoreApplication::translate("main", "workshop file to open"),
                               QStringLiteral("[file]"));
  const QCommandLineOption pictures(
      QStringLiteral("pictures"),
      QCoreApplication::translate("main", "writes a picture of every page into DIR, with the demo workshop"),
      QStringLiteral("DIR"));
  parser.addOption(pictures);
  parser.process(application);
  if (parser.isSet(pictures)) {
    const auto made = desk::make_pictures(application, parser.value(pictures), today());
    if (made) return 0;
    std::fputs((made.error().message + ": " + made.error().input + "\n").c_str(), stderr);
    return 73; // EX_CANTCREAT
  }

  QApplication::setCursorFlashTime(0); // nothing blinks

  const auto memory = desk::settings_memory();
  desk::Bench bench(*memory, &today);
  desk::put_on(application, bench.look());
  desk::WorkshopOpener opener(bench);
  std::unique_ptr<desk::MainWindow> window;
  const auto make_window = [&] {
    if (window) window->keep_place();
    auto next = std::make_unique<desk::MainWindow>(bench, opener, desk::asking_in_windows());
    new desk::Printing(*next, bench, desk::asking_in_windows()); // belongs to its window
    next->show();
    window = std::move(next); // only now: with the last window the program would go
  };
  // Every string of a window is read when it is made. It cannot go while its own menu is at work.
  QObject::connect(&bench, &desk::Bench::language_changed, &application, make_window, Qt::QueuedConnection);
  make_window();
  const auto usual = specdb::usual_workshop(variable("XDG_DATA_HOME"), variable("HOME"));
  if (const auto file = desk::first_workshop(parser.positionalArguments(), *memory, usual)) opener.open(*file);
  return QApplication::exec();
}
