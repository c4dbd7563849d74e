# cmake -D NPM=... -D WORK=<folder> -P setup.cmake
# The packages of package-lock.json into WORK/node_modules, unless they are there. None of them runs a
# script of its own on the way.
file(COPY "${CMAKE_CURRENT_LIST_DIR}/package.json" "${CMAKE_CURRENT_LIST_DIR}/package-lock.json"
     DESTINATION "${WORK}")
file(SHA256 "${WORK}/package-lock.json" wanted)
set(stamp "${WORK}/node_modules/.from")
if(EXISTS "${stamp}")
    file(READ "${stamp}" installed)
    if(installed STREQUAL wanted)
        return()
    endif()
endif()

execute_process(
    COMMAND "${NPM}" ci --ignore-scripts --no-audit --no-fund
    WORKING_DIRECTORY "${WORK}"
    RESULT_VARIABLE failed)
if(failed)
    message(FATAL_ERROR "npm could not install what the tests of the pages take; its reason stands above. "
                        "It takes the npm registry, once; to leave them out: ctest -E '^pages'")
endif()
file(WRITE "${stamp}" "${wanted}")
