// expect: (no match for [^a-z]*operator==|invalid operands to binary expression).*radial_interference.*diametral_interference
#include <fitwright/press.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr bool same = radial_interference(10_um) == diametral_interference(20_um).on_radius();
#else
constexpr bool same = radial_interference(10_um) == diametral_interference(10_um);
#endif
