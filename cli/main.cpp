// SPDX-License-Identifier: GPL-3.0-or-later
#include <cerrno>
#include <chrono>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <exception>
#include <new>
#include <string>
#include <string_view>

#include <fcntl.h>
#include <sys/ioctl.h>
#include <unistd.h>

#include "cli/program.hpp"

namespace {

using clampwright::cli::Environment;
using clampwright::cli::ExitCode;
using clampwright::cli::Printed;

// A closed standard stream would let the next file that is opened take its number, and our answer would be written into
// it. /dev/null, opened the wrong way round, keeps the number and still fails when it is used.
void hold_standard_streams() {
  for (const int descriptor : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO})
    if (::fcntl(descriptor, F_GETFD) == -1 && errno == EBADF)
      (void)::open("/dev/null", descriptor == STDIN_FILENO ? O_WRONLY : O_RDONLY);
}

std::optional<std::string> variable(const char* name) {
  const char* value = std::getenv(name);
  if (value == nullptr || *value == '\0') return std::nullopt;
  return std::string(value);
}

// The first of these that is set decides, as setlocale would, without taking the locale over.
bool speaks_utf8() {
  for (const char* name : {"LC_ALL", "LC_CTYPE", "LANG"})
    if (const auto value = variable(name)) {
      std::string folded;
      for (const char c : *value)
        if (c != '-') folded += static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
      return folded.find("utf8") != std::string::npos;
    }
  return false;
}

int terminal_width() {
  winsize size{};
  if (::isatty(STDOUT_FILENO) != 0 && ::ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 && size.ws_col >= 40)
    return std::min<int>(size.ws_col, 100);
  return 80;
}

bool write_all(int descriptor, std::string_view text) {
  while (!text.empty()) {
    const ssize_t written = ::write(descriptor, text.data(), text.size());
    if (written < 0) {
      if (errno == EINTR) continue;
      return false;
    }
    text.remove_prefix(static_cast<std::size_t>(written));
  }
  return true;
}

// The day on the workshop's calendar, by local time.
std::chrono::year_month_day today() {
  const std::time_t now = std::time(nullptr);
  std::tm local{};
  if (::localtime_r(&now, &local) == nullptr) return {};
  return std::chrono::year_month_day{std::chrono::year(local.tm_year + 1900),
                                     std::chrono::month(static_cast<unsigned>(local.tm_mon + 1)),
                                     std::chrono::day(static_cast<unsigned>(local.tm_mday))};
}

Printed answer(const std::vector<std::string>& arguments, const Environment& environment) {
  try {
    return clampwright::cli::run(arguments, environment);
  } catch (const std::exception& error) {
    return clampwright::cli::failure(arguments, ExitCode::internal, error.what());
  }
}

} // namespace

int main(int argc, char** argv) {
  hold_standard_streams();
  const std::vector<std::string> arguments(argv + (argc > 0 ? 1 : 0), argv + argc);
  const Environment environment{variable("XDG_DATA_HOME"), variable("HOME"), speaks_utf8(), terminal_width(), today()};
  const Printed printed = answer(arguments, environment);
  // The answer first: what is said about it may be lost, the answer may not.
  if (!write_all(STDOUT_FILENO, printed.out) || ::close(STDOUT_FILENO) != 0) {
    (void)write_all(STDERR_FILENO,
                    std::string("clampwright: the answer cannot be written: ") + std::strerror(errno) + "\n");
    return static_cast<int>(ExitCode::input_output);
  }
  (void)write_all(STDERR_FILENO, printed.err);
  return static_cast<int>(printed.exit);
}
