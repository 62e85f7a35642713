// SPDX-License-Identifier: GPL-3.0-or-later
//
// A page laid out as text with drawings in it. The screen and the printer show the same text document; only its inks
// and sizes differ.
#pragma once

#include <memory>
#include <vector>

#include <QTextDocument>
#include <QTextFormat>

#include "gui/look/look.hpp"
#include "gui/text/page_content.hpp"

namespace clampwright::desk {

// What is unfolded.
struct PageState {
  bool working = false;
  bool sources = false;
  int width = 0; // by which large figures that do not fit side by side stand below each other; 0: all stand in one row
};

// How many of the figures stand in each row on a page of that width.
[[nodiscard]] std::vector<int> figures_in_rows(const PageContent& content, const Look& look, int width);

// For links within a page: what to do when one is followed.
inline constexpr const char* k_working_link = "fold:working";
inline constexpr const char* k_sources_link = "fold:sources";

// Marks a paragraph that stands on one page with what follows: a heading, a drawing above its words.
inline constexpr int k_keeps_next = QTextFormat::UserProperty + 2;

// The text document. On paper what is folded is left out, and there are no links. Its drawings shrink to its text
// width.
[[nodiscard]] std::unique_ptr<QTextDocument> page_text(const PageContent& content, const Look& look,
                                                       const PageState& state);

// The document of the page as plain lines in the language spoken, with all its working and sources: to copy.
[[nodiscard]] QString plain_text(const PageContent& content);

} // namespace clampwright::desk
