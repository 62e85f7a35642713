// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/problem/problem.hpp"

namespace clampwright::cli {

// What the program ends with: sysexits, and 1 where an answer was given but a check failed. No other.
enum class ExitCode {
  answered = 0,
  check_failed = 1,
  usage = 64,
  data_error = 65,
  no_such = 66,
  internal = 70,
  cannot_create = 73,
  input_output = 74,
  busy = 75,
  no_permission = 77,
  wrong_file = 78,
};

[[nodiscard]] constexpr ExitCode exit_code_of(Trouble trouble) {
  switch (trouble) {
  case Trouble::usage:
    return ExitCode::usage;
  case Trouble::not_understood:
    return ExitCode::data_error;
  case Trouble::no_such:
    return ExitCode::no_such;
  case Trouble::internal:
    return ExitCode::internal;
  case Trouble::cannot_create:
    return ExitCode::cannot_create;
  case Trouble::input_output:
    return ExitCode::input_output;
  case Trouble::busy:
    return ExitCode::busy;
  case Trouble::no_permission:
    return ExitCode::no_permission;
  case Trouble::wrong_file:
    return ExitCode::wrong_file;
  }
  return ExitCode::internal;
}

} // namespace clampwright::cli
