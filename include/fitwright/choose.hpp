#ifndef FITWRIGHT_CHOOSE_HPP
#define FITWRIGHT_CHOOSE_HPP

// The way back: from what a pair must do, and what is in hand, to the sizes that do it.

#include <fitwright/choose/choose.hpp>
#include <fitwright/choose/fits_within.hpp>
#include <fitwright/choose/mate.hpp>
#include <fitwright/choose/next_reamer.hpp>
#include <fitwright/choose/pairing.hpp>
#include <fitwright/choose/sleeve.hpp>
#include <fitwright/choose/sold_reamers.hpp>

#endif
