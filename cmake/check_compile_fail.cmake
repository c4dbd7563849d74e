# cmake -D COMPILER=<build>/tests/compiler.cmake -D CASE=<file.cpp> -P check_compile_fail.cmake
#
# The case's first line is `// expect: <regex>` (CMake's kind). It passes if the file does not
# compile and the compiler's words match the regex, and if it does compile with -DCONTROL. So a case
# can't pass for a wrong reason, such as a missing header or a slip of the pen.
cmake_minimum_required(VERSION 3.24)
include("${COMPILER}")

file(STRINGS "${CASE}" first_line LIMIT_COUNT 1)
if(NOT first_line MATCHES "^// expect: (.+)$")
    message(FATAL_ERROR "${CASE}\nhas no first line '// expect: <regex>', but: ${first_line}")
endif()
set(expected "${CMAKE_MATCH_1}")

function(compile out_status out_words)
    execute_process(
        COMMAND ${fitwright_compiler} ${ARGN} "${CASE}"
        RESULT_VARIABLE status OUTPUT_VARIABLE words ERROR_VARIABLE words)
    set(${out_status} "${status}" PARENT_SCOPE)
    set(${out_words} "${words}" PARENT_SCOPE)
endfunction()

compile(status words)
if(status STREQUAL "0")
    message(FATAL_ERROR "${CASE}\ncompiles, but must not; expected: ${expected}")
elseif(NOT status STREQUAL "1")
    message(FATAL_ERROR "${CASE}\nthe compiler could not be run or broke (${status}):\n${words}")
elseif(NOT words MATCHES "${expected}")
    message(FATAL_ERROR "${CASE}\nfails, but not for its reason.\nexpected: ${expected}\ngot:\n${words}")
endif()

compile(status words -DCONTROL)
if(NOT status STREQUAL "0")
    message(FATAL_ERROR "${CASE}\nthe right version (-DCONTROL) does not compile:\n${words}")
endif()
message(STATUS "refused as expected: ${expected}")
