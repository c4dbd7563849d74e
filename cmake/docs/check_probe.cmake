# cmake -D PYTHON=... -D DOXYGEN=... -D PROJECT=... -D WORK=... -P check_probe.cmake
# check_names.py has to find names without a comment: a function, an alias, an enum, a constant and a member.
file(REMOVE_RECURSE "${WORK}/project")
file(COPY "${PROJECT}/include" DESTINATION "${WORK}/project")
file(COPY "${PROJECT}/cmake/docs/glossary.txt" DESTINATION "${WORK}/project/cmake/docs")
file(WRITE "${WORK}/project/include/fitwright/probe.hpp" "namespace fitwright {
inline int probe_function() { return 1; }
inline int size(int probe) { return probe; }
using probe_alias = int;
enum class probe_enum { one };
inline constexpr int probe_constant = 1;
/// A probe.
struct probe_struct {
    int probe_member;
};
}
")
execute_process(COMMAND "${PYTHON}" "${PROJECT}/cmake/docs/check_names.py" "${WORK}/project" "${DOXYGEN}" "${WORK}/names"
                RESULT_VARIABLE status OUTPUT_VARIABLE out)
foreach(name IN ITEMS probe_function "size\\(int" probe_alias probe_enum probe_constant probe_member)
    if(status STREQUAL "0" OR NOT out MATCHES "Member ${name}")
        message(FATAL_ERROR "not found: ${name}; status ${status}\n${out}")
    endif()
endforeach()
