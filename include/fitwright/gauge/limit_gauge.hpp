#ifndef FITWRIGHT_GAUGE_LIMIT_GAUGE_HPP
#define FITWRIGHT_GAUGE_LIMIT_GAUGE_HPP

#include <fitwright/gauge/constants.hpp>
#include <fitwright/gauge/grade_of_work.hpp>
#include <fitwright/iso286/limits.hpp>

namespace fitwright {

/// A GO and a NOT GO gauge: what to make them to, and the size at which GO is worn out.
///
/// A plug is a shaft itself and a ring a hole, and so are their limits: a plug as measured can be
/// judged against `go`. Sizes hold at 20 degC; ISO/R 1938 was replaced by ISO 1938-1, which keeps the
/// formulas but may have other figures for y and alpha.
template <side Side> struct limit_gauge {
    size_limits<Side> go;                   ///< when new
    size_limits<Side> not_go;               ///< new or old: it is to enter no good part, so it hardly wears
    length worn;                            ///< a GO plug below it, or a GO ring above it, is scrap
    grade constants_of;                     ///< the grade of the work whose constants were taken
    cautions take_care = caution::rotating; ///< try a gauge with the work at a standstill

    friend constexpr bool operator==(const limit_gauge&, const limit_gauge&) noexcept = default;
};

/// The GO and NOT GO plug for a hole: each limits of a shaft.
using limit_plug = limit_gauge<side::shaft>;
/// The GO and NOT GO ring for a shaft: each limits of a hole.
using limit_ring = limit_gauge<side::hole>;

/// The check gauges for a ring or a gap gauge: discs or plugs.
struct check_gauges {
    shaft_limits go;     ///< what a new GO ring is fitted to
    shaft_limits not_go; ///< what a new NOT GO ring is fitted to
    shaft_limits worn;   ///< a GO ring that lets it pass is worn out
    grade constants_of;  ///< the grade of the work whose constants were taken

