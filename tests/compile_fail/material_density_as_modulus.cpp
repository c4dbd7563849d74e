// expect: (could not convert|no viable conversion|no matching constructor)
#include <fitwright/material.hpp>

using namespace fitwright;

#ifdef CONTROL
constexpr material mine{.name = "mine", .youngs_modulus = gigapascals(70)};
#else
constexpr material mine{.name = "mine", .youngs_modulus = kilograms_per_cubic_metre(7850)};
#endif
