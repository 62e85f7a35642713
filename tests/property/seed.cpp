// SPDX-License-Identifier: GPL-3.0-or-later
//
// RapidCheck takes a fresh seed at every run, and a suite that gates a change must not fail by chance. So the seed is
// fixed unless RC_PARAMS says otherwise: RC_PARAMS="max_success=100000" looks further, with a seed that is printed.
#include <cstdlib>

namespace {

[[maybe_unused]] const int k_seeded = setenv("RC_PARAMS", "seed=2230 max_success=1000", 0);

} // namespace
