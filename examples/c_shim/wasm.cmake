# fitwright_c.wasm: clang++ and wasm-ld make it, without a C library for WebAssembly. The headers that
# fitwright includes of the standard library (<compare>, <cstdint>, …) are the same on every machine, so
# those that clang++ uses here will do. Where it can't be made FITWRIGHT_C_WASM is not set.

unset(FITWRIGHT_C_WASM)
find_program(FITWRIGHT_WASM_CLANG NAMES clang++ clang++-19 clang++-18 clang++-17 clang++-16 clang++-15 clang++-14)
find_program(FITWRIGHT_WASM_LD NAMES wasm-ld wasm-ld-19 wasm-ld-18 wasm-ld-17 wasm-ld-16 wasm-ld-15 wasm-ld-14)
mark_as_advanced(FITWRIGHT_WASM_CLANG FITWRIGHT_WASM_LD)
if(NOT FITWRIGHT_WASM_CLANG OR NOT FITWRIGHT_WASM_LD)
    message(STATUS "no clang++ or no wasm-ld here: fitwright_c.wasm is left out")
    return()
endif()

# Where clang++ looks for its headers, in its order: between the two lines that say so.
set(wasm_dir "${CMAKE_CURRENT_BINARY_DIR}/wasm")
file(WRITE "${wasm_dir}/empty.cpp" "")
execute_process(
    COMMAND ${CMAKE_COMMAND} -E env LC_ALL=C "${FITWRIGHT_WASM_CLANG}" -std=c++20 -E -v "${wasm_dir}/empty.cpp"
    OUTPUT_QUIET ERROR_VARIABLE said)
string(REGEX MATCH "#include <\\.\\.\\.> search starts here:\n(.*)End of search list" found "${said}")
string(REGEX MATCHALL "[^\n]+" folders "${CMAKE_MATCH_1}")
set(wasm_includes "")
foreach(folder IN LISTS folders)
    string(STRIP "${folder}" folder)
    list(APPEND wasm_includes -isystem "${folder}")
endforeach()

# glibc has this one for 32 bits only where programs of 32 bits can be built; it holds nothing for us.
file(WRITE "${wasm_dir}/include/gnu/stubs-32.h" "")

# What is visible is exported; nothing is imported, and -mbulk-memory is what copies memory.
set(wasm_command
    "${FITWRIGHT_WASM_CLANG}" --target=wasm32 -mbulk-memory -std=c++20 -O2 -fvisibility=hidden
    -ffreestanding -fno-exceptions -fno-rtti -nostdlib -nostdinc "-I${PROJECT_SOURCE_DIR}/include"
    -isystem "${wasm_dir}/include" ${wasm_includes} "-fuse-ld=${FITWRIGHT_WASM_LD}" -Wl,--no-entry
    -Wl,--export-dynamic -Wl,--export=__heap_base -Wl,--stack-first -Wl,-z,stack-size=131072 -Wl,--strip-all)

file(WRITE "${wasm_dir}/probe.cpp" "#include <compare>\n#include <cstdint>\n#include <type_traits>\n#include <string.h>\n")
execute_process(
    COMMAND ${wasm_command} "${wasm_dir}/probe.cpp" -o "${wasm_dir}/probe.wasm"
    RESULT_VARIABLE status OUTPUT_VARIABLE said ERROR_VARIABLE said)
if(NOT status STREQUAL "0")
    message(STATUS "${FITWRIGHT_WASM_CLANG} makes no WebAssembly here: fitwright_c.wasm is left out")
    return()
endif()

set(FITWRIGHT_C_WASM "${CMAKE_CURRENT_BINARY_DIR}/fitwright_c.wasm")
file(GLOB_RECURSE wasm_needs CONFIGURE_DEPENDS "${PROJECT_SOURCE_DIR}/include/fitwright/*.hpp"
     "${CMAKE_CURRENT_SOURCE_DIR}/*.h" "${CMAKE_CURRENT_SOURCE_DIR}/*.hpp")
add_custom_command(
    OUTPUT "${FITWRIGHT_C_WASM}"
    COMMAND ${wasm_command} "${CMAKE_CURRENT_SOURCE_DIR}/fitwright_c.cpp" -o "${FITWRIGHT_C_WASM}"
    DEPENDS fitwright_c.cpp ${wasm_needs}
    VERBATIM)
add_custom_target(fitwright_c_wasm ALL DEPENDS "${FITWRIGHT_C_WASM}")
