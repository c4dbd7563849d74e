#ifndef FITWRIGHT_INCH_INCH_FIT_HPP
#define FITWRIGHT_INCH_INCH_FIT_HPP

#include <fitwright/error.hpp>
#include <fitwright/fit.hpp>
#include <fitwright/inch/fit_class.hpp>
#include <fitwright/inch/force_fits.hpp>
#include <fitwright/inch/locational_fits.hpp>
#include <fitwright/inch/running_fits.hpp>
#include <fitwright/rows.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

/// The documents behind the inch fits, by family and by how surely a row is known.
namespace sources {
inline constexpr source ansi_b4_1_running{
    "ANSI B4.1-1967 (R2009)", "running and sliding fits, Machinery's Handbook 31, Tables 8a and 8b",
    confidence::published};
inline constexpr source ansi_b4_1_clearance{
    "ANSI B4.1-1967 (R2009)",
    "clearance locational fits, Machinery's Handbook 31, Table 9b, read or following from what was",
    confidence::published};
inline constexpr source ansi_b4_1_clearance_memory{
    "ANSI B4.1-1967 (R2009)",
    "clearance locational fits: LC1 to LC5, LC6 to LC9 over 9.85 in, LC10 and LC11 over 1.19 in",
    confidence::memory};
inline constexpr source ansi_b4_1_transition{"ANSI B4.1-1967 (R2009)",
                                             "transition locational fits, Machinery's Handbook 31, Table 10",
                                             confidence::published};
inline constexpr source ansi_b4_1_transition_memory{
    "ANSI B4.1-1967 (R2009)", "transition locational fits: LT1 over 3.15 up to 4.73 in", confidence::memory};
inline constexpr source ansi_b4_1_interference{
    "ANSI B4.1-1967 (R2009)", "interference locational fits, Machinery's Handbook 31, Table 12",
    confidence::published};
inline constexpr source ansi_b4_1_force{
    "ANSI B4.1-1967 (R2009)", "force and shrink fits, Machinery's Handbook 31, Table 11, and 27, page 663",
    confidence::published};
inline constexpr source ansi_b4_1_force_memory{
    "ANSI B4.1-1967 (R2009)", "force and shrink fits: over 3.94 up to 4.73 in, and FN2 over 15.75 in",
    confidence::memory};
} // namespace sources

namespace detail {

/// The ends of the size ranges of the fit's table, in hundredths of an inch.
[[nodiscard]] constexpr rows<std::int16_t> inch_ranges(inch_fit_class c) noexcept {
    if (c >= inch_fit_class::fn1) return force_range_upto;
    return inch_range_upto;
}

/// The three numbers of a fit that stand in a row of its table. By fit, never by symbol: above
/// 9.85 in the same letter has other deviations among the running fits than among the locational ones.
[[nodiscard]] constexpr const std::int16_t* inch_cells(inch_fit_class c, int row) noexcept {
    using enum inch_fit_class;
    const auto behind = [c](inch_fit_class first) {
        return 3 * (static_cast<int>(c) - static_cast<int>(first));
    };
    if (c <= rc4) return running_fits_1_to_4[row] + behind(rc1);
    if (c <= rc9) return running_fits_5_to_9[row] + behind(rc5);
    if (c <= lc5) return clearance_fits_1_to_5[row] + behind(lc1);
    if (c <= lc11) return clearance_fits_6_to_11[row] + behind(lc6);
    if (c <= lt6) return transition_fits[row] + behind(lt1);
    if (c <= ln3) return interference_fits[row] + behind(ln1);
    return force_fits[row] + behind(fn1);
}

[[nodiscard]] constexpr bool has_inch_fit(inch_fit_class c, int row) noexcept {
    return inch_cells(c, row)[0] != 0;
}

/// Which of the sources a row rests on. LC1 to LC5 follow from printed grades and deviations by their
/// symbols, and these were not read again.
[[nodiscard]] constexpr const source& inch_source(inch_fit_class c, int row) noexcept {
    using enum inch_fit_class;
    if (c <= rc9) return sources::ansi_b4_1_running;
    if (c <= lc11) {
        const int first_from_memory = c <= lc5 ? 0 : c <= lc9 ? 10 : 5; // all, over 9.85 in, over 1.19 in
        return row < first_from_memory ? sources::ansi_b4_1_clearance : sources::ansi_b4_1_clearance_memory;
    }
    if (c <= lt6) {
        const bool from_memory = c == lt1 && row == 7; // over 3.15 in
        return from_memory ? sources::ansi_b4_1_transition_memory : sources::ansi_b4_1_transition;
    }
    if (c <= ln3) return sources::ansi_b4_1_interference;
    const bool from_memory = row == 12 || (c == fn2 && row >= 23); // over 3.94 in; over 15.75 in
    return from_memory ? sources::ansi_b4_1_force_memory : sources::ansi_b4_1_force;
}

} // namespace detail

