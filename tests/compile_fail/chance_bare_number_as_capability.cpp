// expect: (cannot convert|could not convert|no viable conversion|no matching function|no known conversion).*(double|capability|normal)
#include <fitwright/chance.hpp>

using namespace fitwright;

#ifdef CONTROL
auto bell = size_distribution::normal({.cp = 1.33});
#else
auto bell = size_distribution::normal(1.33);
#endif
