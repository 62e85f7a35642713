// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "core/report/document.hpp"

namespace clampwright::report {

// The document as one page for a browser or a printer: nothing is fetched, nothing runs, every text is escaped, black
// on white is enough. A table's headings, what it rests on and its cautions come again on every sheet of paper that it
// runs over. Well-formed as XML too.
[[nodiscard]] std::string write_html(const Document& document, std::string_view language = "en");

// Text as it may stand between tags or in a quoted attribute; control characters become '?'.
[[nodiscard]] std::string html_escaped(std::string_view text);

} // namespace clampwright::report
