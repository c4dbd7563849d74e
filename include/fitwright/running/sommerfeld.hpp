#ifndef FITWRIGHT_RUNNING_SOMMERFELD_HPP
#define FITWRIGHT_RUNNING_SOMMERFELD_HPP

#include <compare>

// Two numbers go by the name of Sommerfeld and run in opposite senses: S of the English books is large for a
// light load, So of ISO and DIN for a heavy one. So = 1 / (2 pi S). They are two types and turn into each
// other only where that is written out.

namespace fitwright {

struct sommerfeld_load_number;

/// S = (r/c)^2 eta N / P: English books, Raimondi and Boyd; large for a light load or a high speed.
struct sommerfeld_number {
    constexpr sommerfeld_number() noexcept = default;
    constexpr explicit sommerfeld_number(double number) noexcept : value(number) {}
    constexpr explicit sommerfeld_number(sommerfeld_load_number so) noexcept;

    double value = 0;

    friend constexpr auto operator<=>(sommerfeld_number, sommerfeld_number) noexcept = default;
};

/// So = P psi^2 / (eta omega): ISO 7902, DIN 31652; large for a heavy load or a low speed.
struct sommerfeld_load_number {
    constexpr sommerfeld_load_number() noexcept = default;
    constexpr explicit sommerfeld_load_number(double number) noexcept : value(number) {}
    constexpr explicit sommerfeld_load_number(sommerfeld_number s) noexcept;

    double value = 0;

    friend constexpr auto operator<=>(sommerfeld_load_number, sommerfeld_load_number) noexcept = default;
};

constexpr sommerfeld_number::sommerfeld_number(sommerfeld_load_number so) noexcept
    : value(1 / (2 * 3.14159265358979323846 * so.value)) {}
constexpr sommerfeld_load_number::sommerfeld_load_number(sommerfeld_number s) noexcept
    : value(1 / (2 * 3.14159265358979323846 * s.value)) {}

} // namespace fitwright

#endif
