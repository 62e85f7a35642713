// SPDX-License-Identifier: GPL-3.0-or-later
//
// Locks, compounds that cure, running torques, and a torque on other surfaces than it is for.
#include <QCoreApplication>

#include "gui/look/utf8.hpp"
#include "gui/sentences/all_sentences.hpp"
#include "gui/sentences/case_blanks.hpp"
#include "gui/sentences/reply_parts.hpp"
#include "gui/text/wording.hpp"
#include "specdb/question/cure_question.hpp"
#include "specdb/question/lock_question.hpp"
#include "specdb/question/running_question.hpp"
#include "specdb/question/surfaces_question.hpp"

namespace clampwright::desk {

namespace {

using quantity::Kind;

QString tr(const char* english) { return QCoreApplication::translate("Sentences", english); }

QString together_words(specdb::Together verdict) {
  switch (verdict) {
  case specdb::Together::ok:
    return tr("they go together");
  case specdb::Together::mind:
    return tr("they go together with care");
  case specdb::Together::no:
    break;
  }
  return tr("they do not go together");
}

QString check_words(specdb::CheckByTurning check) {
  switch (check) {
  case specdb::CheckByTurning::yes:
    return tr("yes");
  case specdb::CheckByTurning::with_lock_off:
    return tr("with the lock off");
  case specdb::CheckByTurning::no:
    break;
  }
  return tr("no");
}

Result<Reply> answer_lock_sentence(const Words& words, const Place& place) {
  specdb::LockQuestion question;
  put_words(question, words, specdb::k_lock_fields);
  question.lock = said(words, "NAME").value_or("");
  question.with = several(words, "--with");
  question.surfaces = several(words, "--surface");
  const auto told = specdb::answer_lock(*place.catalogue, question);
  if (!told) return beside(told.error(), "NAME");
  Reply reply;
  if (!question.with.empty()) reply.page.figures.push_back({together_words(told->verdict), tr("in one joint")});
  reply.page.figures.push_back(
      {check_words(specdb::check_by_turning(told->lock)), tr("may it be checked by turning it on")});
  if (told->bears_temperature)
    reply.page.figures.push_back({*told->bears_temperature ? tr("yes") : tr("no"), tr("does it bear that heat")});
  if (told->lock.single_use) reply.page.flags.push_back(tr("A new one each time"));
  add_flags(reply.page, told->findings, place);
  reply.page.document = specdb::lock_document(*told, !question.with.empty());
  return reply;
}

Result<Reply> answer_cure_sentence(const Words& words, const Place& place) {
  specdb::CureQuestion question;
  put_words(question, words, specdb::k_cure_fields);
  question.surfaces = several(words, "--surface");
  const auto told = specdb::answer_cure(*place.catalogue, question);
  if (!told) return Refusal(told.error());
  const locking::CureAnswer& answer = told->answer;
  Reply reply;
  if (answer.full_at)
    reply.page.figures.push_back({from_utf8(calendar::write_moment(*answer.full_at)), tr("it is ready, not before")});
  if (answer.full_min)
    reply.page.figures.push_back({from_utf8(specdb::duration_words(*answer.full_min)), tr("to full strength")});
  else
    reply.page.figures.push_back({tr("not known"), tr("when it has full strength")});
  add_flags(reply.page, answer.findings, place);
  reply.page.document = specdb::cure_document(*told);
  return reply;
}

QString reuse_words(locking::Reuse reuse) {
  switch (reuse) {
  case locking::Reuse::ok:
    return tr("yes");
  case locking::Reuse::drags_too_little:
  case locking::Reuse::drags_too_much:
    return tr("no");
  case locking::Reuse::tables_differ:
    return tr("the tables differ");
  case locking::Reuse::not_known:
    break;
  }
  return tr("not known");
}

Result<Reply> answer_running_sentence(const Words& words, const Place& place) {
  specdb::RunningQuestion question;
  put_words(question, words, specdb::k_running_fields);
  question.thread = said(words, "THREAD").value_or("");
  question.insert = ticked(words, "--insert");
  const auto told = specdb::answer_running(*place.catalogue, question);
  if (!told) return beside(told.error(), "THREAD");
  Reply reply;
  if (told->reuse) reply.page.figures.push_back({reuse_words(*told->reuse), tr("may it be used again")});
  for (const locking::RuleAnswer& one : told->adding)
    reply.page.figures.push_back({from_utf8(quantity::write(one.set, place.units, 4)),
                                  tr("to set, by the rule: %1").arg(worded(one.rule.name))});
  if (reply.page.figures.empty())
    reply.page.figures.push_back({QString::number(told->limits.size()), tr("lines of the tables for this size")});
  add_flags(reply.page, told->findings, place);
  reply.page.document = specdb::running_document(*told, place.units);
  return reply;
}

Result<Reply> answer_surfaces_sentence(const Words& words, const Place& place) {
  specdb::SurfacesQuestion question;
  put_words(question, words, specdb::k_surfaces_fields);
  question.locks = several(words, "--lock");
  question.taper = ticked(words, "--taper");
  const auto told = specdb::answer_surfaces(*place.catalogue, question);
  if (!told) return beside(told.error(), "--thread");
  Reply reply;
  if (told->corrected && told->differs) {
    std::vector<quantity::Torque> ways{*told->corrected};
    if (told->by_thread_friction) ways.push_back(*told->by_thread_friction);
    for (const specdb::RivalReduction& published : told->published)
      ways.push_back(published.torque);
    if (const QString all = torque_range(ways, place); all != shown(*told->corrected, place))
      reply.page.figures.push_back({all, tr("on these surfaces, by rules that differ; none is the maker's")});
  }
  if (told->corrected)
    reply.page.figures.push_back({shown(*told->corrected, place), told->differs
                                                                      ? tr("on these surfaces, corrected once")
                                                                      : tr("as it is: it is for these surfaces")});
  else
    reply.page.figures.push_back({tr("not corrected"), worded(told->no_correction_because)});
  const auto& clamp = told->as_corrected ? told->as_corrected : told->differs ? told->uncorrected : told->as_stated;
  if (clamp) reply.page.figures.push_back(clamp_figure(tightening::leading_preload(*clamp), place));
  add_flags(reply.page, told->findings, place);
  reply.page.document = specdb::surfaces_document(*told, place.units);
  return reply;
}

Blank surface_blank() {
  return {"--surface", &cure_surface_blank(), QT_TRANSLATE_NOOP("Sentences", "what the compound is on"), "steel"};
}

} // namespace

std::vector<Sentence> locking_sentences() {
  const BlankKind& torque = quantity_blank(Kind::torque);
  const BlankKind& temperature = quantity_blank(Kind::temperature);
  return {
      {.id = "surfaces",
       .command = "surfaces",
       .name = QT_TRANSLATE_NOOP("Sentences", "A torque on other surfaces"),
       .also = QT_TRANSLATE_NOOP("Sentences", "dry oiled lubricated correct reduce wet friction"),
       .text = QT_TRANSLATE_NOOP(
           "Sentences", "A torque of {--torque} that is for surfaces {--stated} becomes, on surfaces {--fitted},"),
       .blanks = {{"--torque", &torque, QT_TRANSLATE_NOOP("Sentences", "torque as printed"), "25 N.m", true},
                  {"--stated", &surfaces_blank(), QT_TRANSLATE_NOOP("Sentences", "surfaces that it is for"), "dry",
                   true, false, "--stated-nut-factor"},
                  {"--fitted", &surfaces_blank(), QT_TRANSLATE_NOOP("Sentences", "surfaces on the bench"), "oiled",
                   true, false, "--fitted-nut-factor"},
                  {"--stated-nut-factor", &nut_factor_blank(),
                   QT_TRANSLATE_NOOP("Sentences", "or nut factor K that it is for"), "0.20", false, true},
                  {"--fitted-nut-factor", &nut_factor_blank(),
                   QT_TRANSLATE_NOOP("Sentences", "or nut factor K on the bench"), "0.15", false, true},
                  {"--thread", &thread_blank(), QT_TRANSLATE_NOOP("Sentences", "thread, for the clamp load"), "M10"},
                  case_blank("--class"),
                  {"--running-torque", &torque, QT_TRANSLATE_NOOP("Sentences", "running torque of a locking nut"),
                   "2 N.m"},
                  case_blank("--lock"),
                  case_blank("--kind"),
                  {"--taper", &tick_blank(), QT_TRANSLATE_NOOP("Sentences", "the part sits on a cone"), "yes"},
                  {"--into", &material_blank(), QT_TRANSLATE_NOOP("Sentences", "what it screws into"),
                   "cast-aluminium"}},
       .answer = &answer_surfaces_sentence},
      {.id = "lock",
       .command = "lock",
       .name = QT_TRANSLATE_NOOP("Sentences", "Locks and how they go together"),
       .also = QT_TRANSLATE_NOOP("Sentences", "compound split-pin tab washer locking nut wire heat undo check"),
       .text = QT_TRANSLATE_NOOP("Sentences", "In a joint that is locked by {NAME} and {--with}, on {--thread},"),
       .blanks = {{"NAME", &one_lock_blank(), QT_TRANSLATE_NOOP("Sentences", "lock"), "compound-medium", true},
                  {"--with", &lock_blank(), QT_TRANSLATE_NOOP("Sentences", "other locks in the joint"), "split-pin",
                   false, true},
                  {"--thread", &thread_blank(), QT_TRANSLATE_NOOP("Sentences", "thread that it is on"), "M8"},
                  {"--temperature", &temperature, QT_TRANSLATE_NOOP("Sentences", "temperature in service"), "110 degC"},
                  surface_blank()},
       .answer = &answer_lock_sentence},
      {.id = "cure",
       .command = "cure",
       .name = QT_TRANSLATE_NOOP("Sentences", "When a compound has cured"),
       .also = QT_TRANSLATE_NOOP("Sentences", "locking compound set full strength hours temperature primer heat"),
       .text = QT_TRANSLATE_NOOP(
           "Sentences",
           "{--lock} on {--surface}, the part at {--temperature}, fitted at {--fitted-at}, has cured after"),
       .blanks = {{"--lock", &compound_blank(), QT_TRANSLATE_NOOP("Sentences", "compound, by its strength"),
                   "compound-medium", true},
                  surface_blank(),
                  {"--temperature", &temperature, QT_TRANSLATE_NOOP("Sentences", "temperature of the part"), "20 degC",
                   true},
                  {"--fitted-at", &moment_blank(), QT_TRANSLATE_NOOP("Sentences", "day and hour of fitting"),
                   "2026-11-26 09:30"}},
       .answer = &answer_cure_sentence},
      {.id = "running",
       .command = "running",
       .name = QT_TRANSLATE_NOOP("Sentences", "Running torque of a locking nut"),
       .also = QT_TRANSLATE_NOOP("Sentences", "prevailing drag used again reuse insert self-locking"),
       .text = QT_TRANSLATE_NOOP(
           "Sentences", "A locking nut on {THREAD} that drags with {--measured}, where the page says {--torque}:"),
       .blanks = {case_blank("THREAD"),
                  {"--measured", &torque, QT_TRANSLATE_NOOP("Sentences", "running torque, nothing clamped"), "2 N.m"},
                  {"--torque", &torque, QT_TRANSLATE_NOOP("Sentences", "torque as printed"), "24 N.m"},
                  {"--class", &words_blank(), QT_TRANSLATE_NOOP("Sentences", "class of the nut"), "10"},
                  {"--insert", &tick_blank(), QT_TRANSLATE_NOOP("Sentences", "a locking insert in the part, not a nut"),
                   "yes"}},
       .answer = &answer_running_sentence},
  };
}

} // namespace clampwright::desk