    friend constexpr bool operator==(const check_gauges&, const check_gauges&) noexcept = default;
};

/// A plug with both gauges on one end, GO first: in a good hole the first step goes in and the second
/// stops. Only for holes deeper than the first step is long; the standard gives no lengths.
struct two_step_plug {
    shaft_limits first;  ///< GO
    shaft_limits second; ///< NOT GO
    length least_step;   ///< how much larger the second diameter is at least
    length most_step;    ///< and at most
};

/// How the sizes of a gauge are written.
enum class gauge_rounding : std::uint8_t {
    /// As the formulas give them.
    exact,
    /// GOST 21401-75: a size that ends in 0.25 or 0.75 um goes to the next half micrometre that makes
    /// the tolerance left to the work smaller.
    half_micrometre,
};

/// How to make a gauge where there is a choice.
struct gauge_options {
    gauge_rounding rounding = gauge_rounding::exact; ///< of the gauge's limits
    /// The grade whose constants to take. By itself it is the one that the tolerance of the work is; a
    /// tolerance that is no standard one has no gauge unless the grade is named here. See `finer_grade`.
    grade constants_of = detail::by_tolerance;
};

namespace detail {

inline constexpr std::int64_t nanometres_in_tenth = 100; ///< of a micrometre

/// What the gauge is: decides which tolerance it is made to.
enum class gauge_body : std::uint8_t { plug, rod, ring, check };

struct gauge_constants {
    length z; ///< signed, as y and alpha: into a hole's tolerance is up, into a shaft's is down
    length y;
    length alpha;
    length half_tolerance;
};

/// The work is in a range up to 500 mm and of IT6 to IT16.
[[nodiscard]] constexpr gauge_constants constants_for(size_range r, grade work, gauge_body body) noexcept {
    const bool is_hole = body == gauge_body::plug || body == gauge_body::rod;
    const int column = work == grade::it6 && is_hole ? 0 : gauge_row(work) + 1;
    const bool wears = work <= grade::it8;
    const bool keeps_back = r.main_row >= first_range_with_alpha;

    const gauge_grades& made_to = gauge_made_to[gauge_row(work)];
    const std::int8_t own_grade = body == gauge_body::plug   ? made_to.plug
                                  : body == gauge_body::rod  ? made_to.rod
                                  : body == gauge_body::ring ? made_to.ring
                                                             : made_to.check;
    const auto tenths = [&](std::int64_t n) {
        return length::from_nanometres(n * nanometres_in_tenth * (is_hole ? 1 : -1));
    };
    return {
        .z = tenths(gauge_z[r.main_row][column]),
        .y = tenths(wears ? gauge_y[r.main_row][column] : 0),
        .alpha = tenths(keeps_back ? gauge_alpha[r.main_row - first_range_with_alpha][gauge_row(work)] : 0),
        .half_tolerance = length::from_nanometres(tolerance_at(r, grade(own_grade)) / 2),
    };
}

/// The limit at which the work holds the most material, where GO belongs, and the other one.
template <side Work> [[nodiscard]] constexpr length go_limit(const size_limits<Work>& work) noexcept {
    return Work == side::hole ? work.lower_limit() : work.upper_limit();
}
template <side Work> [[nodiscard]] constexpr length not_go_limit(const size_limits<Work>& work) noexcept {
    return Work == side::hole ? work.upper_limit() : work.lower_limit();
}

/// A gauge from the middle of its tolerance. `inwards_is_up`: up makes the work's tolerance smaller.
template <side Side>
[[nodiscard]] constexpr size_limits<Side> gauge_limits(length nominal, length middle, length half,
                                                       gauge_rounding rounding, bool inwards_is_up,
                                                       const source& origin) noexcept {
    // Both limits end in a quarter, or neither: the tolerance is a whole number of half micrometres there.
    const length quarter = length::from_nanometres(250);
    const bool ends_in_a_quarter =
        (middle - half).nanometres() % 500 == 250 && (half * 2).nanometres() % 500 == 0;
    if (rounding == gauge_rounding::half_micrometre && ends_in_a_quarter)
        middle += inwards_is_up ? quarter : -quarter;
    return {nominal, {.upper = middle + half - nominal, .lower = middle - half - nominal}, origin};
}

template <side Side, side Work>
[[nodiscard]] constexpr result<limit_gauge<Side>> gauge_for(const size_limits<Work>& work, gauge_body body,
                                                            gauge_options options, int above_mm) noexcept {
    const auto found = grade_for(work, options.constants_of, above_mm);
    if (!found) return found.error();
    const gauge_constants c = constants_for(range_of(work.nominal()), found->taken, body);
    const auto around = [&](length middle, bool inwards_is_up) {
        return gauge_limits<Side>(work.nominal(), middle, c.half_tolerance, options.rounding, inwards_is_up,
                                  source_of(*found));
    };
    return limit_gauge<Side>{
        .go = around(go_limit(work) + c.z, Work == side::hole),
        .not_go = around(not_go_limit(work) - c.alpha, Work == side::shaft),
        .worn = go_limit(work) - c.y + c.alpha,
        .constants_of = found->taken,
    };
}

} // namespace detail

/// The plugs for a hole: ISO/R 1938:1971. With K and G the lower and upper limit of the hole, GO is
/// K + z +/- H/2, worn at K - y + alpha, and NOT GO is G - alpha +/- H/2; alpha only above 180 mm, y only up
/// to IT8.
/// Error: a nominal size not above 0 up to 500 mm; a tolerance that is not IT6 to IT16, unless a grade that
/// is no wider is named.
[[nodiscard]] constexpr result<limit_plug> plug_gauge(const hole_limits& hole,
                                                      gauge_options options = {}) noexcept {
    return detail::gauge_for<side::shaft>(hole, detail::gauge_body::plug, options, 0);
}

/// The plugs for a hole of a tolerance class. Errors as of `limits`, and of `plug_gauge` of limits.
[[nodiscard]] constexpr result<limit_plug> plug_gauge(length nominal, hole_class c,
                                                      gauge_options options = {}) noexcept {
    const auto hole = limits(nominal, c);
    if (!hole) return hole.error();
    return plug_gauge(*hole, options);
}

/// Rods, or plugs with spherical ends, for a hole above 6 mm: as plugs, but made to the finer tolerance Hs.
/// They touch at two points, so a GO rod doesn't find a hole that is out of round.
/// Error: as of `plug_gauge`; a nominal size up to 6 mm.
[[nodiscard]] constexpr result<limit_plug> rod_gauge(const hole_limits& hole,
                                                     gauge_options options = {}) noexcept {
    return detail::gauge_for<side::shaft>(hole, detail::gauge_body::rod, options, 6);
}

/// The rings or gap gauges for a shaft: ISO/R 1938:1971. With K and G the lower and upper limit of the
/// shaft, GO is G - z1 +/- H1/2, worn at G + y1 - alpha1, and NOT GO is K + alpha1 +/- H1/2.
/// Errors as of `plug_gauge`.
[[nodiscard]] constexpr result<limit_ring> ring_gauge(const shaft_limits& shaft,
                                                      gauge_options options = {}) noexcept {
    return detail::gauge_for<side::hole>(shaft, detail::gauge_body::ring, options, 0);
}

/// The rings for a shaft of a tolerance class. Errors as of `limits`, and of `ring_gauge` of limits.
[[nodiscard]] constexpr result<limit_ring> ring_gauge(length nominal, shaft_class c,
                                                      gauge_options options = {}) noexcept {
    const auto shaft = limits(nominal, c);
    if (!shaft) return shaft.error();
    return ring_gauge(*shaft, options);
}

/// The check gauges for the rings of a shaft, +/- Hp/2 about GO, NOT GO and worn. Never rounded.
/// `constants_of` as in `gauge_options`. Errors as of `plug_gauge`.
[[nodiscard]] constexpr result<check_gauges>
checks_for_ring(const shaft_limits& shaft, grade constants_of = detail::by_tolerance) noexcept {
    const auto found = detail::grade_for(shaft, constants_of);
    if (!found) return found.error();
    const auto c =
        detail::constants_for(detail::range_of(shaft.nominal()), found->taken, detail::gauge_body::check);
    const auto around = [&](length middle) {
        return detail::gauge_limits<side::shaft>(shaft.nominal(), middle, c.half_tolerance,
                                                 gauge_rounding::exact, false, detail::source_of(*found));
    };
    return check_gauges{
        .go = around(shaft.upper_limit() + c.z),
        .not_go = around(shaft.lower_limit() - c.alpha),
        .worn = around(shaft.upper_limit() - c.y + c.alpha),
        .constants_of = found->taken,
    };
}

/// The same plugs turned on one end, one behind the other.
[[nodiscard]] constexpr two_step_plug on_one_end(const limit_plug& plug) noexcept {
    return {
        .first = plug.go,
        .second = plug.not_go,
        .least_step = plug.not_go.lower_limit() - plug.go.upper_limit(),
        .most_step = plug.not_go.upper_limit() - plug.go.lower_limit(),
    };
}

} // namespace fitwright

#endif
