// A library that uses the headers as they are.
#include <fitwright/fitwright.hpp>

fitwright::length largest_bore(const char* callout) {
    const auto hole = fitwright::read_hole(callout);
    return hole ? hole->upper_limit() : fitwright::length();
}
