#ifndef FITWRIGHT_IO_HPP
#define FITWRIGHT_IO_HPP

// operator<< for everything, and `print` into a caller's buffer. A file a topic: whoever prints a
// length only includes <fitwright/io/length.hpp>.

#include <fitwright/io/callout.hpp>
#include <fitwright/io/chance.hpp>
#include <fitwright/io/choose.hpp>
#include <fitwright/io/error.hpp>
#include <fitwright/io/fit.hpp>
#include <fitwright/io/fits_within.hpp>
#include <fitwright/io/gauge.hpp>
#include <fitwright/io/leakage.hpp>
#include <fitwright/io/length.hpp>
#include <fitwright/io/limits.hpp>
#include <fitwright/io/press.hpp>
#include <fitwright/io/running.hpp>
#include <fitwright/io/source.hpp>
#include <fitwright/io/stack.hpp>
#include <fitwright/io/thermal.hpp>
#include <fitwright/io/tool.hpp>

#endif
