# cmake -D RUN=<examples/scripts/run> -D WORK=<folder> -P check.cmake
#
# examples/scripts/run as people use it: twice, with arguments, from a folder with a blank in its name, with a
# script that does not compile, started by the script's own first line.
cmake_minimum_required(VERSION 3.24)

set(folder "${WORK}/a folder")
file(REMOVE_RECURSE "${folder}")
file(MAKE_DIRECTORY "${folder}")

# A compiler that counts how often it is called.
file(WRITE "${folder}/compiler" "#!/bin/sh\necho once >> '${folder}/calls'\nexec c++ \"$@\"\n")
file(CHMOD "${folder}/compiler" PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE)
set(ENV{XDG_CACHE_HOME} "${folder}/cache")
file(WRITE "${WORK}/counting" "#!/bin/sh\nexec '${folder}/compiler' \"$@\"\n")
file(CHMOD "${WORK}/counting" PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE)
set(ENV{CXX} "${WORK}/counting")
set(ENV{CXXFLAGS} "")

function(expect what status wanted_status out wanted_out)
    if(NOT status STREQUAL wanted_status OR NOT out STREQUAL wanted_out)
        message(FATAL_ERROR "${what}: status ${status}, not ${wanted_status}; printed\n${out}\nnot\n${wanted_out}")
    endif()
endfunction()

function(expect_calls wanted)
    file(STRINGS "${folder}/calls" calls)
    list(LENGTH calls count)
    if(NOT count EQUAL wanted)
        message(FATAL_ERROR "compiled ${count} times, not ${wanted}")
    endif()
endfunction()

set(script "${folder}/bore.cpp")
set(text "#include <fitwright/callout.hpp>\n#include <fitwright/io/limits.hpp>\n#include <iostream>\n
int main(int argc, char** argv) {
    if (argc < 2) return 7;
    if (const auto bore = fitwright::read_hole(argv[1])) std::cout << *bore << '\\n';
}
")
file(WRITE "${script}" "${text}")
foreach(turn IN ITEMS first second)
    execute_process(COMMAND "${RUN}" "${script}" "12 H7" RESULT_VARIABLE status OUTPUT_VARIABLE out)
    expect("${turn} run" "${status}" 0 "${out}" "12 +0.018/0\n") # ISO 286-1:2010, Tables 1 and 2
endforeach()
expect_calls(1)

execute_process(COMMAND "${RUN}" "${script}" RESULT_VARIABLE status OUTPUT_VARIABLE out)
expect("the script's own status" "${status}" 7 "${out}" "")

# Changed, it is compiled again. A first line for the shell is not C++, and the file can then be executed.
execute_process(COMMAND "${CMAKE_COMMAND}" -E sleep 1)
file(WRITE "${script}" "#!${RUN}\n${text}")
file(CHMOD "${script}" PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE)
execute_process(COMMAND "${script}" "12 H8" RESULT_VARIABLE status OUTPUT_VARIABLE out)
expect("started by itself" "${status}" 0 "${out}" "12 +0.027/0\n")
expect_calls(2)

# What is wrong is told with the script's own lines.
file(WRITE "${folder}/wrong.cpp" "#!${RUN}\nint main() { return no_such_name; }\n")
execute_process(COMMAND "${RUN}" "${folder}/wrong.cpp" RESULT_VARIABLE status OUTPUT_VARIABLE out ERROR_VARIABLE err)
expect("a script that does not compile" "${status}" 1 "${out}" "")
if(NOT err MATCHES "wrong\\.cpp:2:")
    message(FATAL_ERROR "the compiler's words don't name the script's line:\n${err}")
endif()
file(GLOB left "${folder}/cache/fitwright-scripts/*.cpp")
if(left)
    message(FATAL_ERROR "left behind: ${left}")
endif()

execute_process(COMMAND "${RUN}" "${folder}/no_such.cpp" RESULT_VARIABLE status ERROR_VARIABLE err)
expect("no script" "${status}" 2 "" "")
file(GLOB beside RELATIVE "${folder}" "${folder}/*")
expect("beside the script" 0 0 "${beside}" "bore.cpp;cache;calls;compiler;wrong.cpp")
