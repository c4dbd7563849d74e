#ifndef FITWRIGHT_THERMAL_PART_HPP
#define FITWRIGHT_THERMAL_PART_HPP

#include <fitwright/material/material.hpp>
#include <fitwright/units.hpp>

namespace fitwright {

/// What a part is made of and how warm it is: `{materials::steel_c45, 60_degC}`.
struct warm_part {
    material made_of;
    temperature at;
};

} // namespace fitwright

#endif
