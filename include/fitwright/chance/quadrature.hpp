#ifndef FITWRIGHT_CHANCE_QUADRATURE_HPP
#define FITWRIGHT_CHANCE_QUADRATURE_HPP

#include <fitwright/chance/placed_part.hpp>
#include <fitwright/rows.hpp>
#include <fitwright/square_root.hpp>

// One part as it may come, held against the whole distribution of the other, and averaged.

namespace fitwright::detail {

/// Points and weights of Gauss and Legendre on -1 to 1; the other half mirrors these (Abramowitz and Stegun,
/// Handbook of Mathematical Functions, Table 25.4).
struct gauss_point {
    double at;
    double weight;
};

/// Exact for polynomials up to degree 3: a straight density times a share of degree 2.
inline constexpr gauss_point gauss_2[] = {{0.57735026918962576, 1}};

// clang-format off
inline constexpr gauss_point gauss_12[] = {
    {0.12523340851146891, 0.24914704581340286},
    {0.36783149899818018, 0.23349253653835464},
    {0.58731795428661748, 0.20316742672306587},
    {0.76990267419430469, 0.16007832854334636},
    {0.90411725637047480, 0.10693932599531888},
    {0.98156063424671924, 0.04717533638651202},
};
// clang-format on

static_assert(sizeof gauss_12 / sizeof gauss_12[0] == 6);

/// The stretches of a part's sizes on which both parts are smooth: the ends of the stretches in order.
struct stretches {
    double end[2 * break_points::most];
    int size = 0;

    constexpr void add(double at) noexcept {
        int i = size++;
        for (; i > 0 && end[i - 1] > at; --i) end[i] = end[i - 1];
        end[i] = at;
    }
};

/// The average of `value` over the sizes of a part that has ends. `moved` is what makes a size of `other`
/// one of `part` where the breaks of `other` are felt.
template <class Value>
[[nodiscard]] constexpr double average_over(const placed_part& part, const placed_part& other, double moved,
                                            Value value) noexcept {
    if (part.kind == placed_part::form::point) return value(part.lower);

    stretches s{};
    const auto add = [&](const break_points& breaks, double by) {
        for (int i = 0; i < breaks.size; ++i) {
            const double at = breaks.place[i] + by;
            if (part.lower <= at && at <= part.upper) s.add(at);
        }
    };
    add(part.breaks(), 0);
    add(other.breaks(), moved);

    const bool exact = part.is_polynomial() && other.is_polynomial();
    const rows<gauss_point> points = exact ? rows<gauss_point>(gauss_2) : rows<gauss_point>(gauss_12);
    double sum = 0;
    for (int i = 1; i < s.size; ++i) {
        const double middle = (s.end[i] + s.end[i - 1]) / 2;
        const double half = (s.end[i] - s.end[i - 1]) / 2;
        if (!(half > 0)) continue;
        double on_this = 0;
        for (const gauss_point& g : points) {
            const double before = middle - half * g.at;
            const double behind = middle + half * g.at;
            on_this +=
                g.weight * (part.density(before) * value(before) + part.density(behind) * value(behind));
        }
        sum += half * on_this;
    }
    return sum;
}

/// The share of pairs whose clearance, hole less shaft, lies below or above `clearance`.
[[nodiscard]] constexpr double share_of_clearances(const placed_part& hole, const placed_part& shaft,
                                                   tail which, double clearance) noexcept {
    const bool below = which == tail::below;
    if (hole.has_ends()) // tight: the shaft is larger than what the hole leaves it
        return average_over(hole, shaft, clearance, [&](double h) {
            return shaft.share(below ? tail::above : tail::below, h - clearance);
        });
    if (shaft.has_ends())
        return average_over(shaft, hole, -clearance,
                            [&](double s) { return hole.share(which, s + clearance); });
    const double off = (clearance - (hole.mean - shaft.mean)) /
                       square_root(hole.sigma * hole.sigma + shaft.sigma * shaft.sigma);
    return bell_below(below ? off : -off); // two bells make a bell
}

} // namespace fitwright::detail

#endif
