// Plans in inches: a close running fit of ANSI B4.1, and the same bore for a metric drawing.
#include <fitwright/callout.hpp>
#include <fitwright/grid.hpp>
#include <fitwright/inch.hpp>
#include <fitwright/io/fit.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    constexpr fit running = "1/2 in RC4"_fit;
    static_assert(running.min_clearance() == 0.0006_in);
    std::cout << written(running.hole(), written_unit::in) << ", "
              << written(running.shaft(), written_unit::in) << "\nfrom " << running.hole().origin() << '\n'
              << "the bore in mm, two decimals, inwards: " << *rounded_inwards(running.hole(), 0.01_mm)
              << '\n'
              << "RC4 is for " << purpose(inch_fit_class::rc4) << '\n';
    if (const auto none = inch_fit("RC4", 30_in); !none) std::cout << none.error() << '\n';
}
