#ifndef FITWRIGHT_THERMAL_SIZE_AT_20_HPP
#define FITWRIGHT_THERMAL_SIZE_AT_20_HPP

#include <fitwright/figure.hpp>
#include <fitwright/thermal/growth.hpp>

// What a warm part would measure at 20 °C, to which every drawing refers (ISO 1). The gauge grows too:
// L20 = reading * (1 + ag * (Tg - 20 °C)) / (1 + ap * (Tp - 20 °C)).

namespace fitwright {

/// A measured part as it is at 20 °C.
template <side Side> struct measured_at_20 {
    measured<Side> part; ///< the spread of the coefficients is added to the uncertainty
    length correction;   ///< what was added to the reading
    flags<thermal_doubt> doubts;
    cautions take_care;
    source part_expansion;  ///< where the coefficients come from
    source gauge_expansion; ///< the same
};

namespace detail {

/// What a reading has to be multiplied by: by the mean coefficients, and at both ends of the spread.
struct correction_to_20 {
    range<double> factor;
    double by_mean;
    strain part;
    strain gauge;
};

[[nodiscard]] constexpr result<correction_to_20> correction_to_20_of(const material& m, const temperature& at,
                                                                     const warm_part& gauge) noexcept {
    const auto p = strain_at(m, at);
    if (!p) return p.error();
    const auto g = strain_at(gauge.made_of, gauge.at);
    if (!g) return g.error();
    const strain& part = *p;
    const strain& ruler = *g;
    range<double> factor{(1 + ruler.least()) / (1 + part.most()), (1 + ruler.most()) / (1 + part.least())};
    if (is_same_material(m, gauge.made_of)) { // one coefficient, whichever it is
        const double one_end = (1 + ruler.by_lowest) / (1 + part.by_lowest);
        const double other_end = (1 + ruler.by_highest) / (1 + part.by_highest);
        factor = one_end < other_end ? range<double>{one_end, other_end} : range<double>{other_end, one_end};
    }
    return correction_to_20{factor, (1 + ruler.by_mean) / (1 + part.by_mean), *p, *g};
}

} // namespace detail

/// A reading, taken off a part at `at` by a gauge at its own temperature, as it would be at 20 °C. Part and
/// gauge of one material at one temperature need no correction, however warm.
///
///     size_at_20(50.031_mm, materials::aluminium_6082_t6, 34_degC, {materials::steel_100cr6, 22_degC})
///
/// How well the temperatures are known is not in it: a kelvin is 2 um on 100 mm of aluminium.
/// Error: the expansion of the part or of the gauge is not known at its temperature.
[[nodiscard]] constexpr result<spread_length>
size_at_20(length reading, const material& m, const temperature& at, const warm_part& gauge) noexcept {
    const auto c = detail::correction_to_20_of(m, at, gauge);
    if (!c) return c.error();
    const double size = detail::nanometres(reading);
    const bool gauge_is_less_sure = c->part.how_sure < c->gauge.how_sure;
    return spread_length{detail::rounded_down(size * c->factor.least),
                         detail::rounded_to_nearest(size * c->by_mean),
                         detail::rounded_up(size * c->factor.most),
                         c->part.doubts | c->gauge.doubts,
                         c->part.take_care | c->gauge.take_care,
                         gauge_is_less_sure ? c->gauge.from(gauge.made_of) : c->part.from(m)};
}

/// The same for a measured hole or shaft, which it remains. Its uncertainty grows by what the spread of the
/// coefficients may be off, rounded up.
/// Error: a reading not above zero; as above.
template <side Side>
[[nodiscard]] constexpr result<measured_at_20<Side>> size_at_20(const measured<Side>& reading,
                                                                const material& m, const temperature& at,
                                                                const warm_part& gauge) noexcept {
    if (!(reading.size() > length())) return detail::no_size_in(reading.limits());
    const auto c = detail::correction_to_20_of(m, at, gauge);
    if (!c) return c.error();
    const length size = detail::rounded_to_nearest(detail::nanometres(reading.size()) * c->by_mean);
    const length below =
        size -
        detail::rounded_down(detail::nanometres(reading.size() - reading.uncertainty()) * c->factor.least);
    const length above =
        detail::rounded_up(detail::nanometres(reading.size() + reading.uncertainty()) * c->factor.most) -
        size;
    return measured_at_20<Side>{
        {size, below < above ? above : below},  size - reading.size(), c->part.doubts | c->gauge.doubts,
        c->part.take_care | c->gauge.take_care, c->part.from(m),       c->gauge.from(gauge.made_of)};
}

} // namespace fitwright

#endif
