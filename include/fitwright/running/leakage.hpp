#ifndef FITWRIGHT_RUNNING_LEAKAGE_HPP
#define FITWRIGHT_RUNNING_LEAKAGE_HPP

// What leaks past a plunger, a spool or a rod, per second or per stroke, and how loose it may be.

#include <fitwright/running/flow.hpp>
#include <fitwright/running/gap.hpp>
#include <fitwright/running/leak.hpp>
#include <fitwright/running/plunger.hpp>
#include <fitwright/running/sliding_drag.hpp>

#endif
