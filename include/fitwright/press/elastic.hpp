#ifndef FITWRIGHT_PRESS_ELASTIC_HPP
#define FITWRIGHT_PRESS_ELASTIC_HPP

#include <fitwright/press/joint.hpp>
#include <fitwright/square_root.hpp>
#include <fitwright/written.hpp>

// What is allowed of a joint, and how a joint gives: plain doubles in metres, pascal and newtons.

namespace fitwright::detail {

/// The stress that each pascal between the parts makes in one of them.
struct stress_per_pascal {
    double hoop_at_joint; ///< the radial one is -1 there
    double hoop_at_free_side;
    double radial_at_free_side; ///< of a solid shaft in its middle; else 0
    double greatest;            ///< von Mises
};

/// How two rings that press on each other give, for each pascal between them.
struct elastic_pair {
    double diameter;
    double length;
    double interference_per_pascal; ///< C: U = C p
    double hub_bore_per_pascal;     ///< the hub's share of it
    double bore_per_pascal;         ///< by so much the shaft's bore closes
    double outside_per_pascal;      ///< by so much the hub grows
    stress_per_pascal in_hub;
    stress_per_pascal in_shaft;
};

[[nodiscard]] constexpr double circumference(double diameter) noexcept {
    return 3.14159265358979323846 * diameter;
}

struct elastic_constants {
    double modulus;
    double poisson;
};

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error not_known(const material& m, text property) noexcept {
    return error::composer(error_code::property_not_known)
           << property << " of " << m.name
           << " is not known; allowed: a material that states it (E above 0, Poisson's ratio 0 to 0.5)";
}

[[nodiscard]] constexpr result<elastic_constants> constants_of(const material& m) noexcept {
    if (!m.youngs_modulus || !((*m.youngs_modulus).value() > 0)) return not_known(m, "Young's modulus");
    if (!m.poissons_ratio || !(*m.poissons_ratio >= 0 && *m.poissons_ratio <= 0.5))
        return not_known(m, "Poisson's ratio");
    return elastic_constants{(*m.youngs_modulus).value(), *m.poissons_ratio};
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_joint(const joint& j) noexcept {
    error::composer say(error_code::joint_not_possible);
    const length d = j.seat.diameter();
    if (d <= length()) return say << "a joint of " << written(d).view() << " mm diameter; allowed: above 0";
    if (j.hub.outside <= d)
        return say << "a hub of " << written(j.hub.outside).view() << " mm outside on a joint of "
                   << written(d).view() << " mm; allowed: an outside larger than the joint";
    if (j.shaft.bore < length() || j.shaft.bore >= d)
        return say << "a bore of " << written(j.shaft.bore).view() << " mm in a shaft of "
                   << written(d).view() << " mm; allowed: 0 (solid) or more, and smaller than the joint";
    if (j.joint_length <= length())
        return say << "a joint " << written(j.joint_length).view() << " mm long; allowed: above 0";
    if (j.seat.interference().least > j.seat.interference().most)
        return say << "an interference of at least " << written(j.seat.interference().least.value).view()
                   << " and at most " << written(j.seat.interference().most.value).view()
                   << " mm; allowed: the least first";
    return say << "a roughness Rz below 0; allowed: 0 (not stated) or more";
}

[[nodiscard]] constexpr bool is_possible(const joint& j) noexcept {
    const length d = j.seat.diameter();
    return d > length() && j.hub.outside > d && j.shaft.bore >= length() && j.shaft.bore < d &&
           j.joint_length > length() && j.seat.interference().least <= j.seat.interference().most &&
           j.roughness.hub >= length() && j.roughness.shaft >= length();
}

[[nodiscard]] constexpr bool is_possible(const friction& f) noexcept {
    return f.least > 0 && f.least <= f.most && f.most <= 1;
}
[[nodiscard]] constexpr bool is_possible(const press_safety& s) noexcept {
    return s.against_slipping >= 1 && s.against_yield >= 1;
}

/// Not below zero and not infinite, which a NaN is neither.
[[nodiscard]] constexpr bool is_amount(double number) noexcept { return number >= 0 && number < 1e300; }

[[nodiscard]] constexpr bool is_possible(const press_load& l) noexcept {
    return is_amount(l.along.value()) && is_amount(l.turning.value());
}

// By the squares of d/D and of di/d, both below 1.

[[nodiscard]] constexpr stress_per_pascal stress_in_hub(double ratio) noexcept {
    const double by_wall = 1 / (1 - ratio);
    return {(1 + ratio) * by_wall, 2 * ratio * by_wall, 0, square_root(3 + ratio * ratio) * by_wall};
}

[[nodiscard]] constexpr stress_per_pascal stress_in_shaft(double ratio) noexcept {
    if (ratio == 0) return {-1, -1, -1, 1};
    const double by_wall = 1 / (1 - ratio);
    return {-(1 + ratio) * by_wall, -2 * by_wall, 0, 2 * by_wall};
}

/// The first thing that isn't allowed of a joint, or how it gives.
[[nodiscard]] constexpr result<elastic_pair> elastic_pair_of(const joint& j) noexcept {
    if (!is_possible(j)) [[unlikely]]
        return no_joint(j);
    if (!is_possible(j.between)) [[unlikely]]
        return error::composer(error_code::friction_not_possible)
               << "a coefficient of friction is not possible; allowed: above 0 up to 1, the least first";
    if (!is_possible(j.load) || !is_amount(j.speed.value())) [[unlikely]]
        return error::composer(error_code::load_not_possible)
               << "a load or speed below 0, or not a number; allowed: 0 (none) or more, without direction";
    if (!is_possible(j.safety)) [[unlikely]]
        return error::composer(error_code::factor_below_one)
               << "a safety factor below 1; allowed: 1 (no reserve) or more";
    const auto hub = constants_of(j.hub.made_of);
    if (!hub) return hub.error();
    const auto shaft = constants_of(j.shaft.made_of);
    if (!shaft) return shaft.error();

    const double d = j.seat.diameter().in<metre>();
    const double outside = j.hub.outside.in<metre>();
    const double bore = j.shaft.bore.in<metre>();
    const double hub_ratio = d * d / (outside * outside); // Q_A squared
    const double shaft_ratio = bore * bore / (d * d);     // Q_I squared
    const stress_per_pascal in_hub = stress_in_hub(hub_ratio);
    const stress_per_pascal in_shaft = stress_in_shaft(shaft_ratio);
    const double hub_gives = d / hub->modulus * (in_hub.hoop_at_joint + hub->poisson);
    const double shaft_gives = d / shaft->modulus * (-in_shaft.hoop_at_joint - shaft->poisson);
    return elastic_pair{
        .diameter = d,
        .length = j.joint_length.in<metre>(),
        .interference_per_pascal = hub_gives + shaft_gives,
        .hub_bore_per_pascal = hub_gives,
        .bore_per_pascal = bore / shaft->modulus * -in_shaft.hoop_at_free_side,
        .outside_per_pascal = outside / hub->modulus * in_hub.hoop_at_free_side,
        .in_hub = in_hub,
        .in_shaft = in_shaft,
    };
}

/// 0.8 (Rz + Rz), on diameter: DIN 7190-1.
[[nodiscard]] constexpr length smoothing_of(const seat_roughness& r) noexcept {
    return (r.hub + r.shaft) * 4 / 5;
}

/// The half of the tensile strength that counts in cast iron, as a part of what it yields at: EN 1561 has a
/// proof stress of 0.65 times the tensile strength in every grade (from memory).
inline constexpr double brittle_share = 0.75;

[[nodiscard]] constexpr property<pressure> may_bear(const material& m,
                                                    const property<pressure>& stated) noexcept {
    if (stated) return stated;
    const property<pressure>& yields = m.least_yield_strength ? m.least_yield_strength : m.yield_strength;
    if (!yields || m.family != material_family::cast_iron) return yields;
    return property<pressure>(pressure::from_value((*yields).value() * brittle_share), confidence::memory);
}

} // namespace fitwright::detail

#endif
