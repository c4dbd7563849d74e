// What a stranger's program does with the library: nothing of ours but its headers.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

int main(int argc, char** argv) {
    using namespace fitwright::literals;
    constexpr auto slide = "12 H7/g6"_fit;
    static_assert(slide.min_clearance() == 6_um && slide.max_clearance() == 35_um);

    const auto asked = fitwright::read_fit(argc > 1 ? argv[1] : "25 H7/p6");
    if (!asked) {
        std::cerr << asked.error() << '\n';
        return 1;
    }
    std::cout << *asked << '\n' << asked->hole().upper_limit<fitwright::inch>().value() << " in\n";
    return asked->hole().upper_limit() == 25.021_mm ? 0 : 1; // ISO 286-2:2010, H7 above 18 up to 30 mm
}
