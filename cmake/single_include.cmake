# cmake [-D OUT=<folder>] -P single_include.cmake
#
# Puts the library together in files that can be copied into another project, one include each:
#
#   fitwright.hpp       what <fitwright/fitwright.hpp> brings; needs the headers of Boost.Units
#   fitwright_io.hpp    printing: <fitwright/io.hpp>, on top of fitwright.hpp beside it
#   fitwright_core.hpp  limits, fits, call-outs and grids alone; needs nothing but the compiler
#
# A header stands where it is first included and keeps its guard, so that these files go together with
# each other and with the headers they are made of.
cmake_minimum_required(VERSION 3.24)

cmake_path(GET CMAKE_CURRENT_LIST_DIR PARENT_PATH root)
if(NOT OUT)
    set(OUT "${root}/build/single_include")
endif()

file(STRINGS "${root}/include/fitwright/version.hpp" version REGEX "^#define FITWRIGHT_VERSION_(MAJOR|MINOR|PATCH) ")
string(REGEX REPLACE "[^;]*_(MAJOR|MINOR|PATCH) +([0-9]+)[^;]*" "\\2" version "${version}")
list(JOIN version "." version)

# put(<header> ...): into `text` what the headers say, each once; `there` lists those that are in.
macro(put)
    foreach(header ${ARGN})
        put_one("${header}")
    endforeach()
endmacro()
function(put_one header)
    if(header IN_LIST there)
        return()
    endif()
    list(APPEND there "${header}")
    file(READ "${root}/include/${header}" rest)
    string(APPEND text "\n// ==== ${header}\n")
    while(rest MATCHES "(^|\n)(# *include <(fitwright/[a-z0-9_/]+\\.hpp)>[^\n]*\n)")
        set(line "${CMAKE_MATCH_2}")
        set(inner "${CMAKE_MATCH_3}")
        string(FIND "${rest}" "${line}" at)
        string(LENGTH "${line}" size)
        string(SUBSTRING "${rest}" 0 ${at} before)
        math(EXPR at "${at} + ${size}")
        string(SUBSTRING "${rest}" ${at} -1 rest)
        string(APPEND text "${before}")
        put_one("${inner}")
    endwhile()
    string(APPEND text "${rest}")
    set(text "${text}" PARENT_SCOPE)
    set(there "${there}" PARENT_SCOPE)
endfunction()

# begin(<what it is>), then put(…), then end(<file>).
macro(begin words)
    set(text "// fitwright ${version}: ${words}\n// Put together from its headers by cmake/single_include.cmake.\n")
    string(APPEND text "// Boost Software License, Version 1.0: https://www.boost.org/LICENSE_1_0.txt\n")
endmacro()
macro(end file)
    file(WRITE "${OUT}/${file}" "${text}")
endmacro()

set(there "")
begin("the whole library; <boost/units/...> has to be found")
put(fitwright/fitwright.hpp)
end(fitwright.hpp)

begin("printing, on top of the whole library")
string(APPEND text "#include \"fitwright.hpp\"\n")
put(fitwright/io.hpp)
end(fitwright_io.hpp)

set(there "")
begin("limits, fits, call-outs and grids; nothing but the compiler is needed")
put(fitwright/version.hpp fitwright/callout.hpp fitwright/fit.hpp fitwright/grid.hpp fitwright/inch.hpp
    fitwright/iso286.hpp fitwright/length.hpp fitwright/limits.hpp fitwright/written.hpp)
end(fitwright_core.hpp)
