#ifndef FITWRIGHT_PRESS_DOUBT_HPP
#define FITWRIGHT_PRESS_DOUBT_HPP

#include <fitwright/flags.hpp>
#include <fitwright/text.hpp>

#include <cstdint>

namespace fitwright {

/// Why the figures of a pressed joint are to be taken with care.
enum class press_doubt : std::uint32_t {
    even_hub_only = 1, ///< always said
    no_grip_left = 1 << 1,
    smoothing_takes_all = 1 << 2,
    roughness_not_stated = 1 << 3,
    friction_not_sure = 1 << 4,
    hub_past_elastic_limit = 1 << 5,
    shaft_past_elastic_limit = 1 << 6,
    below_wished_safety = 1 << 7,
    hub_strength_not_known = 1 << 8,
    shaft_strength_not_known = 1 << 9,
    brittle_hub = 1 << 10,
    thin_hub = 1 << 11,
    creeps = 1 << 12,
    hotter_than_allowed = 1 << 13,
    strength_of_cold_metal = 1 << 14,
    expansion_not_sure = 1 << 15,
    stress_of_turning_not_counted = 1 << 16,
    may_crack = 1 << 17,
    more_than_it_bears = 1 << 18,
    cup_wall_yields = 1 << 19,
    cup_end_not_checked = 1 << 20,
};

[[nodiscard]] constexpr flags<press_doubt> operator|(press_doubt a, press_doubt b) noexcept {
    return flags(a) | b;
}

/// In words, to be read behind "mind:".
[[nodiscard]] constexpr text in_words(press_doubt d) noexcept {
    switch (d) {
    case press_doubt::even_hub_only:
        return "holds for a hub as long as the joint and even all round, away from its ends; steps, bosses, "
               "keyways and the peak of pressure at an edge are not covered";
    case press_doubt::no_grip_left: return "the joint may let go: no grip is left at its least interference";
    case press_doubt::smoothing_takes_all:
        return "pressing smooths away the whole of the least interference: finer surfaces, or more of it";
    case press_doubt::roughness_not_stated:
        return "roughness not stated: nothing is taken off the interference for smoothing";
    case press_doubt::friction_not_sure:
        return "published friction differs by a factor of two to three: try it where it matters";
    case press_doubt::hub_past_elastic_limit:
        return "the hub yields at the greatest interference: pressure, grip and closing-in are then less";
    case press_doubt::shaft_past_elastic_limit:
        return "the shaft yields at the greatest interference: its bore closes for good, and further than said here; "
               "grip is less";
    case press_doubt::below_wished_safety: return "the safety against yield that was asked for is not there";
    case press_doubt::hub_strength_not_known:
        return "the hub's strength is not known: whether it yields or breaks is not checked";
    case press_doubt::shaft_strength_not_known:
        return "the shaft's strength is not known: whether it yields or breaks is not checked";
    case press_doubt::brittle_hub:
        return "a brittle hub's strength is not stated: state half its tensile strength as what it may bear";
    case press_doubt::thin_hub: return "a thin hub, outside less than 1.2 times the joint: it yields early";
    case press_doubt::creeps: return "plastics and zinc creep: the grip fades in days to months";
    case press_doubt::hotter_than_allowed: return "a part is hotter than its material bears";
    case press_doubt::strength_of_cold_metal:
        return "elasticity and strength are those at 20 C; so hot they are less";
    case press_doubt::expansion_not_sure: return "an expansion coefficient is uncertain or beyond its table";
    case press_doubt::stress_of_turning_not_counted:
        return "the stress that turning makes in the hub is not counted";
    case press_doubt::may_crack:
        return "a brittle part may crack at the greatest interference: it breaks, it doesn't yield";
    case press_doubt::more_than_it_bears:
        return "more is needed than the parts bear with the safety asked for: a longer joint, finer surfaces or "
               "other metal, not a tighter fit";
    case press_doubt::cup_wall_yields:
        return "the fluid makes the cup's wall yield: a thicker one, or its back to it";
    case press_doubt::cup_end_not_checked: return "the stress in the end of the cup is not checked";
    }
    return "";
}

} // namespace fitwright

#endif
