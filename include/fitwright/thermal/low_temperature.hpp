#ifndef FITWRIGHT_THERMAL_LOW_TEMPERATURE_HPP
#define FITWRIGHT_THERMAL_LOW_TEMPERATURE_HPP

#include <fitwright/thermal/growth.hpp>
#include <fitwright/thermal/low_temperature_table.hpp>

// A part in dry ice or liquid nitrogen. The colder, the less it shrinks for each kelvin: the coefficient of
// a warm part would overstate the shrinkage by a quarter or more.

namespace fitwright {

/// What parts are chilled in.
enum class coolant : std::uint8_t { dry_ice, liquid_nitrogen };

[[nodiscard]] constexpr text in_words(coolant c) noexcept {
    return c == coolant::dry_ice ? "dry ice" : "liquid nitrogen";
}

/// Dry ice sublimes at -78.5 °C (a bath of it in alcohol may be at -72 °C); nitrogen boils at -196 °C.
[[nodiscard]] constexpr temperature temperature_of(coolant c) noexcept {
    return celsius(c == coolant::dry_ice ? -78.5 : -196);
}

/// The same material, with a mean coefficient for the cold from Ekin's table if it has none of its own:
/// it is marked uncertain. So `at_temperature` and others can follow it to liquid nitrogen.
[[nodiscard]] constexpr material with_cold_expansion(const material& m) noexcept {
    material made = m;
    if (made.expansion.cooled_to_minus_190_degC) return made;
    constexpr double kelvins = 293 - 77;
    for (const detail::total_shrinkage& row : detail::total_shrinkages)
        if (m.name == text(row.name)) {
            made.expansion.cooled_to_minus_190_degC = property<expansion_coefficient>::printed(
                row.thousandths_of_a_percent * 1e-5 / kelvins, sources::ekin_low_temperature.how_sure);
            made.documents = sources::ekin_low_temperature.document;
        }
    return made;
}

namespace detail {

[[nodiscard]] constexpr double dl_over_l(const cryogenic_polynomial& p, double celsius) noexcept {
    const double kelvins = celsius - absolute_zero_celsius;
    double sum = 0;
    for (int i = 4; i >= 0; --i) sum = sum * kelvins + p.coefficient[i];
    return sum * 1e-5;
}

/// The polynomials hold from 23 K on.
inline constexpr double coldest_of_polynomials = -250;

[[nodiscard]] constexpr const cryogenic_polynomial* polynomial_of(const material& m) noexcept {
    for (const cryogenic_polynomial& p : cryogenic_polynomials)
        if (m.name == text(p.name)) return &p;
    return nullptr;
}

/// As `strain_at`, by what is known best of a cold part. Give it a material `with_cold_expansion`.
[[nodiscard]] constexpr result<strain> cold_strain_at(const material& m, const temperature& at) noexcept {
    const cryogenic_polynomial* p = polynomial_of(m);
    const double celsius = at.value();
    if (p == nullptr || celsius < coldest_of_polynomials || celsius >= reference_celsius)
        return strain_at(m, at);
    const double shrunk = dl_over_l(*p, celsius) - dl_over_l(*p, reference_celsius);
    const double spread = usual_spread(m.family);
    return strain{shrunk * (1 - spread), shrunk,
                  shrunk * (1 + spread), doubts_at(m, celsius),
                  cautions_at(celsius),  sources::nist_cryogenic.how_sure};
}

} // namespace detail

/// How much shorter a part gets from 20 °C to `at`; above zero. `at_20` is its length at 20 °C.
///
/// Aluminium 6061 and stainless 304 by the polynomials of NIST; others by their mean in the cold, or by
/// Ekin's totals, which are marked uncertain; each with its spread, or the usual one of its family.
/// Error: `at` is above 20 °C; the material's shrinkage is not known so far down.
[[nodiscard]] constexpr result<spread_length> shrinkage_on_cooling(length at_20, const material& m,
                                                                   const temperature& at) noexcept {
    if (at.value() > detail::reference_celsius)
        return error::composer(error_code::temperature_out_of_range)
               << "a part does not shrink on its way up from 20 C; allowed: 20 C and below";
    const material chilled = with_cold_expansion(m);
    const auto s = detail::cold_strain_at(chilled, at);
    if (!s) return s.error();
    const source from = detail::polynomial_of(m) != nullptr ? sources::nist_cryogenic : s->from(chilled);
    return detail::spread_over(-detail::nanometres(at_20), *s, from);
}

/// The same in dry ice or liquid nitrogen.
[[nodiscard]] constexpr result<spread_length> shrinkage_on_cooling(length at_20, const material& m,
                                                                   coolant in) noexcept {
    return shrinkage_on_cooling(at_20, m, temperature_of(in));
}

} // namespace fitwright

#endif
