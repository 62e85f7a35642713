// SPDX-License-Identifier: GPL-3.0-or-later
//
// Words as the search index sees them: without accents or capitals, divided at every sign. SQLite itself divides and
// folds them, so that a typed word and a stored one can never be folded differently.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace SQLite {
class Database;
}

namespace clampwright::specdb {

// The index words of a text, in order, such as stand in it twice also twice. Any bytes may stand in it. `database` may
// be any.
[[nodiscard]] std::vector<std::string> index_words_in(const SQLite::Database& database, std::string_view text);

// What was typed between two spaces: "M10x1.25" is the index words "m10x1" and "25".
struct TypedWord {
  std::string text;
  std::vector<std::string> index_words; // one at least
};

// The words of a text; such as have neither letter nor digit are passed over. Any bytes may stand in it.
[[nodiscard]] std::vector<TypedWord> typed_words(const SQLite::Database& database, std::string_view text);

// Every word of the joints' index, each once, in order.
[[nodiscard]] std::vector<std::string> words_of_index(const SQLite::Database& database);

} // namespace clampwright::specdb
