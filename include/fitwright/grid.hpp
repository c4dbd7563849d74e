#ifndef FITWRIGHT_GRID_HPP
#define FITWRIGHT_GRID_HPP

#include <fitwright/error.hpp>
#include <fitwright/limits.hpp>
#include <fitwright/written.hpp>

// A grid is the sizes that can be written or dialled: the multiples of a step. Three decimals of a
// millimetre are a step of 1 um, four decimals of an inch one of 0.0001_in, and a machine that
// moves its radius by 0.01 mm has a step of 0.02 mm on diameter.

namespace fitwright {

namespace detail {

/// The multiple of a step, which is one of `is_step`; of a size beyond `farthest_size` that of its end.
[[nodiscard]] constexpr length multiple_at_or_below(length size, length step) noexcept {
    const std::int64_t near_by = kept_near(size).nanometres();
    const std::int64_t s = step.nanometres();
    const std::int64_t rest = near_by % s;
    return length::from_nanometres(near_by - rest - (rest < 0 ? s : 0));
}

[[nodiscard]] constexpr length multiple_at_or_above(length size, length step) noexcept {
    return -multiple_at_or_below(-kept_near(size), step);
}

/// Above zero, and no longer than anything that is made.
[[nodiscard]] constexpr bool is_step(length step) noexcept {
    return step > length() && step <= length::from_nanometres(10'000'000'000);
}

[[nodiscard]] constexpr error no_step(length step) noexcept {
    return error::composer(error_code::step_not_above_zero)
           << "a step of " << written(step).view() << " mm; allowed: steps above 0, up to 10 m";
}

template <side Side>
[[nodiscard]] constexpr error nothing_on_the_grid(const size_limits<Side>& limits, length step) noexcept {
    return error::composer(error_code::nothing_on_the_grid)
           << "no multiple of " << written(step).view() << " mm lies within "
           << written(limits.lower_limit()).view() << " to " << written(limits.upper_limit()).view()
           << " mm; a step of " << written(limits.tolerance()).view() << " mm or less always finds one";
}

} // namespace detail

/// The limits on a coarser grid, rounded inwards: what they let pass, the original limits let pass.
/// `rounded_inwards(bore, 0.0001_in)` is what to write on an inch drawing with four decimals.
/// Error: a step that is not above zero; no multiple of the step between the limits.
template <side Side>
[[nodiscard]] constexpr result<size_limits<Side>> rounded_inwards(const size_limits<Side>& limits,
                                                                  length step) noexcept {
    if (!detail::is_step(step)) return detail::no_step(step);
    const length lower = detail::multiple_at_or_above(limits.lower_limit(), step);
    const length upper = detail::multiple_at_or_below(limits.upper_limit(), step);
    if (lower > upper) return detail::nothing_on_the_grid(limits, step);
    const length nominal = limits.nominal();
    return size_limits<Side>(nominal, {.upper = upper - nominal, .lower = lower - nominal}, limits.origin());
}

/// The size to aim at: the multiple of `step` nearest to `aim` that the limits allow. Of two as near
/// it takes the one away from scrap: the smaller hole, the larger shaft.
/// Error: a step that is not above zero; no multiple of the step between the limits.
template <side Side>
[[nodiscard]] constexpr result<length> target_on_grid(const size_limits<Side>& limits, length step,
                                                      length aim) noexcept {
    const auto allowed = rounded_inwards(limits, step);
    if (!allowed) return allowed.error();
    const length lowest = allowed->lower_limit();
    const length highest = allowed->upper_limit();
    if (aim <= lowest) return lowest;
    if (aim >= highest) return highest;
    const length below = detail::multiple_at_or_below(aim, step);
    const length above = detail::multiple_at_or_above(aim, step);
    const bool nearer_below = aim - below < above - aim;
    const bool as_near = aim - below == above - aim;
    return nearer_below || (as_near && Side == side::hole) ? below : above;
}

/// The same, aiming at the middle of the limits.
template <side Side>
[[nodiscard]] constexpr result<length> target_on_grid(const size_limits<Side>& limits, length step) noexcept {
    // Twice the middle is a whole number of nanometres, the middle need not be: compare on a grid
    // twice as fine rather than let a lost half nanometre decide a tie.
    const auto allowed = rounded_inwards(limits, step);
    if (!allowed) return allowed.error();
    const length twice_middle = limits.lower_limit() + limits.upper_limit();
    const length below = detail::multiple_at_or_below(twice_middle, step * 2) / 2;
    const length above = detail::multiple_at_or_above(twice_middle, step * 2) / 2;
    if (below < allowed->lower_limit()) return above;
    if (above > allowed->upper_limit()) return below;
    const length to_below = twice_middle - below * 2;
    const length to_above = above * 2 - twice_middle;
    return to_below < to_above || (to_below == to_above && Side == side::hole) ? below : above;
}

} // namespace fitwright

#endif
