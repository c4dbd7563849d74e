// expect: conversion from .*stated_limits|no viable conversion from .*stated_limits
#include <fitwright/choose/wants.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr leading_part lead = shaft_limits(between(7.98_mm, 7.986_mm));
#else
constexpr leading_part lead = between(7.98_mm, 7.986_mm);
#endif
