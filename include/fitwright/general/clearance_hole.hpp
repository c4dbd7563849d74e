#ifndef FITWRIGHT_GENERAL_CLEARANCE_HOLE_HPP
#define FITWRIGHT_GENERAL_CLEARANCE_HOLE_HPP

#include <fitwright/general/clearance_hole_tables.hpp>
#include <fitwright/iso286/limits.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

/// The three series of ISO 273, by how freely the bolt goes through.
enum class clearance_series : std::uint8_t {
    fine,   ///< for exact work; hole to H12
    medium, ///< the usual one; hole to H13
    coarse, ///< where holes need not line up well; hole to H14
};

/// The three fits of ASME B18.2.8.
enum class screw_fit : std::uint8_t {
    close,  ///< hole to H12
    normal, ///< hole to H13
    loose,  ///< hole to H14
};

/// A hole of ASME B18.2.8 and the inch drill that stands beside it: "#51", "H", "3/32", "1 7/64".
struct asme_clearance {
    hole_limits hole;
    text drill; ///< that makes it
};

namespace sources {
inline constexpr source iso_273{"ISO 273:1979", "fine H12, medium H13, coarse H14", confidence::published};
inline constexpr source asme_inch_loose{"ASME B18.2.8-1999 (R2017)", "inch screws, loose fit",
                                        confidence::published};
inline constexpr source asme_inch_memory{
    "ASME B18.2.8-1999 (R2017)", "inch screws: drill as printed, limits from memory", confidence::memory};
inline constexpr source asme_metric{
    "ASME B18.2.8-1999 (R2017)", "metric screws: least hole as ISO 273, tolerance H12, H13, H14 from memory",
    confidence::memory};
} // namespace sources

