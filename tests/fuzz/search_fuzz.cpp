// SPDX-License-Identifier: GPL-3.0-or-later
//
// Any characters may stand in the words of a search: it answers always, with joints that are there, each once, in the
// same order each time, and never more than a page of them.
#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include <stdlib.h>

#include "specdb/demo/demo_workshop.hpp"
#include "specdb/workshop/search.hpp"
#include "tests/fuzz/must.hpp"
#include "tests/fuzz/targets.hpp"

namespace clampwright::fuzz {

namespace {

constexpr std::chrono::year_month_day k_day{std::chrono::year(2026), std::chrono::November, std::chrono::day(25)};

constexpr std::size_t k_most_hits = 50;

// The demo workshop in a folder of its own, made once.
class Demo {
 public:
  Demo() {
    std::string folder = std::filesystem::temp_directory_path() / "clampwright-fuzz-XXXXXX";
    if (::mkdtemp(folder.data()) == nullptr) throw std::runtime_error("no temporary folder: " + folder);
    folder_ = folder;
    const std::filesystem::path path = folder_ / "demo.clampwright";
    if (const auto made = specdb::make_demo_workshop(path, k_day); !made)
      throw std::runtime_error(made.error().message);
    auto opened = specdb::Workshop::open(path);
    if (!opened) throw std::runtime_error(opened.error().message);
    workshop_.emplace(std::move(*opened));
  }
  ~Demo() {
    workshop_.reset();
    std::error_code ignored;
    std::filesystem::remove_all(folder_, ignored);
  }
  Demo(const Demo&) = delete;
  Demo& operator=(const Demo&) = delete;
  [[nodiscard]] const specdb::Workshop& workshop() const { return *workshop_; }

 private:
  std::filesystem::path folder_;
  std::optional<specdb::Workshop> workshop_;
};

const specdb::Workshop& demo() {
  static const Demo made;
  return made.workshop();
}

std::vector<std::string> found(std::string_view words) {
  std::vector<std::string> joints;
  for (const specdb::Hit& hit : specdb::search(demo(), words).hits) {
    must(!hit.name.empty() && !hit.machine.empty(), "a hit has no name or machine: " + hit.joint);
    joints.push_back(hit.joint);
  }
  return joints;
}

} // namespace

void try_search(std::string_view text) {
  static const std::vector<std::string> k_known = found("pump");
  const std::vector<std::string> joints = found(text);
  must(joints.size() <= k_most_hits, "a search shows more than a page");
  must(std::set<std::string>(joints.begin(), joints.end()).size() == joints.size(), "a search shows a joint twice");
  for (const std::string& joint : joints)
    must(joint.find('/') != std::string::npos && text::is_printable(joint), "a hit is no slug: " + joint);
  must(found(text) == joints, "a search is not the same each time");
  must(found("pump") == k_known, "a search changes what the next one finds");
}

} // namespace clampwright::fuzz

#ifndef CLAMPWRIGHT_REPLAY
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  clampwright::fuzz::try_search({reinterpret_cast<const char*>(data), size});
  return 0;
}
#endif
