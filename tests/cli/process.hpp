// SPDX-License-Identifier: GPL-3.0-or-later
//
// The real program without a shell between, so that any bytes may stand in its arguments, as another user too.
#pragma once

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <functional>
#include <stdexcept>
#include <string>
#include <thread>
#include <vector>

#include <fcntl.h>
#include <grp.h>
#include <poll.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace clampwright::cli::testing_support {

// The user that owns nothing (Debian's base-passwd).
inline constexpr uid_t k_nobody = 65534;

// Root passes every test of permissions. Where the test runs as root, what follows runs as nobody; false where that
// cannot be had.
[[nodiscard]] inline bool become_nobody() {
  if (::geteuid() == 0 && (::setgroups(0, nullptr) != 0 || ::setgid(k_nobody) != 0 || ::setuid(k_nobody) != 0))
    return false;
  return ::geteuid() != 0 && ::setuid(0) != 0;
}

struct Finished {
  std::string out;
  std::string err;
  int status = -1; // as waitpid gives it
  [[nodiscard]] int exit() const { return WIFEXITED(status) ? WEXITSTATUS(status) : -1; }
};

class Program {
 public:
  explicit Program(std::vector<std::string> arguments) : arguments_(std::move(arguments)) {}
  Program& environment(std::string setting) {
    environment_.push_back(std::move(setting));
    return *this;
  }
  // Runs in the child before the program takes its place; the child ends with 99 where it says false.
  Program& first(std::function<bool()> work) {
    first_ = std::move(work);
    return *this;
  }
  Program& as_nobody() { return first(become_nobody); }

  // To be awaited with finish().
  pid_t start() {
    // By its open file: nobody may not be allowed into the folders above it.
    const int program = ::open(CLAMPWRIGHT_BUILD_DIR "/cli/clampwright", O_RDONLY | O_CLOEXEC);
    int out[2];
    int err[2];
    if (program < 0 || ::pipe2(out, O_CLOEXEC) != 0 || ::pipe2(err, O_CLOEXEC) != 0)
      throw std::runtime_error("the program cannot be started");
    arguments_.insert(arguments_.begin(), "clampwright");
    if (std::none_of(environment_.begin(), environment_.end(),
                     [](const std::string& setting) { return setting.starts_with("LC_ALL="); }))
      environment_.emplace_back("LC_ALL=C.UTF-8");
    const auto pointers = [](std::vector<std::string>& texts) {
      std::vector<char*> list;
      for (std::string& text : texts)
        list.push_back(text.data());
      list.push_back(nullptr);
      return list;
    };
    std::vector<char*> argv = pointers(arguments_);
    std::vector<char*> envp = pointers(environment_);
    child_ = ::fork();
    if (child_ == 0) {
      ::dup2(out[1], STDOUT_FILENO);
      ::dup2(err[1], STDERR_FILENO);
      if (first_ && !first_()) ::_exit(99);
      ::fexecve(program, argv.data(), envp.data());
      ::_exit(98);
    }
    ::close(program);
    ::close(out[1]);
    ::close(err[1]);
    out_ = out[0];
    err_ = err[0];
    return child_;
  }

  Finished finish() {
    Finished finished;
    pollfd ends[2] = {{out_, POLLIN, 0}, {err_, POLLIN, 0}};
    std::string* texts[2] = {&finished.out, &finished.err};
    while (ends[0].fd >= 0 || ends[1].fd >= 0) {
      if (::poll(ends, 2, -1) < 0 && errno != EINTR) break;
      for (int i = 0; i < 2; ++i) {
        if (ends[i].fd < 0 || ends[i].revents == 0) continue;
        char buffer[4096];
        const ssize_t read = ::read(ends[i].fd, buffer, sizeof buffer);
        if (read > 0) {
          texts[i]->append(buffer, static_cast<std::size_t>(read));
        } else {
          ::close(ends[i].fd);
          ends[i].fd = -1;
        }
      }
    }
    ::waitpid(child_, &finished.status, 0);
    return finished;
  }

  Finished run() {
    start();
    return finish();
  }

 private:
  std::vector<std::string> arguments_;
  std::vector<std::string> environment_;
  std::function<bool()> first_;
  pid_t child_ = -1;
  int out_ = -1;
  int err_ = -1;
};

} // namespace clampwright::cli::testing_support
