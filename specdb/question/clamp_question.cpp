// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/clamp_question.hpp"

#include "core/quantity/read.hpp"
#include "core/text/plain_text.hpp"
#include "core/tightening/clamp.hpp"
#include "core/tightening/wanted.hpp"
#include "specdb/question/any_pitch.hpp"

namespace clampwright::specdb {

namespace {

// What is wanted, and the entry that said so.
struct ReadWanted {
  tightening::Wanted wanted;
  const char* field;
  std::string input;
};

Result<ReadWanted> read_wanted(const TorqueQuestion& question) {
  const auto& [fastener, preload, proof, yield] = question;
  const int given = (preload ? 1 : 0) + (proof ? 1 : 0) + (yield ? 1 : 0);
  if (given != 1)
    return refuse(Trouble::usage, given == 0 ? "missing" : "surplus",
                  given == 0 ? "what the torque is for is missing" : "the torque can be for one thing only", {},
                  "give one of --preload 15kN, --proof-fraction 75% or --yield-fraction 90%");
  ReadWanted out{{},
                 preload ? "--preload"
                 : proof ? "--proof-fraction"
                         : "--yield-fraction",
                 *(preload ? preload
                   : proof ? proof
                           : yield)};
  if (preload) {
    const auto force = quantity::read_force(*preload);
    if (!force) return in_field(force.error(), out.field);
    out.wanted.preload = *force;
    return out;
  }
  const auto share = quantity::read_share(out.input);
  if (!share) return in_field(share.error(), out.field);
  out.wanted.aim = proof ? tightening::Aim::proof_share : tightening::Aim::yield_share;
  out.wanted.share = *share;
  return out;
}

} // namespace

Result<ClampReply> answer_clamp(const Catalogue& catalogue, const ClampQuestion& question) {
  if (!question.torque)
    return refuse(Trouble::usage, "missing", "--torque is missing", {},
                  "write clampwright clamp M10 --class 8.8 --torque 45Nm --surfaces oiled", "--torque");
  const auto torque = quantity::read_quantity(*question.torque, quantity::Kind::torque);
  if (!torque) return in_field(torque.error(), "--torque");
  auto resolved = resolve(catalogue, question.fastener);
  if (!resolved) return with_any_pitch(catalogue, question.fastener.thread, resolved.error());
  resolved->asked.mass_as_force = resolved->asked.mass_as_force || torque->mass_as_force;
  auto answer = tightening::clamp(resolved->asked, quantity::newton_metres(torque->si()), resolved->accuracy);
  if (!answer) return Refusal(answer.error());
  return ClampReply{std::move(resolved->thread), std::move(*answer)};
}

Result<TorqueReply> answer_torque(const Catalogue& catalogue, const TorqueQuestion& question) {
  const auto wanted = read_wanted(question);
  if (!wanted) return Refusal(wanted.error());
  auto resolved = resolve(catalogue, question.fastener);
  if (!resolved) return with_any_pitch(catalogue, question.fastener.thread, resolved.error());
  auto answer = tightening::torque_for(resolved->asked, wanted->wanted, resolved->accuracy);
  if (answer) return TorqueReply{std::move(resolved->thread), std::move(*answer)};
  Problem problem = answer.error();
  if (problem.code == "out-of-range" && problem.field.empty() && problem.input.empty()) {
    problem.field = wanted->field;
    problem.input = text::quotable(wanted->input);
  }
  return Refusal(std::move(problem));
}

} // namespace clampwright::specdb
