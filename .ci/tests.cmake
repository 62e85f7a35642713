# SPDX-License-Identifier: GPL-3.0-or-later
# The tests run against code as it is shipped, but with assertions on: cmake -C .ci/tests.cmake -S . -B build/tests
set(CLAMPWRIGHT_TESTS ON CACHE BOOL "")
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(CMAKE_CXX_FLAGS_RELEASE "-O2" CACHE STRING "")
