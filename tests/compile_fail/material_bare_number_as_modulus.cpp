// expect: (could not convert|no viable conversion from [^a-z]*double)
#include <fitwright/material.hpp>

using namespace fitwright;

#ifdef CONTROL
constexpr material mine{.name = "mine", .youngs_modulus = gigapascals(210)};
#else
constexpr material mine{.name = "mine", .youngs_modulus = 210e9};
#endif
