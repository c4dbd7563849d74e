// expect: no matching function for call to .*leak_budget|no matching constructor for initialization of .*leak_budget
#include <fitwright/choose/wants.hpp>

using namespace fitwright;
using namespace fitwright::literals;

constexpr gap around{.diameter = 8_mm, .land = 20_mm};

#ifdef CONTROL
constexpr leak_budget budget(around, millilitres_per_minute(2));
#else
constexpr leak_budget budget(around, percent{2});
#endif
