#ifndef FITWRIGHT_RUNNING_LUBRICANT_HPP
#define FITWRIGHT_RUNNING_LUBRICANT_HPP

// What runs in the gap, and how thick it is: oils by their grades, water, a fluid of your own.

#include <fitwright/running/fluid.hpp>
#include <fitwright/running/oil.hpp>
#include <fitwright/running/oil_grade.hpp>
#include <fitwright/running/viscosity.hpp>
#include <fitwright/running/viscosity_index.hpp>

#endif
