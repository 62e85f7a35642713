// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/models/workshop_opener.hpp"

#include <exception>

#include <QFutureWatcher>
#include <QtConcurrentRun>

#include "gui/look/utf8.hpp"
#include "specdb/demo/demo_workshop.hpp"

namespace clampwright::desk {

namespace {

using Opened = std::shared_ptr<const specdb::Workshop>;

struct Outcome {
  Opened workshop;
  Problem problem;
};

Outcome read(const std::filesystem::path& path, const std::function<Result<void>()>& first) {
  try {
    if (first)
      if (const auto done = first(); !done) return {nullptr, done.error()};
    auto workshop = specdb::Workshop::open(path);
    if (!workshop) return {nullptr, workshop.error()};
    return {std::make_shared<const specdb::Workshop>(std::move(*workshop)), {}};
  } catch (const std::exception& error) {
    return {nullptr, refuse(Trouble::internal, "internal", error.what(), {}, {}).value()};
  }
}

} // namespace

WorkshopOpener::WorkshopOpener(Bench& bench, QObject* parent) : QObject(parent), bench_(bench) {}

void WorkshopOpener::open(const std::filesystem::path& path) { start(path, {}); }

void WorkshopOpener::make_demo(const std::filesystem::path& path) {
  start(path, [path, today = bench_.place().today] { return specdb::make_demo_workshop(path, today); });
}

void WorkshopOpener::read_again() {
  if (!bench_.workshop_path().empty()) open(bench_.workshop_path());
}

void WorkshopOpener::start(const std::filesystem::path& path, const Work& first) {
  const int number = ++latest_;
  busy_ = true;
  auto* watcher = new QFutureWatcher<Outcome>(this);
  connect(watcher, &QFutureWatcher<Outcome>::finished, this, [this, watcher, number, path] {
    watcher->deleteLater();
    if (number != latest_) return;
    busy_ = false;
    const Outcome outcome = watcher->result();
    if (!outcome.workshop) {
      emit refused(outcome.problem);
      return;
    }
    bench_.memory().keep(Kept::workshop, from_utf8(path.string()));
    bench_.show_workshop(outcome.workshop, path);
    emit opened();
  });
  watcher->setFuture(QtConcurrent::run([path, first] { return read(path, first); }));
}

} // namespace clampwright::desk
