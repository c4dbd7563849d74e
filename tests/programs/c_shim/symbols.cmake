# cmake -D NM=<nm> -D LIBRARY=<shared library> -D HEADER=<fitwright_c.h> -P symbols.cmake
#
# The library shows exactly the functions that the header declares.
cmake_minimum_required(VERSION 3.24)

execute_process(COMMAND "${NM}" -D --defined-only "${LIBRARY}" OUTPUT_VARIABLE listed COMMAND_ERROR_IS_FATAL ANY)
string(REGEX MATCHALL "[^\n ]+\n" shown "${listed}")
list(TRANSFORM shown STRIP)

file(READ "${HEADER}" header)
string(REGEX MATCHALL "FITWRIGHT_API u?int32_t fitwright_[a-z_]+" declared "${header}")
list(TRANSFORM declared REPLACE ".* " "")
list(LENGTH declared count)
if(count EQUAL 0)
    message(FATAL_ERROR "${HEADER} declares nothing")
endif()

list(SORT shown)
list(SORT declared)
if(NOT shown STREQUAL declared)
    message(FATAL_ERROR "shown: ${shown}\ndeclared: ${declared}")
endif()
