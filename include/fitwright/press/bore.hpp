#ifndef FITWRIGHT_PRESS_BORE_HPP
#define FITWRIGHT_PRESS_BORE_HPP

#include <fitwright/press/elastic.hpp> // longest
#include <fitwright/press/result.hpp>
#include <fitwright/written.hpp>

// The bore of a bush: pressing closes it, and heat moves it. What is wanted of it, and what to bore first.

namespace fitwright {

namespace sources {
inline constexpr source bore_of_a_pressed_bush{"Lame, thick rings", "closing-in of a pressed bush",
                                               confidence::published};
} // namespace sources

/// How finely the shop can bore a bush that isn't in its seat yet, and what a reamer needs.
struct boring_wishes {
    length least_tolerance = {}; ///< if less is left than this, it is reamed after pressing
    length stock = {};           ///< to leave for the reamer, on diameter
};

/// How to come to a bore that is right once the bush is pressed in.
struct bush_bore {
    /// The spread of the closing-in leaves too little of the tolerance, or nothing, or nobody knows how far a
    /// bush that yields closes: press first, then ream.
    bool ream_after_pressing;
    /// What to bore before pressing if it isn't reamed afterwards: the limits wanted, moved out by the
    /// closing-in and inwards by its spread. Without any tolerance if `ream_after_pressing`.
    hole_limits before;
    /// The largest bore before pressing that leaves the stock for the reamer, in the worst case.
    length largest_before_reaming;
    range<length> closes_by; ///< the most is no bound if the bush yields
    bool may_yield = false;  ///< the bush, at the greatest interference: it then closes further, and for good
    length tolerance;        ///< of the bore wanted
    length tolerance_left;   ///< before pressing: the tolerance less the spread; below zero if there is none
    flags<press_doubt> doubts;
    cautions take_care = caution::press_force;
};

namespace detail {

[[nodiscard]] constexpr hole_limits moved(const hole_limits& bore, length lower_by,
                                          length upper_by) noexcept {
    return {bore.nominal(),
            {.upper = bore.upper_deviation() + upper_by, .lower = bore.lower_deviation() + lower_by},
            sources::bore_of_a_pressed_bush};
}

} // namespace detail

/// The limits of a bore once it is pressed in: it closes, by more or less.
[[nodiscard]] constexpr hole_limits bore_after_pressing(const hole_limits& before,
                                                        range<length> closes_by) noexcept {
    return detail::moved(before, -closes_by.most, -closes_by.least);
}

/// The limits in service of a bore that was finished to `pressed` after pressing, at 20 °C: its free growth,
/// and what the closing-in changes. `moves_by` is `press_result::bore_moves_by`.
[[nodiscard]] constexpr hole_limits bore_in_service(const hole_limits& pressed,
                                                    range<length> moves_by) noexcept {
    return detail::moved(pressed, moves_by.least, moves_by.most);
}

/// What to bore before pressing, or that the bush has to be reamed after it, with the numbers. `closes_by` is
/// a closing-in that was measured, or the `bore_closes_by` of a state in which the shaft does not yield: whether
/// it does, `ream_after_pressing` asks by itself.
/// Error: limits the wrong way round, a closing-in below 0 or with the most first, wishes below 0, any of them
/// beyond 1 km.
[[nodiscard]] constexpr result<bush_bore> bore_before_pressing(const hole_limits& wanted,
                                                               range<length> closes_by,
                                                               const boring_wishes& wishes = {}) noexcept {
    const bool is_possible =
        wanted.lower_limit() >= length() && wanted.lower_limit() <= wanted.upper_limit() &&
        wanted.upper_limit() <= detail::longest && closes_by.least >= length() &&
        closes_by.least <= closes_by.most && closes_by.most <= detail::longest &&
        wishes.least_tolerance >= length() && wishes.stock >= length() && wishes.stock <= detail::longest;
    if (!is_possible) [[unlikely]]
        return error::composer(error_code::boring_not_possible)
               << "this bore can't be reckoned; allowed: limits with the lower first, a closing-in of 0 or more "
                  "with the least first, stock and tolerance of 0 or more, all within 1 km";
    const length spread = closes_by.most - closes_by.least;
    const length left = wanted.tolerance() - spread;
    const bool ream = left < length() || left < wishes.least_tolerance;
    const length lowest = wanted.lower_deviation() + closes_by.most;
    const length highest = wanted.upper_deviation() + closes_by.least;
    return bush_bore{
        .ream_after_pressing = ream,
        .before = {wanted.nominal(),
                   {.upper = ream ? lowest : highest, .lower = lowest},
                   sources::bore_of_a_pressed_bush},
        .largest_before_reaming = wanted.lower_limit() + closes_by.least - wishes.stock,
        .closes_by = closes_by,
        .tolerance = wanted.tolerance(),
        .tolerance_left = left,
        .doubts = {},
    };
}

/// The same for a bush as pressed at 20 °C; what is doubtful of the joint is so of the bore. A bush that yields
/// there or in service, or may, is reamed whatever the spread: past the elastic limit it closes further than the
/// figure says, and stays so.
[[nodiscard]] constexpr result<bush_bore> ream_after_pressing(const hole_limits& wanted,
                                                              const press_result& pressed,
                                                              const boring_wishes& wishes = {}) noexcept {
    auto plan = bore_before_pressing(wanted, pressed.at_20.bore_closes_by, wishes);
    if (!plan) return plan;
    bush_bore made = *plan;
    const auto yields = [](const pressed_wall& bush) {
        const property<double> margin = bush.margin();
        return margin && !(*margin >= 1);
    };
    if (yields(pressed.at_20.shaft) || yields(pressed.in_service.shaft)) {
        made.may_yield = made.ream_after_pressing = true;
        made.before = {wanted.nominal(), // without any tolerance
                       {.upper = made.before.lower_deviation(), .lower = made.before.lower_deviation()},
                       sources::bore_of_a_pressed_bush};
    }
    made.doubts = pressed.doubts;
    made.take_care = pressed.take_care;
    return made;
}

} // namespace fitwright

#endif
