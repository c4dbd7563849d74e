// Dowels 6 m6 in reamed holes 6 H7: how often is the pin the larger, and does it matter how the parts come out?
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    constexpr fit dowel = "6 H7/m6"_fit;
    constexpr clearance_window loose{.least = 0_um, .most = dowel.max_clearance()};
    const auto even = size_distribution::uniform();
    const auto early = size_distribution::towards_maximum_material();        // stopped once the part is good
    const auto ground = size_distribution::normal({.cp = 1.33}).inspected(); // bought pins

    std::cout << dowel << "\n\nall sizes alike: " << *probability(dowel, loose, spread::both(even))
              << "\n\nholes come out small: " << *probability(dowel, loose, {.hole = early, .shaft = ground});

    const auto reamed = size_distribution::of({.mean = 6.009_mm, .sigma = 1.5_um, .parts = 40});
    if (const auto c = clearances(dowel, {.hole = reamed, .shaft = ground}))
        std::cout << "\n\nas the reamer cuts: " << *c << '\n';
}
