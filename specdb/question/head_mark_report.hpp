// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "core/report/document.hpp"
#include "specdb/question/head_mark.hpp"

namespace clampwright::specdb {

// What a mark stands for, in sentences. `text` is the mark as it was typed.
[[nodiscard]] report::Document head_mark_report(const HeadMarkAnswer& answer, std::string_view text);

// What to do with the answer: "clamp and torque take --class 8.8".
[[nodiscard]] std::string head_mark_advice(const HeadMarkAnswer& answer);

} // namespace clampwright::specdb
