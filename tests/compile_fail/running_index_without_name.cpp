// expect: (no matching function|could not convert|no viable conversion).*viscosity_index
#include <fitwright/running/oil.hpp>

using namespace fitwright;

#ifdef CONTROL
const auto vg32 = oil(oil_kind::hydraulic, iso_vg::vg32, viscosity_index(95));
#else
const auto vg32 = oil(oil_kind::hydraulic, iso_vg::vg32, 95);
#endif
