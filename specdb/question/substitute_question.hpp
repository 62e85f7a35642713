// SPDX-License-Identifier: GPL-3.0-or-later
//
// From words to values, for the question whether another fastener may go in.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/friction/reduction.hpp"
#include "core/problem/problem.hpp"
#include "core/substitute/chain.hpp"
#include "specdb/question/case_question.hpp"
#include "specdb/question/text_field.hpp"
#include "specdb/workshop/records.hpp"

namespace clampwright::specdb {

// Every entry as text. What is empty was not said; with a joint the workshop knows it, and what is said ranks above.
struct SubstituteQuestion {
  std::string original; // "M10 8.8"; empty with a joint
  std::string offered;  // "M10 10.9"
  CaseQuestion how;     // how the original is tightened: surfaces, friction, head …; thread and class stand above
  std::optional<std::string> with_surfaces; // of the one offered
  std::optional<std::string> with_mu;
  std::optional<std::string> with_nut_factor;
  std::optional<std::string> with_head;
  std::optional<std::string> coating; // plain, electroplated, hot-dip, zinc-flake, phosphate
  std::optional<std::string> nut;     // class
  std::optional<std::string> mating;  // material of the part or nut that it screws into
  std::optional<std::string> engagement;
  std::optional<std::string> seat;   // material under the turned part
  std::optional<std::string> length; // of the one offered, under the head
  std::optional<std::string> original_length;
  std::optional<std::string> grip;
  std::optional<std::string> hole_depth;
  std::optional<std::string> duty; // dry, wet
  std::optional<std::string> temperature;
  std::optional<std::string> torque;
  std::optional<std::string> condition; // new, used
  bool approval_needed = false;
  std::optional<JointRecord> joint;
};

// Without the two fasteners and the joint.
inline constexpr std::array k_substitute_fields{
    TextField<SubstituteQuestion>{"--with-surfaces", &SubstituteQuestion::with_surfaces},
    TextField<SubstituteQuestion>{"--with-mu", &SubstituteQuestion::with_mu},
    TextField<SubstituteQuestion>{"--with-nut-factor", &SubstituteQuestion::with_nut_factor},
    TextField<SubstituteQuestion>{"--with-head", &SubstituteQuestion::with_head},
    TextField<SubstituteQuestion>{"--coating", &SubstituteQuestion::coating},
    TextField<SubstituteQuestion>{"--nut", &SubstituteQuestion::nut},
    TextField<SubstituteQuestion>{"--mating", &SubstituteQuestion::mating},
    TextField<SubstituteQuestion>{"--engagement", &SubstituteQuestion::engagement},
    TextField<SubstituteQuestion>{"--seat", &SubstituteQuestion::seat},
    TextField<SubstituteQuestion>{"--length", &SubstituteQuestion::length},
    TextField<SubstituteQuestion>{"--original-length", &SubstituteQuestion::original_length},
    TextField<SubstituteQuestion>{"--grip", &SubstituteQuestion::grip},
    TextField<SubstituteQuestion>{"--hole-depth", &SubstituteQuestion::hole_depth},
    TextField<SubstituteQuestion>{"--duty", &SubstituteQuestion::duty},
    TextField<SubstituteQuestion>{"--temperature", &SubstituteQuestion::temperature},
    TextField<SubstituteQuestion>{"--torque", &SubstituteQuestion::torque},
    TextField<SubstituteQuestion>{"--condition", &SubstituteQuestion::condition},
};

struct SubstituteAnswer {
  ThreadEntry original;
  ThreadEntry offered;
  substitute::Question question;
  substitute::Answer answer;
  bool mass_as_force = false;                 // in the torque told
  finding::Findings of_the_joint;             // what stops the figure of the joint itself
  std::vector<friction::Reduction> published; // rules for such a change of the surfaces
};

// "M10x1.25 10.9", "3/8-24 UNF SAE 5": the thread, then the class; without a class it is unknown. Fails as find_thread
// does where no thread begins the text.
[[nodiscard]] Result<std::pair<std::string, std::string>> read_fastener(const Catalogue& catalogue,
                                                                        std::string_view text, bool any_pitch = false);

// How the one offered was coated: "plain", "electroplated", "hot-dip", "zinc-flake", "phosphate".
[[nodiscard]] Result<substitute::Coating> read_coating(std::string_view text);
// "dry" or "wet".
[[nodiscard]] Result<substitute::Duty> read_duty(std::string_view text);
// "used" is true, "new" false.
[[nodiscard]] Result<bool> read_used(std::string_view text);

// Fails like `resolve` for both fasteners; with usage where the original is told and the joint has another one.
[[nodiscard]] Result<SubstituteAnswer> answer_for(const Catalogue& catalogue, const SubstituteQuestion& question);

} // namespace clampwright::specdb
