#ifndef FITWRIGHT_ISO286_LIMITS_HPP
#define FITWRIGHT_ISO286_LIMITS_HPP

#include <fitwright/error.hpp>
#include <fitwright/iso286/interval.hpp>
#include <fitwright/iso286/no_value.hpp>

namespace fitwright {

/// The documents behind the ISO 286 tables, by how surely a cell is known.
namespace sources {
inline constexpr source iso_286_1{"ISO 286-1:2010", "Tables 1 to 5", confidence::published};
inline constexpr source iso_286_1_memory{
    "ISO 286-1:2010", "Tables 1 to 5: IT4 above 1000 mm, or x, X above 355 up to 400 mm", confidence::memory};
inline constexpr source iso_286_1_uncertain{"ISO 286-1:2010", "Tables 2 and 4: cd, ef, fg above 10 mm",
                                            confidence::uncertain};
} // namespace sources

namespace detail {

/// Which of the sources a class rests on; see the notes at the top of the tables.
[[nodiscard]] constexpr const source& source_of(size_range r, position p, grade g) noexcept {
    constexpr auto mask_of = [](position letter) { return 1u << static_cast<unsigned>(letter); };
    constexpr unsigned new_letters = mask_of(position::cd) | mask_of(position::ef) | mask_of(position::fg);
    constexpr unsigned to_look_at = new_letters | mask_of(position::x);
    if ((mask_of(p) & to_look_at) == 0 && r.main_row <= 15) [[likely]]
        return sources::iso_286_1;
    if ((mask_of(p) & new_letters) != 0 && r.row > 2) return sources::iso_286_1_uncertain;
    if ((g == grade::it4 && r.main_row > 15) || (p == position::x && r.row == 22))
        return sources::iso_286_1_memory;
    return sources::iso_286_1;
}

} // namespace detail

/// The standard tolerance (IT) of a grade at a nominal size: ISO 286-1:2010, Table 1.
/// Error: a size not above 0 up to and including 3150 mm; IT01 and IT0 above 500 mm; IT14 to IT18 up
/// to and including 1 mm.
[[nodiscard]] constexpr result<length> standard_tolerance(length nominal, grade g) noexcept {
    if (!detail::in_tables(nominal) || !g.exists()) return detail::no_tolerance(nominal, g);
    const detail::size_range r = detail::range_of(nominal);
    const std::int32_t tolerance = detail::tolerance_at(r, g);
    if (tolerance == detail::na || (r.up_to_1_mm && g >= grade::it14))
        return detail::no_tolerance(nominal, g);
    return length::from_nanometres(tolerance);
}

/// The limits of a hole or a shaft of a tolerance class: ISO 286-1:2010, Tables 1 to 5, every class
/// the tables have a value for. js and JS are exactly +/- IT/2 unless the older rounding is asked for.
/// Error: a size not above 0 up to and including 3150 mm; a class that has no value there (says where
/// it has one, and which grades of the letter do).
template <side Side>
[[nodiscard]] constexpr result<size_limits<Side>>
limits(length nominal, tolerance_class<Side> c, js_rounding rounding = js_rounding::exact_half) noexcept {
    if (!detail::in_tables(nominal)) [[unlikely]]
        return detail::no_value(nominal, c);
    const detail::size_range r = detail::range_of(nominal);
    const detail::interval i = detail::interval_of(r, c, rounding);
    if (!i.is_given()) [[unlikely]]
        return detail::no_value(nominal, c);
    return size_limits<Side>(
        nominal, {.upper = length::from_nanometres(i.upper), .lower = length::from_nanometres(i.lower)},
        detail::source_of(r, c.position, c.grade));
}

} // namespace fitwright

#endif
