// A script that has copied the core beside itself: nothing else of ours, nothing of Boost.
#include "fitwright_core.hpp"

#include <cstdio>

int main() {
    using namespace fitwright::literals;
    constexpr auto slide = "12 H7/g6"_fit;
    static_assert(slide.min_clearance() == 6_um && slide.max_clearance() == 35_um);

    const auto asked = fitwright::read_fit("25 H7/p6");
    if (!asked) return 1;
    const auto digits = fitwright::written(asked->hole().upper_limit());
    std::printf("%.*s mm\n", static_cast<int>(digits.view().size()), digits.view().data());
    return digits.view() == "25.021" ? 0 : 1; // ISO 286-2:2010, H7 above 18 up to 30 mm
}
