// SPDX-License-Identifier: GPL-3.0-or-later
//
// Opens workshop files away from the window's thread: a file on a slow disk or held by another program must not make
// the window stand still. Looks several times a second whether somebody else changed the open one.
#pragma once

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>

#include <QObject>
#include <QStringList>

#include "core/problem/problem.hpp"
#include "gui/models/bench.hpp"
#include "specdb/workshop/workshop_watch.hpp"

class QTimer;

namespace clampwright::desk {

class WorkshopOpener : public QObject {
  Q_OBJECT

 public:
  explicit WorkshopOpener(Bench& bench, QObject* parent = nullptr);
  ~WorkshopOpener() override;

  // Reads the file and shows it on the bench. A second call while one is under way takes its place.
  void open(const std::filesystem::path& path);
  // Makes an empty workshop there, then opens it; refuses where a file of that name is there.
  void make_new(const std::filesystem::path& path);
  // The same with a demo workshop.
  void make_demo(const std::filesystem::path& path);
  // Reads the open file again; where that fails, what was read before stays on the bench.
  void read_again();
  [[nodiscard]] bool is_busy() const { return busy_; }
  // The file that was asked for last, where there is none of that name.
  [[nodiscard]] const std::optional<std::filesystem::path>& not_there() const { return not_there_; }

 signals:
  void opened();
  // A file that was asked for cannot be opened.
  void refused(const clampwright::Problem& problem);
  // The open file cannot be read any more: what is shown is as it was.
  void lost(const clampwright::Problem& problem);

 private:
  using Work = std::function<Result<void>()>; // what is done before the file is read
  void start(const std::filesystem::path& given, const Work& first, bool again);
  void look();
  Bench& bench_;
  QTimer* timer_;
  std::shared_ptr<specdb::WorkshopWatch> watch_;
  int latest_ = 0; // which call's answer is wanted
  bool busy_ = false;
  std::optional<std::filesystem::path> not_there_;
};

// What to open at the start: what was named, else what was open last, also where it is there no more and that must be
// said; else the usual place where there is something.
[[nodiscard]] std::optional<std::filesystem::path> first_workshop(const QStringList& named, const Memory& memory,
                                                                  const std::optional<std::filesystem::path>& usual);

} // namespace clampwright::desk
