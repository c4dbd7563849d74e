// expect: (conversion from .*celsius.*to non-scalar type|no viable conversion from .*celsius)
#include <fitwright/units.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
temperature_difference warmer = temperature_difference(95_degC - 20_degC);
#else
temperature_difference warmer = 95_degC;
#endif
