# cmake -D PROGRAM=<program> -D EXPECTED=<file> -P check_output.cmake
#
# Runs the program: it must exit with 0 and, if the file is there, print exactly what the file holds.
cmake_minimum_required(VERSION 3.24)

execute_process(
    COMMAND "${PROGRAM}"
    RESULT_VARIABLE status OUTPUT_VARIABLE printed ERROR_VARIABLE complaints)
message(NOTICE "${printed}${complaints}")
if(NOT status STREQUAL "0")
    message(FATAL_ERROR "${PROGRAM} ended with ${status}, not 0")
endif()

if(EXISTS "${EXPECTED}")
    file(READ "${EXPECTED}" expected)
    if(NOT printed STREQUAL expected)
        message(FATAL_ERROR "its output differs from ${EXPECTED}, which holds:\n${expected}")
    endif()
endif()
