// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include <tl/expected.hpp>

namespace clampwright {

// Why a question could not be answered. The program's exit code follows from it (cli/exit_code.hpp).
enum class Trouble {
  usage,          // an argument is missing, surplus, or two exclude each other
  not_understood, // the text cannot be read, is of the wrong kind, or out of range
  no_such,        // well-formed, but there is no such thread, class, surfaces, joint, file
  internal,       // our own fault
  cannot_create,  // a file cannot be made
  input_output,   // reading or writing failed
  busy,           // another program holds the file
  no_permission,  // the system refuses access
  wrong_file,     // a file that is newer than the program, or not ours
};

// A refusal, as a value. Every field is for the reader: `message` says what was understood and what is wrong,
// `hint` what to write instead, `input` is the offending text as it was given, `field` the option or column it came
// from. `code` is a stable word for programs.
struct Problem {
  Trouble trouble = Trouble::internal;
  std::string code;
  std::string message;
  std::string input;
  std::string hint;
  std::string field;
};

template<class T>
using Result = tl::expected<T, Problem>;

using Refusal = tl::unexpected<Problem>;

// A refusal in one call. `input` is shortened and made fit to print.
[[nodiscard]] Refusal refuse(Trouble trouble, std::string code, std::string message, std::string_view input,
                             std::string hint, std::string field = {});

// For the commonest kind: text that cannot be read.
[[nodiscard]] inline Refusal not_understood(std::string code, std::string message, std::string_view input,
                                            std::string hint, std::string field = {}) {
  return refuse(Trouble::not_understood, std::move(code), std::move(message), input, std::move(hint), std::move(field));
}

// The same problem, named after the option or column whose text it was.
[[nodiscard]] inline Refusal in_field(Problem problem, std::string field) {
  if (problem.field.empty()) problem.field = std::move(field);
  return Refusal(std::move(problem));
}

} // namespace clampwright
