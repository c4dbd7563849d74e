#ifndef FITWRIGHT_LIMITS_HPP
#define FITWRIGHT_LIMITS_HPP

#include <fitwright/length.hpp>
#include <fitwright/source.hpp>

namespace fitwright {

/// Which part of a pair: the outer one, with the hole, or the inner one, the shaft.
enum class side : bool { hole, shaft };

namespace detail {

/// Farther than any part reaches, and so near that sums of several sizes stay in the range of a length.
inline constexpr length farthest_size = length::from_nanometres(INT64_MAX / 16);

/// The size itself; beyond `farthest_size` that far, which nothing takes for a part.
[[nodiscard]] constexpr length kept_near(length size) noexcept {
    return size > farthest_size ? farthest_size : size < -farthest_size ? -farthest_size : size;
}

} // namespace detail

/// How far the upper and the lower limit lie from the nominal size; signed.
struct deviations {
    length upper;
    length lower;
    friend constexpr bool operator==(deviations, deviations) noexcept = default;
};

/// A part's upper and lower limit of size, seen from its nominal size. Both limits are allowed sizes.
///
/// A hole's limits and a shaft's are different types; mixing them up does not compile. Where the
/// limits come from (ISO 286, an inch fit, a drawing, a reading) makes no difference here.
template <side Side> class size_limits {
public:
    /// Nothing: no size but 0.
    constexpr size_limits() noexcept = default;

    /// A nominal size and its deviations: `hole_limits(14_mm, {.upper = 18_um, .lower = 0_um})`.
    /// `origin` is kept as a pointer, so it has to live as long as the limits: a constant.
    /// Sizes and deviations up to 500 000 km; sums of limits are not checked beyond it.
    constexpr size_limits(length nominal, deviations d, const source& origin = stated_by_user) noexcept
        : nominal_(nominal), upper_deviation_(d.upper), lower_deviation_(d.lower), source_(&origin) {}

    /// Limits without a class. The nominal size is then the limit at which the part holds the most
    /// material: a hole's lower limit, a shaft's upper limit. Limits the wrong way round are kept as
    /// they are: they allow no size, and `tolerance()` is negative. Limits beyond 500 000 km are taken
    /// as that far, so that nothing overflows before it is refused.
    [[nodiscard]] static constexpr size_limits between(length lower, length upper) noexcept {
        const length lowest = detail::kept_near(lower);
        const length highest = detail::kept_near(upper);
        const length nominal = Side == side::hole ? lowest : highest;
        return {nominal, {.upper = highest - nominal, .lower = lowest - nominal}};
    }

    [[nodiscard]] constexpr length nominal() const noexcept { return nominal_; }
    [[nodiscard]] constexpr length upper_deviation() const noexcept { return upper_deviation_; }
    [[nodiscard]] constexpr length lower_deviation() const noexcept { return lower_deviation_; }
    [[nodiscard]] constexpr length upper_limit() const noexcept { return nominal_ + upper_deviation_; }
    [[nodiscard]] constexpr length lower_limit() const noexcept { return nominal_ + lower_deviation_; }

    /// Halfway between the limits, to the nearest nanometre.
    [[nodiscard]] constexpr length middle() const noexcept {
        return nominal_ + (upper_deviation_ + lower_deviation_) / 2;
    }

    /// Upper less lower limit: never below zero but for limits the wrong way round.
    [[nodiscard]] constexpr length tolerance() const noexcept { return upper_deviation_ - lower_deviation_; }

    /// True for a size from the lower to the upper limit, both included.
    [[nodiscard]] constexpr bool allow(length size) const noexcept {
        return lower_limit() <= size && size <= upper_limit();
    }

    /// The document the limits come from.
    [[nodiscard]] constexpr const source& origin() const noexcept { return *source_; }

    // The same as Boost.Units quantities, `bore.upper_limit<inch>()`: needs units.hpp.
    template <class Unit> [[nodiscard]] constexpr auto nominal() const noexcept {
        return nominal().template as<Unit>();
    }
    template <class Unit> [[nodiscard]] constexpr auto upper_deviation() const noexcept {
        return upper_deviation().template as<Unit>();
    }
    template <class Unit> [[nodiscard]] constexpr auto lower_deviation() const noexcept {
        return lower_deviation().template as<Unit>();
    }
    template <class Unit> [[nodiscard]] constexpr auto upper_limit() const noexcept {
        return upper_limit().template as<Unit>();
    }
    template <class Unit> [[nodiscard]] constexpr auto lower_limit() const noexcept {
        return lower_limit().template as<Unit>();
    }
    template <class Unit> [[nodiscard]] constexpr auto middle() const noexcept {
        return middle().template as<Unit>();
    }
    template <class Unit> [[nodiscard]] constexpr auto tolerance() const noexcept {
        return tolerance().template as<Unit>();
    }

    /// The same nominal size and the same limits, wherever they come from.
    friend constexpr bool operator==(const size_limits& a, const size_limits& b) noexcept {
        return a.nominal_ == b.nominal_ && a.upper_deviation_ == b.upper_deviation_ &&
               a.lower_deviation_ == b.lower_deviation_;
    }

private:
    length nominal_;
    length upper_deviation_;
    length lower_deviation_;
    const source* source_ = &stated_by_user;
};

/// Limits of a hole.
using hole_limits = size_limits<side::hole>;
/// Limits of a shaft.
using shaft_limits = size_limits<side::shaft>;

/// Limits of which nobody has said yet whether a hole or a shaft has them; they turn into either.
struct stated_limits {
    length lower;
    length upper;

    template <side Side> constexpr operator size_limits<Side>() const noexcept {
        return size_limits<Side>::between(lower, upper);
    }
    friend constexpr bool operator==(stated_limits, stated_limits) noexcept = default;
};

/// Limits without a class: `hole_limits bore = between(7.978_mm, 7.986_mm);`
[[nodiscard]] constexpr stated_limits between(length lower, length upper) noexcept { return {lower, upper}; }

/// A part as measured: the reading and its uncertainty (half width, as in 7.968 +/- 0.002).
template <side Side> class measured {
public:
    /// An uncertainty has no sign; a negative one is taken as what it is without it. Lengths beyond
    /// 500 000 km are taken as that far.
    constexpr measured(length size, length uncertainty) noexcept
        : size_(detail::kept_near(size)), uncertainty_(detail::kept_near(uncertainty)) {
        if (uncertainty_ < length()) uncertainty_ = -uncertainty_;
    }

    [[nodiscard]] constexpr length size() const noexcept { return size_; }
    [[nodiscard]] constexpr length uncertainty() const noexcept { return uncertainty_; }

    /// The sizes the part may have, as limits.
    [[nodiscard]] constexpr size_limits<Side> limits() const noexcept {
        return {size_, {.upper = uncertainty_, .lower = -uncertainty_}};
    }

    friend constexpr bool operator==(measured, measured) noexcept = default;

private:
    length size_;
    length uncertainty_;
};

/// A hole as measured.
using measured_hole = measured<side::hole>;
/// A shaft as measured.
using measured_shaft = measured<side::shaft>;

} // namespace fitwright

#endif
