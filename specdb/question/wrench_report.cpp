// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/wrench_report.hpp"

#include <cmath>

#include <fmt/format.h>

#include "core/report/tightening_report.hpp"
#include "core/report/wording.hpp"
#include "specdb/question/joint_report.hpp"
#include "specdb/question/wrench_words.hpp"
#include "specdb/question/wrench_working.hpp"

namespace clampwright::specdb {

namespace {

using quantity::DisplayUnits;
using quantity::Torque;
using report::Section;

std::string torque(Torque value, const DisplayUnits& units) {
  return quantity::write_si_rounded(quantity::in_newton_metres(value), *units.torque);
}

// In the unit of the scale, so that it can be held against the mark, and in the one that is shown.
std::string on_scale(Torque value, const WrenchSetReply& reply) {
  return quantity::write_si_rounded(quantity::in_newton_metres(value), *reply.wrench.unit);
}
std::string both(Torque value, const WrenchSetReply& reply, const DisplayUnits& units) {
  if (reply.wrench.unit == units.torque) return torque(value, units);
  return fmt::format("{} = {}", on_scale(value, reply), torque(value, units));
}

// "2.1 %", for shares that are small.
std::string per_cent(double share) { return quantity::write_number(share * 100.0, share < 0.1 ? 2 : 3) + " %"; }

// "0.6 % above", "as wanted".
std::string off_words(Torque applied, Torque wanted) {
  const double off = applied / wanted - 1.0;
  if (std::abs(off) < 5e-4) return "as wanted";
  return fmt::format("{} {} what is wanted", per_cent(std::abs(off)), off > 0 ? "above" : "below");
}

std::string title_of(const WrenchSetReply& reply) {
  const tightening::LeverSetting& set = reply.set;
  const std::string forgotten = set.levers.adaptor ? fmt::format("; with the adaptor forgotten {} would",
                                                                 on_scale(set.applied_if_forgotten, reply))
                                                   : "";
  if (!set.setting)
    return fmt::format("No setting: {} is not for {}", reply.wrench.name,
                       set.levers.adaptor ? fmt::format("{} through this adaptor", on_scale(reply.task.torque, reply))
                                          : on_scale(reply.task.torque, reply));
  const std::string mark = setting_words(reply.wrench, *set.on_scale.setting);
  if (!reply.suits)
    return fmt::format("Do not use {} as it is (see below); it would be set to {}, and {} would reach the joint",
                       reply.wrench.name, mark, on_scale(*set.applied, reply));
  if (finding::has_stop(reply.findings))
    return fmt::format("STOP, see below, before {} is set; {} would reach the joint", mark,
                       on_scale(*set.applied, reply));
  return fmt::format("Set {} on the scale; {} reaches the joint{}", mark, on_scale(*set.applied, reply), forgotten);
}

// With a digit more than elsewhere: a limit that was rounded outwards would be none.
std::string limits_words(const tightening::WrenchTask& task, const DisplayUnits& units) {
  const auto limit = [&](Torque value) { return quantity::write(value, units, 4); };
  if (task.low && task.high) return fmt::format(", from {} to {}", limit(*task.low), limit(*task.high));
  if (task.low) return fmt::format(", at least {}", limit(*task.low));
  if (task.high) return fmt::format(", at the most {}", limit(*task.high));
  return ", no limits given";
}

void add_levers(Section& section, const tightening::Levers& levers, const DisplayUnits& units) {
  if (!levers.adaptor) {
    section.rows.push_back({"Adaptor", "none: what is set is what reaches the joint"});
    return;
  }
  const double angle = quantity::in_degrees(levers.adaptor->angle);
  const auto length = [&](quantity::Length value) { return quantity::write(value, units, 4); };
  section.rows.push_back({"Arm L", fmt::format("{} from the middle of the grip to the drive", length(levers.arm))});
  section.rows.push_back({"Adaptor A", fmt::format("{} from the drive to the fastener, at {}° from the line of the "
                                                   "wrench (0° straight ahead)",
                                                   length(levers.adaptor->length), quantity::write_number(angle, 4))});
  section.rows.push_back({"L + A·cos a", fmt::format("{}: set L/(L + A·cos a) = {} of what is wanted",
                                                     length(tightening::effective_arm(levers)),
                                                     quantity::write_rounded(tightening::setting_share(levers), 4))});
}

// What stands behind the mark: what it would be exactly, where it is not that.
std::string mark_words(const WrenchSetReply& reply) {
  if (!reply.wrench.step) return reply.is_registered ? "" : "; with --step the nearest mark is found";
  if (std::abs(*reply.set.setting / reply.set.exact - 1.0) < 5e-5) return ", a mark of the scale";
  return fmt::format(", a mark of the scale; exactly it would be {}",
                     quantity::write_si_rounded(quantity::in_newton_metres(reply.set.exact), *reply.wrench.unit, 4));
}

Section setting_section(const WrenchSetReply& reply, const JointAnswer* joint, const DisplayUnits& units) {
  const tightening::LeverSetting& set = reply.set;
  Section section{"", {}};
  if (joint != nullptr)
    section.rows.push_back(
        {"Joint", fmt::format("{}: {}, as printed", joint->joint.slug, joint->figure.figure.printed)});
  section.rows.push_back({"Wanted", both(reply.task.torque, reply, units) + limits_words(reply.task, units)});
  if (reply.task.turn)
    section.rows.push_back({"Turn", fmt::format("{}{}", thread::turn_name(*reply.task.turn),
                                                joint != nullptr ? ", " + joint->joint.seen_from : "")});
  add_levers(section, set.levers, units);
  if (set.setting) {
    const std::string mark = setting_words(reply.wrench, *set.on_scale.setting);
    section.rows.push_back({"Set", mark + mark_words(reply)});
    section.rows.push_back({"Reaches it", fmt::format("{}, {}", both(*set.applied, reply, units),
                                                      off_words(*set.applied, reply.task.torque))});
  } else {
    section.rows.push_back(
        {"Set", fmt::format("nothing; {} would be wanted on the scale", both(set.exact, reply, units))});
  }
  if (joint != nullptr && joint->figure.figure.angle_deg)
    section.rows.push_back({"Then", fmt::format("turn {}° further, once, by its page: this torque only snugs",
                                                quantity::write_number(*joint->figure.figure.angle_deg, 4))});
  if (set.levers.adaptor)
    section.rows.push_back(
        {"If forgotten",
         fmt::format("{} where {} itself is set, {}", both(set.applied_if_forgotten, reply, units),
                     both(reply.task.torque, reply, units), off_words(set.applied_if_forgotten, reply.task.torque))});
  section.rows.push_back({"Wrench", fmt::format("{}: {}{}", reply.wrench.name, scale_words(reply.wrench),
                                                reply.is_registered ? ", calibrated " + direction_words(reply.wrench)
                                                                    : "; nothing is known of its calibration")});
  section.rows.push_back({"Hand", "at the middle of the grip, square to the wrench, in one smooth pull"});
  section.rows.push_back({"", "a straight extension bar or socket moves nothing and changes nothing: keep it square"});
  return section;
}

Section budget_section(const tightening::Budget& budget) {
  Section section{"How far the clamp load may be off, as shares of it", {}};
  for (const tightening::BudgetLine& line : budget.lines)
    section.rows.push_back(
        {line.influence.name, fmt::format("± {}{}: {} of the spread ({})", per_cent(line.influence.share),
                                          line.influence.spread == tightening::Spread::limits
                                              ? fmt::format(" at the most, so {} standard", per_cent(line.standard))
                                              : " standard",
                                          quantity::write_share(line.of_variance), line.influence.basis)});
  section.rows.push_back({"torque", fmt::format("± {} standard at the fastener", per_cent(budget.torque))});
  section.rows.push_back({"clamp load", fmt::format("± {} standard; about 95 of 100 within ± {}", per_cent(budget.load),
                                                    quantity::write_share(tightening::k_coverage * budget.load))});
  for (const auto& published : tightening::k_published_spreads)
    section.rows.push_back({&published == tightening::k_published_spreads.data() ? "published" : "",
                            fmt::format("± {} {} (NASA-STD-5020, unless tested)",
                                        quantity::write_share(published.share), published.surfaces)});
  if (budget.lines.back().of_variance > 0.5)
    section.rows.push_back({"so", "a better wrench changes little; surfaces, lubricant, washer and how often the bolt "
                                  "was tightened change much"});
  return section;
}

} // namespace

std::string setting_words(const tightening::Wrench& wrench, double setting) {
  return wrench.step ? quantity::write_value(setting, *wrench.unit, 6)
                     : quantity::write_value(setting, *wrench.unit, 4);
}

std::string why_not_words(const tightening::WrenchSetting& setting, const DisplayUnits& units) {
  if (setting.suitable) return {};
  std::string words;
  for (const finding::Finding& finding : setting.findings)
    if (finding.code != finding::Code::coarse_scale && finding.code != finding::Code::wrench_wider_than_limits)
      words += (words.empty() ? "" : " ") + report::finding_brief(finding, units);
  return words;
}

Section wrenches_section(const JointAnswer& answer, const DisplayUnits& units) {
  Section section{"Wrenches of the workshop for it", {}};
  if (!answer.not_to_be_used_because.empty()) {
    section.rows.push_back({"none", fmt::format("no wrench is set: {}", answer.not_to_be_used_because)});
    return section;
  }
  if (answer.wrenches->empty())
    section.rows.push_back({"none", "no wrench is in the register: clampwright wrench add"});
  for (const bool suits : {true, false})
    for (const WrenchAnswer& one : *answer.wrenches) {
      if (one.setting.suitable != suits) continue;
      const std::string mark = one.setting.setting ? setting_words(one.wrench, *one.setting.setting) : "";
      std::string words = suits ? fmt::format("set {} ({})", mark, scale_words(one.wrench))
                                : fmt::format("no: {}", why_not_words(one.setting, units));
      section.rows.push_back({one.slug, std::move(words)});
    }
  return section;
}

report::Document wrench_set_report(const WrenchSetReply& reply, const JointAnswer* joint, const DisplayUnits& units,
                                   bool invented) {
  report::Document document;
  document.title = title_of(reply);
  if (invented) document.banner = k_invented;
  document.sections.push_back(setting_section(reply, joint, units));
  document.sections.push_back(budget_section(reply.budget));
  document.remarks = report::remarks_of(reply.findings, units);
  document.working = reply.working;
  document.sources = reply.sources;
  document.has_foot = true;
  return document;
}

} // namespace clampwright::specdb
