# cmake -D COMPILER=<build>/tests/compiler.cmake -D WHICH=fitwright|fitwright_core -D WORK=<folder>
#       -P check_single_include.cmake
#
# The unit tests against the library put together in one file: each tests/*_test.cpp all of whose
# headers are in there is compiled with an include folder in which each of our headers does nothing but
# bring in that file. Tests that turn the tables into variables to change them are left out.
cmake_minimum_required(VERSION 3.24)
include("${COMPILER}")

cmake_path(GET CMAKE_CURRENT_LIST_DIR PARENT_PATH root)
set(OUT "${WORK}/single_include/${WHICH}")
include("${CMAKE_CURRENT_LIST_DIR}/single_include.cmake")

# headers_in(<file>): those of ours that a single file holds.
function(headers_in file)
    file(STRINGS "${OUT}/${file}.hpp" marks REGEX "^// ==== fitwright/")
    list(TRANSFORM marks REPLACE "^// ==== " "")
    set(inside "${marks}" PARENT_SCOPE)
endfunction()

set(shims "${WORK}/single_include/${WHICH}_shims")
file(REMOVE_RECURSE "${shims}")
set(known "")
set(files ${WHICH})
if(WHICH STREQUAL "fitwright")
    list(APPEND files fitwright_io)
endif()
foreach(file IN LISTS files)
    headers_in(${file})
    foreach(header IN LISTS inside)
        file(WRITE "${shims}/${header}" "#include \"${OUT}/${file}.hpp\"\n")
    endforeach()
    list(APPEND known ${inside})
endforeach()

list(INSERT fitwright_compiler 1 "-I${shims}")
# Worked through once for all the tests, where the compiler can.
list(GET files -1 last)
set(precompile ${fitwright_compiler})
list(REMOVE_ITEM precompile -fsyntax-only)
if(NOT WHICH STREQUAL "fitwright_core")
    execute_process(COMMAND ${precompile} ${fitwright_warnings} -x c++-header "${OUT}/${last}.hpp"
                            -o "${OUT}/${last}.hpp.gch" COMMAND_ERROR_IS_FATAL ANY)
    list(APPEND fitwright_warnings -include "${OUT}/${last}.hpp")
endif()
file(GLOB tests "${root}/tests/*_test.cpp")
list(FILTER tests EXCLUDE REGEX "_mutation_test")
set(how_many 0)
set(bad "")
foreach(test IN LISTS tests)
    file(STRINGS "${test}" headers REGEX "^#include <fitwright/")
    list(TRANSFORM headers REPLACE "^[^<]*<([^>]+)>.*$" "\\1")
    list(REMOVE_ITEM headers ${known})
    if(headers)
        continue()
    endif()
    math(EXPR how_many "${how_many} + 1")
    execute_process(
        COMMAND ${fitwright_compiler} ${fitwright_warnings} ${fitwright_few_errors} "-DFITWRIGHT_TEST_DATA=\"\"" "${test}"
        RESULT_VARIABLE status OUTPUT_VARIABLE words ERROR_VARIABLE words)
    if(NOT status STREQUAL "0")
        list(APPEND bad "${test}")
        message(NOTICE "---- ${test}\n${words}")
    endif()
endforeach()
if(how_many LESS 5)
    message(FATAL_ERROR "${WHICH}: only ${how_many} tests are about what is in there")
endif()
if(bad)
    list(JOIN bad "\n  " bad)
    message(FATAL_ERROR "${WHICH}.hpp: these tests do not compile with it:\n  ${bad}")
endif()
message(STATUS "${WHICH}.hpp: ${how_many} tests compile with it")
