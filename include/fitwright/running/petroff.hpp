#ifndef FITWRIGHT_RUNNING_PETROFF_HPP
#define FITWRIGHT_RUNNING_PETROFF_HPP

#include <fitwright/figure.hpp>
#include <fitwright/running/film_question.hpp>

namespace fitwright {

/// The drag of a shaft without load, which runs in the middle of its bearing.
struct petroff_result {
    range<figure<torque>> drag;           ///< friction at the shaft's surface
    range<figure<power>> power_lost;      ///< to friction
    range<figure<pressure>> shear_stress; ///< of the oil
    cautions take_care = caution::rotating;
    source from;
};

namespace sources {
inline constexpr source petroff{"N. P. Petroff (1883)", "as in Shigley, Mechanical Engineering Design, 12-3",
                                confidence::published};
} // namespace sources

/// The drag of an unloaded shaft at a viscosity that is known, from the loosest to the tightest clearance:
/// the limit that a light load tends to, however short the bearing. The load of the journal is not looked at, nor its lubricant.
/// Error: a diameter, length, speed or viscosity not above 0; no clearance, or more than a twentieth of the
/// diameter; a fit of another size.
[[nodiscard]] inline result<petroff_result> petroff(journal j, dynamic_viscosity known) noexcept {
    j.load = force::from_value(1);
    const auto asked = detail::film_question::of_any_length(j);
    if (!asked) return asked.error();
    if (!detail::is_viscosity(known)) return detail::viscosity_not_possible();

    const auto shear = [&](double clearance) {
        return known.value() * asked->surface_speed() / (clearance / 2);
    };
    const double area = 3.14159265358979323846 * asked->diameter * asked->width;
    const double least = shear(asked->loosest);
    const double most = shear(asked->tightest);
    const double arm = area * asked->diameter / 2;
    return petroff_result{
        .drag = {figure<torque>::from_value(least * arm), figure<torque>::from_value(most * arm)},
        .power_lost = {figure<power>::from_value(least * arm * asked->omega),
                       figure<power>::from_value(most * arm * asked->omega)},
        .shear_stress = {figure<pressure>::from_value(least), figure<pressure>::from_value(most)},
        .from = sources::petroff};
}

} // namespace fitwright

#endif
