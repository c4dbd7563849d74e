// expect: could not convert|no viable conversion|cannot convert
#include <fitwright/choose/wants.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr wants all{.nominal = 8_mm, .must = want::turns_freely | want::holds_oil};
#else
constexpr wants all{.nominal = 8_mm, .must = 65};
#endif
