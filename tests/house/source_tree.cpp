// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/house/source_tree.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace clampwright::house {

namespace {

namespace fs = std::filesystem;

const fs::path k_top = CLAMPWRIGHT_SOURCE_DIR;

bool is_digit(char c) { return c >= '0' && c <= '9'; }

// Copies code and blanks the rest, part by part.
class Blanker {
 public:
  explicit Blanker(std::string_view text) : text_(text), code_(text) {}

  std::string run() {
    while (at_ < text_.size()) {
      if (starts("//"))
        blank_to(text_.find('\n', at_));
      else if (starts("/*"))
        blank_past("*/", 2);
      else if (text_[at_] == '"')
        literal('"');
      else if (text_[at_] == '\'')
        literal('\'');
      else if (is_word_character(text_[at_]))
        word();
      else
        ++at_;
    }
    return std::move(code_);
  }

 private:
  [[nodiscard]] bool starts(std::string_view what) const { return text_.substr(at_).starts_with(what); }

  void blank_to(std::size_t end) {
    for (end = std::min(end, text_.size()); at_ < end; ++at_)
      if (text_[at_] != '\n') code_[at_] = ' ';
  }

  void blank_past(std::string_view mark, std::size_t skip) {
    const std::size_t found = text_.find(mark, at_ + skip);
    blank_to(found == std::string_view::npos ? found : found + mark.size());
  }

  // The quotes stay, so that the code still reads as a call with an argument.
  void literal(char quote) {
    std::size_t end = at_ + 1;
    while (end < text_.size() && text_[end] != quote && text_[end] != '\n')
      end += text_[end] == '\\' ? 2 : 1;
    ++at_;
    blank_to(end);
    if (at_ < text_.size()) ++at_;
  }

  // A name, a number with its digit separators, or the prefix of a raw literal.
  void word() {
    const std::size_t begin = at_;
    const bool number = is_digit(text_[at_]);
    while (at_ < text_.size() && (is_word_character(text_[at_]) || (number && text_[at_] == '\'')))
      ++at_;
    const std::string_view word = text_.substr(begin, at_ - begin);
    if (!word.ends_with('R') || number || at_ >= text_.size() || text_[at_] != '"') return;
    const std::size_t open = text_.find('(', at_);
    if (open == std::string_view::npos) return;
    const std::string mark = fmt::format("){}\"", text_.substr(at_ + 1, open - at_ - 1));
    blank_past(mark, 0);
  }

  std::string_view text_;
  std::string code_;
  std::size_t at_ = 0;
};

std::vector<SourceFile> read_all() {
  std::vector<SourceFile> files;
  for (const char* folder : {"core", "specdb", "cli", "gui", "tests"}) {
    if (!fs::exists(k_top / folder)) continue;
    for (const auto& entry : fs::recursive_directory_iterator(k_top / folder)) {
      const std::string path = entry.path().lexically_relative(k_top).generic_string();
      if (entry.is_regular_file() && (path.ends_with(".cpp") || path.ends_with(".hpp")))
        files.push_back({path, contents(path)});
    }
  }
  std::ranges::sort(files, {}, &SourceFile::path);
  return files;
}

} // namespace

bool SourceFile::is_in(std::string_view folder) const {
  return path.starts_with(folder) && path.size() > folder.size() && path[folder.size()] == '/';
}

std::string contents(const std::string& path) {
  std::ifstream in(k_top / path, std::ios::binary);
  if (!in) throw std::runtime_error(path + " cannot be read");
  return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

bool exists(const std::string& path) { return fs::exists(k_top / path); }

std::vector<std::string> names_in(const std::string& folder) {
  std::vector<std::string> names;
  for (const auto& entry : fs::directory_iterator(k_top / folder))
    if (entry.is_regular_file()) names.push_back(entry.path().filename().string());
  std::ranges::sort(names);
  return names;
}

const std::vector<SourceFile>& source_files() {
  static const std::vector<SourceFile> files = read_all();
  return files;
}

bool is_word_character(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
}

std::string code_only(std::string_view text) { return Blanker(text).run(); }

std::vector<Include> includes(std::string_view text) {
  std::vector<Include> found;
  std::size_t number = 0;
  while (!text.empty()) {
    ++number;
    const std::size_t end = std::min(text.find('\n'), text.size());
    std::string_view line = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    const auto skip = [&line](std::string_view what) {
      line.remove_prefix(std::min(line.find_first_not_of(" \t"), line.size()));
      if (!line.starts_with(what)) return false;
      line.remove_prefix(what.size());
      return true;
    };
    if (!skip("#") || !skip("include")) continue;
    const bool quoted = skip("\"");
    if (!quoted && !skip("<")) continue;
    found.push_back({std::string(line.substr(0, line.find(quoted ? '"' : '>'))), quoted, number});
  }
  return found;
}

std::string fault(const SourceFile& file, std::size_t line, std::string_view what) {
  return fmt::format("{}:{}: {}", file.path, line, what);
}

std::string listed(const Faults& faults) { return fmt::format("\n{}", fmt::join(faults, "\n")); }

} // namespace clampwright::house
