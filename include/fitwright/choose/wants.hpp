#ifndef FITWRIGHT_CHOOSE_WANTS_HPP
#define FITWRIGHT_CHOOSE_WANTS_HPP

#include <fitwright/choose/lead.hpp>
#include <fitwright/iso286/tolerance_class.hpp>
#include <fitwright/press/joint.hpp>
#include <fitwright/press/plug.hpp>
#include <fitwright/rows.hpp>
#include <fitwright/running/journal.hpp>
#include <fitwright/running/plunger.hpp>
#include <fitwright/thermal/worst_moments.hpp>

// What a pair of parts must do, with the figure that each wish needs.

namespace fitwright {

/// What a pair must do. Clearances are on diameter, those of the worst state, with the spread of the
/// coefficients of expansion.
enum class want : std::uint16_t {
    turns_freely = 1,         ///< some clearance in every state
    never_seizes = 2,         ///< `left_at_least` of clearance in every state
    slides_without_shake = 4, ///< from no interference to `shake_at_most` in every state
    stays_central = 8,        ///< at most `shake_at_most` in every state; it may interfere
    comes_apart_by_hand = 16, ///< no interference at 20 °C
    runs_on_oil = 32,         ///< a full oil film: `film`, `speed`, `liquid`
    holds_oil = 64,           ///< no more leak than `leak` allows
    never_moves = 128,        ///< pressed, it holds `joint.load` and neither part yields
    pressure_tight = 256,     ///< pressed, it holds and seals `joint.of_fluid`, and neither part yields
    presses_in = 512,         ///< with no more than `joint.press_at_most`
};
/// How many wants there are.
inline constexpr int want_count = 10;

[[nodiscard]] constexpr flags<want> operator|(want a, want b) noexcept { return flags<want>(a) | b; }

/// In words: "turns freely", …
[[nodiscard]] constexpr text in_words(want w) noexcept {
    switch (w) {
    case want::turns_freely: return "turns freely";
    case want::never_seizes: return "never seizes";
    case want::slides_without_shake: return "slides without shake";
    case want::stays_central: return "stays central";
    case want::comes_apart_by_hand: return "comes apart by hand";
    case want::runs_on_oil: return "runs on oil";
    case want::holds_oil: return "holds oil";
    case want::never_moves: return "never moves";
    case want::pressure_tight: return "pressure tight";
    case want::presses_in: return "presses in";
    }
    return "";
}

/// What may leak: through a gap so much, or past a plunger such a share of its stroke. The clearance of the
/// gap stays out, it is looked for; its diameter may. Without a viscosity of its own the gap has the liquid
/// of the wants, as warm as the warmer part.
class leak_budget {
public:
    /// None stated.
    constexpr leak_budget() noexcept = default;
    constexpr leak_budget(const gap& g, volume_flow at_most) noexcept
        : plunger_{.around = g, .stroke = {}}, at_most_(at_most.value()), is_given_(true) {}
    constexpr leak_budget(const plunger& p, percent of_stroke_at_most) noexcept
        : plunger_(p), at_most_(of_stroke_at_most.value), is_given_(true), is_plunger_(true) {}

    /// Whether a budget is stated.
    [[nodiscard]] constexpr bool is_given() const noexcept { return is_given_; }
    /// Whether it is a share of a plunger's stroke.
    [[nodiscard]] constexpr bool is_of_a_plunger() const noexcept { return is_plunger_; }
    /// Of a plunger; of a gap alone its `around`.
    [[nodiscard]] constexpr const plunger& past() const noexcept { return plunger_; }
    /// In m3/s, or per cent of the stroke for a plunger.
    [[nodiscard]] constexpr double at_most() const noexcept { return at_most_; }

private:
    plunger plunger_{.around = {.diameter = {}, .land = {}}, .stroke = {}};
    double at_most_ = 0;
    bool is_given_ = false;
    bool is_plunger_ = false;
};

/// The bearing that is to have a film; its speed and its oil stand in the wants.
struct wanted_film {
    length width = {};                 ///< of the bearing, along the shaft
    property<force> load = {};         ///< across the shaft
    property<temperature> oil_in = {}; ///< as it comes to the bearing
    peak_heights roughness = {};       ///< Rz of both; 0: the limit film by rule
};

/// The joint that is to be pressed together.
struct wanted_joint {
    length hub_outside = {};  ///< diameter; of a block the largest circle about the hole that fits into it
    length shaft_bore = {};   ///< 0: solid
    length joint_length = {}; ///< how long the parts touch
    seat_roughness roughness = {};              ///< Rz of both, if it is stated
    friction between = {.least = 0, .most = 0}; ///< see `friction_for`
    press_load load = {};                       ///< to hold
    press_safety safety = {};                   ///< 1: no reserve
    property<pressure> hub_may_bear = {};       ///< where not the material's yield strength
    property<pressure> shaft_may_bear = {};     ///< the same
    pressure of_fluid = {};                     ///< behind a plug
    plug_face face = plug_face::closed;         ///< what of the plug the fluid sees
    force press_at_most = {};                   ///< that the press has
};

/// All that is wanted of a pair, and what there is to make it with. What a want needs and isn't stated is an
/// error that names it.
///
///     constexpr wants of_the_plunger{.nominal = 8_mm,
///                                    .must = want::slides_without_shake | want::never_seizes,
///                                    .hole_made_of = materials::bronze_cusn7zn4pb7,
///                                    .shaft_made_of = materials::steel_c45,
///                                    .states = day,
///                                    .left_at_least = 3_um,
///                                    .shake_at_most = 30_um};
struct wants {
    length nominal = {};
    flags<want> must = {};   ///< all that the pair has to do
    leading_part leads = {}; ///< the part or the tool that is there already

    material hole_made_of = {};  ///< the outer part's material
    material shaft_made_of = {}; ///< the inner part's material
    /// The pair's working life. Clearance is looked at in all of them and at 20 °C, where the parts are put
    /// together; leak and film in the states alone, or at 20 °C if there are none.
    rows<thermal_state> states = {};

    length left_at_least = {};   ///< of clearance, for `never_seizes`
    length shake_at_most = {};   ///< clearance
    leak_budget leak = {};       ///< for `holds_oil`
    wanted_film film = {};       ///< for `runs_on_oil`
    rotational_speed speed = {}; ///< of the shaft in its bearing, or of a pressed joint
    fluid liquid = {};           ///< that runs or leaks
    wanted_joint joint = {};     ///< for what is pressed together

    rows<drawer_tool> drawer = {}; ///< the tools for the hole
    length uncertainty = {};       ///< +/- of the instrument; 0: not stated
    grade finest = grade::it01;    ///< that the shop holds; IT01: any
};

} // namespace fitwright

#endif
