#ifndef FITWRIGHT_INCH_SIZE_RANGES_HPP
#define FITWRIGHT_INCH_SIZE_RANGES_HPP

#include <fitwright/length.hpp>
#include <fitwright/rows.hpp>

#include <cstddef>
#include <cstdint>

// ANSI B4.1-1967: the ranges of nominal sizes, over the one before, up to and including. They end on
// whole hundredths of an inch. They come from the metric ones (3, 6, 10 mm ...) but are rounded, so a
// size in inches may belong to another range than the same size in ISO 286.

namespace fitwright::detail {

// clang-format off
/// Of the running, sliding and locational fits, in hundredths of an inch.
inline constexpr std::int16_t inch_range_upto[] = {
    12, 24, 40, 71, 119, 197, 315, 473, 709, 985, 1241, 1575, 1969,
};

/// Of the force and shrink fits, in hundredths of an inch.
inline constexpr std::int16_t force_range_upto[] = {
    12, 24, 40, 56, 71, 95, 119, 158, 197, 256, 315, 394, 473,
    552, 630, 709, 788, 886, 985, 1103, 1241, 1398, 1575, 1772, 1969,
};
// clang-format on

inline constexpr int inch_range_count = sizeof inch_range_upto / sizeof inch_range_upto[0];
inline constexpr int force_range_count = sizeof force_range_upto / sizeof force_range_upto[0];
static_assert(inch_range_count == 13);
static_assert(force_range_count == 25);

inline constexpr length hundredth_of_an_inch = length::from_nanometres(254'000);

/// The unit of the tables: the finest value printed is 0.12 thou.
inline constexpr length hundredth_of_a_thou = length::from_nanometres(254);

/// The range that a nominal size above 0 belongs to, or the number of ranges if it is above them all.
[[nodiscard]] constexpr int range_among(rows<std::int16_t> upto, length nominal) noexcept {
    const int count = static_cast<int>(upto.size());
    int range = 0;
    while (range < count && nominal > hundredth_of_an_inch * upto[static_cast<std::size_t>(range)]) ++range;
    return range;
}

} // namespace fitwright::detail

#endif
