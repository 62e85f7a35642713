// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/opened_workshop.hpp"

#include "specdb/workshop/joints.hpp"

namespace clampwright::cli {

Result<specdb::Workshop> open_workshop(const Context& context) {
  const auto file = workshop_file(context);
  if (!file) return Refusal(file.error());
  return specdb::Workshop::open(*file);
}

Result<NeededWorkshop> workshop_where(bool needed, const Context& context) {
  NeededWorkshop out;
  if (!needed) return out;
  auto workshop = open_workshop(context);
  if (!workshop) return Refusal(workshop.error());
  if (!workshop->note().empty()) out.hints.push_back(workshop->note());
  out.workshop = std::move(*workshop);
  return out;
}

Result<NamedJoint> named_joint(const Context& context, const std::string& words, const std::string& field) {
  const auto workshop = open_workshop(context);
  if (!workshop) return Refusal(workshop.error());
  auto record = specdb::find_joint(*workshop, words);
  if (!record) return in_field(record.error(), field);
  NamedJoint named{std::move(*record), workshop->is_invented(), {}};
  if (!workshop->note().empty()) named.hints.push_back(workshop->note());
  return named;
}

} // namespace clampwright::cli
