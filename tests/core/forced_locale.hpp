// SPDX-License-Identifier: GPL-3.0-or-later
//
// A locale in force for C and for C++, as long as the object lives. The build makes the locales (tests/CMakeLists.txt),
// so that one which cannot be loaded is a fault of the tests and no reason to pass them.
#pragma once

#include <clocale>
#include <cstdlib>
#include <locale>
#include <optional>
#include <stdexcept>
#include <string>

#ifdef __SANITIZE_ADDRESS__
#include <sanitizer/lsan_interface.h>
#endif

namespace clampwright::test {

class ForcedLocale {
 public:
  // "de_DE.UTF-8", or "C".
  explicit ForcedLocale(const std::string& name) : c_before_(std::setlocale(LC_ALL, nullptr)) {
    if (const char* const path = std::getenv("LOCPATH")) path_before_ = path;
    ::setenv("LOCPATH", CLAMPWRIGHT_BUILD_DIR "/tests/locales", 1);
    try {
      std::locale::global(loaded(name));
      if (std::setlocale(LC_ALL, name.c_str()) == nullptr) throw std::runtime_error("setlocale refuses " + name);
    } catch (...) {
      restore();
      throw;
    }
  }
  ~ForcedLocale() { restore(); }
  ForcedLocale(const ForcedLocale&) = delete;
  ForcedLocale& operator=(const ForcedLocale&) = delete;

 private:
  static std::locale loaded(const std::string& name) {
#ifdef __SANITIZE_ADDRESS__
    // glibc 2.36 never frees its copy of LOCPATH (locale/newlocale.c).
    const __lsan::ScopedDisabler not_ours;
#endif
    return std::locale(name);
  }

  void restore() {
    if (path_before_)
      ::setenv("LOCPATH", path_before_->c_str(), 1);
    else
      ::unsetenv("LOCPATH");
    std::locale::global(cxx_before_);
    std::setlocale(LC_ALL, c_before_.c_str());
  }

  std::string c_before_;
  std::locale cxx_before_;
  std::optional<std::string> path_before_;
};

} // namespace clampwright::test
