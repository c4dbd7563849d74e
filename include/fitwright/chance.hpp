#ifndef FITWRIGHT_CHANCE_HPP
#define FITWRIGHT_CHANCE_HPP

// How often: the clearance of many pairs, when hole and shaft come out as they are said to.

#include <fitwright/chance/clearance_distribution.hpp>
#include <fitwright/chance/probability.hpp>
#include <fitwright/chance/size_distribution.hpp>

#endif
