// The whole library in two files of one program: it must link (nothing is defined twice), and both
// must mean the same by it.
#include "two_files.hpp"

#include <iostream>
#include <sstream>

using namespace fitwright::literals;

int main() {
    constexpr auto slide = "12 H7/g6"_fit;
    const auto read = fitwright::read_fit("12 H7/g6");
    std::ostringstream printed;
    printed << slide << ' ' << slide.hole() << ' ' << slide.shaft();

    const auto other = other_file();
    const bool same = other.slide.hole().upper_limit() == slide.hole().upper_limit() &&
                      other.slide.min_clearance() == slide.min_clearance() && read.has_value() &&
                      other.read.has_value() &&
                      other.read->max_clearance() == read->max_clearance() &&
                      other.printed == printed.str();
    std::cout << printed.str() << '\n' << other.printed << '\n';
    if (!same) std::cout << "the two files disagree\n";
    return same ? 0 : 1;
}
