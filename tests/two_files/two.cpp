#include "two_files.hpp"

#include <sstream>

using namespace fitwright::literals;

seen_from_the_other_file other_file() {
    constexpr auto slide = "12 H7/g6"_fit;
    std::ostringstream out;
    out << slide << ' ' << slide.hole() << ' ' << slide.shaft();
    return {slide, fitwright::read_fit("12 H7/g6"), out.str()};
}
