#ifndef FITWRIGHT_FITWRIGHT_HPP
#define FITWRIGHT_FITWRIGHT_HPP

// Everything but io.hpp, which brings in the streams, and tool/trials.hpp, which brings in Boost.Math.

#include <fitwright/callout.hpp>
#include <fitwright/chance.hpp>
#include <fitwright/choose.hpp>
#include <fitwright/error.hpp>
#include <fitwright/fit.hpp>
#include <fitwright/gauge.hpp>
#include <fitwright/general.hpp>
#include <fitwright/grid.hpp>
#include <fitwright/inch.hpp>
#include <fitwright/iso286.hpp>
#include <fitwright/length.hpp>
#include <fitwright/limits.hpp>
#include <fitwright/material.hpp>
#include <fitwright/press.hpp>
#include <fitwright/running.hpp>
#include <fitwright/source.hpp>
#include <fitwright/stack.hpp>
#include <fitwright/thermal.hpp>
#include <fitwright/tool.hpp>
#include <fitwright/units.hpp>
#include <fitwright/version.hpp>
#include <fitwright/written.hpp>

#endif
