#ifndef FITWRIGHT_RUNNING_HPP
#define FITWRIGHT_RUNNING_HPP

// Parts that run on each other: what is between them, whether it carries, and how loose they should be.

#include <fitwright/running/bush_fits.hpp>
#include <fitwright/running/clearance_on.hpp>
#include <fitwright/running/clearances.hpp>
#include <fitwright/running/film.hpp>
#include <fitwright/running/flow.hpp>
#include <fitwright/running/journal.hpp>
#include <fitwright/running/leakage.hpp>
#include <fitwright/running/lubricant.hpp>
#include <fitwright/running/nearest_fit.hpp>
#include <fitwright/running/petroff.hpp>
#include <fitwright/running/sommerfeld.hpp>
#include <fitwright/running/speed_clearance.hpp>
#include <fitwright/running/units.hpp>

#endif
