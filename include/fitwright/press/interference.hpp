#ifndef FITWRIGHT_PRESS_INTERFERENCE_HPP
#define FITWRIGHT_PRESS_INTERFERENCE_HPP

#include <fitwright/figure.hpp>
#include <fitwright/fit.hpp>

// Half the books say interference of the diameter and half of the radius, and the factor of two between
// them is the commonest slip in press fits. Here they are two types.

namespace fitwright {

struct radial_interference;

namespace detail {

/// Twice as long; at the end of the range, the end.
[[nodiscard]] constexpr length doubled(length l) noexcept {
    const length half = length::from_nanometres(INT64_MAX / 2);
    if (l > half) return length::from_nanometres(INT64_MAX);
    return l < -half ? length::from_nanometres(-INT64_MAX) : l * 2;
}

} // namespace detail

/// How much larger the shaft is than the hole across the diameter, before they are put together: what a
/// fit has, and what DIN 7190 and Norton mean. Below zero it is a clearance.
struct diametral_interference {
    constexpr diametral_interference() noexcept = default;
    constexpr explicit diametral_interference(length across_diameter) noexcept : value(across_diameter) {}

    length value;

    /// The same interference said of the radius: half of it, to the nearest nanometre.
    [[nodiscard]] constexpr radial_interference on_radius() const noexcept;

    friend constexpr auto operator<=>(diametral_interference, diametral_interference) noexcept = default;
};

/// How much larger the shaft's radius is than the hole's: what Boresi, Ugural and Roark mean.
struct radial_interference {
    constexpr radial_interference() noexcept = default;
    constexpr explicit radial_interference(length on_radius) noexcept : value(on_radius) {}

    length value;

    /// The same interference said of the diameter: twice as much, within the range of a length.
    [[nodiscard]] constexpr diametral_interference on_diameter() const noexcept {
        return diametral_interference(detail::doubled(value));
    }

    friend constexpr auto operator<=>(radial_interference, radial_interference) noexcept = default;
};

constexpr radial_interference diametral_interference::on_radius() const noexcept {
    return radial_interference(value / 2);
}

/// The interference of a fit: least where the hole is largest and the shaft smallest.
[[nodiscard]] constexpr range<diametral_interference> interference_of(const fit& f) noexcept {
    return {diametral_interference(-f.max_clearance()), diametral_interference(-f.min_clearance())};
}

/// Where two parts are pressed together: the diameter, and how much they interfere there at 20 °C.
class press_seat {
public:
    /// From a fit; the diameter is the hole's nominal size.
    constexpr press_seat(const fit& f) noexcept : press_seat(f.hole().nominal(), interference_of(f)) {}

    constexpr press_seat(length diameter, range<diametral_interference> i) noexcept
        : diameter_(diameter), interference_(i) {}
    constexpr press_seat(length diameter, range<radial_interference> i) noexcept
        : press_seat(diameter, range<diametral_interference>{i.least.on_diameter(), i.most.on_diameter()}) {}
    constexpr press_seat(length diameter, diametral_interference i) noexcept : press_seat(diameter, {i, i}) {}
    constexpr press_seat(length diameter, radial_interference i) noexcept
        : press_seat(diameter, i.on_diameter()) {}

    /// A diameter of which the interference is asked for.
    constexpr explicit press_seat(length diameter) noexcept
        : press_seat(diameter, diametral_interference()) {}

    [[nodiscard]] constexpr length diameter() const noexcept { return diameter_; }
    /// From least to most, on diameter.
    [[nodiscard]] constexpr range<diametral_interference> interference() const noexcept {
        return interference_;
    }

private:
    length diameter_;
    range<diametral_interference> interference_;
};

} // namespace fitwright

#endif
