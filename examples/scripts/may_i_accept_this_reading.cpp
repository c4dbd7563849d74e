// What a reading proves: a micrometer that reads 0.01 mm against a shaft of 10 h6.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    constexpr auto shaft = "10 h6"_shaft;
    constexpr instrument micrometer{.resolution = 10_um, .error_limit = 4_um};
    const length uncertainty = *expanded_uncertainty(micrometer);
    std::cout << "the micrometer is good for +/-" << uncertainty << '\n';
    for (const length reading : {9.995_mm, 9.970_mm, 10.010_mm})
        std::cout << "reads " << reading << ": "
                  << in_words(judge(measured_shaft(reading, uncertainty), shaft)) << '\n';

    if (const auto band = acceptance_band(shaft, uncertainty); !band) std::cout << band.error() << '\n';
    std::cout << "with +/-0.002 mm accept readings of " << acceptance_band(shaft, 2_um)->lower_limit()
              << " to " << acceptance_band(shaft, 2_um)->upper_limit() << '\n';
}
