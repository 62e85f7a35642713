// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <string>
#include <vector>

#include "core/quantity/write.hpp"
#include "core/report/document.hpp"
#include "core/tightening/upkeep.hpp"
#include "specdb/question/wrench_register.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// Whether a wrench may be used today: "yes", "no: overdue", "not known: no calibration on record".
[[nodiscard]] std::string use_words(const tightening::Upkeep& upkeep, std::chrono::year_month_day today);

// At how many pulls a day it was used since its last calibration; 0 where nothing was logged.
[[nodiscard]] double pulls_a_day(const tightening::Upkeep& upkeep, std::chrono::year_month_day today);

// The register, a line a wrench.
[[nodiscard]] report::Document wrench_list_report(const std::vector<WrenchRecord>& wrenches,
                                                  std::chrono::year_month_day today, bool invented);

// One wrench, with its log. `title` is what was done, or its name.
[[nodiscard]] report::Document wrench_record_report(const WrenchRecord& wrench, const std::string& title,
                                                    const quantity::DisplayUnits& units,
                                                    std::chrono::year_month_day today, bool invented);

} // namespace clampwright::specdb
