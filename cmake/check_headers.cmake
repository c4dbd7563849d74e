# cmake -D COMPILER=<build>/tests/compiler.cmake -D FLAVOUR=<flavour> -D WORK=<folder>
#       -P check_headers.cmake
#
#   alone                   each header in a file of its own, included twice and nothing else
#   reversed                every header, the last first
#   hostile_macros          every header after tests/headers/hostile_macros.hpp
#   no_exceptions_no_rtti   every header under -fno-exceptions -fno-rtti
#
# Under our warnings, as errors. All but the first compile all headers in one go, and each for itself
# only where that fails, to tell which header it is.
cmake_minimum_required(VERSION 3.24)
include("${COMPILER}")

cmake_path(GET CMAKE_CURRENT_LIST_DIR PARENT_PATH root)
file(GLOB_RECURSE headers RELATIVE "${root}/include" "${root}/include/fitwright/*.hpp")
list(SORT headers)
list(LENGTH headers how_many)
if(how_many EQUAL 0)
    message(FATAL_ERROR "no headers in ${root}/include/fitwright")
endif()

set(flags "")
set(preamble "")
if(FLAVOUR STREQUAL "hostile_macros")
    # What ours include from elsewhere comes first: only our own lines are to meet the macros.
    set(foreign "")
    foreach(header IN LISTS headers)
        file(STRINGS "${root}/include/${header}" lines REGEX "^ *# *include *<")
        list(FILTER lines EXCLUDE REGEX "<fitwright/")
        list(APPEND foreign ${lines})
    endforeach()
    list(TRANSFORM foreign REPLACE "^[^<]*<([^>]+)>.*$" "\\1")
    list(REMOVE_DUPLICATES foreign)
    list(SORT foreign)
    foreach(header IN LISTS foreign)
        string(APPEND preamble "#if __has_include(<${header}>)\n#include <${header}>\n#endif\n")
    endforeach()
    string(APPEND preamble "#include \"${root}/tests/headers/hostile_macros.hpp\"\n")
    foreach(letter IN ITEMS a b c d e f g h i j k l m n o p q r s t u v w x y z
                            A B C D E F G H I J K L M N O P Q R S T U V W X Y Z)
        foreach(digits RANGE 0 18)
            string(APPEND preamble "#define ${letter}${digits} HOSTILE\n")
        endforeach()
    endforeach()
elseif(FLAVOUR STREQUAL "no_exceptions_no_rtti")
    set(flags -fno-exceptions -fno-rtti)
elseif(FLAVOUR STREQUAL "reversed")
    list(REVERSE headers)
elseif(NOT FLAVOUR STREQUAL "alone")
    message(FATAL_ERROR "unknown flavour '${FLAVOUR}'")
endif()

# compile(<out> <name> <header>...): empty, or what the compiler said.
function(compile out name)
    set(text "${preamble}")
    foreach(header IN LISTS ARGN)
        string(APPEND text "#include <${header}>\n#include <${header}>\n")
    endforeach()
    set(file "${WORK}/${FLAVOUR}/${name}.cpp")
    file(WRITE "${file}" "${text}")
    execute_process(
        COMMAND ${fitwright_compiler} ${fitwright_warnings} ${fitwright_few_errors} ${flags} "${file}"
        RESULT_VARIABLE status OUTPUT_VARIABLE words ERROR_VARIABLE words)
    if(status STREQUAL "0")
        set(words "")
    elseif(words STREQUAL "")
        set(words "the compiler ended with ${status}")
    endif()
    set(${out} "${words}" PARENT_SCOPE)
endfunction()

if(NOT FLAVOUR STREQUAL "alone")
    compile(words all ${headers})
    if(words STREQUAL "")
        message(STATUS "${FLAVOUR}: ${how_many} headers are fine")
        return()
    endif()
    message(NOTICE "${words}")
endif()

set(bad "")
foreach(header IN LISTS headers)
    string(REPLACE "/" "_" name "${header}")
    compile(words "${name}" "${header}")
    if(NOT words STREQUAL "")
        list(APPEND bad "${header}")
        if(FLAVOUR STREQUAL "alone")
            message(NOTICE "---- ${header}\n${words}")
        endif()
    endif()
endforeach()
if(bad)
    list(JOIN bad "\n  " bad)
    message(FATAL_ERROR "${FLAVOUR}: these headers do not compile:\n  ${bad}")
elseif(NOT FLAVOUR STREQUAL "alone")
    message(FATAL_ERROR "${FLAVOUR}: each header compiles, but all of them together do not")
endif()
message(STATUS "${FLAVOUR}: ${how_many} headers are fine")
