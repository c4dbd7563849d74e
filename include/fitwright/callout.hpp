#ifndef FITWRIGHT_CALLOUT_HPP
#define FITWRIGHT_CALLOUT_HPP

// Call-outs: text to classes, limits and fits, at run time and while compiling, and back to text.

#include <fitwright/callout/callout.hpp>
#include <fitwright/callout/literals.hpp>
#include <fitwright/callout/read.hpp>
#include <fitwright/callout/write.hpp>

#endif
