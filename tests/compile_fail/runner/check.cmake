# Checks cmake/check_compile_fail.cmake itself: a good case must pass, each bad one must fail with
# its own verdict.
cmake_minimum_required(VERSION 3.24)

function(run_case name out_status out_words)
    execute_process(
        COMMAND "${CMAKE_COMMAND}" -D "COMPILER=${COMPILER}"
                -D "CASE=${CMAKE_CURRENT_LIST_DIR}/${name}.cpp"
                -P "${CMAKE_CURRENT_LIST_DIR}/../../../cmake/check_compile_fail.cmake"
        RESULT_VARIABLE status OUTPUT_VARIABLE words ERROR_VARIABLE words)
    set(${out_status} "${status}" PARENT_SCOPE)
    set(${out_words} "${words}" PARENT_SCOPE)
endfunction()

run_case(good status words)
if(NOT status STREQUAL "0")
    message(FATAL_ERROR "good.cpp must pass, but:\n${words}")
endif()

function(must_be_reported name verdict)
    run_case(${name} status words)
    if(status STREQUAL "0" OR NOT words MATCHES "${verdict}")
        message(FATAL_ERROR "${name}.cpp must be reported: ${verdict}\ngot (${status}):\n${words}")
    endif()
endfunction()

must_be_reported(compiles "compiles, but must not")
must_be_reported(other_reason "fails, but not for its reason")
must_be_reported(control_fails "the right version .-DCONTROL. does not compile")
must_be_reported(no_expectation "has no first line")
