#ifndef FITWRIGHT_TOOL_DRILL_HPP
#define FITWRIGHT_TOOL_DRILL_HPP

#include <fitwright/error.hpp>
#include <fitwright/iso286.hpp>
#include <fitwright/rows.hpp>
#include <fitwright/tool/drill_tables.hpp>
#include <fitwright/tool/printed_units.hpp>
#include <fitwright/tool/tool_limits.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

/// The series that twist drills are sold in.
enum class drill_series : std::uint8_t {
    metric,     ///< 0.2 to 25 mm
    fractional, ///< 1/64 to 1 3/4 in by 1/64
    number,     ///< #80 (0.0135 in) to #1 (0.228 in)
    letter,     ///< A (0.234 in) to Z (0.413 in)
};

/// "metric", "fractional", "number", "letter".
[[nodiscard]] constexpr text in_words(drill_series s) noexcept {
    switch (s) {
    case drill_series::metric: return "metric";
    case drill_series::fractional: return "fractional";
    case drill_series::number: return "number";
    case drill_series::letter: return "letter";
    }
    return "";
}

namespace sources {
inline constexpr source metric_drills{"ISO 235, BS 328", "size steps", confidence::published};
inline constexpr source inch_drills{"ASME B94.11M", "fractional, number and letter sizes",
                                    confidence::published};
inline constexpr source number_drills_not_read{
    "ASME B94.11M", "number sizes: five lists agree, no printed table was read", confidence::memory};
inline constexpr source drill_h8{"ISO 235, DIN 1414-1", "drill diameter h8", confidence::published};
inline constexpr source inch_drill_tolerance{"ASME B94.11M", "diameter tolerances", confidence::memory};
} // namespace sources

/// A drill as it is sold: its nominal diameter, exact, and what is stamped on it.
struct drill_size {
    length diameter;
    drill_series series = drill_series::metric; ///< metric, fractional, number or letter
    std::uint8_t label = 0; ///< 64ths of an inch; the number; the letter's place from A = 1; metric 0

    /// "6.8 mm", "13/64 in", "1 23/32 in", "#7", "F".
    [[nodiscard]] constexpr fixed_text<31> name() const noexcept;

    /// The document that lists the size.
    [[nodiscard]] constexpr const source& origin() const noexcept;

    friend constexpr bool operator==(drill_size, drill_size) noexcept = default;
};

/// All drills of a series, the thinnest first.
[[nodiscard]] constexpr rows<drill_size> drills(drill_series series) noexcept;

/// The largest drill of the series that is smaller than `size`; a drill of just that size is not under it.
/// Error: the whole series is at least as large.
[[nodiscard]] constexpr result<drill_size> largest_drill_under(length size, drill_series series) noexcept;

/// The next drill up: the smallest of the series that is larger than `size`.
/// Error: the whole series is at most as large.
[[nodiscard]] constexpr result<drill_size> smallest_drill_over(length size, drill_series series) noexcept;

/// The drill of the series nearest to `size`; of two as near the smaller, since a hole can be opened up.
/// Error: a size outside the series.
[[nodiscard]] constexpr result<drill_size> nearest_drill(length size, drill_series series) noexcept;

/// The documents for the diameter of a drill itself (not of the hole it leaves).
enum class drill_tolerance : bool { metric_h8, inch_drills };

/// The limits of a drill's own diameter at the point: metric h8, or the inch tolerance of ASME
/// B94.11M (from memory). Minus only, and yet the hole comes out larger: see `drilled_hole`.
/// Error: a diameter not above 0 up to 100 mm for h8, or outside 0.0135 to 3.5 in for inch drills.
[[nodiscard]] constexpr result<tool_limits> drill_limits(length diameter, drill_tolerance which) noexcept;

/// The same for a drill of a series: h8 if it is metric.
[[nodiscard]] constexpr result<tool_limits> drill_limits(const drill_size& drill) noexcept {
    const bool is_metric = drill.series == drill_series::metric;
    return drill_limits(drill.diameter,
                        is_metric ? drill_tolerance::metric_h8 : drill_tolerance::inch_drills);
}

