# SPDX-License-Identifier: GPL-3.0-or-later
#
# cmake -DCOMPILER=… -DINCLUDE=… -DSNIPPET=… -DEXPECTED=… -P must_not_compile.cmake
#
# Passes where the snippet with its fault is refused for the expected reason. Mere failure would not do: a missing header
# fails too.
execute_process(
  COMMAND ${CMAKE_COMMAND} -E env LC_ALL=C
          ${COMPILER} -std=c++20 -fsyntax-only -I${INCLUDE} -DCLAMPWRIGHT_FAULT ${SNIPPET}
  RESULT_VARIABLE result
  OUTPUT_VARIABLE output
  ERROR_VARIABLE output)
if(result EQUAL 0)
  message(FATAL_ERROR "${SNIPPET} compiles with its fault, and must not")
endif()
if(NOT output MATCHES "error: ${EXPECTED}")
  message(FATAL_ERROR "${SNIPPET} is refused, but not for \"${EXPECTED}\":\n${output}")
endif()
