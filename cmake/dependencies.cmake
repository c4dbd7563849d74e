# Finds what fitwright needs, or stops and says which package to install.

# fitwright_needs(<target> PACKAGE <name> FOR <purpose> OPTION <option that asks for it>
#                 APT <package> DNF <package> BREW <package> VCPKG <package>
#                 [VERSION <least>] [TRY_MODULE] [HEADER_ONLY <header> <definition>])
#
# After it <target> exists, for the whole build. Already there (a parent project may have brought
# its own) it is left alone. TRY_MODULE falls back on CMake's own Find<name>.cmake; HEADER_ONLY on
# the bare header, for distributions whose package has no CMake file.
function(fitwright_needs target)
    cmake_parse_arguments(
        PARSE_ARGV 1 need "TRY_MODULE" "PACKAGE;VERSION;FOR;OPTION;APT;DNF;BREW;VCPKG" "HEADER_ONLY")
    if(TARGET ${target})
        return()
    endif()

    find_package(${need_PACKAGE} ${need_VERSION} CONFIG QUIET GLOBAL)
    if(TARGET ${target})
        return()
    endif()

    if(need_TRY_MODULE)
        cmake_policy(PUSH)
        if(POLICY CMP0167)
            cmake_policy(SET CMP0167 OLD) # FindBoost.cmake still serves a Boost without CMake files
        endif()
        find_package(${need_PACKAGE} ${need_VERSION} MODULE QUIET GLOBAL)
        cmake_policy(POP)
        if(TARGET ${target})
            return()
        endif()
    endif()

    if(need_HEADER_ONLY)
        list(POP_FRONT need_HEADER_ONLY header)
        find_path(FITWRIGHT_${need_PACKAGE}_INCLUDE_DIR ${header})
        mark_as_advanced(FITWRIGHT_${need_PACKAGE}_INCLUDE_DIR)
        if(FITWRIGHT_${need_PACKAGE}_INCLUDE_DIR)
            add_library(${target} INTERFACE IMPORTED GLOBAL)
            target_include_directories(
                ${target} INTERFACE "${FITWRIGHT_${need_PACKAGE}_INCLUDE_DIR}")
            target_compile_definitions(${target} INTERFACE ${need_HEADER_ONLY})
            return()
        endif()
    endif()

    string(JOIN " " wanted ${need_PACKAGE} ${need_VERSION})
    if(need_VERSION)
        string(APPEND wanted " or newer")
    endif()
    set(turn_off "")
    if(need_OPTION)
        set(turn_off "or do without it: -D${need_OPTION}=OFF\n")
    endif()
    message(
        FATAL_ERROR
            "fitwright: ${wanted} was not found. ${need_FOR} it. Install it:\n"
            "  Debian, Ubuntu   apt install ${need_APT}\n"
            "  Fedora           dnf install ${need_DNF}\n"
            "  Homebrew         brew install ${need_BREW}\n"
            "  vcpkg            vcpkg install ${need_VCPKG}\n"
            "${turn_off}")
endfunction()

macro(fitwright_needs_boost)
    fitwright_needs(
        Boost::headers PACKAGE Boost VERSION 1.74 TRY_MODULE
        FOR "The library needs"
        APT libboost-dev DNF boost-devel BREW boost VCPKG boost-units)
endmacro()

macro(fitwright_needs_doctest)
    fitwright_needs(
        doctest::doctest PACKAGE doctest
        FOR "The tests need" OPTION FITWRIGHT_BUILD_TESTS
        APT doctest-dev DNF doctest-devel BREW doctest VCPKG doctest)
endmacro()

macro(fitwright_needs_benchmark)
    fitwright_needs(
        benchmark::benchmark PACKAGE benchmark
        FOR "The benchmarks need" OPTION FITWRIGHT_BUILD_BENCH
        APT libbenchmark-dev DNF google-benchmark-devel BREW google-benchmark VCPKG benchmark)
endmacro()

macro(fitwright_needs_example_libraries)
    fitwright_needs(
        CLI11::CLI11 PACKAGE CLI11
        FOR "The examples need" OPTION FITWRIGHT_BUILD_EXAMPLES
        APT libcli11-dev DNF cli11-devel BREW cli11 VCPKG cli11)
    fitwright_needs(
        fmt::fmt PACKAGE fmt
        FOR "The examples need" OPTION FITWRIGHT_BUILD_EXAMPLES
        APT libfmt-dev DNF fmt-devel BREW fmt VCPKG fmt)
    fitwright_needs(
        nlohmann_json::nlohmann_json PACKAGE nlohmann_json
        FOR "The examples need" OPTION FITWRIGHT_BUILD_EXAMPLES
        APT nlohmann-json3-dev DNF json-devel BREW nlohmann-json VCPKG nlohmann-json)
    fitwright_needs(
        tomlplusplus::tomlplusplus PACKAGE tomlplusplus
        HEADER_ONLY toml++/toml.h TOML_HEADER_ONLY=1
        FOR "The examples need" OPTION FITWRIGHT_BUILD_EXAMPLES
        APT libtomlplusplus-dev DNF tomlplusplus-devel BREW tomlplusplus VCPKG tomlplusplus)
endmacro()
