# SPDX-License-Identifier: GPL-3.0-or-later
# Memory faults and undefined behaviour stop the test that meets them: cmake -C .ci/asan.cmake -S . -B build/asan
set(CLAMPWRIGHT_TESTS ON CACHE BOOL "")
set(CLAMPWRIGHT_SANITIZE "address,undefined" CACHE STRING "")
set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "")
# Line numbers, but not the rest of the debugging information: it would double the time.
set(CMAKE_CXX_FLAGS_RELWITHDEBINFO "-O1 -g1" CACHE STRING "")
# The library's own checks of indices and iterators.
set(CMAKE_CXX_FLAGS "-D_GLIBCXX_ASSERTIONS" CACHE STRING "")
