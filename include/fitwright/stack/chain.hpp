#ifndef FITWRIGHT_STACK_CHAIN_HPP
#define FITWRIGHT_STACK_CHAIN_HPP

#include <fitwright/limits.hpp>

// A chain of dimensions that ends in a gap: go round the parts from one side of the gap to the other, and
// each dimension on the way either opens it or closes it.

namespace fitwright {

/// What a dimension does to the gap as it grows.
enum class on_gap : bool { opens, closes };

/// How a dimension comes out within its limits: all that a simulation of whole numbers can draw. The chance
/// of a clearance knows more shapes, `size_distribution`, and takes one of these by `size_distribution::of`.
enum class scatter : std::uint8_t {
    not_stated,
    normal,      ///< about the middle; beyond the limits now and then
    rectangular, ///< anywhere between the limits as likely, and never beyond
    triangular,  ///< most often in the middle, and never beyond the limits
};

/// How much a dimension counts, where it is not once: `{.times = 1, .per = 2}` of a diameter that enters by
/// its radius, `{.times = 577, .per = 1000}` through a flank of 30 degrees. Above 0, up to a million each.
struct link_factor {
    std::int64_t times = 1; ///< the numerator
    std::int64_t per = 1;   ///< the denominator

    friend constexpr bool operator==(link_factor, link_factor) noexcept = default;
};

/// One dimension of a chain. Made by `opens` and `closes`.
struct chain_link {
    text name{};
    length nominal{};
    deviations allowed{};                    ///< deviations from the nominal size
    on_gap effect = on_gap::opens;           ///< whether it opens or closes the gap
    link_factor factor{};                    ///< how many times it counts
    scatter comes_out = scatter::not_stated; ///< `not_stated`: as the simulation says

    [[nodiscard]] constexpr length lower_limit() const noexcept { return nominal + allowed.lower; }
    [[nodiscard]] constexpr length upper_limit() const noexcept { return nominal + allowed.upper; }

    /// The same dimension, counted so often.
    [[nodiscard]] constexpr chain_link counted(link_factor so_often) const noexcept {
        chain_link made = *this;
        made.factor = so_often;
        return made;
    }
    /// The same dimension, known to come out in a way of its own.
    [[nodiscard]] constexpr chain_link coming_out(scatter s) const noexcept {
        chain_link made = *this;
        made.comes_out = s;
        return made;
    }
};

/// The same deviation either way: `plus_minus(50_um)`. Below zero the limits are crossed, which is refused.
[[nodiscard]] constexpr deviations plus_minus(length half) noexcept {
    const length either_way = detail::kept_near(half);
    return {.upper = either_way, .lower = -either_way};
}

/// A dimension whose growth opens the gap: `opens("housing", 40_mm, plus_minus(50_um))`.
[[nodiscard]] constexpr chain_link opens(text name, length nominal, deviations allowed) noexcept {
    return {.name = name, .nominal = nominal, .allowed = allowed, .effect = on_gap::opens};
}
/// A dimension whose growth closes the gap.
[[nodiscard]] constexpr chain_link closes(text name, length nominal, deviations allowed) noexcept {
    return {.name = name, .nominal = nominal, .allowed = allowed, .effect = on_gap::closes};
}

namespace detail {

/// Of limits with the lower as the nominal size. What is too far apart to subtract comes out as far that no
/// chain takes it.
[[nodiscard]] constexpr deviations above_lower(stated_limits l) noexcept {
    constexpr std::int64_t far_out = INT64_MAX / 2;
    const auto is_far = [](length end) { return end.nanometres() < -far_out || end.nanometres() > far_out; };
    if (is_far(l.lower) || is_far(l.upper)) return {.upper = l.upper, .lower = length()};
    return {.upper = l.upper - l.lower, .lower = length()};
}

} // namespace detail

/// From limits without a class, `opens("housing", between(40_mm, 40.1_mm))`; the nominal size is the lower.
[[nodiscard]] constexpr chain_link opens(text name, stated_limits l) noexcept {
    return opens(name, l.lower, detail::above_lower(l));
}
/// The same for a link that makes the gap narrower.
[[nodiscard]] constexpr chain_link closes(text name, stated_limits l) noexcept {
    return closes(name, l.lower, detail::above_lower(l));
}

/// From a hole's or a shaft's limits, `closes("pin", "8 m6"_shaft)`, or from a part as measured, by its
/// uncertainty.
template <side Side>
[[nodiscard]] constexpr chain_link opens(text name, const size_limits<Side>& l) noexcept {
    return opens(name, l.nominal(), {.upper = l.upper_deviation(), .lower = l.lower_deviation()});
}
/// The same for a link that makes the gap narrower.
template <side Side>
[[nodiscard]] constexpr chain_link closes(text name, const size_limits<Side>& l) noexcept {
    return closes(name, l.nominal(), {.upper = l.upper_deviation(), .lower = l.lower_deviation()});
}
/// The same for a measured part.
template <side Side> [[nodiscard]] constexpr chain_link opens(text name, measured<Side> m) noexcept {
    return opens(name, m.limits());
}
/// The same for a measured part that makes the gap narrower.
template <side Side> [[nodiscard]] constexpr chain_link closes(text name, measured<Side> m) noexcept {
    return closes(name, m.limits());
}

} // namespace fitwright

#endif
