// expect: (could not convert|no (viable|known) conversion from).*radial_interference.*diametral_interference
#include <fitwright/press.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr diametral_interference wanted = radial_interference(10_um).on_diameter();
#else
constexpr diametral_interference wanted = radial_interference(10_um);
#endif
