// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "core/thread/limits.hpp"
#include "core/thread/thread.hpp"

namespace clampwright::report {

// "ISO metric", "Unified", "Whitworth", "BA", "British standard cycle".
[[nodiscard]] std::string_view form_words(thread::Form form);

// The dimensions of a thread.
[[nodiscard]] Document thread_report(const thread::Thread& thread, std::optional<quantity::Area> stress_area_table,
                                     const std::optional<thread::Limits>& limits, const std::vector<Source>& sources,
                                     const quantity::DisplayUnits& units);

} // namespace clampwright::report
