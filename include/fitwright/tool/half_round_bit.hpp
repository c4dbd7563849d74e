#ifndef FITWRIGHT_TOOL_HALF_ROUND_BIT_HPP
#define FITWRIGHT_TOOL_HALF_ROUND_BIT_HPP

#include <fitwright/tool/expected_hole.hpp>
#include <fitwright/tool/tool_limits.hpp>

// The half-round bit (D-bit): a piece of round stock, flattened to about half its thickness and
// hardened. It cuts on its leading end and guides itself by its round body, so a bit ground from the
// shaft's own stock leaves a close sliding hole for that same stock. Stock by a two-point micrometer can
// still bind: drill rod is not truly round.

namespace fitwright {

namespace sources {
inline constexpr source half_and_a_thou{
    "D-bit (Cyril Collins); D-Bits in the Workshop (Duplex), article 2850", "thickness from flat to back",
    confidence::published};
inline constexpr source below_half{"Of all precision tools d-bits", "thickness from flat to back",
                                   confidence::published};
inline constexpr source bit_practice{"practice, inferred from D-Bits in the Workshop (Duplex)",
                                     "a bit of the shaft's own stock leaves 0 to about 0.0005 in over",
                                     confidence::uncertain};
} // namespace sources

/// By how much a hole comes out larger than the tool that cut it is stated or measured to be, on the
/// diameter. How far that size may be off is no part of it: `bit_hole` counts it.
struct overcut {
    length least;
    length mean;
    length most;
    const source* from = &stated_by_user;

    [[nodiscard]] constexpr const source& origin() const noexcept { return *from; }
};

/// What practice has a half-round bit cut over: 0 to about 0.0005 in. Uncertain, nobody has measured it;
/// no plan relies on it. Measure your own: `overcut_from_trials`.
inline constexpr overcut common_bit_overcut{.least = length(),
                                            .mean = length::from_nanometres(6'350),
                                            .most = length::from_nanometres(12'700),
                                            .from = &sources::bit_practice};

/// The hole that a half-round bit is expected to leave: the bit, from its least to its most size, and its
/// overcut.
[[nodiscard]] constexpr expected_hole bit_hole(const tool_limits& tool, const overcut& over) noexcept {
    return {{.least = tool.lower_limit() + over.least,
             .mean = tool.middle() + over.mean,
             .most = tool.upper_limit() + over.most},
            over.origin(),
            "as the trials had it: same material, same speed, same edge"};
}

/// The same for a bit of a size that is taken as exact.
[[nodiscard]] constexpr expected_hole bit_hole(length tool, const overcut& over) noexcept {
    return bit_hole(tool_limits(tool, tool), over);
}

/// The sizes a blank may have for its bit to leave a hole within the limits. Polish the cutting part
/// down into them. None (`exist()` is false) where the overcut varies by more than the tolerance.
[[nodiscard]] constexpr tool_limits bit_blank_for(const hole_limits& hole, const overcut& over) noexcept {
    return {hole.lower_limit() - over.least, hole.upper_limit() - over.most, over.origin()};
}

/// A published rule for how thick a bit is left, from the flat to the back.
struct flat_rule {
    length thickness; ///< from the flat to the back
    bool at_most;     ///< false: just this thickness; true: less than it, by how much is not published
    text words;       ///< the rule, in words
    const source* from = &stated_by_user;

    [[nodiscard]] constexpr const source& origin() const noexcept { return *from; }
};

/// Both rules for one bit. They contradict each other, and nobody has published a measurement.
struct flat_rules {
    flat_rule half_and_a_thou; ///< half the diameter and a thou
    flat_rule below_half;      ///< somewhat below half the diameter
};

/// How thick to leave a half-round bit of this diameter: both published rules, neither preferred. Half to
/// the nearest nanometre.
[[nodiscard]] constexpr flat_rules bit_flat(length diameter) noexcept {
    return {
        {diameter / 2 + length::from_nanometres(25'400), false,
         "half the diameter and 0.001 in more, for honing; less than half cuts undersize",
         &sources::half_and_a_thou},
        {diameter / 2, true, "a few thou below half the diameter; how many is not said",
         &sources::below_half},
    };
}

} // namespace fitwright

#endif
