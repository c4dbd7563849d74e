#ifndef FITWRIGHT_GAUGE_NO_GAUGE_HPP
#define FITWRIGHT_GAUGE_NO_GAUGE_HPP

#include <fitwright/error.hpp>
#include <fitwright/iso286/limits.hpp>
#include <fitwright/written.hpp>

// What to say where ISO/R 1938 has no gauge: what was asked, and what would have one.

namespace fitwright::detail {

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error size_without_gauge(length nominal,
                                                                           int above_mm) noexcept {
    return error::composer(error_code::size_out_of_range)
           << "ISO/R 1938 has no such gauge for a nominal size of " << written(nominal).view()
           << " mm: allowed are sizes above " << above_mm << " mm up to and including 500 mm";
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error limits_without_gauge(length tolerance) noexcept {
    return error::composer(error_code::limits_crossed)
           << "the limits allow no size (tolerance " << written(tolerance).view()
           << " mm): the upper limit has to be above the lower";
}

/// "IT7 (0.018 mm)".
constexpr void name_grade(error::composer& say, size_range r, grade g) noexcept {
    say << "IT" << g.name() << " (" << written(length::from_nanometres(tolerance_at(r, g))).view() << " mm)";
}

/// "IT6 to IT9", or "IT6" alone.
constexpr void name_grades_up_to(error::composer& say, grade coarsest) noexcept {
    say << "IT6";
    if (coarsest > grade::it6) say << " to IT" << coarsest.name();
}

/// For a tolerance that is none of IT6 to IT16: `finer` is the next of those below it, IT5 if it is
/// finer than all of them.
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error
tolerance_without_gauge(length tolerance, size_range r, grade finer) noexcept {
    error::composer say(error_code::no_standard_tolerance);
    say << "ISO/R 1938 has gauges for IT6 to IT16; a tolerance of " << written(tolerance).view()
        << " mm here is ";
    if (finer < grade::it6) {
        say << "finer than ";
        name_grade(say, r, grade::it6);
        return say << ": measure the part and judge the reading instead";
    }
    if (finer < grade::it16) {
        say << "between ";
        name_grade(say, r, finer);
        say << " and ";
        name_grade(say, r, grade::from_step(finer.step() + 1));
    } else {
        say << "coarser than ";
        name_grade(say, r, grade::it16);
    }
    say << ": allowed if you name the grade whose constants to take, ";
    name_grades_up_to(say, finer);
    return say;
}

/// For a grade that the user named and that is not one of those the tolerance has room for.
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error grade_without_gauge(grade named,
                                                                            grade coarsest) noexcept {
    error::composer say(error_code::grade_not_known);
    say << "no gauge with the constants of IT" << named.name() << " for this tolerance: allowed is ";
    name_grades_up_to(say, coarsest);
    return say << ", no wider than the tolerance of the work";
}

} // namespace fitwright::detail

#endif
