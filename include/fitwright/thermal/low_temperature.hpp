#ifndef FITWRIGHT_THERMAL_LOW_TEMPERATURE_HPP
#define FITWRIGHT_THERMAL_LOW_TEMPERATURE_HPP

#include <fitwright/thermal/growth.hpp>

// A part in dry ice or liquid nitrogen. The colder, the less it shrinks for each kelvin: the coefficient of
// a warm part would overstate the shrinkage by a quarter or more.

namespace fitwright {

/// What parts are chilled in.
enum class coolant : std::uint8_t { dry_ice, liquid_nitrogen };

/// In words.
[[nodiscard]] constexpr text in_words(coolant c) noexcept {
    return c == coolant::dry_ice ? "dry ice" : "liquid nitrogen";
}

/// Dry ice sublimes at -78.5 °C, nitrogen boils at -196 °C.
[[nodiscard]] constexpr temperature temperature_of(coolant c) noexcept {
    return celsius(c == coolant::dry_ice ? -78.5 : -196);
}

/// What a part is sure to get to: a bath of dry ice in alcohol may be no colder than -72 °C (common practice).
[[nodiscard]] constexpr temperature part_temperature_in(coolant c) noexcept {
    return c == coolant::dry_ice ? celsius(-72) : temperature_of(c);
}

/// How much shorter a part gets from 20 °C to `at`; above zero. `at_20` is its length at 20 °C. The opposite
/// of its `growth`.
///
/// Aluminium 6061 and stainless 304 by the polynomials of NIST; others by their mean in the cold, or by
/// Ekin's totals, which are marked uncertain; each with its spread, at least the usual one of its family.
/// Error: `at` is above 20 °C; the material's shrinkage is not known so far down.
[[nodiscard]] constexpr result<spread_length> shrinkage_on_cooling(length at_20, const material& m,
                                                                   const temperature& at) noexcept {
    if (at.value() > detail::reference_celsius)
        return error::composer(error_code::temperature_out_of_range)
               << "a part does not shrink on its way up from 20 C; allowed: 20 C and below";
    return growth(-at_20, m, at);
}

/// The same in dry ice or liquid nitrogen, as cold as a part is sure to get in it.
[[nodiscard]] constexpr result<spread_length> shrinkage_on_cooling(length at_20, const material& m,
                                                                   coolant in) noexcept {
    return shrinkage_on_cooling(at_20, m, part_temperature_in(in));
}

} // namespace fitwright

#endif
