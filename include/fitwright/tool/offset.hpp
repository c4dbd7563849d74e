#ifndef FITWRIGHT_TOOL_OFFSET_HPP
#define FITWRIGHT_TOOL_OFFSET_HPP

#include <fitwright/error.hpp>
#include <fitwright/limits.hpp>
#include <fitwright/written.hpp>

// From a part as measured to the number for the control or the dial. A hole is bored larger and a shaft
// turned smaller; what has to be rounded is rounded so that metal is left on rather than taken off.

namespace fitwright {

/// What a number on a control or a dial counts: the tool's way on the radius, or the part's on the diameter.
enum class across : bool { radius, diameter };

/// How far to go, said of the radius or of the diameter: two types, which no call takes for each other.
template <across Across> struct travel {
    constexpr travel() noexcept = default;
    constexpr explicit travel(length travelled) noexcept : value(travelled) {}

    length value;

    /// How much this is on the diameter: for a radius twice the value.
    [[nodiscard]] constexpr length across_diameter() const noexcept {
        return Across == across::radius ? value * 2 : value;
    }

    friend constexpr auto operator<=>(travel, travel) noexcept = default;
};

/// `on_radius(1_um)`: 1 um on the radius, which is 2 um on the diameter.
[[nodiscard]] constexpr travel<across::radius> on_radius(length l) noexcept {
    return travel<across::radius>(l);
}
/// `on_diameter(0.001_in)`.
[[nodiscard]] constexpr travel<across::diameter> on_diameter(length l) noexcept {
    return travel<across::diameter>(l);
}

/// What a larger number in the register does to the next cut; 0 is neither, so it can't be forgotten.
enum class offset_sense : std::uint8_t { larger_makes_larger = 1, larger_makes_smaller = 2 };

/// The control's convention for the offset of one tool, and how much of a change to trust it with.
/// `radius_offset{.increment = on_radius(1_um), .largest_change = on_radius(50_um), .sense = …}`
template <across Across> struct offset_register {
    travel<Across> increment;      ///< the smallest change that the control takes
    travel<Across> largest_change; ///< the largest one to make before measuring again
    offset_sense sense;            ///< which way the register counts
};
/// A register of offsets on the radius.
using radius_offset = offset_register<across::radius>;
/// A register of offsets on the diameter.
using diameter_offset = offset_register<across::diameter>;

/// The change of an offset, and what it should lead to.
template <side Side, across Across> struct offset_step {
    travel<Across> change;                  ///< to add to the number in the register, with its sign
    measured<Side> expected;                ///< the part after the cut, as uncertain as the trial
    bool is_clamped = false;                ///< the largest change is not enough: cut, measure and ask again
    cautions take_care = caution::rotating; ///< measure with the spindle at a standstill
};

/// How far to turn a dial. Come up to the line from one side only, so that the screw's slack is taken up.
template <side Side> struct dial_move {
    std::int64_t divisions;                 ///< whole divisions
    travel<across::diameter> rest;          ///< what is then still to go to the aim: less than a division
    measured<Side> expected;                ///< the part after the whole divisions, as uncertain as the trial
    cautions take_care = caution::rotating; ///< measure with the spindle at a standstill
};

namespace detail {

[[nodiscard]] constexpr std::int64_t divided_rounding_down(std::int64_t n, std::int64_t divisor) noexcept {
    const std::int64_t quotient = n / divisor;
    return n % divisor < 0 ? quotient - 1 : quotient; // the divisor is above 0
}

/// How much a cut has to take off across the diameter; below zero if it has been taken off already.
template <side Side> [[nodiscard]] constexpr length left_to_cut(length size, length aim) noexcept {
    return Side == side::hole ? aim - size : size - aim;
}

/// The part with so much cut off it across the diameter.
template <side Side>
[[nodiscard]] constexpr measured<Side> after_cutting(const measured<Side>& part,
                                                     length across_diameter) noexcept {
    return {Side == side::hole ? part.size() + across_diameter : part.size() - across_diameter,
            part.uncertainty()};
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_division(length step) noexcept {
    return error::composer(error_code::step_not_above_zero)
           << "an increment or division of " << written(step).view() << " mm: allowed are steps above zero";
}

template <side Side>
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error
aim_not_allowed(length aim, const size_limits<Side>& wanted) noexcept {
    return error::composer(error_code::aim_outside_limits)
           << "an aim of " << written(aim).view() << " mm: allowed are the sizes from "
           << written(wanted.lower_limit()).view() << " up to " << written(wanted.upper_limit()).view()
           << " mm";
}

template <side Side>
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error
cut_too_far(length size, const size_limits<Side>& wanted) noexcept {
    error::composer say(error_code::cut_too_far_already);
    if (Side == side::hole)
        return say << "the hole is " << written(size).view()
                   << " mm and a cut makes it larger still: allowed is up to "
                   << written(wanted.upper_limit()).view() << " mm";
    return say << "the shaft is " << written(size).view()
               << " mm and a cut makes it smaller still: allowed is down to "
               << written(wanted.lower_limit()).view() << " mm";
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error increment_too_coarse(length left,
                                                                             length step) noexcept {
    return error::composer(error_code::change_below_increment)
           << "the aim is " << written(left).view()
           << " mm away on the diameter and the smallest change makes " << written(step).view()
           << " mm: allowed is a finer increment, or an aim that a whole number of them meets "
              "within the limits";
}

template <across Across>
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error
no_such_register(const offset_register<Across>& r) noexcept {
    if (r.increment.value <= length()) return no_division(r.increment.value);
    if (r.largest_change < r.increment)
        return error::composer(error_code::change_below_increment)
               << "the largest change is " << written(r.largest_change.value).view()
               << " mm and the smallest that the control takes " << written(r.increment.value).view()
               << " mm: allowed is that much or more";
    return error::composer(error_code::sense_not_stated)
           << "the sense of the offset is not said: allowed are larger_makes_larger and larger_makes_smaller";
}

template <across Across> [[nodiscard]] constexpr bool is_usable(const offset_register<Across>& r) noexcept {
    return r.increment.value > length() && r.largest_change >= r.increment &&
           (r.sense == offset_sense::larger_makes_larger || r.sense == offset_sense::larger_makes_smaller);
}

/// The step of so many increments of metal to take off, no more than the largest change.
template <side Side, across Across>
[[nodiscard]] constexpr offset_step<Side, Across>
step_of(const measured<Side>& trial, std::int64_t increments, const offset_register<Across>& r) noexcept {
    const std::int64_t most = r.largest_change.value.nanometres() / r.increment.value.nanometres();
    const std::int64_t taken = increments > most ? most : increments < -most ? -most : increments;
    const bool cut_makes_larger = Side == side::hole;
    const bool cut_is_more = cut_makes_larger == (r.sense == offset_sense::larger_makes_larger);
    return {
        .change = travel<Across>(r.increment.value * (cut_is_more ? taken : -taken)),
        .expected = after_cutting(trial, r.increment.across_diameter() * taken),
        .is_clamped = taken != increments,
    };
}

} // namespace detail

/// The change of the offset for another cut on the part just measured: towards the aim and never beyond
/// it. A part that is at the aim, or past it and still good, takes no change.
/// Error: a part already cut beyond its limits; a part not yet good with less than an increment to go;
/// an aim outside the limits; a register without increment, room or sense.
template <side Side, across Across>
[[nodiscard]] constexpr result<offset_step<Side, Across>>
offset_to_recut(const measured<Side>& trial, const size_limits<Side>& wanted, length aim,
                const offset_register<Across>& r) noexcept {
    if (!detail::is_usable(r)) return detail::no_such_register(r);
    if (!wanted.allow(aim)) return detail::aim_not_allowed(aim, wanted);
    const length left = detail::left_to_cut<Side>(trial.size(), aim);
    const bool is_allowed = wanted.allow(trial.size());
    if (left < length() && !is_allowed) return detail::cut_too_far(trial.size(), wanted);

    const length step = r.increment.across_diameter();
    const std::int64_t increments = left > length() ? left.nanometres() / step.nanometres() : 0;
    if (increments == 0 && !is_allowed) return detail::increment_too_coarse(left, step);
    return detail::step_of(trial, increments, r);
}

/// The same, aiming at the middle of the limits.
template <side Side, across Across>
[[nodiscard]] constexpr result<offset_step<Side, Across>>
offset_to_recut(const measured<Side>& trial, const size_limits<Side>& wanted,
                const offset_register<Across>& r) noexcept {
    return offset_to_recut(trial, wanted, wanted.middle(), r);
}

/// The change of the offset for the next part, from the one just measured: either way, to the allowed size
/// nearest to the aim; of two as near to the one that leaves metal on.
/// Error: increments so coarse that no number of them meets the limits; an aim outside the limits; a
/// register without increment, room or sense.
template <side Side, across Across>
[[nodiscard]] constexpr result<offset_step<Side, Across>>
offset_for_next_part(const measured<Side>& last, const size_limits<Side>& wanted, length aim,
                     const offset_register<Across>& r) noexcept {
    if (!detail::is_usable(r)) return detail::no_such_register(r);
    if (!wanted.allow(aim)) return detail::aim_not_allowed(aim, wanted);
    const length left = detail::left_to_cut<Side>(last.size(), aim);
    const length step = r.increment.across_diameter();

    const std::int64_t before = detail::divided_rounding_down(left.nanometres(), step.nanometres());
    const bool before_is_nearer = left * 2 <= step * (2 * before + 1);
    const std::int64_t nearest_first[] = {before_is_nearer ? before : before + 1,
                                          before_is_nearer ? before + 1 : before};
    for (const std::int64_t increments : nearest_first)
        if (wanted.allow(detail::after_cutting(last, step * increments).size()))
            return detail::step_of(last, increments, r);
    return detail::increment_too_coarse(left < length() ? -left : left, step);
}

/// The same, aiming at the middle of the limits.
template <side Side, across Across>
[[nodiscard]] constexpr result<offset_step<Side, Across>>
offset_for_next_part(const measured<Side>& last, const size_limits<Side>& wanted,
                     const offset_register<Across>& r) noexcept {
    return offset_for_next_part(last, wanted, wanted.middle(), r);
}

/// How many whole divisions to go on a dial for another cut on the part just measured, never beyond the
/// aim: `divisions_to_go(trial, bore, 9.995_mm, on_radius(1_thou))`.
/// Error: a part already cut beyond its limits; an aim outside them; a division not above zero.
template <side Side, across Across>
[[nodiscard]] constexpr result<dial_move<Side>> divisions_to_go(const measured<Side>& trial,
                                                                const size_limits<Side>& wanted, length aim,
                                                                travel<Across> division) noexcept {
    if (division.value <= length()) return detail::no_division(division.value);
    if (!wanted.allow(aim)) return detail::aim_not_allowed(aim, wanted);
    const length left = detail::left_to_cut<Side>(trial.size(), aim);
    if (left < length() && !wanted.allow(trial.size())) return detail::cut_too_far(trial.size(), wanted);

    const length step = division.across_diameter();
    const std::int64_t whole = left > length() ? left.nanometres() / step.nanometres() : 0;
    return dial_move<Side>{
        .divisions = whole,
        .rest = on_diameter(left > length() ? left - step * whole : length()),
        .expected = detail::after_cutting(trial, step * whole),
    };
}

/// The same, aiming at the middle of the limits.
template <side Side, across Across>
[[nodiscard]] constexpr result<dial_move<Side>> divisions_to_go(const measured<Side>& trial,
                                                                const size_limits<Side>& wanted,
                                                                travel<Across> division) noexcept {
    return divisions_to_go(trial, wanted, wanted.middle(), division);
}

} // namespace fitwright

#endif
