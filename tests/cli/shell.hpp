// SPDX-License-Identifier: GPL-3.0-or-later
//
// The real program, in a shell.
#pragma once

#include <array>
#include <cstdio>
#include <string>

#include <sys/wait.h>

namespace clampwright::cli::testing_support {

struct Ended {
  std::string out; // what the command line printed, both streams if it joins them
  int status;      // as the shell gives it: 128 and the signal's number for a death by signal
};

// `line` in sh, where $clampwright is the program and $data a folder of the test's own.
inline Ended shell(const std::string& line, const std::string& data = "/nowhere") {
  const std::string command = "clampwright='" CLAMPWRIGHT_BUILD_DIR "/cli/clampwright'; data='" + data +
                              "'; export XDG_DATA_HOME=\"$data\" LC_ALL=C.UTF-8; " + line;
  FILE* pipe = ::popen(command.c_str(), "r");
  Ended ended{{}, -1};
  std::array<char, 4096> buffer{};
  for (std::size_t n = 0; (n = std::fread(buffer.data(), 1, buffer.size(), pipe)) > 0;)
    ended.out.append(buffer.data(), n);
  const int status = ::pclose(pipe);
  ended.status = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
  return ended;
}

} // namespace clampwright::cli::testing_support
