// expect: (no matching function|could not convert|no viable conversion).*radial_clearance
#include <fitwright/running/nearest_fit.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
const auto f = nearest_running_fit(12_mm, diametral_clearance(radial_clearance(10_um)), basis::hole);
#else
const auto f = nearest_running_fit(12_mm, radial_clearance(10_um), basis::hole);
#endif
