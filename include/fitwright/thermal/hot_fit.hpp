#ifndef FITWRIGHT_THERMAL_HOT_FIT_HPP
#define FITWRIGHT_THERMAL_HOT_FIT_HPP

#include <fitwright/clearance_window.hpp>
#include <fitwright/figure.hpp>
#include <fitwright/fit.hpp>
#include <fitwright/thermal/growth.hpp>

// A hole and a shaft, each at its own temperature:
// c = Dh * (1 + ah * (Th - 20 °C)) - Ds * (1 + as * (Ts - 20 °C)).

namespace fitwright {

/// A fit with its parts at temperature. Clearances are on the diameter, negative where the parts
/// interfere: what the free parts would have, so for a pressed pair the mismatch less the interference.
///
/// The spread of the coefficients is in it, at its worst. Parts of unlike materials are taken to lie at
/// opposite ends of their spreads (they are independent); two parts of one material share one coefficient,
/// whichever it is, so both lie at the same end, and at one temperature the fit keeps its clearance.
struct hot_fit {
    hole_limits hole;           ///< at its temperature; outwards, by the spread
    shaft_limits shaft;         ///< the same
    clearance_window clearance; ///< at the worst of the spread, rounded outwards
    clearance_window by_mean;   ///< by the mean coefficients, to the nearest nanometre
    flags<thermal_doubt> doubts;
    cautions take_care;
    source hole_expansion;  ///< where the coefficients come from
    source shaft_expansion; ///< the same

    [[nodiscard]] constexpr length min_clearance() const noexcept { return clearance.least; }
    [[nodiscard]] constexpr length max_clearance() const noexcept { return clearance.most; }

    /// As `fit::kind()`, at temperature.
    [[nodiscard]] constexpr fit_kind kind() const noexcept {
        if (min_clearance() >= length()) return fit_kind::clearance;
        if (max_clearance() <= length()) return fit_kind::interference;
        return fit_kind::transition;
    }

    // The same as Boost.Units quantities, `hot->min_clearance<micrometre>()`.
    template <class Unit> [[nodiscard]] constexpr auto min_clearance() const noexcept {
        return min_clearance().template as<Unit>();
    }
    template <class Unit> [[nodiscard]] constexpr auto max_clearance() const noexcept {
        return max_clearance().template as<Unit>();
    }
};

namespace detail {

/// How both parts of a pair have grown.
struct pair_strain {
    strain hole;
    strain shaft;
    bool is_one_material;
};

/// Hole less shaft, in nanometres.
[[nodiscard]] constexpr double clearance_of(length hole, length shaft, double hole_grown,
                                            double shaft_grown) noexcept {
    return nanometres(hole - shaft) + (nanometres(hole) * hole_grown - nanometres(shaft) * shaft_grown);
}

/// What the spread of the coefficients makes of the clearance of two sizes, in nanometres.
[[nodiscard]] constexpr range<double> clearances_of(length hole, length shaft,
                                                    const pair_strain& s) noexcept {
    if (!s.is_one_material)
        return {clearance_of(hole, shaft, s.hole.least(), s.shaft.most()),
                clearance_of(hole, shaft, s.hole.most(), s.shaft.least())};
    const double one_end = clearance_of(hole, shaft, s.hole.by_lowest, s.shaft.by_lowest);
    const double other_end = clearance_of(hole, shaft, s.hole.by_highest, s.shaft.by_highest);
    if (one_end < other_end) return {one_end, other_end};
    return {other_end, one_end};
}

/// The clearances of a fit at the worst of the spread, in nanometres.
[[nodiscard]] constexpr range<double> worst_clearances(const fit& f, const pair_strain& s) noexcept {
    return {clearances_of(f.hole().lower_limit(), f.shaft().upper_limit(), s).least,
            clearances_of(f.hole().upper_limit(), f.shaft().lower_limit(), s).most};
}

/// The fit of two parts that have grown so.
[[nodiscard]] constexpr hot_fit hot_fit_of(const fit& f, const material& hole, const material& shaft,
                                           const pair_strain& s) noexcept {
    const range<double> worst = worst_clearances(f, s);
    const double least =
        clearance_of(f.hole().lower_limit(), f.shaft().upper_limit(), s.hole.by_mean, s.shaft.by_mean);
    const double most =
        clearance_of(f.hole().upper_limit(), f.shaft().lower_limit(), s.hole.by_mean, s.shaft.by_mean);
    return {
        .hole = grown(f.hole(), s.hole),
        .shaft = grown(f.shaft(), s.shaft),
        .clearance = {rounded_down(worst.least), rounded_up(worst.most)},
        .by_mean = {rounded_to_nearest(least), rounded_to_nearest(most)},
        .doubts = s.hole.doubts | s.shaft.doubts,
        .take_care = s.hole.take_care | s.shaft.take_care,
        .hole_expansion = s.hole.from(hole),
        .shaft_expansion = s.shaft.from(shaft),
    };
}

} // namespace detail

/// A fit with each part at its own temperature; the sizes of `f` are those at 20 °C.
///
///     at_temperature(slide, {materials::aluminium_6082_t6, 95_degC}, {materials::steel_c45, 60_degC})
///
/// Error: limits that are crossed or not above zero; the expansion of one of the materials is not known at its
/// temperature.
[[nodiscard]] constexpr result<hot_fit> at_temperature(const fit& f, const warm_part& hole,
                                                       const warm_part& shaft) noexcept {
    if (!detail::allow_a_size(f)) return detail::no_size_in(f);
    const auto of_hole = detail::strain_at(hole.made_of, hole.at);
    if (!of_hole) return of_hole.error();
    const auto of_shaft = detail::strain_at(shaft.made_of, shaft.at);
    if (!of_shaft) return of_shaft.error();
    return detail::hot_fit_of(f, hole.made_of, shaft.made_of,
                              {*of_hole, *of_shaft, detail::is_same_material(hole.made_of, shaft.made_of)});
}

} // namespace fitwright

#endif
