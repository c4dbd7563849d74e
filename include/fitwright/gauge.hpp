#ifndef FITWRIGHT_GAUGE_HPP
#define FITWRIGHT_GAUGE_HPP

// Is the part within its limits: limit gauges to make (ISO/R 1938), and what a reading proves (ISO 14253-1).

#include <fitwright/gauge/judge.hpp>
#include <fitwright/gauge/limit_gauge.hpp>
#include <fitwright/gauge/uncertainty.hpp>

#endif
