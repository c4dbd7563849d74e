// expect: this is not a unit of length
#include <fitwright/units.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
double size = (12_mm).in<inch>();
#else
double size = (12_mm).in<boost::units::si::pressure>();
#endif
