#ifndef FITWRIGHT_FIGURE_HPP
#define FITWRIGHT_FIGURE_HPP

#include <fitwright/clearance_window.hpp>
#include <fitwright/units.hpp>

namespace fitwright {

/// A quantity as a result carries it. A Boost quantity is not trivially copyable, this is; it reads as
/// the quantity by itself.
template <class Quantity> class figure {
public:
    constexpr figure() noexcept = default;
    constexpr figure(const Quantity& q) noexcept : number_(q.value()) {}
    /// From the number of the quantity's own unit.
    [[nodiscard]] static constexpr figure from_value(double number) noexcept {
        figure made;
        made.number_ = number;
        return made;
    }

    /// With its unit.
    [[nodiscard]] constexpr Quantity quantity() const noexcept { return Quantity::from_value(number_); }
    constexpr operator Quantity() const noexcept { return quantity(); }
    /// The number of the quantity's own unit: a pressure's in pascal.
    [[nodiscard]] constexpr double value() const noexcept { return number_; }

    friend constexpr bool operator==(const figure&, const figure&) noexcept = default;
    friend constexpr auto operator<=>(const figure&, const figure&) noexcept = default;

private:
    double number_ = 0;
};

/// What something is at least and at most: `range<figure<pressure>>`, `range<length>`. A clearance on diameter
/// has a type of its own, `clearance_window`.
template <class Value> struct range {
    Value least;
    Value most;

    friend constexpr bool operator==(const range&, const range&) noexcept = default;
};

constexpr clearance_window::operator range<length>() const noexcept { return {least, most}; }

} // namespace fitwright

#endif
