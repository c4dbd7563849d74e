#ifndef FITWRIGHT_TOOL_REAMED_HOLE_HPP
#define FITWRIGHT_TOOL_REAMED_HOLE_HPP

#include <fitwright/tool/expected_hole.hpp>
#include <fitwright/tool/reamer.hpp>

namespace fitwright {

namespace sources {
inline constexpr source springs_back{"practice", "plastic springs back 0.02 to 0.1 mm on 10 mm",
                                     confidence::uncertain};
inline constexpr source cast_iron_cut_dry{
    "practice", "cast iron cut dry: 0 to a few um, taken as the share DIN 1420 keeps", confidence::practice};
} // namespace sources

/// The hole that a reamer is expected to cut: from the reamer's own size up to its oversize more.
/// - Metals: the share that DIN 1420 keeps for it, so a reamer in good order cuts within its class.
/// - Cast iron, cut dry: close to the reamer; the figures are the same.
/// - Plastic: springs back by 0.2 to 1 % of the diameter, the only figure there is, and uncertain.
/// - Aluminium cut hot, thin walls, and tough alloys on a dull tool close in by what nobody has
///   measured in general: the figures leave it out, and `note()` says so.
/// Any reamer: cut a test hole first; dull or misused ones cut several hundredths of a millimetre over.
[[nodiscard]] constexpr expected_hole reamed_hole(const reamer_size& reamer,
                                                  work_material material) noexcept {
    const length least = reamer.limits().lower_limit();
    const length most = reamer.limits().upper_limit() + reamer.oversize();
    const expected_hole::sizes as_cut{.least = least, .mean = (least + most) / 2, .most = most};
    switch (material.family()) {
    case material_family::cast_iron:
        return {as_cut, sources::cast_iron_cut_dry,
                "cast iron cut dry comes out close to the reamer; cut a test hole"};
    case material_family::plastic: {
        const length lowest = least - least / 100;
        const length highest = most - most / 500;
        return {{.least = lowest, .mean = (lowest + highest) / 2, .most = highest},
                sources::springs_back,
                "plastic springs back, and closes in if cut hot: the figure is uncertain, cut a test hole"};
    }
    case material_family::aluminium:
        return {as_cut, reamer.origin(),
                "cut test hole; a hole cut hot closes in by expansion x diameter x rise, a thin wall springs "
                "back: neither is in the figures"};
    case material_family::titanium:
    case material_family::nickel_alloy:
        return {as_cut, reamer.origin(),
                "cut a test hole; a reamer dull at the corner leaves a tough alloy undersize: not in the "
                "figures"};
    default:
        return {as_cut, reamer.origin(), "cut a test hole; a thin wall springs back: not in the figures"};
    }
}

/// How a reamer goes with a hole.
struct reamer_match {
    length too_small_by; ///< how far the least expected hole falls below the lower limit; 0 if it doesn't
    length too_large_by; ///< how far the largest expected hole goes above the upper limit; 0 if it doesn't
    expected_hole hole;

    [[nodiscard]] constexpr bool suits() const noexcept {
        return too_small_by == length() && too_large_by == length();
    }
};

/// Whether a reamer suits a hole: whether all it is expected to cut lies within the hole's limits. In
/// metal a new reamer within `reamer_for(hole)` does, and a worn one down to the hole's lower limit.
[[nodiscard]] constexpr reamer_match match_reamer(const reamer_size& reamer, const hole_limits& hole,
                                                  work_material material) noexcept {
    const expected_hole cut = reamed_hole(reamer.used_for(hole), material);
    const auto above_zero = [](length l) { return l > length() ? l : length(); };
    return {above_zero(hole.lower_limit() - cut.least()), above_zero(cut.most() - hole.upper_limit()), cut};
}

} // namespace fitwright

#endif
