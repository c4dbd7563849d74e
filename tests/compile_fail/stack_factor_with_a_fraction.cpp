// expect: narrowing|cannot be narrowed
#include <fitwright/stack.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr chain_link l = opens("eye", 40_mm, plus_minus(50_um)).counted({.times = 1, .per = 2});
#else
constexpr chain_link l = opens("eye", 40_mm, plus_minus(50_um)).counted({.times = 0.5});
#endif
