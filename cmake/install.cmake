# cmake --install: the headers, also as single files, a package for find_package(fitwright) and one for
# pkg-config.
include(GNUInstallDirs)
include(CMakePackageConfigHelpers)

set(package_dir "${CMAKE_INSTALL_DATADIR}/cmake/fitwright")

install(
    TARGETS fitwright
    EXPORT fitwrightTargets
    FILE_SET HEADERS DESTINATION "${CMAKE_INSTALL_INCLUDEDIR}")
install(
    EXPORT fitwrightTargets
    NAMESPACE fitwright::
    DESTINATION "${package_dir}")

# The library as files to copy into another project: see single_include.cmake.
set(single_include_dir "${CMAKE_INSTALL_DATADIR}/fitwright/single_include")
install(CODE "execute_process(
    COMMAND \"${CMAKE_COMMAND}\" -D \"OUT=${PROJECT_BINARY_DIR}/single_include\"
            -P \"${PROJECT_SOURCE_DIR}/cmake/single_include.cmake\"
    COMMAND_ERROR_IS_FATAL ANY)")
install(DIRECTORY "${PROJECT_BINARY_DIR}/single_include/" DESTINATION "${single_include_dir}")

configure_package_config_file(
    cmake/fitwrightConfig.cmake.in "${PROJECT_BINARY_DIR}/fitwrightConfig.cmake"
    INSTALL_DESTINATION "${package_dir}"
    PATH_VARS single_include_dir
    NO_SET_AND_CHECK_MACRO)
write_basic_package_version_file(
    "${PROJECT_BINARY_DIR}/fitwrightConfigVersion.cmake"
    COMPATIBILITY SameMinorVersion
    ARCH_INDEPENDENT)
install(
    FILES "${PROJECT_BINARY_DIR}/fitwrightConfig.cmake"
          "${PROJECT_BINARY_DIR}/fitwrightConfigVersion.cmake"
    DESTINATION "${package_dir}")

# The prefix is found from where the file lies, so the installed tree can be moved.
file(RELATIVE_PATH pc_to_prefix "/${CMAKE_INSTALL_DATADIR}/pkgconfig" "/")
configure_file(cmake/fitwright.pc.in "${PROJECT_BINARY_DIR}/fitwright.pc" @ONLY)
install(FILES "${PROJECT_BINARY_DIR}/fitwright.pc"
        DESTINATION "${CMAKE_INSTALL_DATADIR}/pkgconfig")
