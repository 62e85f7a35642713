// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/models/workshop_opener.hpp"

#include <QTimer>

#include "gui/look/utf8.hpp"
#include "gui/models/away.hpp"
#include "specdb/demo/demo_workshop.hpp"
#include "specdb/question/kept_file.hpp"

namespace clampwright::desk {

namespace {

// Four times a second: a change is seen within a second, also where reading it takes half of that.
constexpr int k_look_ms = 250;

struct Opened {
  std::shared_ptr<const specdb::Workshop> workshop;
  std::shared_ptr<specdb::WorkshopWatch> watch;
};

// Nothing is ever written over another file, whatever the window said that asked for its name.
Result<void> expect_free(const std::filesystem::path& path) {
  std::error_code ignored;
  if (std::filesystem::symlink_status(path, ignored).type() == std::filesystem::file_type::not_found) return {};
  return refuse(Trouble::cannot_create, "exists", "a file of that name is there already, and was left as it is",
                path.string(), "choose another name, or open that file");
}

} // namespace

WorkshopOpener::WorkshopOpener(Bench& bench, QObject* parent)
    : QObject(parent), bench_(bench), timer_(new QTimer(this)) {
  timer_->setInterval(k_look_ms);
  connect(timer_, &QTimer::timeout, this, &WorkshopOpener::look);
}

WorkshopOpener::~WorkshopOpener() = default;

void WorkshopOpener::open(const std::filesystem::path& path) { start(path, {}, false); }

void WorkshopOpener::make_new(const std::filesystem::path& path) {
  const auto make = [path]() -> Result<void> {
    if (auto is_free = expect_free(path); !is_free) return is_free;
    const auto made = specdb::change_or_make(path, [](SQLite::Database&) -> Result<void> { return {}; });
    if (!made) return Refusal(made.error());
    return {};
  };
  start(path, make, false);
}

void WorkshopOpener::make_demo(const std::filesystem::path& path) {
  const auto make = [path, today = bench_.place().today]() -> Result<void> {
    if (auto is_free = expect_free(path); !is_free) return is_free;
    return specdb::make_demo_workshop(path, today);
  };
  start(path, make, false);
}

void WorkshopOpener::read_again() {
  if (!bench_.workshop_path().empty()) start(bench_.workshop_path(), {}, true);
}

void WorkshopOpener::look() {
  if (!busy_ && watch_ && watch_->look() != specdb::WorkshopChange::none) read_again();
}

std::optional<std::filesystem::path> first_workshop(const QStringList& named, const Memory& memory,
                                                    const std::optional<std::filesystem::path>& usual) {
  if (!named.isEmpty()) return to_utf8(named.constFirst());
  if (const QString last = memory.text(Kept::workshop); !last.isEmpty()) return to_utf8(last);
  std::error_code ignored;
  if (usual && std::filesystem::exists(*usual, ignored)) return usual;
  return std::nullopt;
}

void WorkshopOpener::start(const std::filesystem::path& given, const Work& first, bool again) {
  // What is remembered must be found from any folder.
  std::error_code none;
  const std::filesystem::path whole = std::filesystem::absolute(given, none);
  const std::filesystem::path path = none ? given : whole;
  const int number = ++latest_;
  busy_ = true;
  const auto read = [path, first, watch = again ? watch_ : nullptr]() -> Result<Opened> {
    if (first)
      if (const auto done = first(); !done) return Refusal(done.error());
    // Before the file is read: what changes in between is then seen.
    Opened opened{nullptr, watch ? watch : std::make_shared<specdb::WorkshopWatch>(path)};
    auto workshop = specdb::Workshop::open(path);
    if (!workshop) return Refusal(workshop.error());
    opened.workshop = std::make_shared<const specdb::Workshop>(std::move(*workshop));
    return opened;
  };
  away<Opened>(this, read, [this, number, path, again](Result<Opened> result) {
    if (number != latest_) return;
    busy_ = false;
    if (!result) {
      if (again)
        emit lost(result.error());
      else {
        if (result.error().code == "no-workshop") not_there_ = path;
        emit refused(result.error());
      }
      return;
    }
    not_there_.reset();
    watch_ = result->watch;
    timer_->start();
    bench_.memory().keep(Kept::workshop, from_utf8(path.string()));
    bench_.show_workshop(result->workshop, path);
    emit opened();
  });
}

} // namespace clampwright::desk
