// SPDX-License-Identifier: GPL-3.0-or-later
//
// Work that may take long is done on another thread, and its result comes back by a call on this one.
#pragma once

#include <exception>
#include <functional>
#include <memory>

#include <QFutureWatcher>
#include <QObject>
#include <QtConcurrentRun>

#include "core/problem/problem.hpp"

namespace clampwright::desk {

// `done` is called on the thread of `owner`, unless that is gone by then. What `work` throws comes as a problem of our
// own.
template<class Value>
void away(QObject* owner, std::function<Result<Value>()> work, std::function<void(Result<Value>)> done) {
  using Shared = std::shared_ptr<Result<Value>>; // a future hands out copies
  auto* watcher = new QFutureWatcher<Shared>(owner);
  QObject::connect(watcher, &QFutureWatcher<Shared>::finished, owner, [watcher, done = std::move(done)] {
    watcher->deleteLater();
    done(std::move(*watcher->result()));
  });
  watcher->setFuture(QtConcurrent::run([work = std::move(work)]() -> Shared {
    try {
      return std::make_shared<Result<Value>>(work());
    } catch (const std::exception& error) {
      return std::make_shared<Result<Value>>(refuse(Trouble::internal, "internal", error.what(), {}, {}));
    }
  }));
}

} // namespace clampwright::desk
