#ifndef FITWRIGHT_PRESS_WARM_HPP
#define FITWRIGHT_PRESS_WARM_HPP

#include <fitwright/figure.hpp>
#include <fitwright/press/elastic.hpp>
#include <fitwright/thermal/strain.hpp>

// A pair at temperature: unlike growth is more interference, or less (DIN 7190-1). Plain doubles.

namespace fitwright::detail {

/// How a shaft and a hub have grown from 20 °C, each as a part of its size.
struct grown_pair {
    double shaft = 0;
    double hub = 0;

    /// On a joint of 1 m.
    [[nodiscard]] constexpr double mismatch() const noexcept { return shaft - hub; }
};

/// All they may have: parts of one material share one coefficient, whichever it is; others don't.
struct grown_pairs {
    grown_pair corner[4];
    int size;
    bool is_sure;
};

[[nodiscard]] constexpr result<grown_pairs> grown_pairs_of(const joint& j) noexcept {
    const auto shaft = strain_at(j.shaft.made_of, j.shaft.at);
    if (!shaft) return shaft.error();
    const auto hub = strain_at(j.hub.made_of, j.hub.at);
    if (!hub) return hub.error();
    const auto doubts = shaft->doubts | hub->doubts;
    const bool is_sure = !doubts.contains(thermal_doubt::uncertain_expansion) &&
                         !doubts.contains(thermal_doubt::extrapolated) &&
                         !doubts.contains(thermal_doubt::cold_figures_not_known);
    if (is_same_material(j.hub.made_of, j.shaft.made_of))
        return grown_pairs{
            {{shaft->by_lowest, hub->by_lowest}, {shaft->by_highest, hub->by_highest}}, 2, is_sure};
    return grown_pairs{{{shaft->by_lowest, hub->by_lowest},
                        {shaft->by_highest, hub->by_lowest}, // each corner lies beside the one before it
                        {shaft->by_highest, hub->by_highest},
                        {shaft->by_lowest, hub->by_highest}},
                       4,
                       is_sure};
}

/// The least and the most of what has been looked at.
struct extremes {
    double least = __builtin_inf();
    double most = -__builtin_inf();

    constexpr void take(double number) noexcept {
        if (number < least) least = number;
        if (number > most) most = number;
    }
};

[[nodiscard]] constexpr extremes mismatch_of(const grown_pairs& g, double diameter) noexcept {
    extremes e;
    for (int i = 0; i < g.size; ++i) e.take(diameter * g.corner[i].mismatch());
    return e;
}

/// The shaft's bore in service and how far it has moved from where it was at 20 °C, pressed.
struct warm_bore {
    extremes size;
    extremes move;
};

/// A bore that grows freely and closes as far as the pair still interferes. Between two corners both are
/// straight lines, with a bend where the pair lets go: the corners and the bends have the extremes.
[[nodiscard]] constexpr warm_bore warm_bore_of(const elastic_pair& pair, const grown_pairs& g, double bore,
                                               range<double> interference) noexcept {
    const double closing = pair.bore_per_pascal / pair.interference_per_pascal;
    warm_bore made;
    for (const double cold : {interference.least, interference.most}) {
        const double closed_cold = cold > 0 ? cold * closing : 0;
        const auto take = [&](double grown, double warm) {
            const double change = bore * grown - (warm > 0 ? warm * closing : 0);
            made.size.take(bore + change);
            made.move.take(change + closed_cold);
        };
        const auto warm_at = [&](int i) { return cold + pair.diameter * g.corner[i].mismatch(); };
        for (int i = 0; i < g.size; ++i) {
            const int next = i + 1 < g.size ? i + 1 : 0;
            const double here = warm_at(i);
            const double there = warm_at(next);
            take(g.corner[i].shaft, here);
            if ((here > 0) == (there > 0)) continue;
            const double way = here / (here - there);
            take(g.corner[i].shaft + way * (g.corner[next].shaft - g.corner[i].shaft), 0);
        }
    }
    return made;
}

} // namespace fitwright::detail

#endif
