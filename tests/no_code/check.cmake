# The object of only_literals.cpp holds its two functions and no symbol, table or text of the library.
include("${COMPILER}")
list(REMOVE_ITEM fitwright_compiler -fsyntax-only)
set(object "${WORK}/only_literals.o")
execute_process(COMMAND ${fitwright_compiler} -O1 -c "${CMAKE_CURRENT_LIST_DIR}/only_literals.cpp" -o "${object}"
                COMMAND_ERROR_IS_FATAL ANY)
execute_process(COMMAND "${NM}" "${object}" OUTPUT_VARIABLE symbols COMMAND_ERROR_IS_FATAL ANY)
if(NOT symbols MATCHES "least_clearance_in_nanometres")
    message(FATAL_ERROR "the program itself is not there:\n${symbols}")
endif()
if(symbols MATCHES "9fitwright|slide")
    message(FATAL_ERROR "a compile-time call-out left something behind:\n${symbols}")
endif()
