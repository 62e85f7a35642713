// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands/sequence_command.hpp"

#include <CLI/App.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "cli/commands/opened_workshop.hpp"
#include "cli/json/sequence_json.hpp"
#include "cli/json/values_json.hpp"
#include "core/report/sequence_drawing.hpp"
#include "core/report/text_writer.hpp"
#include "core/text/plain_text.hpp"
#include "specdb/files/write_file.hpp"
#include "specdb/question/of_joint.hpp"

namespace clampwright::cli {

namespace {

constexpr int k_file_width = 100; // a file has no terminal to ask

enum class Format { text, svg };

// A file that ends in .svg is meant to be one.
Result<Format> read_format(const std::optional<std::string>& text, const std::optional<std::string>& output) {
  if (!text) return output && text::to_lower(*output).ends_with(".svg") ? Format::svg : Format::text;
  if (text::equal_fold(*text, "text")) return Format::text;
  if (text::equal_fold(*text, "svg")) return Format::svg;
  return not_understood("not-understood", "no format that is written here", *text, "write --format text or svg",
                        "--format");
}

} // namespace

std::string_view SequenceCommand::summary() const { return "in which order to tighten, and in how many rounds"; }
std::string_view SequenceCommand::usage() const {
  return "sequence --bolts N [--pattern circle|row|rows] [--passes X,...] [--torque Q] [options]";
}
std::vector<Example> SequenceCommand::examples() const {
  return {{"sequence --bolts 6 --torque 24Nm", "bolts in a circle"},
          {"sequence --bolts 9 --pattern row --torque 45Nm --passes 60%,100%", "a row, in two rounds"},
          {"sequence --bolts 10 --pattern rows", "a cylinder head with two rows of five"},
          {"sequence --bolts 8 --undo", "loosening"},
          {"sequence --bolts 12 --torque 30Nm --format svg", "a picture; --output FILE keeps it"}};
}

void SequenceCommand::declare(CLI::App& app) {
  declare_words(app);
  app.add_option("--bolts", question_.bolts, "how many, from 2 to 24")->type_name("N");
  app.add_option("--pattern", question_.pattern, "circle, row, or rows (two); circle if not said")->type_name("NAME");
  app.add_option("--passes", question_.passes, "rounds as shares of the torque: 50%,75%,100%")->type_name("X,...");
  app.add_option("--torque", question_.torque, "the final torque")->type_name("Q");
  app.add_flag("--undo", question_.undo, "the order of loosening");
  app.add_option("--joint", joint_, "a joint of the workshop")->type_name("NAME");
  app.add_option("--format", format_, "text or svg (a picture)")->type_name("F");
  app.add_option("--output", output_, "write to this file instead of standard output")->type_name("FILE");
  app.add_flag("--replace", replace_, "write over that file if it is there");
}

Json SequenceCommand::echo() const {
  Json input = Json::object();
  put_text(input, "bolts", question_.bolts);
  put_text(input, "pattern", question_.pattern);
  put_text(input, "passes", question_.passes);
  put_text(input, "torque", question_.torque);
  if (question_.undo) input["undo"] = true;
  put_text(input, "joint", joint_);
  put_text(input, "format", format_);
  put_text(input, "output", output_);
  return input;
}

Result<Outcome> SequenceCommand::run(const Context& context) {
  if (!words_.empty())
    return refuse(Trouble::usage, "surplus", "sequence takes no words", words_.front(),
                  "write clampwright sequence --bolts 6 --torque 24Nm");
  const auto format = read_format(format_, output_);
  if (!format) return Refusal(format.error());
  if (replace_ && !output_)
    return refuse(Trouble::usage, "missing", "--replace is for a file, and none is named", {}, "add --output FILE",
                  "--replace");
  if (output_ && output_->empty())
    return refuse(Trouble::usage, "missing", "the name of the file is empty", {}, "write --output order.svg",
                  "--output");
  if (context.json && format_ && !output_)
    return refuse(Trouble::usage, "surplus", "standard output can be JSON or another format, not both", *format_,
                  "leave out --json, or name a file for the other with --output", "--format");
  if (context.unit != nullptr && context.unit->kind == quantity::Kind::torque) question_.unit = context.unit;

  auto needed = workshop_where(joint_.has_value(), context);
  if (!needed) return Refusal(needed.error());
  const specdb::Catalogue catalogue;
  const auto told = specdb::tell_sequence(catalogue, needed->get(), joint_, question_);
  if (!told) return Refusal(told.error());
  const specdb::SequenceReply& reply = told->reply;
  Outcome out;
  out.hints = std::move(needed->hints);
  out.input = std::make_shared<Json>(echo());
  Json result = sequence_json(reply);
  result["invented"] = told->joint ? Json(told->invented) : Json(nullptr);
  out.result = std::make_shared<Json>(std::move(result));
  out.findings = reply.findings;
  out.document = specdb::sequence_document(*told, context.units);
  if (finding::has_stop(reply.findings)) out.exit = ExitCode::check_failed;
  out.sources = out.document.sources;
  const auto written = [&] {
    return *format == Format::svg ? report::write_svg(report::sequence_drawing(reply.sequence, reply.heading,
                                                                               reply.seen_from, out.document.banner))
                                  : report::write_text(out.document, k_file_width);
  };
  if (output_) {
    const auto done =
        specdb::write_file(*output_, written(), replace_ ? specdb::IfThere::replace : specdb::IfThere::refuse);
    if (!done) return Refusal(done.error());
    out.page = "";
    out.hints.push_back(fmt::format("the order was written to {}", text::quotable(*output_)));
  } else if (*format == Format::svg) {
    out.page = written();
  }
  return out;
}

} // namespace clampwright::cli
