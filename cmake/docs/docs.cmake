# The reference pages, `cmake --build <build> --target docs`, and a test that no public name goes undocumented.
# They take Doxygen and Python; without them there is no such target and no such test.
find_program(FITWRIGHT_DOXYGEN doxygen)
find_program(FITWRIGHT_PYTHON NAMES python3 python)
mark_as_advanced(FITWRIGHT_DOXYGEN FITWRIGHT_PYTHON)
if(NOT FITWRIGHT_DOXYGEN OR NOT FITWRIGHT_PYTHON)
    message(STATUS "no Doxygen or no Python: no target docs")
    return()
endif()

set(FITWRIGHT_DOCS_OUT "${PROJECT_BINARY_DIR}/docs")
set(FITWRIGHT_DOCS_VERSION "${PROJECT_VERSION}")
set(here "${PROJECT_SOURCE_DIR}/cmake/docs")

# The gallery's pictures, if the examples are built.
set(draw "")
set(copy "")
set(pictures "")
if(TARGET gallery)
    set(pictures "${FITWRIGHT_DOCS_OUT}/pictures")
    file(MAKE_DIRECTORY "${pictures}")
    set(draw COMMAND gallery "${pictures}")
    set(copy COMMAND ${CMAKE_COMMAND} -E copy_directory "${pictures}" "${FITWRIGHT_DOCS_OUT}/html")
endif()

configure_file("${here}/Doxyfile.in" "${FITWRIGHT_DOCS_OUT}/Doxyfile" @ONLY)
add_custom_target(
    docs
    ${draw}
    COMMAND "${FITWRIGHT_PYTHON}" "${here}/make_pages.py" "${PROJECT_SOURCE_DIR}" "${FITWRIGHT_DOCS_OUT}"
            ${pictures}
    COMMAND "${FITWRIGHT_DOXYGEN}" "${FITWRIGHT_DOCS_OUT}/Doxyfile"
    ${copy}
    COMMAND ${CMAKE_COMMAND} -E echo "docs: ${FITWRIGHT_DOCS_OUT}/html/index.html"
    USES_TERMINAL VERBATIM)

if(FITWRIGHT_BUILD_TESTS)
    add_test(NAME docs.names COMMAND "${FITWRIGHT_PYTHON}" "${here}/check_names.py" "${PROJECT_SOURCE_DIR}"
                                     "${FITWRIGHT_DOXYGEN}" "${FITWRIGHT_DOCS_OUT}/names")
    add_test(NAME docs.names_finds_a_probe
             COMMAND ${CMAKE_COMMAND} -D "PYTHON=${FITWRIGHT_PYTHON}" -D "DOXYGEN=${FITWRIGHT_DOXYGEN}"
                     -D "PROJECT=${PROJECT_SOURCE_DIR}" -D "WORK=${FITWRIGHT_DOCS_OUT}/probe"
                     -P "${here}/check_probe.cmake")
    add_test(NAME docs.pages COMMAND "${FITWRIGHT_PYTHON}" "${here}/make_pages.py" "${PROJECT_SOURCE_DIR}"
                                     "${FITWRIGHT_DOCS_OUT}/checked")
endif()
