// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/joint_worth.hpp"

#include <array>

#include <sqlite3.h>

#include <SQLiteCpp/Database.h>

#include "specdb/sql/error.hpp"
#include "specdb/workshop/fts5.hpp"

namespace clampwright::specdb {

namespace {

// A joint's own name weighs most, then its other words, its assembly and its thread, then its machine: in the order of
// the columns of joint_search.
constexpr std::array k_weights{8.0, 4.0, 1.0, 4.0, 6.0};

// The usual constants of BM25 (Robertson and others, 1994), as in SQLite's own bm25(): how soon more of the same word
// counts no more, and how much a short text is worth.
constexpr double k_same_word = 1.2;
constexpr double k_length = 0.75;

// BM25 without its weight for rare words: that one wants every joint counted that has the word, at every letter that is
// typed, and says little where a joint must have all the words anyway.
void joint_worth(const Fts5ExtensionApi* api, Fts5Context* search, sqlite3_context* answer, int, sqlite3_value**) {
  int places = 0;
  int length = 0;
  sqlite3_int64 joints = 0;
  sqlite3_int64 words = 0;
  int done = api->xInstCount(search, &places);
  if (done == SQLITE_OK) done = api->xColumnSize(search, -1, &length);
  if (done == SQLITE_OK) done = api->xRowCount(search, &joints);
  if (done == SQLITE_OK) done = api->xColumnTotalSize(search, -1, &words);
  const double usual = words > 0 ? static_cast<double>(words) / static_cast<double>(joints) : 1.0;
  const double damped = k_same_word * (1.0 - k_length + k_length * length / usual);
  double worth = 0;
  for (int typed = 0; typed < api->xPhraseCount(search); ++typed) {
    double found = 0;
    for (int place = 0; place < places && done == SQLITE_OK; ++place) {
      int phrase = 0;
      int column = 0;
      int offset = 0;
      done = api->xInst(search, place, &phrase, &column, &offset);
      if (done == SQLITE_OK && phrase == typed) found += k_weights.at(static_cast<std::size_t>(column));
    }
    worth -= found * (k_same_word + 1.0) / (found + damped);
  }
  if (done == SQLITE_OK)
    sqlite3_result_double(answer, worth);
  else
    sqlite3_result_error_code(answer, done);
}

} // namespace

void offer_joint_worth(const SQLite::Database& database) {
  fts5_api* const api = fts5_of(database);
  if (api == nullptr || api->xCreateFunction(api, "joint_worth", nullptr, joint_worth, nullptr) != SQLITE_OK)
    throw DatabaseError("the search cannot weigh joints", Trouble::internal);
}

} // namespace clampwright::specdb
