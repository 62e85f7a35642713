// SPDX-License-Identifier: GPL-3.0-or-later
//
// The language of the desk. Its own strings come through Qt's tr(), the words of answers come from core in English with
// numbers and names in them; both are put into another language by one table of sentences (i18n/de.tsv): English, tab,
// translation, with %1, %2 … for what may stand there. What stands there is put into words in its turn, and a text that
// is not in the table as a whole is taken apart at its sentences, then at semicolons, colons and commas.
#pragma once

#include <string_view>

#include <QString>
#include <QStringList>

namespace clampwright::desk {

// The languages there are, English first: "en", "de".
[[nodiscard]] QStringList languages();

// The lines of a language's table as they stand in the program; for tests and translators.
[[nodiscard]] QString table_text(const QString& language);

// From now on answers and the desk's own strings are in that language; in English where there is none of that name.
void speak(const QString& language);
[[nodiscard]] QString spoken();

// UTF-8 text of an answer as it is to be read. What no line of the table fits stays English: a wrong word is worse.
[[nodiscard]] QString worded(std::string_view english);

// The parts of texts that no line fitted since the language was chosen, sorted: what a translator has still to do.
[[nodiscard]] QStringList left_in_english();

} // namespace clampwright::desk
