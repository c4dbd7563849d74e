// expect: (no matching function for call to [^a-z]*fitwright::fit::fit|no matching constructor for initialization of [^a-z]*(fitwright::)?fit)
#include <fitwright/fit.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr hole_limits bore(8_mm, {.upper = 15_um, .lower = 0_um});
fit slide{bore, between(7.98_mm, 7.99_mm)};
#else
constexpr hole_limits bore(8_mm, {.upper = 15_um, .lower = 0_um});
fit slide{bore, bore};
#endif
