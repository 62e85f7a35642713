// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/locking/cure.hpp"
#include "core/problem/problem.hpp"
#include "core/report/document.hpp"
#include "specdb/catalogue/catalogue.hpp"
#include "specdb/question/text_field.hpp"

namespace clampwright::specdb {

// What a person asks about a locking compound, as text.
struct CureQuestion {
  std::optional<std::string> lock;
  std::optional<std::string> temperature; // of the part
  std::vector<std::string> surfaces;      // what the compound is on; not stated if empty
  std::optional<std::string> fitted_at;   // "2026-11-26 09:30"
};

// Without the surfaces, which may be several.
inline constexpr std::array k_cure_fields{
    TextField<CureQuestion>{"--lock", &CureQuestion::lock},
    TextField<CureQuestion>{"--temperature", &CureQuestion::temperature},
    TextField<CureQuestion>{"--fitted-at", &CureQuestion::fitted_at},
};

struct CureReply {
  locking::CureAnswer answer;
  std::vector<Source> sources;
};

// Fails with usage for what is missing and for a lock that is no compound, with not-understood and no-such for the
// texts.
[[nodiscard]] Result<CureReply> answer_cure(const Catalogue& catalogue, const CureQuestion& question);

[[nodiscard]] report::Document cure_document(const CureReply& reply);

// "45 min", "6 h", "72 h (3 days)"
[[nodiscard]] std::string duration_words(double minutes);

} // namespace clampwright::specdb
