// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>

namespace SQLite {
class Database;
}

namespace clampwright::specdb {

enum class WorkshopChange {
  none,
  written,  // somebody committed a change, in this process or another
  replaced, // another file has that name now
  appeared, // there was none, and there is one now
  gone,     // there is none any more
};

// Says whether a workshop file is still what it was when it was last asked; cheap enough to be asked several times a
// second. Make it before the file is read: what changes in between is then seen.
//
// It keeps a connection of its own, because only a connection knows of every commit: the clock of the file system does
// not tell two of them apart that lie close together. Between two questions no transaction is open, so nobody is kept
// from writing; in write-ahead mode the log and its index lie beside the file while the watch lives. It never writes
// the file. Where no such connection can be had (in a place that cannot be written, beside a journal that was left
// there, of a file that is no database) size and time of the file must do.
//
// Nothing it meets is an error: a file that cannot be looked at is one that is not there, and one that is busy has
// changed, or not, the next time. Where it cannot know, it says `written`; so a change may be told twice, and none is
// kept back. Not for use by two threads at once.
class WorkshopWatch {
 public:
  explicit WorkshopWatch(std::filesystem::path path);
  ~WorkshopWatch();
  WorkshopWatch(WorkshopWatch&&) noexcept;
  WorkshopWatch& operator=(WorkshopWatch&&) noexcept;

  // What happened since the last call, or since it was made; the gravest of several.
  [[nodiscard]] WorkshopChange look();

  // As of the last look.
  [[nodiscard]] bool is_there() const { return state_.has_value(); }

 private:
  // What the file system knows of it.
  struct State {
    std::uint64_t device;
    std::uint64_t number; // of the file on that device
    std::int64_t size;
    std::int64_t written_ns;
  };
  [[nodiscard]] std::optional<State> state_now() const;
  void connect();
  void disconnect();
  [[nodiscard]] bool somebody_committed();

  std::filesystem::path path_;
  std::optional<State> state_;
  std::unique_ptr<SQLite::Database> connection_;
  std::optional<long long> commits_; // counts up with each of somebody else; says nothing by itself
};

} // namespace clampwright::specdb
