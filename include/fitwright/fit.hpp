#ifndef FITWRIGHT_FIT_HPP
#define FITWRIGHT_FIT_HPP

#include <fitwright/limits.hpp>

namespace fitwright {

/// How a hole and a shaft go together, whatever size each comes out within its limits
/// (ISO 286-1:2010, clause 3.3).
enum class fit_kind : std::uint8_t {
    clearance,    ///< the hole is never smaller than the shaft; they may just touch
    transition,   ///< either may happen
    interference, ///< the hole is never larger than the shaft; they may just touch
};

/// In words.
[[nodiscard]] constexpr text in_words(fit_kind kind) noexcept {
    switch (kind) {
    case fit_kind::clearance: return "clearance";
    case fit_kind::transition: return "transition";
    case fit_kind::interference: return "interference";
    }
    return "";
}

/// A hole and a shaft that are to go together. Clearances are on the diameter, hole less shaft:
/// negative where the parts interfere.
class fit {
public:
    constexpr fit(hole_limits hole, shaft_limits shaft) noexcept : hole_(hole), shaft_(shaft) {}

    [[nodiscard]] constexpr const hole_limits& hole() const noexcept { return hole_; }
    [[nodiscard]] constexpr const shaft_limits& shaft() const noexcept { return shaft_; }

    /// Smallest hole less largest shaft.
    [[nodiscard]] constexpr length min_clearance() const noexcept {
        return hole_.lower_limit() - shaft_.upper_limit();
    }
    /// Largest hole less smallest shaft.
    [[nodiscard]] constexpr length max_clearance() const noexcept {
        return hole_.upper_limit() - shaft_.lower_limit();
    }
    /// Halfway between the two, to the nearest nanometre.
    [[nodiscard]] constexpr length mean_clearance() const noexcept {
        return (min_clearance() + max_clearance()) / 2;
    }

    /// The span of the fit: greatest less least clearance, the sum of both tolerances.
    [[nodiscard]] constexpr length tolerance() const noexcept {
        return hole_.tolerance() + shaft_.tolerance();
    }

    [[nodiscard]] constexpr fit_kind kind() const noexcept {
        if (min_clearance() >= length()) return fit_kind::clearance;
        if (max_clearance() <= length()) return fit_kind::interference;
        return fit_kind::transition;
    }

    // The same as Boost.Units quantities, `slide.min_clearance<micrometre>()`: needs units.hpp.
    template <class Unit> [[nodiscard]] constexpr auto min_clearance() const noexcept {
        return min_clearance().template as<Unit>();
    }
    template <class Unit> [[nodiscard]] constexpr auto max_clearance() const noexcept {
        return max_clearance().template as<Unit>();
    }
    template <class Unit> [[nodiscard]] constexpr auto mean_clearance() const noexcept {
        return mean_clearance().template as<Unit>();
    }
    template <class Unit> [[nodiscard]] constexpr auto tolerance() const noexcept {
        return tolerance().template as<Unit>();
    }

    friend constexpr bool operator==(const fit&, const fit&) noexcept = default;

private:
    hole_limits hole_;
    shaft_limits shaft_;
};

} // namespace fitwright

#endif
