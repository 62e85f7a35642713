// SPDX-License-Identifier: GPL-3.0-or-later
//
// What may lie where the workshop file should be.
#pragma once

#include <algorithm>
#include <filesystem>
#include <map>
#include <string>
#include <vector>

#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>

#include <SQLiteCpp/Database.h>
#include <gtest/gtest.h>

#include "specdb/demo/demo_workshop.hpp"
#include "tests/cli/run_cli.hpp"
#include "tests/specdb/scratch.hpp"

namespace clampwright::cli::testing_support {

namespace fs = std::filesystem;

inline void make_demo(const fs::path& path) { ASSERT_TRUE(specdb::make_demo_workshop(path, k_demo_day).has_value()); }

// The bytes of the demo, made once.
inline const std::string& demo_bytes() {
  static const std::string bytes = [] {
    const test::Scratch scratch;
    make_demo(scratch / "w");
    return test::bytes_of(scratch / "w");
  }();
  return bytes;
}

inline SQLite::Database written(const fs::path& path) {
  return {path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
}

inline void make_empty(const fs::path& path) { test::write_bytes(path, ""); }
inline void make_beginning(const fs::path& path) { test::write_bytes(path, demo_bytes().substr(0, 50)); }
// Sixteen pages of SQLite's default size.
inline void make_half(const fs::path& path) { test::write_bytes(path, demo_bytes().substr(0, std::size_t{16} * 4096)); }
inline void make_cut(const fs::path& path) { test::write_bytes(path, demo_bytes().substr(0, demo_bytes().size() - 1)); }
inline void make_text(const fs::path& path) { test::write_bytes(path, "Dear Sir, the nuts are loose.\n"); }
inline void make_zeros(const fs::path& path) { test::write_bytes(path, std::string(8192, '\0')); }
inline void make_folder(const fs::path& path) { fs::create_directory(path); }
inline void make_fifo(const fs::path& path) { ASSERT_EQ(::mkfifo(path.c_str(), 0600), 0); }
inline void make_device(const fs::path& path) { fs::create_symlink("/dev/null", path); }
inline void make_ring(const fs::path& path) { fs::create_symlink(path, path); }
inline void make_nothing(const fs::path&) {}

inline void make_foreign(const fs::path& path) {
  written(path).exec("CREATE TABLE notes (text); INSERT INTO notes VALUES ('milk')");
}

inline void make_newer(const fs::path& path) {
  make_demo(path);
  written(path).exec("PRAGMA journal_mode = DELETE; PRAGMA user_version = 99");
}

inline void make_unversioned(const fs::path& path) {
  make_demo(path);
  written(path).exec("PRAGMA journal_mode = DELETE; PRAGMA user_version = 0");
}

inline void make_without_table(const fs::path& path) {
  make_demo(path);
  written(path).exec("PRAGMA journal_mode = DELETE; PRAGMA foreign_keys = OFF; DROP TABLE joint");
}

inline void make_socket(const fs::path& path) {
  sockaddr_un address{};
  address.sun_family = AF_UNIX;
  const std::string name = path.string();
  ASSERT_LT(name.size(), sizeof address.sun_path);
  std::copy(name.begin(), name.end(), address.sun_path);
  const int socket = ::socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
  // NOLINTNEXTLINE(cppcoreguidelines-pro-type-reinterpret-cast): how bind is called
  ASSERT_EQ(::bind(socket, reinterpret_cast<const sockaddr*>(&address), sizeof address), 0);
  ::close(socket);
}

// What lies in a folder, with the bytes of plain files and the kind of the rest.
inline std::map<std::string, std::string> contents(const fs::path& folder) {
  std::map<std::string, std::string> out;
  for (const auto& entry : fs::directory_iterator(folder)) {
    const bool plain = fs::is_regular_file(entry.symlink_status());
    out[entry.path().filename().string()] =
        plain ? test::bytes_of(entry.path()) : (fs::is_directory(entry.symlink_status()) ? "a folder" : "no file");
  }
  return out;
}

// A change that is committed, but stands in the log alone: the program that made it died. `to` gets file and log.
inline void make_with_log(const fs::path& to) {
  const test::Scratch scratch;
  make_demo(scratch / "w");
  SQLite::Database writer(written(scratch / "w"));
  writer.exec("UPDATE joint SET slug = 'pump/renamed' WHERE slug = 'pump/clutch-hub'");
  fs::copy(scratch / "w", to);
  fs::copy(scratch / "w-wal", to.string() + "-wal");
}

} // namespace clampwright::cli::testing_support
