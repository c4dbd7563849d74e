#ifndef FITWRIGHT_PRESS_RESULT_HPP
#define FITWRIGHT_PRESS_RESULT_HPP

#include <fitwright/figure.hpp>
#include <fitwright/material/property.hpp>
#include <fitwright/press/doubt.hpp>
#include <fitwright/press/interference.hpp>
#include <fitwright/press/wall.hpp>
#include <fitwright/running/units.hpp> // rotational_speed
#include <fitwright/source.hpp>

namespace fitwright {

/// Whether a joint carries what it is to carry.
enum class holding : std::uint8_t {
    yes,         ///< at the least interference and the least friction
    no,          ///< not even at the greatest
    cannot_tell, ///< it hangs on the sizes and the friction that come out
    not_asked,   ///< no load was stated
};

/// "yes", "no", "cannot tell", "not asked".
[[nodiscard]] constexpr text in_words(holding h) noexcept {
    switch (h) {
    case holding::yes: return "yes";
    case holding::no: return "no";
    case holding::cannot_tell: return "cannot tell";
    case holding::not_asked: return "not asked";
    }
    return "";
}

/// The stress in one part at the greatest pressure.
struct pressed_wall {
    wall_stress at_joint;     ///< stress where the parts touch
    wall_stress at_free_side; ///< the hub's outside, the shaft's bore; of a solid shaft its middle
    /// The greatest equivalent stress (von Mises): in the hub at the joint, in a hollow shaft at its bore.
    figure<pressure> greatest;
    /// What it may bear elastically: as stated, or the least yield strength, or the usual one.
    property<pressure> may_bear;

    /// How many times the stress could be borne; below 1 the part yields. Infinite without any stress, not
    /// known if the strength isn't.
    [[nodiscard]] constexpr property<double> margin() const noexcept {
        if (!may_bear) return {};
        return property<double>(greatest.value() > 0 ? (*may_bear).value() / greatest.value()
                                                     : __builtin_inf(),
                                may_bear.how_sure());
    }
};

/// A pressed joint in one state. What is least belongs to the least interference, smoothed, and the least
/// friction; what is most to the greatest interference without smoothing, and the most friction.
struct pressed_state {
    /// The interference the parts would have if they weren't put together; with the mismatch of their
    /// growth, and the spread of it. Below zero they would have clearance.
    range<diametral_interference> interference;
    range<figure<pressure>> joint_pressure; ///< the most of a turning joint is that while it stands still
    /// Along the axis alone, turning as fast as it does. Pressed in again, or fretted, it loses about a fifth.
    range<figure<force>> axial_grip;
    range<figure<torque>> turning_grip; ///< turning alone
    /// The shaft's bore, on diameter; outwards to nanometres. Elastic: of a shaft that yields, the most is
    /// no bound.
    range<length> bore_closes_by;
    range<length> hub_grows_by; ///< the hub's outside, on diameter; outwards to nanometres
    range<length> bore;         ///< the shaft's bore in this state: its free growth less the closing-in
    pressed_wall hub;
    pressed_wall shaft;
    /// How many times it holds the load: infinite if none was stated, since nothing is then asked of it.
    range<double> load_margin = {__builtin_inf(), __builtin_inf()};
    /// Whether it holds the load as many times as asked.
    holding holds = holding::not_asked;

    /// True if at the least interference nothing grips.
    [[nodiscard]] constexpr bool may_let_go() const noexcept { return joint_pressure.least.value() <= 0; }
};

/// What pressing two parts together does.
struct press_result {
    length diameter;     ///< of the joint
    length smoothing;    ///< by so much pressing flattens both surfaces: off the interference, on diameter
    pressed_state at_20; ///< standing still at 20 °C
    pressed_state in_service; ///< as warm as the parts are said to work, and turning

    /// To press it in all the way, at 20 °C: for the greatest interference and the most friction stated. It
    /// grows evenly with the depth; breaking loose after standing can take more. Chamfer the edge, 5 degrees
    /// over 2 to 5 mm.
    figure<force> press_in_force;
    /// What the press should be good for: the same with no less friction than the most of
    /// `frictions::to_choose_a_press`, since published friction for pressing in is that of good days.
    figure<force> press_capacity;
    /// By so much the bore moves from 20 °C, pressed, to service: what a bore finished after pressing does.
    range<length> bore_moves_by;
    /// The speed at which the least interference is gone in service: not known without the densities,
    /// infinite where the shaft grows as much as the hub. The pressure falls with the square of the speed.
    property<rotational_speed> loosens_at;

    flags<press_doubt> doubts;
    cautions take_care;
    source from;          ///< of the pressures and stresses
    source friction_from; ///< of the grip and the press-in force

    /// Whether it holds the load, at 20 °C and in service.
    [[nodiscard]] constexpr holding holds() const noexcept {
        if (at_20.holds == holding::no || in_service.holds == holding::no) return holding::no;
        return at_20.holds == holding::yes ? in_service.holds : at_20.holds;
    }
};

} // namespace fitwright

#endif
