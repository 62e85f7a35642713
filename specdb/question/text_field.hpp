// SPDX-License-Identifier: GPL-3.0-or-later
//
// The entries of a question by the names of the command line's options, so that every program fills a question in by
// the same names.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace clampwright::specdb {

template<class Question>
struct TextField {
  std::string_view option; // "--torque"
  std::optional<std::string> Question::*text;
};

} // namespace clampwright::specdb
