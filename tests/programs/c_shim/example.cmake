# cmake -D INTERPRETER=<program> -D SCRIPT=<file> -D LIBRARY=<file> -D EXPECTED=<file> -P example.cmake
#
# The example must exit with 0, print what the file holds, and be under 30 lines.
cmake_minimum_required(VERSION 3.24)

execute_process(COMMAND "${INTERPRETER}" "${SCRIPT}" "${LIBRARY}" OUTPUT_VARIABLE printed COMMAND_ERROR_IS_FATAL ANY)
file(READ "${EXPECTED}" expected)
if(NOT printed STREQUAL expected)
    message(FATAL_ERROR "it printed\n${printed}and not\n${expected}")
endif()

file(READ "${SCRIPT}" script)
string(REGEX MATCHALL "\n" lines "${script}")
list(LENGTH lines count)
if(NOT count LESS 30)
    message(FATAL_ERROR "${SCRIPT} has ${count} lines; allowed: under 30")
endif()
