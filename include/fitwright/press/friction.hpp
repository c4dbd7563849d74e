#ifndef FITWRIGHT_PRESS_FRICTION_HPP
#define FITWRIGHT_PRESS_FRICTION_HPP

#include <fitwright/press/friction_table.hpp>
#include <fitwright/rows.hpp>

namespace fitwright {

/// The friction between two parts pressed together, at least and at most. Grip is reckoned with the least,
/// the force of the press with the most. Your own: `friction{.least = 0.1, .most = 0.16}`.
struct friction {
    double least;
    double most;
    source from = stated_by_user;
};

namespace frictions {
/// Whatever the pair: the span of a formula sheet.
inline constexpr friction any_pair{.least = 0.05, .most = 0.20, .from = sources::whz_formulas};
/// Dry steel on steel, as general textbooks have it.
inline constexpr friction steel_on_steel_dry{
    .least = 0.12, .most = 0.15, .from = {"Norton, Machine Design 4e", "press fits", confidence::memory}};
/// Oiled steel on steel to choose the press by: its upper end is the one that counts.
inline constexpr friction to_choose_a_press{
    .least = 0.06, .most = 0.20, .from = {"", "", confidence::practice}};
} // namespace frictions

/// A pair of metals and how they are put together.
struct friction_pair {
    material_family hub;
    material_family shaft;
    joined_by how;        ///< pressed in, or shrunk on
    seat_surface surface; ///< dry or oiled
};

namespace detail {

[[nodiscard]] constexpr friction friction_among(rows<friction_row> table, const friction_pair& pair,
                                                const source& from) noexcept {
    int least = 100;
    int most = 0;
    for (const friction_row& row : table) {
        if (row.hub != pair.hub || row.how != pair.how || row.surface != pair.surface) continue;
        if (row.least < least) least = row.least;
        if (row.most > most) most = row.most;
    }
    if (most == 0) return frictions::any_pair;
    return {least / 100.0, most / 100.0, from};
}

} // namespace detail

/// The friction that DIN 7190-1:2017 has for a hub on a shaft of steel, over all its kinds of that metal;
/// for a pair it doesn't have, `frictions::any_pair`, which its source then says. Published figures differ
/// by a factor of two to three; the surface, not the table, decides: try one if it matters.
[[nodiscard]] constexpr friction friction_for(const friction_pair& pair) noexcept {
    const bool is_on_steel =
        pair.shaft == material_family::steel || pair.shaft == material_family::tool_steel;
    if (!is_on_steel) return frictions::any_pair;
    if (pair.how == joined_by::pressing)
        return detail::friction_among(detail::friction_pressed_in, pair, sources::din_7190_1_longitudinal);
    return detail::friction_among(detail::friction_joined_without_force, pair,
                                  sources::din_7190_1_transverse);
}

} // namespace fitwright

#endif
