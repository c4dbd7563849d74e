# A compiler and -I, or what pkg-config says, and nothing else.
if(PKG_CONFIG)
    set(ENV{PKG_CONFIG_PATH} "${STAGE}/share/pkgconfig")
    execute_process(COMMAND "${PKG_CONFIG}" --cflags fitwright OUTPUT_VARIABLE flags
                    OUTPUT_STRIP_TRAILING_WHITESPACE COMMAND_ERROR_IS_FATAL ANY)
    separate_arguments(flags UNIX_COMMAND "${flags}")
else()
    set(flags -I "${FITWRIGHT_SOURCE}/include")
endif()
if(BOOST_INCLUDE AND NOT BOOST_INCLUDE STREQUAL "/usr/include")
    list(APPEND flags -I "${BOOST_INCLUDE}")
endif()
execute_process(
    COMMAND "${CXX}" -std=c++20 ${flags} "${CMAKE_CURRENT_LIST_DIR}/shop_tool.cpp" -o "${PROGRAM}"
    COMMAND_ERROR_IS_FATAL ANY)
execute_process(COMMAND "${PROGRAM}" COMMAND_ERROR_IS_FATAL ANY)
