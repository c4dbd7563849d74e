// expect: no matching function for call to .*greatest_clearance
#include <fitwright/running/leakage.hpp>

using namespace fitwright;

constexpr plunger doser{};

#ifdef CONTROL
constexpr auto allowed = greatest_clearance(doser, percent{2});
#else
constexpr auto allowed = greatest_clearance(doser, 0.02);
#endif
