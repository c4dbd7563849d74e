#ifndef FITWRIGHT_PRESS_TURNING_HPP
#define FITWRIGHT_PRESS_TURNING_HPP

#include <fitwright/press/elastic.hpp>

// Turning widens the hub more than the shaft. From the stress around a rotating disc of even thickness (as
// in Shigley 9e eq. 3-55), for both parts; for one metal and a solid shaft it is what DIN 7190-1 has.

namespace fitwright::detail {

/// By so much a ring of inside `bore` and outside `rim` grows at its bore, or at its rim, on diameter and
/// for each (rad/s)^2. Metres and kg/m3.
struct disc {
    double bore;
    double rim;
    double modulus;
    double poisson;
    double density;

    [[nodiscard]] constexpr double at_bore() const noexcept { return growth(bore, rim, bore); }
    [[nodiscard]] constexpr double at_rim() const noexcept { return growth(rim, bore, rim); }

private:
    [[nodiscard]] constexpr double growth(double here, double other, double same) const noexcept {
        const double around = (3 + poisson) * other * other + (1 - poisson) * same * same;
        return here * density / (16 * modulus) * around;
    }
};

/// By how much the interference falls for each (rad/s)^2; below zero where the shaft grows more.
/// Not known without both densities.
[[nodiscard]] constexpr property<double> loss_by_turning(const joint& j) noexcept {
    const material& hub = j.hub.made_of;
    const material& shaft = j.shaft.made_of;
    if (!hub.density || !shaft.density) return {};
    const double d = j.seat.diameter().in<metre>();
    const disc outer{d, j.hub.outside.in<metre>(), (*hub.youngs_modulus).value(), *hub.poissons_ratio,
                     (*hub.density).value()};
    const disc inner{j.shaft.bore.in<metre>(), d, (*shaft.youngs_modulus).value(), *shaft.poissons_ratio,
                     (*shaft.density).value()};
    const confidence hub_sure = hub.density.how_sure();
    const confidence shaft_sure = shaft.density.how_sure();
    return property<double>(outer.at_bore() - inner.at_rim(), hub_sure < shaft_sure ? shaft_sure : hub_sure);
}

} // namespace fitwright::detail

#endif
