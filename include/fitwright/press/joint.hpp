#ifndef FITWRIGHT_PRESS_JOINT_HPP
#define FITWRIGHT_PRESS_JOINT_HPP

#include <fitwright/material/material.hpp>
#include <fitwright/press/friction.hpp>
#include <fitwright/press/interference.hpp>
#include <fitwright/running/units.hpp> // rotational_speed

#include <type_traits>

namespace fitwright {

/// The outer part: a hub, a housing, a ring.
struct pressed_hub {
    material made_of;
    length outside; ///< diameter; of a block, the largest circle about the hole that fits into it
    temperature at = celsius(20); ///< as it works
    /// The stress it may bear, where the material's yield strength is not the one to take: for a brittle hub
    /// half its tensile strength.
    property<pressure> may_bear = {};
};

/// The inner part: a shaft, a bush, a liner, a plug.
struct pressed_shaft {
    material made_of;
    length bore = {};                 ///< diameter; 0: solid
    temperature at = celsius(20);     ///< as it works
    property<pressure> may_bear = {}; ///< as of the hub
};

/// The roughness Rz of a surface, or "not stated": not the same as 0, which is lapped and polished.
class roughness_height {
public:
    /// Not stated.
    constexpr roughness_height() noexcept = default;

    /// A length, or a Boost.Units quantity of one.
    template <class Height>
        requires std::is_convertible_v<Height, length>
    constexpr roughness_height(const Height& rz) noexcept : height_(rz), is_stated_(true) {}

    /// Whether a roughness is stated, 0 included.
    [[nodiscard]] constexpr bool is_stated() const noexcept { return is_stated_; }
    /// Nothing if it isn't stated.
    [[nodiscard]] constexpr length height() const noexcept { return height_; }

    friend constexpr bool operator==(roughness_height, roughness_height) noexcept = default;

private:
    length height_;
    bool is_stated_ = false;
};

/// The roughness Rz of both surfaces. Rz is about 4 to 7 times Ra, not a fixed multiple.
struct seat_roughness {
    roughness_height hub = {};
    roughness_height shaft = {};
};

/// What the joint has to carry without slipping, both at once.
struct press_load {
    force along = {};    ///< the axis
    torque turning = {}; ///< about it
};

/// How many times over it has to: 1 is no reserve at all.
struct press_safety {
    double against_slipping = 1; ///< load held over load stated
    double against_yield = 1;    ///< strength over stress
};

/// Two parts pressed together. What is not stated is not known; `friction_for` has friction to start with.
///
///     constexpr joint liner_in_block{
///         .seat = "14 H7/s6"_fit,
///         .hub = {.made_of = materials::aluminium_6082_t6, .outside = 40_mm, .at = 95_degC},
///         .shaft = {.made_of = materials::bronze_cusn7zn4pb7, .bore = 8_mm, .at = 95_degC},
///         .joint_length = 28_mm,
///         .roughness = {.hub = 6_um, .shaft = 4_um},
///         .between = frictions::any_pair};
struct joint {
    press_seat seat; ///< diameter and interference
    pressed_hub hub;
    pressed_shaft shaft;
    length joint_length; ///< how long they touch
    /// Rz of both seats.
    seat_roughness roughness = {};
    friction between;            ///< the friction of both
    press_load load = {};        ///< that it has to hold
    press_safety safety = {};    ///< how many times over
    rotational_speed speed = {}; ///< it turns with
};

} // namespace fitwright

#endif
