// SPDX-License-Identifier: GPL-3.0-or-later
//
// What all pages of one desk share: the look, the units, the wrench in hand, the open workshop. Pages ask it and hear
// from it when something changed.
#pragma once

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>

#include <QObject>

#include "gui/look/look.hpp"
#include "gui/look/memory.hpp"
#include "gui/sentences/blank.hpp"

namespace clampwright::desk {

class Bench : public QObject {
  Q_OBJECT

 public:
  using Today = std::function<std::chrono::year_month_day()>;
  // `memory` outlives the bench; what it kept is taken up, the language of the desk among it.
  Bench(Memory& memory, Today today, QObject* parent = nullptr);
  ~Bench() override;

  [[nodiscard]] Memory& memory() { return memory_; }
  [[nodiscard]] const specdb::Catalogue& catalogue() const { return *catalogue_; }

  [[nodiscard]] const Look& look() const { return look_; }
  void put_on_look(const Look& look);

  // The place in which any question is asked now. Pointers in it hold until the next signal.
  [[nodiscard]] Place place() const;

  [[nodiscard]] bool imperial() const { return imperial_; }
  void use_imperial(bool imperial);
  // The unit of torque that stands first; nullptr for that of the system of units.
  void use_torque_unit(const quantity::Unit* unit);

  // "en", "de"; empty: that of the system. All strings change: windows are to be made anew.
  void speak_language(const QString& language);

  // The slug of the wrench in hand; empty for none.
  [[nodiscard]] const std::string& wrench() const { return wrench_; }
  void take_wrench(const std::string& slug);

  // The workshop as it was read last; none open: nullptr.
  [[nodiscard]] const specdb::Workshop* workshop() const { return workshop_.get(); }
  [[nodiscard]] const std::filesystem::path& workshop_path() const { return path_; }
  [[nodiscard]] bool is_invented() const;
  // Shows what was read from that file; with nullptr none is open.
  void show_workshop(std::shared_ptr<const specdb::Workshop> workshop, const std::filesystem::path& path);

 signals:
  void look_changed();
  void language_changed();
  // Answers must be asked for anew: units, wrench, or what the workshop holds.
  void changed();
  void workshop_changed();

 private:
  void take_up();
  Memory& memory_;
  Today today_;
  std::unique_ptr<specdb::Catalogue> catalogue_;
  Look look_;
  bool imperial_ = false;
  const quantity::Unit* torque_unit_ = nullptr;
  std::string wrench_;
  std::shared_ptr<const specdb::Workshop> workshop_;
  std::filesystem::path path_;
};

} // namespace clampwright::desk
