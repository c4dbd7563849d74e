#ifndef FITWRIGHT_IO_THREE_FIGURES_HPP
#define FITWRIGHT_IO_THREE_FIGURES_HPP

#include <fitwright/text.hpp>

namespace fitwright::detail {

/// A number to three figures, "0.0123", "1.23", "12300", as results that rest on friction and handbooks
/// deserve; no locale is asked. What is too large for that is "more than 1e15".
[[nodiscard]] constexpr fixed_text<31> three_figures(double number) noexcept {
    fixed_text<31> t;
    if (number != number) return t << text("not a number");
    if (number < 0) {
        t << text("-");
        number = -number;
    }
    if (number > 1e15) return t << text(number > 1e300 ? "infinite" : "more than 1e15");
    int decimals = 0;
    double scaled = number;
    while (decimals < 9 && scaled < 99.95 && number > 0) {
        scaled *= 10;
        ++decimals;
    }
    double coarser = 1; // 12345 is written 12300
    while (scaled / coarser >= 999.5) coarser *= 10;
    const auto whole =
        static_cast<std::uint64_t>(scaled / coarser + 0.5) * static_cast<std::uint64_t>(coarser);
    std::uint64_t one_whole = 1;
    for (int i = 0; i < decimals; ++i) one_whole *= 10;
    t.put_digits(whole / one_whole);
    std::uint64_t fraction = whole % one_whole;
    if (fraction == 0) return t;
    t << text(".");
    while (fraction != 0) {
        one_whole /= 10;
        t.put_digits(fraction / one_whole);
        fraction %= one_whole;
    }
    return t;
}

} // namespace fitwright::detail

#endif
