# cmake -D CXX=<compiler> -D FITWRIGHT_SOURCE=<folder> -D BOOST_INCLUDE=<folder> -D WORK=<folder>
#       -D WHICH=single|core|freestanding|two_libraries|cxx23 -P build.cmake
#
# A compiler, a folder or two to look in, and nothing else.
cmake_minimum_required(VERSION 3.24)
set(here "${CMAKE_CURRENT_LIST_DIR}")
set(single "${WORK}/${WHICH}/include")
file(MAKE_DIRECTORY "${single}")

set(boost "")
if(BOOST_INCLUDE AND NOT BOOST_INCLUDE STREQUAL "/usr/include")
    set(boost -I "${BOOST_INCLUDE}")
endif()

macro(put_together)
    execute_process(COMMAND ${CMAKE_COMMAND} -D "OUT=${single}"
                            -P "${FITWRIGHT_SOURCE}/cmake/single_include.cmake" COMMAND_ERROR_IS_FATAL ANY)
endmacro()

# run(<standard> <argument>...): compiles, links and runs.
macro(run standard)
    execute_process(COMMAND "${CXX}" "-std=${standard}" -Wall -Wextra -Werror ${ARGN} -o "${WORK}/${WHICH}/program"
                            COMMAND_ERROR_IS_FATAL ANY)
    execute_process(COMMAND "${WORK}/${WHICH}/program" COMMAND_ERROR_IS_FATAL ANY)
endmacro()

if(WHICH STREQUAL "single")
    # The same program as everybody's, with our two files in place of our folder.
    put_together()
    file(READ "${here}/shop_tool.cpp" text)
    string(REPLACE "<fitwright/fitwright.hpp>" "\"fitwright.hpp\"" text "${text}")
    string(REPLACE "<fitwright/io.hpp>" "\"fitwright_io.hpp\"" text "${text}")
    file(WRITE "${WORK}/${WHICH}/shop_tool.cpp" "${text}")
    run(c++20 -I "${single}" ${boost} "${WORK}/${WHICH}/shop_tool.cpp")
elseif(WHICH STREQUAL "core")
    put_together()
    run(c++20 -I "${single}" "${here}/core_tool.cpp")
    execute_process(COMMAND "${CXX}" -std=c++20 -I "${single}" -M "${here}/core_tool.cpp"
                    OUTPUT_VARIABLE read COMMAND_ERROR_IS_FATAL ANY)
    if(read MATCHES "boost")
        message(FATAL_ERROR "the core reads headers of Boost:\n${read}")
    endif()
elseif(WHICH STREQUAL "freestanding")
    put_together()
    set(spindles "${WORK}/${WHICH}/spindles.o")
    execute_process(COMMAND "${CXX}" -std=c++20 -Wall -Wextra -Werror -fno-exceptions -fno-rtti -ffreestanding
                            -I "${single}" -c "${here}/two_libraries/spindles.cpp" -o "${spindles}"
                            COMMAND_ERROR_IS_FATAL ANY)
    run(c++20 -I "${FITWRIGHT_SOURCE}/include" ${boost} "${here}/two_libraries/bores.cpp" "${spindles}"
        "${here}/two_libraries/main.cpp")
elseif(WHICH STREQUAL "two_libraries")
    put_together()
    run(c++20 -I "${single}" -I "${FITWRIGHT_SOURCE}/include" ${boost} "${here}/two_libraries/bores.cpp"
        "${here}/two_libraries/spindles.cpp" "${here}/two_libraries/main.cpp")
elseif(WHICH STREQUAL "cxx23")
    run(c++2b -I "${FITWRIGHT_SOURCE}/include" ${boost} "${here}/shop_tool.cpp")
else()
    message(FATAL_ERROR "there is no way to build called '${WHICH}'")
endif()
