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

/// A property of a material that a joint needs, and what it may be.
struct needed_property {
    text name;
    text allowed;
};
inline constexpr needed_property needs_modulus{"Young's modulus", "above 0"};
inline constexpr needed_property needs_poissons_ratio{"Poisson's ratio", "0 to 0.5"};
inline constexpr needed_property needs_density{"the density, which turning needs,", "above 0"};
inline constexpr needed_property needs_strength{"the strength",
                                                "above 0, as its yield strength or as may_bear"};

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error not_known(const material& m,
                                                                  needed_property property) noexcept {
    return error::composer(error_code::property_not_known)
           << property.name << " of " << m.name << " is not known; allowed: a material that states it, "
           << property.allowed;
}
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error not_possible(const material& m,
                                                                     needed_property property) noexcept {
    return error::composer(error_code::property_not_known)
           << property.name << " of " << m.name << " is not a possible number; allowed: " << property.allowed;
}

/// Above zero and not infinite, which a NaN is neither.
[[nodiscard]] constexpr bool is_above_zero(double number) noexcept { return number > 0 && number < 1e300; }

[[nodiscard]] constexpr result<elastic_constants> constants_of(const material& m) noexcept {
    if (!m.youngs_modulus) return not_known(m, needs_modulus);
    if (!m.poissons_ratio) return not_known(m, needs_poissons_ratio);
    const double modulus = (*m.youngs_modulus).value();
    const double poisson = *m.poissons_ratio;
    if (!is_above_zero(modulus)) return not_possible(m, needs_modulus);
    if (!(poisson >= 0 && poisson <= 0.5)) return not_possible(m, needs_poissons_ratio);
    if (m.density && !is_above_zero((*m.density).value())) return not_possible(m, needs_density);
    return elastic_constants{modulus, poisson};
}

/// Longer than anything that is made; sums of a few such lengths fit into nanometres by far.
inline constexpr length longest = length::from_nanometres(1'000'000'000'000); // 1 km

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_joint(const joint& j) noexcept {
    error::composer say(error_code::joint_not_possible);
    const length d = j.seat.diameter();
    if (d <= length()) return say << "a joint of " << written(d).view() << " mm diameter; allowed: above 0";
    if (j.hub.outside > longest || j.joint_length > longest)
        return say << "a hub or a joint beyond 1 km; allowed: sizes up to that";
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
    if (j.seat.interference().most.value > d || j.seat.interference().least.value < -longest)
        return say
               << "an interference larger than the joint, or a clearance beyond 1 km; allowed: up to that";
    return say
           << "a roughness Rz below 0, or larger than the joint; allowed: 0 (lapped) or more, or not stated";
}

[[nodiscard]] constexpr bool is_possible(const joint& j) noexcept {
    const length d = j.seat.diameter();
    return d > length() && j.hub.outside > d && j.shaft.bore >= length() && j.shaft.bore < d &&
           j.hub.outside <= longest && j.joint_length > length() && j.joint_length <= longest &&
           j.seat.interference().least <= j.seat.interference().most &&
           j.seat.interference().most.value <= d && j.seat.interference().least.value >= -longest &&
           j.roughness.hub.height() >= length() && j.roughness.hub.height() <= d &&
           j.roughness.shaft.height() >= length() && j.roughness.shaft.height() <= d;
}

[[nodiscard]] constexpr bool is_possible(const friction& f) noexcept {
    return f.least > 0 && f.least <= f.most && f.most <= 1;
}
/// Not below zero and not infinite, which a NaN is neither.
[[nodiscard]] constexpr bool is_amount(double number) noexcept { return number >= 0 && number < 1e300; }

[[nodiscard]] constexpr bool is_factor(double number) noexcept { return number >= 1 && number < 1e300; }
[[nodiscard]] constexpr bool is_possible(const press_safety& s) noexcept {
    return is_factor(s.against_slipping) && is_factor(s.against_yield);
}
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_factor() noexcept {
    return error::composer(error_code::factor_below_one)
           << "a safety factor below 1, or not a number; allowed: 1 (no reserve) or more, not infinite";
}

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

/// What breaks before it bends: ceramics, and cast iron, unless it is one that bends: round graphite leaves
/// iron its stiffness, where flakes take a third of it, and a ferritic matrix is soft.
[[nodiscard]] constexpr bool is_brittle(const material& m) noexcept {
    if (m.family == material_family::ceramic) return true;
    if (m.family != material_family::cast_iron) return false;
    const bool is_stiff = m.youngs_modulus && (*m.youngs_modulus).value() > 150e9;
    return !is_stiff || m.condition.find("ferritic") == text::npos;
}

/// The half of the tensile strength that counts in cast iron, as a part of what it yields at: EN 1561 has a
/// proof stress of 0.65 times the tensile strength in every grade (from memory).
inline constexpr double brittle_share = 0.75;

[[nodiscard]] constexpr property<pressure> may_bear(const material& m,
                                                    const property<pressure>& stated) noexcept {
    if (stated) return stated;
    const property<pressure>& yields = m.least_yield_strength ? m.least_yield_strength : m.yield_strength;
    if (!yields || m.family != material_family::cast_iron || !is_brittle(m)) return yields;
    return property<pressure>(pressure::from_value((*yields).value() * brittle_share), confidence::memory);
}

/// Whether the strengths of a part are possible numbers, where they are known.
template <class Part> [[nodiscard]] constexpr bool bears_what_is_possible(const Part& part) noexcept {
    const auto is_possible = [](const property<pressure>& p) { return !p || is_above_zero((*p).value()); };
    return is_possible(part.may_bear) && is_possible(part.made_of.yield_strength) &&
           is_possible(part.made_of.least_yield_strength);
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
        return no_factor();
    const auto hub = constants_of(j.hub.made_of);
    if (!hub) return hub.error();
    const auto shaft = constants_of(j.shaft.made_of);
    if (!shaft) return shaft.error();
    if (!bears_what_is_possible(j.hub)) [[unlikely]]
        return not_possible(j.hub.made_of, needs_strength);
    if (!bears_what_is_possible(j.shaft)) [[unlikely]]
        return not_possible(j.shaft.made_of, needs_strength);

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
    return (r.hub.height() + r.shaft.height()) * 4 / 5;
}

} // namespace fitwright::detail

#endif
