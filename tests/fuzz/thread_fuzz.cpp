// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whatever is typed as a thread: what is accepted has sizes that a thread can have, a thread of the tables is read back
// from what we write of it, and what is refused is refused helpfully.
#include <cmath>
#include <cstddef>
#include <cstdint>

#include "core/thread/designation.hpp"
#include "specdb/catalogue/threads.hpp"
#include "tests/fuzz/must.hpp"
#include "tests/fuzz/targets.hpp"

namespace clampwright::fuzz {

namespace {

using quantity::in_metres;
using thread::Designation;
using thread::Form;

bool same(double one, double other) { return !(one < other) && !(one > other); }
bool is_size(double value) { return std::isfinite(value) && value > 0; }

void must_be_sound(const Designation& read, std::string_view text) {
  must(!read.size.empty() && text::is_printable(read.size), "a size cannot be written");
  must(text.find(',') == std::string_view::npos, "a thread with a comma was read");
  must(text::is_printable(text::plain_spaces(text)), "a thread with control characters was read");
  if (read.form == Form::metric) {
    must(is_size(read.diameter_mm), "a diameter is no size");
    must(!read.tpi && read.series.empty(), "a metric thread is half an inch thread");
    if (read.pitch_mm)
      must(is_size(*read.pitch_mm) && *read.pitch_mm < read.diameter_mm, "a pitch does not fit its diameter");
  } else {
    must(!read.pitch_mm, "an inch thread is half a metric one");
    if (read.tpi) must(is_size(*read.tpi), "threads per inch are none");
  }
}

using Finder = Result<specdb::ThreadEntry> (*)(const specdb::Catalogue&, std::string_view);

void try_tables(std::string_view text, Finder find) {
  static const specdb::Catalogue k_catalogue;
  const auto entry = find(k_catalogue, text);
  if (!entry) {
    must_help(entry.error());
    return;
  }
  const thread::Thread& found = entry->thread;
  must(is_size(in_metres(found.diameter)) && is_size(in_metres(found.pitch)), "a thread has no size");
  must(found.pitch < found.diameter, "a thread is coarser than thick");
  const std::string written = thread::write_designation(found);
  const auto again = find(k_catalogue, written);
  must(again.has_value(), "what we write is refused: " + written);
  must(again->thread.designation == found.designation && again->thread.hand == found.hand,
       "what we write is another thread: " + written);
  must(same(in_metres(again->thread.diameter), in_metres(found.diameter)) &&
           same(in_metres(again->thread.pitch), in_metres(found.pitch)),
       "what we write has another size: " + written);
}

} // namespace

void try_thread(std::string_view text) {
  const auto size = thread::read_designation_or_size(text);
  const auto whole = thread::read_designation(text);
  if (size)
    must_be_sound(*size, text);
  else
    must_help(size.error());
  must(whole.has_value() == (size && size->is_complete()), "the two readers of threads disagree");
  if (!whole) must_help(whole.error());
  try_tables(text, specdb::find_thread);
  try_tables(text, specdb::find_thread_of_any_pitch);
}

} // namespace clampwright::fuzz

#ifndef CLAMPWRIGHT_REPLAY
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  clampwright::fuzz::try_thread({reinterpret_cast<const char*>(data), size});
  return 0;
}
#endif
