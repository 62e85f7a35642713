// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/any_pitch.hpp"

#include "specdb/catalogue/threads.hpp"

namespace clampwright::specdb {

Refusal with_any_pitch(const Catalogue& catalogue, std::string_view thread, Problem problem) {
  if (problem.code == "no-such-thread" && find_thread_of_any_pitch(catalogue, thread))
    problem.hint += "; --any-pitch takes it as it stands";
  return Refusal(std::move(problem));
}

} // namespace clampwright::specdb
