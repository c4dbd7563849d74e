#ifndef FITWRIGHT_GAUGE_GRADE_OF_WORK_HPP
#define FITWRIGHT_GAUGE_GRADE_OF_WORK_HPP

#include <fitwright/gauge/constants.hpp>
#include <fitwright/gauge/no_gauge.hpp>
#include <fitwright/iso286/limits.hpp>

// Which grade's constants a gauge takes: that of the tolerance of the work, or one that is named.

namespace fitwright {

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
inline constexpr source iso_r_1938_finer{
    "ISO/R 1938:1971; practice",
    "constants of the next finer grade: the tolerance is none of IT6 to IT16, and the standard doesn't cover it",
    confidence::practice};
inline constexpr source iso_r_1938_finer_memory{
    "ISO/R 1938:1971; practice",
    "constants, from memory, of the next finer grade: the tolerance is none of IT6 to IT16, and the standard "
    "doesn't cover it",
    confidence::practice};
} // namespace sources

namespace detail {

inline constexpr grade by_tolerance = grade(-1); ///< no grade is named: it is the one the tolerance is

[[nodiscard]] constexpr bool has_gauges(grade g) noexcept { return g >= grade::it6 && g <= grade::it16; }

/// 0 for IT6, 10 for IT16.
[[nodiscard]] constexpr int gauge_row(grade g) noexcept { return g.step() - grade::it6.step(); }

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

/// Why a grade's constants are taken: the tolerance is that grade's; or it is none, and the grade is the
/// one of `finer_grade`; or the user would have it so.
enum class grade_reason : std::uint8_t { of_tolerance, next_finer, stated };

struct grade_of_work {
    grade taken;
    grade_reason why;
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
    bool is_standard = false;
    for (grade g = grade::it6; g <= grade::it16; g = grade::from_step(g.step() + 1)) {
        if (!is_of_grade(work, r, g)) continue;
        if (named == by_tolerance || named == g) return grade_of_work{g, grade_reason::of_tolerance};
        is_standard = true;
    }
    if (named == by_tolerance) return tolerance_without_gauge(work.tolerance(), r, coarsest);
    if (!has_gauges(named) || named > coarsest) return grade_without_gauge(named, coarsest);
    const bool is_next_finer = !is_standard && named == coarsest;
    return grade_of_work{named, is_next_finer ? grade_reason::next_finer : grade_reason::stated};
}

[[nodiscard]] constexpr const source& source_of(grade_of_work g) noexcept {
    const bool is_read = g.taken <= grade::it7;
    switch (g.why) {
    case grade_reason::next_finer:
        return is_read ? sources::iso_r_1938_finer : sources::iso_r_1938_finer_memory;
    case grade_reason::stated:
        return is_read ? sources::iso_r_1938_stated : sources::iso_r_1938_stated_memory;
    case grade_reason::of_tolerance: break;
    }
    return is_read ? sources::iso_r_1938 : sources::iso_r_1938_memory;
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

} // namespace fitwright

#endif
