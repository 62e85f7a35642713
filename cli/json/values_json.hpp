// SPDX-License-Identifier: GPL-3.0-or-later
//
// Values as JSON: always metric, unrounded, the unit in the key. Unknown is null.
#pragma once

#include <optional>
#include <vector>

#include "cli/command.hpp"
#include "core/quantity/band.hpp"
#include "core/quantity/quantity.hpp"
#include "core/thread/limits.hpp"
#include "core/thread/thread.hpp"

namespace clampwright::cli {

[[nodiscard]] Json number_or_null(const std::optional<double>& value);
[[nodiscard]] Json text_or_null(const std::optional<std::string>& value);
// An entry as it was typed, for an answer's `input`; nothing where it was not said.
void put_text(Json& object, const char* key, const std::optional<std::string>& value);
[[nodiscard]] Json band_json(const quantity::Band<double>& band);
[[nodiscard]] Json source_json(const Source& source);
[[nodiscard]] Json sources_json(const std::vector<Source>& sources);
[[nodiscard]] Json working_json(const Working& working);
[[nodiscard]] Json findings_json(const finding::Findings& findings);

// The object of the contract's section 3, `thread`.
[[nodiscard]] Json thread_json(const thread::Thread& thread, std::optional<quantity::Area> stress_area_table,
                               const std::optional<thread::Limits>& limits);

} // namespace clampwright::cli
