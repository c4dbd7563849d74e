// expect: result_holds_no_value
#include <fitwright/material.hpp>

using namespace fitwright;

#ifdef CONTROL
constexpr material block = *find_material("EN AW-6082 T6");
#else
constexpr material block = *find_material("EN AW-6028 T6");
#endif
