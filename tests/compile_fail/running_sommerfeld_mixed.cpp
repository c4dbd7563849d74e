// expect: (conversion from .*sommerfeld_number.* to non-scalar type|no viable conversion from .*sommerfeld_number)
#include <fitwright/running/sommerfeld.hpp>

using namespace fitwright;

#ifdef CONTROL
constexpr sommerfeld_load_number so(sommerfeld_number(0.121));
#else
constexpr sommerfeld_load_number so = sommerfeld_number(0.121);
#endif
