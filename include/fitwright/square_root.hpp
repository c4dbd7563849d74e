#ifndef FITWRIGHT_SQUARE_ROOT_HPP
#define FITWRIGHT_SQUARE_ROOT_HPP

#include <cmath>
#include <type_traits>

namespace fitwright::detail {

/// The square root, while compiling too, where `std::sqrt` is not allowed: there Newton's method from
/// above, which falls until it has arrived. 0 for what is not above 0; what has no end is left as it is.
[[nodiscard]] constexpr double square_root(double square) noexcept {
    if (!(square > 0)) return 0;
    if (!std::is_constant_evaluated()) return std::sqrt(square);
    if (square > 1e300) return square;
    double scale = 1;
    while (square >= 4) {
        square /= 4;
        scale *= 2;
    }
    while (square < 1) {
        square *= 4;
        scale /= 2;
    }
    double root = 2;
    for (;;) {
        const double next = (root + square / root) / 2;
        if (!(next < root)) return root * scale;
        root = next;
    }
}

} // namespace fitwright::detail

#endif
