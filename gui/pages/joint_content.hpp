// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "gui/sentences/blank.hpp"
#include "gui/sentences/sentence.hpp"
#include "gui/text/page_content.hpp"
#include "specdb/question/joint_answer.hpp"

namespace clampwright::desk {

// A joint as a page: the figure as printed and the wrench's setting large, which way to turn drawn, then what the
// command line says of it. `invented` marks a demo workshop.
[[nodiscard]] PageContent joint_content(const specdb::JointAnswer& answer, const Place& place, bool invented);

// What a joint's record fills into a calculator, so that nothing known is asked for twice. Only what that sentence has
// blanks for; empty where it has none.
[[nodiscard]] Words words_for(const Sentence& sentence, const specdb::JointAnswer& answer);

} // namespace clampwright::desk
