# What fitwright's own tests, examples and benchmarks have in common. None of it reaches a user of
# the library, and a parent project that asks for our programs gets them without -Werror.

set(FITWRIGHT_WARNINGS "")
if(fitwright_IS_TOP_LEVEL)
    if(MSVC)
        set(FITWRIGHT_WARNINGS /W4 /WX /permissive- /utf-8)
    else()
        set(FITWRIGHT_WARNINGS
            -Wall -Wextra -Wpedantic -Wconversion -Wsign-conversion -Wshadow -Wold-style-cast
            -Wundef -Werror)
    endif()
endif()

# fitwright_own(<target>): a program of ours, linked with the library, as strict as we are. Our
# headers are not system headers here, so they meet the same warnings; other people's are.
function(fitwright_own target)
    target_link_libraries(${target} PRIVATE fitwright::fitwright)
    target_compile_options(${target} PRIVATE ${FITWRIGHT_WARNINGS})
    set_target_properties(${target} PROPERTIES CXX_EXTENSIONS OFF)
endfunction()

# fitwright_write_compiler(<file>): what a `cmake -P` check needs to call the compiler itself.
# Sets fitwright_compiler (command with language, include folders), fitwright_warnings and
# fitwright_few_errors (the option that stops after a handful).
function(fitwright_write_compiler file)
    separate_arguments(flags NATIVE_COMMAND "${CMAKE_CXX_FLAGS}")
    set(command "${CMAKE_CXX_COMPILER}" ${flags} -std=c++20 -fsyntax-only
                "-I${PROJECT_SOURCE_DIR}/include")
    get_target_property(boost Boost::headers INTERFACE_INCLUDE_DIRECTORIES)
    if(boost)
        # -isystem on a folder the compiler searches anyway would upset #include_next.
        list(REMOVE_ITEM boost /usr/include ${CMAKE_CXX_IMPLICIT_INCLUDE_DIRECTORIES})
        list(TRANSFORM boost PREPEND -isystem)
        list(APPEND command ${boost})
    endif()
    set(few_errors -fmax-errors=5)
    if(CMAKE_CXX_COMPILER_ID MATCHES "Clang")
        set(few_errors -ferror-limit=5)
    endif()
    file(CONFIGURE OUTPUT "${file}" @ONLY CONTENT
"set(fitwright_compiler [[@command@]])
set(fitwright_warnings [[@FITWRIGHT_WARNINGS@]])
set(fitwright_few_errors @few_errors@)
")
endfunction()
