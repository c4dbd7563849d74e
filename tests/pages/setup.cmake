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

# npm has certificates of its own; the system's are what its registry is reached by here.
set(bundle /etc/ssl/certs/ca-certificates.crt)
if(NOT DEFINED ENV{NODE_EXTRA_CA_CERTS} AND EXISTS "${bundle}")
    set(ENV{NODE_EXTRA_CA_CERTS} "${bundle}")
endif()
execute_process(
    COMMAND "${NPM}" ci --ignore-scripts --no-audit --no-fund
    WORKING_DIRECTORY "${WORK}"
    RESULT_VARIABLE failed)
if(failed)
    # Out of reach of the registry the pages can't be judged; that is no fault of theirs.
    file(REMOVE_RECURSE "${WORK}/node_modules")
    message("skipped: npm could not install what the tests of the pages take; its reason stands above")
    return()
endif()
file(WRITE "${stamp}" "${wanted}")