/// The diameter of an American screw number, exactly: 0.060 in for #0 and 0.013 in more for each.
[[nodiscard]] constexpr length numbered_screw(int number) noexcept {
    return length::from_nanometres(1'524'000) + length::from_nanometres(330'200) * number;
}

namespace detail {

inline constexpr std::int64_t nanometres_in_thou = 25'400;
inline constexpr length tenth_of_a_millimetre = length::from_nanometres(100'000);
inline constexpr length ten_thousandth_of_an_inch = length::from_nanometres(2'540);

/// The grade of the hole in each series, from fine or close to coarse or loose.
inline constexpr grade grade_of_series[] = {grade::it12, grade::it13, grade::it14};

/// Says which sizes of a table are next to one that is not in it. `size_at(i)` rises with i.
template <class SizeAt>
constexpr void name_neighbours(error::composer& say, length size, int count, SizeAt size_at,
                               written_unit unit) noexcept {
    int above = 0;
    while (above < count && size_at(above) < size) ++above;
    const auto name = [&](int i) {
        say << written(size_at(i), {.unit = unit}).view() << " " << in_words(unit);
    };
    if (above > 0) name(above - 1);
    if (above > 0 && above < count) say << " and ";
    if (above < count) name(above);
}

inline constexpr int iso_273_count = sizeof iso_273_table / sizeof iso_273_table[0];
inline constexpr int asme_inch_count = sizeof asme_inch_table / sizeof asme_inch_table[0];
inline constexpr int asme_metric_count = sizeof asme_metric_table / sizeof asme_metric_table[0];

[[nodiscard]] constexpr length iso_273_thread(int row) noexcept {
    return tenth_of_a_millimetre * iso_273_table[row].thread;
}
[[nodiscard]] constexpr length asme_inch_screw(int row) noexcept {
    return ten_thousandth_of_an_inch * asme_inch_table[row].screw;
}
[[nodiscard]] constexpr length asme_metric_screw(int row) noexcept {
    return tenth_of_a_millimetre * asme_metric_table[row].screw;
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_clearance_hole(length thread) noexcept {
    error::composer say(error_code::no_value_in_standard);
    say << "ISO 273 has no clearance hole for a thread of " << written(thread).view()
        << " mm: allowed are its sizes M1 to M64; next to this one are ";
    name_neighbours(say, thread, iso_273_count, iso_273_thread, written_unit::mm);
    return say;
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_asme_clearance_hole(length screw) noexcept {
    error::composer say(error_code::no_value_in_standard);
    say << "ASME B18.2.8 has no clearance hole for a screw of " << written(screw).view()
        << " mm: allowed are #0 to 1 1/2 in and M1.6 to M64; next to this one are ";
    name_neighbours(say, screw, asme_inch_count, asme_inch_screw, written_unit::in);
    say << "; ";
    name_neighbours(say, screw, asme_metric_count, asme_metric_screw, written_unit::mm);
    return say;
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_such_series() noexcept {
    return error::composer(error_code::no_value_in_standard)
           << "there is no such series: allowed are fine, medium and coarse (ISO 273), close, normal and loose "
              "(ASME B18.2.8)";
}

/// A hole from its least size and the place of its series; every hole of ISO 273 is above 1 mm.
[[nodiscard]] constexpr hole_limits hole_of_series(length least, unsigned series,
                                                   const source& origin) noexcept {
    const std::int32_t tolerance = tolerance_at(range_of(least), grade_of_series[series]);
    return {least, {.upper = length::from_nanometres(tolerance), .lower = length()}, origin};
}

} // namespace detail

/// The hole that a bolt or screw of a metric thread passes through: ISO 273:1979, M1 to M64, with its
/// tolerance H12, H13 or H14. `clearance_hole(8_mm, clearance_series::medium)` is 9 H13.
/// Error: a diameter that ISO 273 doesn't list (names the neighbours).
[[nodiscard]] constexpr result<hole_limits> clearance_hole(length thread_diameter,
                                                           clearance_series s) noexcept {
    const auto series = static_cast<unsigned>(s);
    if (series > 2) return detail::no_such_series();
    for (const detail::iso_273_row& row : detail::iso_273_table) {
        if (detail::tenth_of_a_millimetre * row.thread != thread_diameter) continue;
        const length least = detail::tenth_of_a_millimetre * row.fine_medium_coarse[series];
        return detail::hole_of_series(least, series, sources::iso_273);
    }
    return detail::no_clearance_hole(thread_diameter);
}

/// The hole that an American screw passes through, by the screw's diameter: ASME B18.2.8, #0 to 1 1/2 in
/// and M1.6 to M64. Inch limits are as printed, to three places: a #30 drill (0.1285 in) gives 0.128.
/// Which limits are from memory, `hole.origin()` says.
/// Error: a diameter that the standard doesn't list (names the neighbours).
[[nodiscard]] constexpr result<asme_clearance> asme_clearance_hole(length screw_diameter,
                                                                   screw_fit f) noexcept {
    const auto fit = static_cast<unsigned>(f);
    if (fit > 2) return detail::no_such_series();
    for (const detail::inch_screw_row& row : detail::asme_inch_table) {
        if (detail::ten_thousandth_of_an_inch * row.screw != screw_diameter) continue;
        const detail::inch_hole& printed = row.close_normal_loose[fit];
        const auto least = length::from_nanometres(printed.least * detail::nanometres_in_thou);
        const auto most = length::from_nanometres(printed.most * detail::nanometres_in_thou);
        const bool is_read = f == screw_fit::loose && screw_diameter != numbered_screw(10);
        const source& origin = is_read ? sources::asme_inch_loose : sources::asme_inch_memory;
        return asme_clearance{hole_limits(least, {.upper = most - least, .lower = length()}, origin),
                              printed.drill};
    }
    for (const detail::metric_screw_row& row : detail::asme_metric_table) {
        if (detail::tenth_of_a_millimetre * row.screw != screw_diameter) continue;
        const auto with_series = [&](const hole_limits& hole) {
            return asme_clearance{detail::hole_of_series(hole.lower_limit(), fit, sources::asme_metric),
                                  row.close_normal_loose[fit]};
        };
        return clearance_hole(screw_diameter, static_cast<clearance_series>(fit)).transform(with_series);
    }
    return detail::no_asme_clearance_hole(screw_diameter);
}

} // namespace fitwright

#endif
