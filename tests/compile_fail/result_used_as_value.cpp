// expect: (conversion from .*result<.*to non-scalar type|no viable conversion from .*result<)
#include <fitwright/iso286.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
length width = standard_tolerance(12_mm, grade::it7).value();
#else
length width = standard_tolerance(12_mm, grade::it7);
#endif