/// The nominal sizes that a fit is given for: above `over`, up to and including `upto`.
struct inch_sizes {
    length over; ///< the range begins above this size
    length upto; ///< and includes this one

    friend constexpr bool operator==(inch_sizes, inch_sizes) noexcept = default;
};

/// The sizes of a fit: up to 19.69 in, LT3 and LT4 above 0.24 in, FN3 above 0.95 in.
[[nodiscard]] constexpr inch_sizes sizes_of(inch_fit_class c) noexcept {
    if (!detail::exists(c)) return {};
    const rows<std::int16_t> upto = detail::inch_ranges(c);
    std::size_t first = 0;
    while (!detail::has_inch_fit(c, static_cast<int>(first))) ++first;
    return {first == 0 ? length() : detail::hundredth_of_an_inch * upto[first - 1],
            detail::hundredth_of_an_inch * upto[upto.size() - 1]};
}

namespace detail {

/// Why `inch_fit(c, nominal)` has no answer.
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_inch_fit(inch_fit_class c,
                                                                    length nominal) noexcept {
    if (!exists(c))
        return error::composer(error_code::inch_fit_not_known)
               << "there is no such fit in ANSI B4.1; allowed: RC1 to RC9, LC1 to LC11, LT1 to LT6, LN1 to LN3, FN1 to FN5";
    const bool in_range = nominal > length() && nominal <= sizes_of(c).upto;
    error::composer say(in_range ? error_code::no_value_in_standard : error_code::size_out_of_range);
    if (in_range) say << "ANSI B4.1 has no " << name(c) << " at ";
    else say << "a nominal size of ";
    say.piece(written(nominal, {.unit = written_unit::in}).view())
        << " in (" << written(nominal).view() << " mm)";
    if (!in_range) say << " is outside the tables of ANSI B4.1";
    return say << "; allowed: " << name(c) << " above "
               << written(sizes_of(c).over, {.unit = written_unit::in}).view() << " in up to and including "
               << written(sizes_of(c).upto, {.unit = written_unit::in}).view() << " in";
}

} // namespace detail

/// A standard inch fit at a nominal size: ANSI B4.1-1967, as printed, exact. A size in millimetres is
/// looked up as it is. Where a row comes from, and how surely it is known, the limits tell by their
/// `origin()`. Error: a size that the fit is not given for (`sizes`); no such fit.
[[nodiscard]] constexpr result<fit> inch_fit(inch_fit_class c, length nominal) noexcept {
    if (!detail::exists(c) || nominal <= length()) return detail::no_inch_fit(c, nominal);
    const rows<std::int16_t> upto = detail::inch_ranges(c);
    const int row = detail::range_among(upto, nominal);
    const bool above_all = row == static_cast<int>(upto.size());
    if (above_all || !detail::has_inch_fit(c, row)) return detail::no_inch_fit(c, nominal);
    const std::int16_t* const cells = detail::inch_cells(c, row);
    const auto deviation = [cells](int column) { return detail::hundredth_of_a_thou * cells[column]; };
    const source& origin = detail::inch_source(c, row);
    return fit(hole_limits(nominal, {.upper = deviation(0), .lower = length()}, origin),
               shaft_limits(nominal, {.upper = deviation(1), .lower = deviation(2)}, origin));
}

} // namespace fitwright

#endif
