#ifndef FITWRIGHT_CHANCE_PROBABILITY_HPP
#define FITWRIGHT_CHANCE_PROBABILITY_HPP

#include <fitwright/chance/clearance_distribution.hpp>
#include <fitwright/window_crossed.hpp>

namespace fitwright {

/// How many pairs of a hundred keep a window: shares from 0 to 1, which add up to 1.
struct share_of_pairs {
    double inside;      ///< the window
    double tighter;     ///< than its least
    double looser;      ///< than its most
    double error_bound; ///< how far any of them may be off for want of digits
    flags<chance_doubt> doubts;
    cautions take_care; ///< where some pairs interfere: they need a press, not a hammer
    source from;
};

/// The share of pairs with a clearance inside a window, ends included, hole and shaft spread as stated and
/// paired at random: `probability("8 H7/g6"_fit, {8_um, 20_um}, spread::both(size_distribution::uniform()))`.
/// Exact for shapes of straight lines (`constexpr` then), by quadrature otherwise: see `error_bound`.
/// Error: a window the wrong way round; as of `clearances`.
[[nodiscard]] constexpr result<share_of_pairs> probability(const fit& f, clearance_window w,
                                                           const spread& s) noexcept {
    if (w.least > w.most) return detail::window_crossed(w);
    const auto c = clearances(f, s);
    if (!c) return c.error();
    const double tighter = c->share_below(w.least);
    const double looser = c->share_above(w.most);
    const double inside = 1 - tighter - looser;
    // Whatever the limits say: of a bell that is not inspected, a clearance fit too has pairs that interfere.
    const bool any_interfere = c->share_interfering() > c->error_bound();
    return share_of_pairs{
        .inside = inside < 0 ? 0 : inside,
        .tighter = tighter,
        .looser = looser,
        .error_bound = c->error_bound(),
        .doubts = c->doubts(),
        .take_care = any_interfere ? caution::press_force : cautions(),
        .from = c->from(),
    };
}

} // namespace fitwright

#endif
