#include <fitwright/callout.hpp>
#include <fitwright/io/fit.hpp>

#include <iostream>

using namespace fitwright::literals;

int main() {
    constexpr auto slide = "12 H7/g6"_fit; // checked while compiling, exact to the table
    static_assert(slide.min_clearance() == 6_um && slide.max_clearance() == 35_um);
    std::cout << slide << '\n';

    for (const char* line : {"12 H8/f7", "12 h7/g6"}) // text that may be wrong
        if (const auto f = fitwright::read_fit(line)) std::cout << f->min_clearance() << " at least\n";
        else std::cout << f.error() << '\n';
}
