#ifndef FITWRIGHT_INCH_HPP
#define FITWRIGHT_INCH_HPP

// ANSI B4.1: standard inch fits RC, LC, LT, LN, FN and inch tolerance grades. ANSI B4.2: preferred
// metric fits.

#include <fitwright/inch/fit_class.hpp>
#include <fitwright/inch/inch_fit.hpp>
#include <fitwright/inch/preferred_metric.hpp>
#include <fitwright/inch/read_fit_class.hpp>
#include <fitwright/inch/tolerance_grades.hpp>

#endif
