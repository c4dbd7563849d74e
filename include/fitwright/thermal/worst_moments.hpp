#ifndef FITWRIGHT_THERMAL_WORST_MOMENTS_HPP
#define FITWRIGHT_THERMAL_WORST_MOMENTS_HPP

#include <fitwright/rows.hpp>
#include <fitwright/thermal/hot_fit.hpp>

#include <cstddef>

namespace fitwright {

/// How warm both parts are at some moment of their working life: working, warm-up, cool-down, the shed.
struct thermal_state {
    text name;
    temperature hole;
    temperature shaft;
};

/// A moment, and the fit in it.
struct hot_moment {
    text state;        ///< a look at the caller's own name of it: lives no longer than the `thermal_state`
    std::size_t index; ///< which of the states it was
    hot_fit fit;       ///< in that state
};

/// The moments that decide whether a fit works; of equal ones the first.
struct worst_moments_of_fit {
    hot_moment tightest;         ///< has the least clearance
    hot_moment loosest;          ///< has the greatest
    flags<thermal_doubt> doubts; ///< in any of the states
    cautions take_care;          ///< the same

    /// What there is from the tightest moment to the loosest.
    [[nodiscard]] constexpr clearance_window clearance() const noexcept {
        return {tightest.fit.min_clearance(), loosest.fit.max_clearance()};
    }
};

namespace detail {

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error not_known_in(const thermal_state& s, text part,
                                                                     const error& why) noexcept {
    return error::composer(why.code()) << "in state '" << (fixed_text<32>() << s.name).view() << "', the "
                                       << part << ": " << why.message();
}

} // namespace detail

/// The state in which a fit is tightest, and the one in which it is loosest, at the worst of the spread of
/// the coefficients. List warm-up and cool-down too: there the parts are furthest apart.
/// Error: no states; limits that are crossed or not above zero; the expansion of a part is not known in one of them (which is named), so that nobody
/// can tell.
[[nodiscard]] constexpr result<worst_moments_of_fit> worst_moments(const fit& f, const material& hole,
                                                                   const material& shaft,
                                                                   rows<thermal_state> states) noexcept {
    if (states.empty())
        return error::composer(error_code::no_states)
               << "there is no state to look at; allowed: one or more, such as bench, working, warm-up";
    if (!detail::allow_a_size(f)) return detail::no_size_in(f);
    const detail::near_room hole_near_room = detail::near_room_of(hole);
    const detail::near_room shaft_near_room = detail::near_room_of(shaft);
    const bool is_one_material = detail::is_same_material(hole, shaft);
    struct candidate {
        std::size_t index;
        double clearance;
        detail::strain of_hole;
        detail::strain of_shaft;
    };
    candidate tightest{};
    candidate loosest{};
    flags<thermal_doubt> doubts;
    cautions take_care;
    for (std::size_t i = 0; i < states.size(); ++i) {
        detail::pair_strain both{detail::quick_strain_at(hole_near_room, states[i].hole.value()),
                                 detail::quick_strain_at(shaft_near_room, states[i].shaft.value()),
                                 is_one_material};
        if (!both.hole.is_known) {
            const auto of_hole = detail::strain_at(hole, states[i].hole);
            if (!of_hole) return detail::not_known_in(states[i], "hole", of_hole.error());
            both.hole = *of_hole;
        }
        if (!both.shaft.is_known) {
            const auto of_shaft = detail::strain_at(shaft, states[i].shaft);
            if (!of_shaft) return detail::not_known_in(states[i], "shaft", of_shaft.error());
            both.shaft = *of_shaft;
        }
        const range<double> here = detail::worst_clearances(f, both);
        if (i == 0 || here.least < tightest.clearance) tightest = {i, here.least, both.hole, both.shaft};
        if (i == 0 || here.most > loosest.clearance) loosest = {i, here.most, both.hole, both.shaft};
        doubts |= both.hole.doubts | both.shaft.doubts;
        take_care |= both.hole.take_care | both.shaft.take_care;
    }
    const auto moment = [&](const candidate& c) -> hot_moment {
        return {states[c.index].name, c.index,
                detail::hot_fit_of(f, hole, shaft, {c.of_hole, c.of_shaft, is_one_material})};
    };
    return worst_moments_of_fit{moment(tightest), moment(loosest), doubts, take_care};
}

} // namespace fitwright

#endif
