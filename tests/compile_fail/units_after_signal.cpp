// SPDX-License-Identifier: GPL-3.0-or-later
//
// POSIX headers define macros such as si_value; ours must not trip over them in a file that handles signals.
#include <csignal>

#include "core/quantity/unit.hpp"
#include "core/quantity/write.hpp"