namespace detail {

template <std::size_t Size> struct drill_list { drill_size drill[Size]; };

template <std::size_t Size, class Make> consteval drill_list<Size> listed(Make make) {
    drill_list<Size> list{};
    for (std::size_t i = 0; i < Size; ++i) list.drill[i] = make(i);
    return list;
}

inline constexpr auto metric_drills = listed<metric_drill_count>([](std::size_t i) {
    return drill_size{printed_um(10 * metric_drill_table[i]), drill_series::metric, 0};
});
inline constexpr auto fractional_drills = listed<fractional_drill_count>([](std::size_t i) {
    return drill_size{printed_64ths(static_cast<std::int64_t>(i) + 1), drill_series::fractional,
                      static_cast<std::uint8_t>(i + 1)};
});
inline constexpr auto number_drills = listed<number_drill_count>([](std::size_t i) {
    return drill_size{printed_tenths(number_drill_table[i]), drill_series::number,
                      static_cast<std::uint8_t>(number_drill_count - i)};
});
inline constexpr auto letter_drills = listed<letter_drill_count>([](std::size_t i) {
    return drill_size{printed_thou(letter_drill_table[i]), drill_series::letter,
                      static_cast<std::uint8_t>(i + 1)};
});

/// How many of the series are smaller than `size`.
[[nodiscard]] constexpr std::size_t how_many_below(rows<drill_size> series, length size) noexcept {
    std::size_t below = 0;
    std::size_t above = series.size();
    while (below < above) {
        const std::size_t middle = (below + above) / 2;
        if (series[middle].diameter < size) below = middle + 1;
        else above = middle;
    }
    return below;
}

[[nodiscard]] constexpr error no_such_drill(text relation, length size, drill_series series) noexcept {
    const auto all = drills(series);
    error::composer say(error_code::size_out_of_range);
    say << "no " << in_words(series) << " drill is " << relation << written(size).view()
        << " mm; the series runs from " << all[0].name().view();
    if (series != drill_series::metric) say << " (" << written(all[0].diameter).view() << " mm)";
    const drill_size last = all[all.size() - 1];
    say << " to " << last.name().view();
    if (series != drill_series::metric) say << " (" << written(last.diameter).view() << " mm)";
    return say;
}

struct drill_tolerance_row {
    std::int32_t upto_tenths;
    std::int8_t minus_tenths;
};

// ASME B94.11M, diameter tolerance of drills from 0.0135 in on, in 0.0001 in; minus only. From memory.
// clang-format off
inline constexpr drill_tolerance_row inch_drill_tolerance_table[] = {
    // up to  minus
    {   1250,     5},
    {   2500,     7},
    {   5000,    10},
    {  10000,    12},
    {  20000,    15},
    {  35000,    20},
};
// clang-format on
static_assert(sizeof inch_drill_tolerance_table / sizeof inch_drill_tolerance_table[0] == 6);

} // namespace detail

constexpr rows<drill_size> drills(drill_series series) noexcept {
    switch (series) {
    case drill_series::metric: return detail::metric_drills.drill;
    case drill_series::fractional: return detail::fractional_drills.drill;
    case drill_series::number: return detail::number_drills.drill;
    case drill_series::letter: return detail::letter_drills.drill;
    }
    return {};
}

constexpr fixed_text<31> drill_size::name() const noexcept {
    fixed_text<31> t;
    switch (series) {
    case drill_series::metric: return t << written(diameter).view() << " mm";
    case drill_series::number: return t << "#" << std::int64_t{label};
    case drill_series::letter: {
        const char letter = static_cast<char>('A' + label - 1);
        return t << text(&letter, 1);
    }
    case drill_series::fractional: break;
    }
    int numerator = label % 64;
    int denominator = 64;
    while (numerator != 0 && numerator % 2 == 0) {
        numerator /= 2;
        denominator /= 2;
    }
    if (label >= 64) t << std::int64_t{label / 64};
    if (label > 64 && numerator != 0) t << " ";
    if (numerator != 0) t << std::int64_t{numerator} << "/" << std::int64_t{denominator};
    return t << " in";
}

constexpr const source& drill_size::origin() const noexcept {
    if (series == drill_series::metric) return sources::metric_drills;
    if (series == drill_series::number)
        for (const std::int8_t number : detail::number_drills_not_read)
            if (number == label) return sources::number_drills_not_read;
    return sources::inch_drills;
}

constexpr result<drill_size> largest_drill_under(length size, drill_series series) noexcept {
    const auto all = drills(series);
    const std::size_t below = detail::how_many_below(all, size);
    if (below == 0) return detail::no_such_drill("smaller than ", size, series);
    return all[below - 1];
}

constexpr result<drill_size> smallest_drill_over(length size, drill_series series) noexcept {
    const auto all = drills(series);
    std::size_t i = detail::how_many_below(all, size);
    if (i < all.size() && all[i].diameter == size) ++i;
    if (i == all.size()) return detail::no_such_drill("larger than ", size, series);
    return all[i];
}

constexpr result<drill_size> nearest_drill(length size, drill_series series) noexcept {
    const auto all = drills(series);
    const std::size_t i = detail::how_many_below(all, size);
    if (i < all.size() && all[i].diameter == size) return all[i];
    if (i == 0 || i == all.size()) return detail::no_such_drill("about ", size, series);
    const bool above_is_nearer = all[i].diameter - size < size - all[i - 1].diameter;
    return above_is_nearer ? all[i] : all[i - 1];
}

constexpr result<tool_limits> drill_limits(length diameter, drill_tolerance which) noexcept {
    const auto refused = [&](text allowed) {
        return error::composer(error_code::size_out_of_range)
               << "no drill tolerance for " << written(diameter).view() << " mm: allowed are " << allowed;
    };
    if (which == drill_tolerance::metric_h8) {
        if (diameter <= length() || diameter > detail::printed_mm(100))
            return refused("drills above 0 up to 100 mm for h8");
        const auto shaft_h8 = limits(diameter, shaft_class{position::h, grade::it8});
        return tool_limits(shaft_h8->lower_limit(), diameter, sources::drill_h8);
    }
    if (diameter >= detail::printed_tenths(135))
        for (const auto& row : detail::inch_drill_tolerance_table)
            if (diameter <= detail::printed_tenths(row.upto_tenths))
                return tool_limits(diameter - detail::printed_tenths(row.minus_tenths), diameter,
                                   sources::inch_drill_tolerance);
    return refused("drills from 0.0135 up to 3.5 in (0.3429 to 88.9 mm)");
}

} // namespace fitwright

#endif
