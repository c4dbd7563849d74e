#ifndef FITWRIGHT_TOOL_REAMER_HPP
#define FITWRIGHT_TOOL_REAMER_HPP

#include <fitwright/error.hpp>
#include <fitwright/iso286.hpp>
#include <fitwright/rows.hpp>
#include <fitwright/tool/printed_units.hpp>
#include <fitwright/tool/tool_limits.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

namespace sources {
inline constexpr source din_1420{"DIN 1420 (ISO 522)", "15 % and 35 % of the hole's tolerance, rounded up",
                                 confidence::published};
inline constexpr source din_1420_read_backwards{
    "DIN 1420 (ISO 522)", "its 15 % at IT7, for a reamer of which only the size is known",
    confidence::practice};
inline constexpr source inch_reamers{"ASME B94.2", "diameter tolerances", confidence::memory};
inline constexpr source hand_reamer_diameters{"ISO 236-1", "first choice of diameters", confidence::memory};
} // namespace sources

namespace detail {

/// A share of a tolerance, rounded up to the next whole micrometre. In integers: a difference of two
/// millimetre values in floating point pushes shares that come out whole up by 1 um.
[[nodiscard]] constexpr length percent_rounded_up(length tolerance, int percent) noexcept {
    const std::int64_t hundredths = tolerance.nanometres() * percent;
    return length::from_nanometres((hundredths + 99'999) / 100'000 * 1'000);
}

/// How much larger than the reamer DIN 1420 counts the hole to come out.
[[nodiscard]] constexpr length reamer_reserve(length tolerance) noexcept {
    return percent_rounded_up(tolerance, 15);
}

} // namespace detail

/// The limits of the reamer that cuts a hole of these limits, by DIN 1420: the upper limit is the
/// hole's less 15 % of its tolerance, the reamer's own tolerance is 35 % of it; both shares are rounded
/// up to whole micrometres. A 10 H7 hole (10 to 10.015) wants a reamer of 10.006 to 10.012 mm.
///
/// Only the shares are rounded: limits in half micrometres or in inches keep their odd end.
/// No reamer (`exist()` is false) where the rounded shares take more than the whole tolerance: below
/// 2 um, and between 2.857 and 3 um.
[[nodiscard]] constexpr tool_limits reamer_for(const hole_limits& hole) noexcept {
    const length tolerance = hole.tolerance();
    if (tolerance <= length()) return {};
    const length upper = hole.upper_limit() - detail::reamer_reserve(tolerance);
    const length lower = upper - detail::percent_rounded_up(tolerance, 35);
    if (lower < hole.lower_limit()) return {};
    return {lower, upper, sources::din_1420};
}

/// A reamer, and how much larger than itself it may cut.
class reamer_size {
public:
    constexpr reamer_size() noexcept = default;

    /// A reamer of stated or measured size: `reamer_size(measured_shaft{7.981_mm, 1_um})`. What it cuts
    /// over its size is then the share that DIN 1420 keeps at IT7 of that size, whatever hole it is used
    /// for: practice, not a test.
    constexpr reamer_size(const tool_limits& limits) noexcept
        : limits_(limits),
          oversize_(at_it7(limits.upper_limit())),
          source_(&sources::din_1420_read_backwards) {}

    /// A reamer with what it was found to cut over its own size, from trials.
    constexpr reamer_size(const tool_limits& limits, length oversize) noexcept
        : limits_(limits), oversize_(oversize) {}

    constexpr reamer_size(const tool_limits& limits, length oversize, const source& origin) noexcept
        : limits_(limits), oversize_(oversize), source_(&origin) {}

    /// Of the reamer itself.
    [[nodiscard]] constexpr const tool_limits& limits() const noexcept { return limits_; }
    /// From nothing up to this much larger than the reamer comes the hole, in a metal that neither
    /// closes in nor smears.
    [[nodiscard]] constexpr length oversize() const noexcept { return oversize_; }
    /// Where the oversize comes from.
    [[nodiscard]] constexpr const source& origin() const noexcept { return *source_; }

    /// The size in inches that it is sold by; 0 if it is not one of inches.
    [[nodiscard]] constexpr length sold_in_inches_as() const noexcept { return inch_size_; }

    /// The same reamer, as sold by a size in inches.
    [[nodiscard]] constexpr reamer_size as_sold_in_inches(length size) const noexcept {
        reamer_size sold = *this;
        sold.inch_size_ = size;
        return sold;
    }

private:
    static constexpr length at_it7(length size) noexcept {
        const auto tolerance = standard_tolerance(size, grade::it7);
        return detail::reamer_reserve(tolerance ? *tolerance : length());
    }

    tool_limits limits_;
    length oversize_;
    const source* source_ = &stated_by_user;
    length inch_size_;
};

/// The reamer that is made for a hole: within `reamer_for(hole)`, and counted to cut over by the share
/// that DIN 1420 keeps of the hole's tolerance, so the hole comes out within its limits.
/// Error: a tolerance too narrow for DIN 1420.
[[nodiscard]] constexpr result<reamer_size> reamer_of(const hole_limits& hole) noexcept {
    const tool_limits made = reamer_for(hole);
    if (made.exist()) return reamer_size(made, hole.upper_limit() - made.upper_limit(), sources::din_1420);
    return error::composer(error_code::tool_not_known)
           << "no reamer is made for " << written(hole).view()
           << ": DIN 1420 leaves nothing of its tolerance; a tolerance of 3 um or more always leaves some";
}

/// A reamer as it is sold for a tolerance class: `reamer_of(10_mm, "H7"_hole_class)` is 10.006 to
/// 10.012 mm, the limits of `reamer_for` that hole.
/// Error: as of `limits(nominal, made_for)`; a tolerance too narrow for DIN 1420.
[[nodiscard]] constexpr result<reamer_size> reamer_of(length nominal, hole_class made_for) noexcept {
    const auto hole = limits(nominal, made_for);
    if (!hole) return hole.error();
    return reamer_of(*hole);
}

namespace detail {

struct inch_reamer_row {
    std::int16_t upto_quarter_inches;
    std::int8_t upper_tenths, lower_tenths;
};

// clang-format off

// ASME B94.2: limits of a reamer above its nominal size, in 0.0001 in. From memory.
inline constexpr inch_reamer_row inch_reamer_table[] = {
    // up to   upper  lower
    // 1/4 in
    {      1,      4,     1},
    {      4,      5,     1},
    {     12,      6,     2},
};

// ISO 236-1: diameters of hand reamers of first choice, in 0.1 mm. From memory. 3.2 mm and the second
// choice, which could not be told for certain, are left out.
inline constexpr std::int16_t hand_reamer_table[] = {
     15,  16,  18,  20,  22,  25,  28,  30,  35,  40,  45,  50,  55,  60,  70,  80,  90, 100,
    110, 120, 140, 160, 180, 200, 220, 250, 280, 320, 360, 400, 450, 500,
};
// clang-format on
static_assert(sizeof inch_reamer_table / sizeof inch_reamer_table[0] == 3);
inline constexpr std::size_t hand_reamer_count = sizeof hand_reamer_table / sizeof hand_reamer_table[0];
static_assert(hand_reamer_count == 32);

struct reamer_diameters {
    length diameter[hand_reamer_count];
};
inline constexpr reamer_diameters hand_reamers = [] {
    reamer_diameters made;
    for (std::size_t i = 0; i < hand_reamer_count; ++i)
        made.diameter[i] = printed_um(100 * hand_reamer_table[i]);
    return made;
}();

} // namespace detail

/// A reamer made in inches, ASME B94.2 (from memory): 1/4 in is 0.2501 to 0.2504 in.
/// Error: a nominal size not above 0 up to 3 in.
[[nodiscard]] constexpr result<reamer_size> inch_reamer_of(length nominal) noexcept {
    if (nominal > length())
        for (const auto& row : detail::inch_reamer_table)
            if (nominal <= detail::printed_thou(250 * row.upto_quarter_inches))
                return reamer_size(tool_limits(nominal + detail::printed_tenths(row.lower_tenths),
                                               nominal + detail::printed_tenths(row.upper_tenths),
                                               sources::inch_reamers))
                    .as_sold_in_inches(nominal);
    return error::composer(error_code::size_out_of_range)
           << "no inch reamer of " << written(nominal, {.unit = written_unit::in}).view()
           << " in: allowed are sizes above 0 up to 3 in";
}

/// The diameters that hand reamers are sold in (`sources::hand_reamer_diameters`: first choice, from
/// memory).
[[nodiscard]] constexpr rows<length> hand_reamer_diameters() noexcept {
    return detail::hand_reamers.diameter;
}

} // namespace fitwright

#endif
