// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cli/command.hpp"
#include "specdb/workshop/records.hpp"
#include "specdb/workshop/workshop_file.hpp"

namespace clampwright::cli {

// The workshop file, for reading. Fails like workshop_file and Workshop::open.
[[nodiscard]] Result<specdb::Workshop> open_workshop(const Context& context);

// The workshop file where it is needed, and what is to be said beside any answer on it.
struct NeededWorkshop {
  std::optional<specdb::Workshop> workshop;
  std::vector<std::string> hints; // on how the file was read

  [[nodiscard]] const specdb::Workshop* get() const { return workshop ? &*workshop : nullptr; }
};

// Opens it only where it is needed. Fails like open_workshop.
[[nodiscard]] Result<NeededWorkshop> workshop_where(bool needed, const Context& context);

// A joint of the workshop, and what is to be said beside any answer on it.
struct NamedJoint {
  specdb::JointRecord record;
  bool invented = false;
  std::vector<std::string> hints; // on how the file was read
};

// The joint that a person names: its slug, or words that fit one only. Fails like open_workshop and find_joint; `field`
// is the option that named it.
[[nodiscard]] Result<NamedJoint> named_joint(const Context& context, const std::string& words,
                                             const std::string& field = {});

} // namespace clampwright::cli
