// Both in one program, which uses the library itself.
#include <fitwright/callout.hpp>

fitwright::length largest_bore(const char* callout);
fitwright::length smallest_spindle(const char* callout);

int main() {
    const auto pair = fitwright::read_fit("25 H7/g6");
    return pair && largest_bore("25 H7") - smallest_spindle("25 g6") == pair->max_clearance() ? 0 : 1;
}
