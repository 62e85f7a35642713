// SPDX-License-Identifier: GPL-3.0-or-later
//
// Opens workshop files away from the window's thread: a file on a slow disk or held by another program must not make
// the window stand still.
#pragma once

#include <filesystem>
#include <functional>

#include <QObject>

#include "core/problem/problem.hpp"
#include "gui/models/bench.hpp"

namespace clampwright::desk {

class WorkshopOpener : public QObject {
  Q_OBJECT

 public:
  explicit WorkshopOpener(Bench& bench, QObject* parent = nullptr);

  // Reads the file and shows it on the bench. A second call while one is under way takes its place.
  void open(const std::filesystem::path& path);
  // Makes a demo workshop there, then opens it.
  void make_demo(const std::filesystem::path& path);
  // Reads the open file again.
  void read_again();
  [[nodiscard]] bool is_busy() const { return busy_; }

 signals:
  void opened();
  void refused(const clampwright::Problem& problem);

 private:
  using Work = std::function<Result<void>()>; // what is done before the file is read
  void start(const std::filesystem::path& path, const Work& first);
  Bench& bench_;
  int latest_ = 0; // which call's answer is wanted
  bool busy_ = false;
};

} // namespace clampwright::desk
