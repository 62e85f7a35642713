// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/workshop/index_words.hpp"

#include <array>

#include <sqlite3.h>

#include "specdb/sql/query.hpp"
#include "specdb/workshop/fts5.hpp"

namespace clampwright::specdb {

namespace {

// Divides and folds as `joint_search` of the schema does.
class Tokenizer {
 public:
  explicit Tokenizer(const SQLite::Database& database) {
    fts5_api* const api = fts5_of(database);
    void* context = nullptr;
    std::array arguments{"remove_diacritics", "2"};
    if (api == nullptr || api->xFindTokenizer(api, "unicode61", &context, &methods_) != SQLITE_OK ||
        methods_.xCreate(context, arguments.data(), arguments.size(), &tokenizer_) != SQLITE_OK)
      throw DatabaseError("words cannot be divided as the search index does it", Trouble::internal);
  }
  ~Tokenizer() { methods_.xDelete(tokenizer_); }
  Tokenizer(const Tokenizer&) = delete;
  Tokenizer& operator=(const Tokenizer&) = delete;

  [[nodiscard]] std::vector<std::string> words_in(std::string_view text) const {
    std::vector<std::string> words;
    const int done = methods_.xTokenize(tokenizer_, &words, FTS5_TOKENIZE_DOCUMENT, text.data(),
                                        static_cast<int>(text.size()), take_word);
    if (done != SQLITE_OK) throw DatabaseError("a text cannot be divided into words", trouble_of(done));
    return words;
  }

 private:
  static int take_word(void* words, int, const char* word, int length, int, int) {
    static_cast<std::vector<std::string>*>(words)->emplace_back(word, static_cast<std::size_t>(length));
    return SQLITE_OK;
  }
  fts5_tokenizer methods_{};
  Fts5Tokenizer* tokenizer_ = nullptr;
};

std::vector<std::string> parts_between_spaces(std::string_view text) {
  std::vector<std::string> parts;
  while (!text.empty()) {
    const std::size_t space = text.find(' ');
    if (space != 0) parts.emplace_back(text.substr(0, space));
    text.remove_prefix(space == std::string_view::npos ? text.size() : space + 1);
  }
  return parts;
}

} // namespace

std::vector<std::string> index_words_in(const SQLite::Database& database, std::string_view text) {
  return Tokenizer(database).words_in(text);
}

std::vector<TypedWord> typed_words(const SQLite::Database& database, std::string_view text) {
  const Tokenizer tokenizer(database);
  std::vector<TypedWord> words;
  for (std::string& part : parts_between_spaces(text))
    if (auto index_words = tokenizer.words_in(part); !index_words.empty())
      words.push_back({std::move(part), std::move(index_words)});
  return words;
}

std::vector<std::string> words_of_index(const SQLite::Database& database) {
  std::vector<std::string> words;
  Query query(database, "SELECT word FROM search_word ORDER BY word");
  while (query.next())
    words.push_back(query.text(0));
  return words;
}

} // namespace clampwright::specdb
