// A part still warm from the cut, read by a micrometer that is not: what it will be at 20 C.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    constexpr measured_hole reading(50.031_mm, 2_um);
    const auto bore =
        size_at_20(reading, materials::aluminium_6082_t6, 34_degC, {materials::gauge_block_steel, 22_degC});
    if (!bore) return std::cout << bore.error() << '\n', 1;
    std::cout << "read   " << reading << '\n' << "it is  " << *bore << '\n';
    std::cout << "50 H7: the reading as it stands says " << in_words(judge(reading, "50 H7"_hole))
              << ", corrected it says " << in_words(judge(bore->part, "50 H7"_hole)) << '\n';
}
