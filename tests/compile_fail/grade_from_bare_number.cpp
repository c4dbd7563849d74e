// expect: (conversion from [^a-z]*int[^a-z]* to non-scalar type|no viable conversion from [^a-z]*int[^a-z]* to [^a-z]*(fitwright::)?grade)
#include <fitwright/iso286.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
grade it = grade(7);
#else
grade it = 7;
#endif
