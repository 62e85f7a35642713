// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/question/renew_question.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/text/plain_text.hpp"
#include "specdb/catalogue/surfaces.hpp"
#include "specdb/question/short_source.hpp"
#include "specdb/workshop/joints.hpp"
#include "specdb/workshop/search.hpp"

namespace clampwright::specdb {

namespace {

// By machine first: "pump" is all of the pump, and not the joints in whose words it occurs.
Result<std::vector<JointRecord>> joints_named(const Workshop& workshop, const std::string& words) {
  std::vector<JointRecord> all;
  for (const std::string& slug : joint_slugs(workshop))
    if (auto joint = joint_of_slug(workshop, slug)) all.push_back(std::move(*joint));
  const std::string wanted = text::plain_spaces(words);
  if (wanted.empty()) return all;
  std::vector<JointRecord> out;
  for (const JointRecord& joint : all)
    if (text::equal_fold(joint.machine.slug, wanted) || text::equal_fold(joint.machine.name, wanted) ||
        text::equal_fold(joint.slug, wanted))
      out.push_back(joint);
  if (!out.empty()) return out;
  const Found found = search(workshop, wanted);
  if (found.read_as.empty())
    for (const JointRecord& joint : all)
      if (std::ranges::find(found.hits, joint.slug, &Hit::joint) != found.hits.end()) out.push_back(joint);
  if (!out.empty()) return out;
  return refuse(Trouble::no_such, "no-such-joint", "no machine or joint of the workshop is named so", words,
                found.read_as.empty() ? "clampwright renew alone lists the whole workshop"
                                      : fmt::format("did you mean {}?", found.read_as));
}

RenewedPart part_of(const JointRecord& joint, std::string part, std::string because, Source source) {
  return {joint.slug,   joint.machine.name, joint.name,         std::move(part),
          joint.thread, joint.quantity,     std::move(because), std::move(source)};
}

void add_parts(const Catalogue& catalogue, const JointRecord& joint, std::vector<RenewedPart>& parts) {
  const FigureRecord& figure = joint.figure;
  // The page of the figure knows better than the general rule for a lock.
  if (figure.reuse_rule == "never")
    parts.push_back(part_of(joint, figure.reuse.value_or("new each time"), "by the page of the figure", figure.source));
  for (const LockRecord& record : joint.locks) {
    const auto lock = find_lock(catalogue, record.lock);
    if (!lock || !lock->single_use) continue;
    const bool compound = lock->family == friction::LockFamily::compound;
    if (!compound && figure.reuse_rule) continue;
    parts.push_back(part_of(joint, compound ? "fresh " + lock->description : lock->description,
                            record.note.value_or(compound ? "cleaned out and made fresh" : "discarded when removed"),
                            lock->sources.front()));
  }
  if (joint.soft_material == "gasket")
    parts.push_back(part_of(joint, "gasket", "one that was pressed once does not seal again",
                            {"Common workshop practice, no single document", "", "", Known::common_practice}));
}

} // namespace

Result<std::vector<RenewedPart>> parts_to_renew(const Catalogue& catalogue, const Workshop& workshop,
                                                const std::string& words) {
  const auto joints = joints_named(workshop, words);
  if (!joints) return Refusal(joints.error());
  std::vector<RenewedPart> parts;
  for (const JointRecord& joint : *joints)
    add_parts(catalogue, joint, parts);
  return parts;
}

std::vector<RenewedTotal> totals_of(const std::vector<RenewedPart>& parts) {
  std::vector<RenewedTotal> totals;
  for (const RenewedPart& part : parts) {
    const auto same = std::ranges::find_if(
        totals, [&](const RenewedTotal& total) { return total.part == part.part && total.thread == part.thread; });
    if (same == totals.end())
      totals.push_back({part.part, part.thread, part.quantity});
    else
      same->quantity += part.quantity;
  }
  return totals;
}

report::Document renew_document(const std::string& words, const std::vector<RenewedPart>& parts) {
  report::Document document;
  document.title = words.empty() ? "New each time" : fmt::format("New each time: {}", words);
  if (parts.empty()) {
    document.sections.push_back({"", {{"", "nothing on record is of single use; look at the pages all the same"}}});
    return document;
  }
  report::Section all{"To have at hand", {}};
  for (const RenewedTotal& total : totals_of(parts))
    all.rows.push_back({fmt::format("{} ×", total.quantity), fmt::format("{}, {}", total.part, total.thread)});
  document.sections.push_back(std::move(all));
  report::Section by_joint{"By joint", {}};
  for (const RenewedPart& part : parts)
    by_joint.rows.push_back({part.joint, fmt::format("{} × {}; {} ({})", part.quantity, part.part, part.because,
                                                     short_source(part.source))});
  document.sections.push_back(std::move(by_joint));
  for (const RenewedPart& part : parts)
    if (std::ranges::find(document.sources, part.source) == document.sources.end())
      document.sources.push_back(part.source);
  return document;
}

} // namespace clampwright::specdb
