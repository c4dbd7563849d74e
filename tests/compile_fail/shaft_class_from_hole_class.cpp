// expect: (conversion from .*to non-scalar type|no viable conversion from).*(tolerance_class<fitwright::side::shaft>|shaft_class)
#include <fitwright/iso286.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr hole_class bore_class{position::h, grade::it7};
hole_class c = bore_class;
#else
constexpr hole_class bore_class{position::h, grade::it7};
shaft_class c = bore_class;
#endif
