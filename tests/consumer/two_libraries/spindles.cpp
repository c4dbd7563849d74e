// A library that has copied the core in one file.
#include "fitwright_core.hpp"

fitwright::length smallest_spindle(const char* callout) {
    const auto shaft = fitwright::read_shaft(callout);
    return shaft ? shaft->lower_limit() : fitwright::length();
}
