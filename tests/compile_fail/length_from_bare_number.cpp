// expect: (conversion from [^a-z]*int[^a-z]* to non-scalar type|no viable conversion from [^a-z]*int[^a-z]* to [^a-z]*(fitwright::)?length)
#include <fitwright/length.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
length size = 12_mm;
#else
length size = 12;
#endif
