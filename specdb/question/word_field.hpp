// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// A field of the words that are said of a record, and the option by which a person says it.
template<class Words>
struct WordField {
  MaybeText Words::*text;
  const char* option;
};

} // namespace clampwright::specdb
