#ifndef FITWRIGHT_GAUGE_LIMIT_GAUGE_HPP
#define FITWRIGHT_GAUGE_LIMIT_GAUGE_HPP

#include <fitwright/gauge/constants.hpp>
#include <fitwright/gauge/no_gauge.hpp>
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

using limit_plug = limit_gauge<side::shaft>;
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

namespace detail {
inline constexpr grade by_tolerance = grade(-1); ///< no grade is named: it is the one the tolerance is
}

/// How to make a gauge where there is a choice.
struct gauge_options {
    gauge_rounding rounding = gauge_rounding::exact;
    /// The grade whose constants to take. By itself it is the one that the tolerance of the work is; a
    /// tolerance that is no standard one has no gauge unless the grade is named here. See `finer_grade`.
    grade constants_of = detail::by_tolerance;
};

namespace sources {
inline constexpr source iso_r_1938{"ISO/R 1938:1971", "formulas, constants for IT6 and IT7",
                                   confidence::published};
inline constexpr source iso_r_1938_memory{
    "ISO/R 1938:1971", "formulas as published, constants for IT8 to IT16", confidence::memory};
inline constexpr source iso_r_1938_stated{
    "ISO/R 1938:1971", "constants of a grade the user named, not that of the tolerance", confidence::stated};
inline constexpr source iso_r_1938_stated_memory{
    "ISO/R 1938:1971", "constants, from memory, of a grade the user named, not that of the tolerance",
    confidence::memory};
} // namespace sources

namespace detail {

inline constexpr std::int64_t nanometres_in_tenth = 100; ///< of a micrometre

[[nodiscard]] constexpr bool has_gauges(grade g) noexcept { return g >= grade::it6 && g <= grade::it16; }

/// 0 for IT6, 10 for IT16.
[[nodiscard]] constexpr int gauge_row(grade g) noexcept { return g.step() - grade::it6.step(); }

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

/// True where the tolerance is the grade's, or twice half of it as JS was rounded in ISO 286-1:1988.
template <side Work>
[[nodiscard]] constexpr bool is_of_grade(const size_limits<Work>& work, size_range r, grade g) noexcept {
    const std::int32_t tolerance = tolerance_at(r, g);
    const std::int64_t rounded = 2 * half_tolerance(tolerance, g, js_rounding::whole_micrometre_1988);
    const std::int64_t is = work.tolerance().nanometres();
    return is == tolerance || (is == rounded && work.upper_deviation() == -work.lower_deviation());
}

/// The coarsest of IT6 to IT16 that is no wider than the tolerance; IT5 if it is finer than IT6.
template <side Work>
[[nodiscard]] constexpr grade coarsest_within(const size_limits<Work>& work, size_range r) noexcept {
    grade g = grade::it16;
    while (g >= grade::it6 && tolerance_at(r, g) > work.tolerance().nanometres())
        g = grade::from_step(g.step() - 1);
    return g;
}

/// The grade whose constants to take, and whether the user had to name it.
struct grade_of_work {
    grade taken;
    bool is_stated;
};

template <side Work>
[[nodiscard]] constexpr result<grade_of_work> grade_for(const size_limits<Work>& work, grade named,
                                                        int above_mm = 0) noexcept {
    const length nominal = work.nominal();
    if (!in_tables(nominal) || nominal.nanometres() <= above_mm * std::int64_t{1'000'000} ||
        range_of(nominal).main_row >= gauge_range_count)
        return size_without_gauge(nominal, above_mm);
    if (work.tolerance() <= length()) return limits_without_gauge(work.tolerance());

    const size_range r = range_of(nominal);
    const grade coarsest = coarsest_within(work, r);
    if (coarsest < grade::it6) return tolerance_without_gauge(work.tolerance(), r, coarsest);
    for (grade g = grade::it6; g <= grade::it16; g = grade::from_step(g.step() + 1))
        if (is_of_grade(work, r, g) && (named == by_tolerance || named == g)) return grade_of_work{g, false};
    if (named == by_tolerance) return tolerance_without_gauge(work.tolerance(), r, coarsest);
    if (!has_gauges(named) || named > coarsest) return grade_without_gauge(named, coarsest);
    return grade_of_work{named, true};
}

[[nodiscard]] constexpr const source& source_of(grade_of_work g) noexcept {
    const bool is_read = g.taken <= grade::it7;
    if (g.is_stated) return is_read ? sources::iso_r_1938_stated : sources::iso_r_1938_stated_memory;
    return is_read ? sources::iso_r_1938 : sources::iso_r_1938_memory;
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

/// The grade whose constants to name for a gauge if the tolerance of the work is no standard one: the
/// coarsest of IT6 to IT16 that is no wider. The gauge then takes no more of the tolerance than that grade's
/// gauge does; the standard doesn't cover it.
/// Error: a nominal size not above 0 up to 500 mm; a tolerance finer than IT6.
template <side Work>
[[nodiscard]] constexpr result<grade> finer_grade(const size_limits<Work>& work) noexcept {
    const auto at_it6 = detail::grade_for(work, grade::it6);
    if (!at_it6) return at_it6.error();
    return detail::coarsest_within(work, detail::range_of(work.nominal()));
}

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
