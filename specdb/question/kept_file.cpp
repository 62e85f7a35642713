// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/kept_file.hpp"

#include <optional>

#include "specdb/catalogue/catalogue.hpp"
#include "specdb/sql/query.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace clampwright::specdb {

namespace {

// Leads a refusal of the work out of Workshop::create, so that no file is left.
struct Refused {
  Problem problem;
};

bool is_there(const std::filesystem::path& file) {
  std::error_code ignored;
  // A link that leads nowhere is there too: the file is not ours to make.
  return std::filesystem::symlink_status(file, ignored).type() != std::filesystem::file_type::not_found;
}

} // namespace

Result<bool> change_or_make(const std::filesystem::path& file,
                            const std::function<Result<void>(SQLite::Database&)>& work) {
  if (is_there(file)) {
    const auto done = Workshop::change(file, work);
    if (!done) return Refusal(done.error());
    return false;
  }
  const std::string data_version = Catalogue().data_version();
  try {
    const auto made = Workshop::create(file, [&](SQLite::Database& database) {
      run(database, "INSERT INTO meta VALUES ('data_version', ?)", data_version);
      if (auto done = work(database); !done) throw Refused{done.error()};
    });
    if (!made) return Refusal(made.error());
  } catch (const Refused& refused) {
    return Refusal(refused.problem);
  }
  return true;
}

} // namespace clampwright::specdb
