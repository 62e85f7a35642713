// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "gui/sentences/blank.hpp"
#include "gui/text/page_content.hpp"

namespace clampwright::desk {

// The rows of a reference table in which all of the words (with blanks between them) occur. Fails with no-such for a
// table that there is not.
[[nodiscard]] Result<PageContent> table_content(const Place& place, const std::string& table, const std::string& words);

// The usual cautions, the keys, what the program is made of and under which licences.
[[nodiscard]] PageContent about_content(const Place& place);

} // namespace clampwright::desk
