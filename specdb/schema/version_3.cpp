// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/schema/migrations.hpp"

namespace clampwright::specdb {

// What decides whether another screw may go in: how long the one is that belongs there, what it clamps, how deep its
// hole is, whether the place gets wet, and whether the machine is under rules of its own.
const char* const k_version_3 = R"sql(
ALTER TABLE machine ADD COLUMN regulated_by TEXT;

ALTER TABLE joint ADD COLUMN bolt_length TEXT;
ALTER TABLE joint ADD COLUMN grip TEXT;
ALTER TABLE joint ADD COLUMN hole_depth TEXT;
ALTER TABLE joint ADD COLUMN duty TEXT CHECK (duty IN ('dry','wet'));
)sql";

} // namespace clampwright::specdb
