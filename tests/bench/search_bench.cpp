// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a find-as-you-type line costs at 100 000 joints: every call must fit well into one frame of the screen, 16.7 ms
// at 60 Hz. `max` is the slowest of the calls that were timed.
#include <stdlib.h>

#include <algorithm>
#include <filesystem>
#include <stdexcept>
#include <string>
#include <vector>

#include <benchmark/benchmark.h>

#include "specdb/workshop/browse.hpp"
#include "specdb/workshop/search.hpp"
#include "specdb/workshop/workshop_file.hpp"
#include "specdb/workshop/workshop_watch.hpp"
#include "tests/bench/big_workshop.hpp"

namespace clampwright::bench {

namespace {

namespace fs = std::filesystem;

constexpr std::uint32_t k_seed = 20'261'126;

// The workshop of 100 000 joints, made once for all and taken away at the end.
class BigFile {
 public:
  BigFile() {
    std::string name = (fs::temp_directory_path() / "clampwright-bench-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("no temporary folder");
    folder_ = name;
    make_big_workshop(path(), {}, k_seed);
  }
  ~BigFile() {
    std::error_code ignored;
    fs::remove_all(folder_, ignored);
  }
  BigFile(const BigFile&) = delete;
  BigFile& operator=(const BigFile&) = delete;
  [[nodiscard]] fs::path path() const { return folder_ / "w"; }
  [[nodiscard]] specdb::Workshop open() const {
    auto workshop = specdb::Workshop::open(path());
    if (!workshop) throw std::runtime_error(workshop.error().message);
    return std::move(*workshop);
  }

 private:
  fs::path folder_;
};

const BigFile& big_file() {
  static const BigFile file;
  return file;
}

void find(benchmark::State& state, const char* words) {
  const specdb::Workshop workshop = big_file().open();
  std::size_t hits = specdb::search(workshop, "nothing like it").hits.size();
  for (auto _ : state)
    hits = specdb::search(workshop, words).hits.size();
  state.counters["hits"] = static_cast<double>(hits);
}

// What is made once for an opened workshop is paid by the first who needs it.
void find_first(benchmark::State& state, const char* words) {
  for (auto _ : state) {
    state.PauseTiming();
    const specdb::Workshop workshop = big_file().open();
    state.ResumeTiming();
    benchmark::DoNotOptimize(specdb::search(workshop, words).hits.size());
  }
}

void list_machines(benchmark::State& state) {
  const specdb::Workshop workshop = big_file().open();
  for (auto _ : state)
    benchmark::DoNotOptimize(specdb::machines_with_counts(workshop).size());
}

void list_joints(benchmark::State& state) {
  const specdb::Workshop workshop = big_file().open();
  for (auto _ : state)
    benchmark::DoNotOptimize(specdb::joints_of_machine(workshop, "m1000").size());
}

void open_file(benchmark::State& state) {
  for (auto _ : state)
    benchmark::DoNotOptimize(big_file().open().note().size());
}

void look(benchmark::State& state) {
  specdb::WorkshopWatch watch(big_file().path());
  for (auto _ : state)
    benchmark::DoNotOptimize(watch.look());
}

double greatest(const std::vector<double>& values) { return *std::ranges::max_element(values); }

template<class Function, class... Arguments>
void measure(const std::string& name, Function function, Arguments... arguments) {
  benchmark::RegisterBenchmark(name.c_str(), function, arguments...)
      ->Unit(benchmark::kMillisecond)
      ->Iterations(1)
      ->Repetitions(20)
      ->ReportAggregatesOnly()
      ->ComputeStatistics("max", greatest);
}

void measure_all() {
  for (const char* words : {"b",
                            "c",
                            "m",
                            "bo",
                            "cl",
                            "m8",
                            "bol",
                            "bolt",
                            "clutch",
                            "kestal",
                            "marrowfen",
                            "clutch hub",
                            "clutch hub bolt",
                            "front flywheel cover screw",
                            "M10x1.25",
                            "cluthc",
                            "flywehl",
                            "gasqet",
                            "cluthc hbu blot",
                            "reedblock",
                            "xylophone",
                            "qqq",
                            "zz9"})
    measure(std::string("find/") + words, find, words);
  for (const char* words : {"b", "clutch", "cluthc", "xylophone"})
    measure(std::string("find after opening/") + words, find_first, words);
  measure("machines with counts", list_machines);
  measure("joints of a machine", list_joints);
  measure("open", open_file);
  measure("watch, nothing changed", look);
}

} // namespace

} // namespace clampwright::bench

int main(int count, char** arguments) {
  benchmark::Initialize(&count, arguments);
  if (benchmark::ReportUnrecognizedArguments(count, arguments)) return 64;
  clampwright::bench::measure_all();
  benchmark::RunSpecifiedBenchmarks();
  benchmark::Shutdown();
}
