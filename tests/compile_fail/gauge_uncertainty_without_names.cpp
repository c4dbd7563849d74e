// expect: (no matching function for call to|too many arguments to function|invalid initialization of reference of type).*(expanded_uncertainty|instrument)
#include <fitwright/gauge/uncertainty.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
auto uncertainty = expanded_uncertainty({.resolution = 10_um, .error_limit = 4_um});
#else
auto uncertainty = expanded_uncertainty(10_um, 4_um);
#endif
