// expect: result_holds_no_value
#include <fitwright/material.hpp>

using namespace fitwright;

#ifdef CONTROL
constexpr double yield = (*materials::steel_c45.yield_strength).value();
#else
constexpr double yield = (*materials::granite.yield_strength).value(); // nobody knows
#endif
