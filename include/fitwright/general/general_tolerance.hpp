#ifndef FITWRIGHT_GENERAL_GENERAL_TOLERANCE_HPP
#define FITWRIGHT_GENERAL_GENERAL_TOLERANCE_HPP

#include <fitwright/error.hpp>
#include <fitwright/general/general_tolerance_tables.hpp>
#include <fitwright/limits.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

/// A class of general tolerances: what "ISO 2768-m" in the title block asks of every size on the
/// drawing that has no tolerance of its own.
enum class general_class : std::uint8_t {
    fine,        ///< f
    medium,      ///< m
    coarse,      ///< c
    very_coarse, ///< v
};

/// The letter on the drawing: "f", "m", "c", "v"; "?" if there is no such class.
[[nodiscard]] constexpr text letter(general_class c) noexcept {
    switch (c) {
    case general_class::fine: return "f";
    case general_class::medium: return "m";
    case general_class::coarse: return "c";
    case general_class::very_coarse: return "v";
    }
    return "?";
}

/// An angle in whole minutes of arc.
struct arc_minutes {
    std::int32_t count = 0; ///< how many
    friend constexpr auto operator<=>(arc_minutes, arc_minutes) noexcept = default;
};

namespace sources {
inline constexpr source iso_2768_lengths{"ISO 2768-1:1989", "Table 1", confidence::published};
inline constexpr source iso_2768_edges{"ISO 2768-1:1989", "Table 2", confidence::published};
inline constexpr source iso_2768_angles{"ISO 2768-1:1989", "Table 3", confidence::published};
} // namespace sources

namespace detail {

/// What a row has for a class, or `general::none`; a class that is no class has nothing.
[[nodiscard]] constexpr std::int16_t value_in(const general::row& row, general_class c) noexcept {
    const auto column = static_cast<unsigned>(c);
    return column < 4 ? row.of_class[column] : general::none;
}

/// What a table has for a size that is not below it, or `general::none`.
template <std::size_t Size>
[[nodiscard]] constexpr std::int16_t value_in(const general::row (&table)[Size], length size,
                                              general_class c) noexcept {
    for (const general::row& row : table)
        if (row.upto_mm == general::open || size.nanometres() <= row.upto_mm * std::int64_t{1'000'000})
            return value_in(row, c);
    return general::none;
}

inline constexpr length smallest_general_size = length::from_nanometres(500'000);

/// Where a class has values, read from the table itself: " above 3 mm up to 4000 mm".
constexpr void list_general_sizes(error::composer& say, general_class c) noexcept {
    std::int64_t above = 0;
    std::int64_t upto = 0;
    for (const general::row& row : general::lengths) {
        if (value_in(row, c) != general::none) upto = row.upto_mm;
        else if (upto == 0) above = row.upto_mm;
    }
    if (above == 0) say << " from 0.5 mm";
    else say << " above " << above << " mm";
    say << " up to " << upto << " mm";
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_general_class() noexcept {
    return error::composer(error_code::no_value_in_standard)
           << "there is no such class in ISO 2768-1: allowed are f (fine), m (medium), c (coarse) and v (very "
              "coarse)";
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_general_tolerance(length size,
                                                                             general_class c) noexcept {
    if (letter(c) == "?") return no_general_class();
    const bool is_outside = value_in(general::lengths, size, general_class::medium) == general::none ||
                            size < smallest_general_size;
    error::composer say(is_outside ? error_code::size_out_of_range : error_code::no_value_in_standard);
    say << "ISO 2768-" << letter(c) << " has no general tolerance at " << written(size).view()
        << " mm: allowed are sizes";
    list_general_sizes(say, c);
    return say << "; any other size has its tolerance beside it";
}

} // namespace detail

/// The general tolerance of a length, plus and minus: ISO 2768-1:1989, Table 1. It holds for outside and
/// inside sizes, steps, diameters and distances; outer radii and chamfers have `general_edge_tolerance`.
/// Error: a size below 0.5 mm or above 4000 mm; class f above 2000 mm; class v up to 3 mm.
[[nodiscard]] constexpr result<length> general_tolerance(length nominal, general_class c) noexcept {
    const std::int16_t micrometres = detail::value_in(detail::general::lengths, nominal, c);
    if (nominal < detail::smallest_general_size || micrometres == detail::general::none)
        return detail::no_general_tolerance(nominal, c);
    return length::from_nanometres(1000) * micrometres;
}

/// The limits of a length without a tolerance of its own: `general_limits<side::hole>(14_mm, general_class::medium)`.
/// Errors as of `general_tolerance`.
template <side Side>
[[nodiscard]] constexpr result<size_limits<Side>> general_limits(length nominal, general_class c) noexcept {
    const auto tolerance = general_tolerance(nominal, c);
    if (!tolerance) return tolerance.error();
    return size_limits<Side>(nominal, {.upper = *tolerance, .lower = -*tolerance}, sources::iso_2768_lengths);
}

/// The general tolerance of an external radius or the height of a chamfer, plus and minus:
/// ISO 2768-1:1989, Table 2.
/// Error: a radius or height below 0.5 mm.
[[nodiscard]] constexpr result<length> general_edge_tolerance(length radius_or_height,
                                                              general_class c) noexcept {
    if (letter(c) == "?") return detail::no_general_class();
    if (radius_or_height < detail::smallest_general_size)
        return error::composer(error_code::size_out_of_range)
               << "ISO 2768-1 has no general tolerance for an edge of " << written(radius_or_height).view()
               << " mm: allowed are radii and heights of chamfers from 0.5 mm; a smaller one has its tolerance "
                  "beside it";
    const std::int16_t micrometres = detail::value_in(detail::general::edges, radius_or_height, c);
    return length::from_nanometres(1000) * micrometres;
}

/// The general tolerance of an angle by the length of its shorter side, plus and minus:
/// ISO 2768-1:1989, Table 3.
/// Error: a side that is not above 0 mm.
[[nodiscard]] constexpr result<arc_minutes> general_angle_tolerance(length shorter_side,
                                                                    general_class c) noexcept {
    if (letter(c) == "?") return detail::no_general_class();
    if (shorter_side <= length())
        return error::composer(error_code::size_out_of_range)
               << "the shorter side of an angle of " << written(shorter_side).view()
               << " mm: allowed are lengths above 0 mm";
    return arc_minutes{detail::value_in(detail::general::angles, shorter_side, c)};
}

} // namespace fitwright

#endif
