// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtGlobal>

#include "gui/records/all_forms.hpp"
#include "specdb/question/source_register.hpp"

namespace clampwright::desk {

namespace {

const BlankKind& known_blank() {
  static const auto kind =
      choice_blank({{"printed", QT_TRANSLATE_NOOP("Offers", "the page itself was read")},
                    {"second-hand", QT_TRANSLATE_NOOP("Offers", "quoted by somebody else")},
                    {"memory", QT_TRANSLATE_NOOP("Offers", "from memory")},
                    {"computed", QT_TRANSLATE_NOOP("Offers", "computed")},
                    {"common-practice", QT_TRANSLATE_NOOP("Offers", "common practice of the trade")}});
  return *kind;
}

Result<RecordKey> keep(const specdb::Catalogue&, const Keeping& keeping) {
  specdb::SourceWords words;
  words.short_name = said(keeping.said, "--short-name");
  words.title = said(keeping.said, "--title");
  words.edition = said(keeping.said, "--edition");
  words.known = said(keeping.said, "--known");
  const auto kept = specdb::add_source(keeping.file, words);
  if (!kept) return Refusal(kept.error());
  return RecordKey{{}, kept->source.slug};
}

} // namespace

RecordForm document_form() {
  return {.id = "document",
          .name = QT_TRANSLATE_NOOP("Records", "Document"),
          .new_one = QT_TRANSLATE_NOOP("Records", "New document"),
          .groups = {{QT_TRANSLATE_NOOP("Records", "A document from which figures are taken"),
                      {{"--title", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "title"), "Marrowfen workshop sheets",
                        true},
                       {"--edition", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "edition, or undated"), "3rd print",
                        true},
                       {"--known", &known_blank(), QT_TRANSLATE_NOOP("Sentences", "how it is known"), "printed", true},
                       {"--short-name", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "short name"), "MM3"}}}},
          .revised = false,
          .recorded = [](const Place&, const RecordKey&) { return Words(); },
          .events = {},
          .history = [](const Place&, const RecordKey&) { return PageContent(); },
          .keep = &keep};
}

} // namespace clampwright::desk
