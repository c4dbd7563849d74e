#ifndef FITWRIGHT_STACK_HPP
#define FITWRIGHT_STACK_HPP

// Chains of dimensions and what is at their end: the gap, by rule and by trying, end float and its shims,
// backlash, and the second of two dowels.

#include <fitwright/stack/backlash.hpp>
#include <fitwright/stack/chain.hpp>
#include <fitwright/stack/end_float.hpp>
#include <fitwright/stack/least_backlash.hpp>
#include <fitwright/stack/screw_lash.hpp>
#include <fitwright/stack/simulate.hpp>
#include <fitwright/stack/stack_up.hpp>
#include <fitwright/stack/two_dowels.hpp>
#include <fitwright/stack/units.hpp>

#endif
