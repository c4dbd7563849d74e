#ifndef FITWRIGHT_TOOL_CLOSING_IN_HPP
#define FITWRIGHT_TOOL_CLOSING_IN_HPP

#include <fitwright/tool/expected_hole.hpp>

// What a hole does once the tool is out: it closes in as it cools, or as the work springs back.

namespace fitwright {

namespace sources {
inline constexpr source closes_in_warm{
    "Machinery's Handbook, 27th edition, Accuracy of Drilled Holes; practice",
    "light metal closes in by expansion x diameter x rise: 0 to 0.05 % of the diameter, for a rise of up to 20 K",
    confidence::practice};
inline constexpr source springs_back{"practice", "plastic springs back 0.02 to 0.1 mm on 10 mm",
                                     confidence::uncertain};
inline constexpr source thin_wall_springs_back{
    "practice", "a thin wall springs back: 0 to 0.1 % of the diameter is a guess, nobody has measured it",
    confidence::uncertain};
} // namespace sources

namespace detail {

/// From how much to how much smaller than it was cut a hole comes out, in thousandths of a percent of
/// the diameter; no source where it doesn't.
struct closing_in {
    int least = 0;
    int most = 0;
    const source* from = nullptr;
    flags<hole_doubt> doubts;

    /// To the nearest whole micrometre: the figures are no finer.
    [[nodiscard]] static constexpr length of(length diameter, int thousandths) noexcept {
        constexpr std::int64_t whole = 100'000'000; // 1000 nm, and 100 000 thousandths of a percent
        return length::from_nanometres(((diameter * thousandths).nanometres() + whole / 2) / whole * 1'000);
    }
};

[[nodiscard]] constexpr closing_in closing_in_of(work_material work) noexcept {
    closing_in c;
    if (work.family() == material_family::plastic)
        c = {200, 1000, &sources::springs_back, hole_doubt::springs_back};
    else if (work.is_light_metal()) c = {0, 50, &sources::closes_in_warm, hole_doubt::closes_in_warm};
    if (!work.is_thin_walled()) return c;
    return {c.least, c.most + 100, &sources::thin_wall_springs_back, c.doubts | hole_doubt::springs_back};
}

/// Alloys that spring back onto a dull tool; nobody says by how much.
[[nodiscard]] constexpr bool is_tough(work_material work) noexcept {
    return work.family() == material_family::titanium || work.family() == material_family::nickel_alloy;
}

} // namespace detail

} // namespace fitwright

#endif
