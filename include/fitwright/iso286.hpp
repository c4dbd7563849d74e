#ifndef FITWRIGHT_ISO286_HPP
#define FITWRIGHT_ISO286_HPP

// ISO 286-1: standard tolerance grades, tolerance classes and their limits, preferred classes and fits.

#include <fitwright/iso286/limits.hpp>
#include <fitwright/iso286/preferred.hpp>
#include <fitwright/iso286/tolerance_class.hpp>

#endif
