// expect: (cannot convert|could not convert|no viable conversion|no known conversion|no matching function).*(shaft|class_choice|side)
#include <fitwright/callout.hpp>
#include <fitwright/choose/fits_within.hpp>

using namespace fitwright;
using namespace fitwright::literals;

constexpr shaft_class stock = "h6"_shaft_class;

#ifdef CONTROL
fit_options options{.shaft = stock};
#else
fit_options options{.hole = stock};
#endif
