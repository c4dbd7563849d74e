#ifndef FITWRIGHT_THERMAL_COLD_FIGURES_HPP
#define FITWRIGHT_THERMAL_COLD_FIGURES_HPP

#include <fitwright/material/expansion.hpp>
#include <fitwright/thermal/low_temperature_table.hpp>

// What is known of a part in the cold beyond its material's own figures.

namespace fitwright {

namespace detail {

[[nodiscard]] constexpr bool is_printed(const property<expansion_coefficient>& p,
                                        std::uint16_t hundred_millionths) noexcept {
    return (p ? (*p).value() : 0) == hundred_millionths / 1e8;
}

/// The material of `materials.hpp` that a row is about, by its figures: one of the same name with figures
/// of its own is not.
template <class Row> [[nodiscard]] constexpr bool is_of(const Row& row, const material& m) noexcept {
    const expansion_means& e = m.expansion;
    return e.to_100_degC && (*e.to_100_degC).value() == row.to_100_degC && m.name == row.name &&
           is_printed(e.lowest, row.known_by->lowest) && is_printed(e.highest, row.known_by->highest);
}

/// The curve of a material, or none. A user who states another mean for the cold gets his own.
[[nodiscard]] constexpr const cryogenic_polynomial* polynomial_of(const material& m) noexcept {
    for (const cryogenic_polynomial& p : cryogenic_polynomials)
        if (is_of(p, m) &&
            is_printed(m.expansion.cooled_to_minus_190_degC, p.known_by->cooled_to_minus_190_degC))
            return &p;
    return nullptr;
}

/// The mean between 77 K and 293 K that makes a total.
[[nodiscard]] constexpr double mean_of(const total_shrinkage& t) noexcept {
    return t.thousandths_of_a_percent * 1e-5 / (293 - 77);
}

/// The total of a material that has no mean for the cold but this one, or none.
[[nodiscard]] constexpr const total_shrinkage* total_of(const material& m) noexcept {
    const property<expansion_coefficient>& cold = m.expansion.cooled_to_minus_190_degC;
    if (cold && cold.how_sure() != sources::ekin_low_temperature.how_sure) return nullptr; // known better
    for (const total_shrinkage& t : total_shrinkages)
        if (is_of(t, m) && (!cold || (*cold).value() == mean_of(t))) return &t;
    return nullptr;
}

} // namespace detail

/// The same material, with a mean coefficient for the cold from Ekin's table
/// (`sources::ekin_low_temperature`) if it has none of its own: it is marked uncertain. `at_temperature`
/// and others use it by themselves; this is for `mean_expansion`. The material's `documents` stay those of
/// its other figures.
[[nodiscard]] constexpr material with_cold_expansion(const material& m) noexcept {
    material made = m;
    if (made.expansion.cooled_to_minus_190_degC) return made;
    if (const detail::total_shrinkage* const total = detail::total_of(m))
        made.expansion.cooled_to_minus_190_degC = property<expansion_coefficient>::printed(
            detail::mean_of(*total), sources::ekin_low_temperature.how_sure);
    return made;
}

} // namespace fitwright

#endif
