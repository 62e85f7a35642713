# SPDX-License-Identifier: GPL-3.0-or-later
# The fuzz targets, which only clang can build: cmake -C .ci/fuzz.cmake -S . -B build/fuzz -G Ninja
set(CLAMPWRIGHT_FUZZ ON CACHE BOOL "")
set(CLAMPWRIGHT_GUI OFF CACHE BOOL "")
# Everything is watched for coverage and faults; libFuzzer's own main comes with the targets alone.
set(CLAMPWRIGHT_SANITIZE "fuzzer-no-link,address,undefined" CACHE STRING "")
set(CMAKE_CXX_COMPILER clang++-16 CACHE STRING "")
set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "")
set(CMAKE_CXX_FLAGS_RELWITHDEBINFO "-O1 -g1" CACHE STRING "")
set(CMAKE_CXX_FLAGS "-D_GLIBCXX_ASSERTIONS" CACHE STRING "")
