#ifndef FITWRIGHT_THERMAL_FIRST_CROSSING_HPP
#define FITWRIGHT_THERMAL_FIRST_CROSSING_HPP

#include <fitwright/figure.hpp>
#include <fitwright/thermal/strain.hpp>

// On the way from one temperature to another, the first at which something falls below zero.
//
// Between two temperatures of the table a mean coefficient is a straight line, so a size is a parabola;
// piece by piece that leaves nothing to guess: no start value, no division by a difference that may vanish.

namespace fitwright::detail {

/// Where the pieces of a mean coefficient meet, in °C; in the cold, where a curve may be known instead of a
/// line, a few more.
inline constexpr double knees[] = {-190, -120, -50, 20, 100, 200, 300, 500};

/// The next knee on the way, or the end of it.
[[nodiscard]] constexpr double next_knee(double here, double end) noexcept {
    double next = end;
    for (const double knee : knees) {
        const bool is_between = end > here ? knee > here && knee < next : knee < here && knee > next;
        if (is_between) next = knee;
    }
    return next;
}

/// A temperature in °C, or none.
struct crossing {
    bool is_there = false;
    double celsius = 0;
};

[[nodiscard]] constexpr bool is_below_zero(double nanometres) noexcept {
    return nanometres < -arithmetic_noise;
}

/// `left` holds at `inside` and no longer at `outside`: the last temperature at which it holds.
template <class Left>
[[nodiscard]] constexpr crossing narrowed(double inside, double outside, const Left& left) noexcept {
    for (int halvings = 0; halvings < 40; ++halvings) {
        const double middle = inside + (outside - inside) / 2;
        if (is_below_zero(left(middle))) outside = middle;
        else inside = middle;
    }
    return {true, inside};
}

/// `left(celsius)` in nanometres is not below zero at `from`.
template <class Left>
[[nodiscard]] constexpr crossing first_crossing(double from, double to, const Left& left) noexcept {
    for (double here = from, next; here != to; here = next) {
        next = next_knee(here, to);
        const double at_next = left(next);
        if (is_below_zero(at_next)) return narrowed(here, next, left);
        const double middle = here + (next - here) / 2;
        const double at_here = left(here);
        const double bend = at_here - 2 * left(middle) + at_next;
        if (!(bend > 0)) continue;
        const double lowest = (at_here - at_next) / (2 * bend); // from the middle, in halves of the piece
        if (!(lowest > -1 && lowest < 1)) continue;
        const double dip = middle + lowest * (next - middle);
        if (is_below_zero(left(dip))) return narrowed(here, dip, left);
    }
    return {};
}

/// Where the expansion of a material is known, in °C.
/// Error: nowhere; a figure that is needed on the way is not possible.
[[nodiscard]] constexpr result<range<double>> expansion_known(const material& m) noexcept {
    const auto at_room = mean_at(m, reference_celsius); // checks the figures
    if (!at_room) return at_room.error();
    const bool is_limit_possible = !m.highest_heating || (*m.highest_heating).value() > absolute_zero_celsius;
    if (!is_limit_possible)
        return error::composer(error_code::figure_not_possible)
               << "the heating limit of " << short_name(m).view()
               << " is not a temperature: highest_heating; allowed: above -273.15 C, or none stated";
    const bool is_cold_known = m.expansion.cooled_to_minus_190_degC || total_of(m) != nullptr;
    return range<double>{is_cold_known ? coldest_with_cold_mean : coldest_without_cold_mean,
                         hot_means(m.expansion).hottest()};
}

} // namespace fitwright::detail

#endif
