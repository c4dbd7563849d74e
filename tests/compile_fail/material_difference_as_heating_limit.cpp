// expect: (could not convert|no viable conversion)
#include <fitwright/material.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr material mine{.name = "mine", .highest_heating = 200_degC};
#else
constexpr material mine{.name = "mine", .highest_heating = 200_K};
#endif
