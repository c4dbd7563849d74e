#ifndef FITWRIGHT_FITWRIGHT_HPP
#define FITWRIGHT_FITWRIGHT_HPP

// Sizes, limits, fits, call-outs, and parts that lead. Not in here, since each costs something to
// compile: io.hpp, which brings in the streams, and the rooms of the shop: general.hpp, gauge.hpp,
// tool.hpp, material.hpp.

#include <fitwright/callout.hpp>
#include <fitwright/choose.hpp>
#include <fitwright/error.hpp>
#include <fitwright/fit.hpp>
#include <fitwright/grid.hpp>
#include <fitwright/inch.hpp>
#include <fitwright/iso286.hpp>
#include <fitwright/length.hpp>
#include <fitwright/limits.hpp>
#include <fitwright/source.hpp>
#include <fitwright/units.hpp>
#include <fitwright/version.hpp>
#include <fitwright/written.hpp>

#endif
