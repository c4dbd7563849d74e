// expect: (conversion from .*mass_base_dimension.* to non-scalar type [^a-z]*fitwright::length|no viable conversion from .*mass_base_dimension.* to [^a-z]*fitwright::length)
#include <fitwright/units.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
length size = quantity<millimetre>::from_value(12);
#else
length size = force::from_value(12);
#endif
