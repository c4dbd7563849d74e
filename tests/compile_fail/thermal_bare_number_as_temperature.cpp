// expect: (invalid initialization of reference|no matching function|no (viable|known) conversion|could not convert)
#include <fitwright/material.hpp>
#include <fitwright/thermal/growth.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr auto grown = growth(100_mm, materials::steel_c45, celsius(95));
#else
constexpr auto grown = growth(100_mm, materials::steel_c45, 95);
#endif
