// expect: (could not convert|no viable conversion|no known conversion).*centistokes|no matching function for call to .film_at
#include <fitwright/running/film.hpp>

using namespace fitwright;

#ifdef CONTROL
const auto f = film_at({}, millipascal_seconds(25));
#else
const auto f = film_at({}, centistokes(25));
#endif
