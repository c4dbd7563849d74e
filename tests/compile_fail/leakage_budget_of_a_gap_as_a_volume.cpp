// expect: no matching function for call to .*greatest_clearance
#include <fitwright/running/leakage.hpp>

using namespace fitwright;

constexpr gap around{};

#ifdef CONTROL
constexpr auto allowed = greatest_clearance(around, millilitres_per_minute(2));
#else
constexpr auto allowed = greatest_clearance(around, millilitres(2));
#endif
