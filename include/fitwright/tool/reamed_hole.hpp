#ifndef FITWRIGHT_TOOL_REAMED_HOLE_HPP
#define FITWRIGHT_TOOL_REAMED_HOLE_HPP

#include <fitwright/tool/closing_in.hpp>
#include <fitwright/tool/reamer.hpp>

namespace fitwright {

namespace sources {
inline constexpr source cast_iron_cut_dry{
    "practice", "cast iron cut dry: 0 to a few um, taken as the share DIN 1420 keeps", confidence::practice};
inline constexpr source tough_alloy_reamed{
    "practice", "the share DIN 1420 keeps, taken for a tough alloy and a sharp reamer", confidence::practice};
} // namespace sources

/// The hole that a reamer is expected to cut: from the reamer's own size up to its oversize more.
/// - Metals: the share that DIN 1420 keeps for it, so a reamer in good order cuts within its class.
/// - Cast iron, cut dry: close to the reamer; the figures are the same.
/// - Aluminium and magnesium: down to 0.05 % of the diameter smaller, for a rise of up to 20 K in cutting.
/// - Plastic: springs back by 0.2 to 1 % of the diameter, the only figure there is, and uncertain.
/// - Any `thin_walled` work: down to another 0.1 % smaller, a guess and uncertain.
/// - Titanium and nickel alloys: as metals, but close on a reamer dull at the corner; `doubts()` says so.
/// Any reamer: cut a test hole first; dull or misused ones cut several hundredths of a millimetre over.
[[nodiscard]] constexpr expected_hole reamed_hole(const reamer_size& reamer,
                                                  work_material material) noexcept {
    const detail::closing_in closes = detail::closing_in_of(material);
    const length smallest = reamer.limits().lower_limit();
    const length largest = reamer.limits().upper_limit() + reamer.oversize();
    const length least = smallest - closes.of(smallest, closes.most);
    const length most = largest - closes.of(largest, closes.least);
    const expected_hole::sizes sizes{.least = least, .mean = (least + most) / 2, .most = most};
    const text note = "cut a test hole; a dull or misused reamer cuts several hundredths over";
    if (closes.from != nullptr) return {sizes, *closes.from, note, closes.doubts};
    if (detail::is_tough(material)) return {sizes, sources::tough_alloy_reamed, note, hole_doubt::dull_edge};
    if (material.family() == material_family::cast_iron) return {sizes, sources::cast_iron_cut_dry, note};
    return {sizes, reamer.origin(), note};
}

/// How a reamer goes with a hole.
struct reamer_match {
    length too_small_by; ///< how far the least expected hole falls below the lower limit; 0 if it doesn't
    length too_large_by; ///< how far the largest expected hole goes above the upper limit; 0 if it doesn't
    expected_hole hole;

    /// Whether what it cuts lies within the limits.
    [[nodiscard]] constexpr bool suits() const noexcept {
        return too_small_by == length() && too_large_by == length();
    }
};

/// Whether a reamer suits a hole: whether all it is expected to cut lies within the hole's limits. In
/// steel the reamer made for the hole, `reamer_of(hole)`, does, and when worn too, down to the hole's lower
/// limit.
[[nodiscard]] constexpr reamer_match match_reamer(const reamer_size& reamer, const hole_limits& hole,
                                                  work_material material) noexcept {
    const expected_hole cut = reamed_hole(reamer, material);
    const auto above_zero = [](length l) { return l > length() ? l : length(); };
    return {above_zero(hole.lower_limit() - cut.least()), above_zero(cut.most() - hole.upper_limit()), cut};
}

} // namespace fitwright

#endif
