#ifndef FITWRIGHT_RUNNING_VISCOSITY_INDEX_HPP
#define FITWRIGHT_RUNNING_VISCOSITY_INDEX_HPP

#include <fitwright/error.hpp>
#include <fitwright/figure.hpp>
#include <fitwright/running/units.hpp>
#include <fitwright/running/viscosity_index_table.hpp>
#include <fitwright/source.hpp>

#include <cmath>

namespace fitwright {

/// How little an oil thins when it warms: about 95 for plain mineral oils, 130 to 180 for synthetic ones
/// and multigrades. ISO 2909, ASTM D2270.
struct viscosity_index {
    constexpr explicit viscosity_index(double number) noexcept : value(number) {}

    double value;

    friend constexpr auto operator<=>(viscosity_index, viscosity_index) noexcept = default;
};

/// The two viscosities of a data sheet.
struct sheet_viscosities {
    figure<kinematic_viscosity> at_40_degC;  ///< kinematic
    figure<kinematic_viscosity> at_100_degC; ///< kinematic
};

namespace sources {
inline constexpr source viscosity_index{"ASTM D2270-10, ISO 2909", "procedures A and B; Table X2.1",
                                        confidence::memory};
} // namespace sources

namespace detail {

/// Below this viscosity at 100 degC the index is not defined, mm2/s.
inline constexpr double least_indexed = 2;

struct reference_oils {
    double index_zero;    ///< L
    double index_hundred; ///< H
};

/// The viscosities at 40 degC, mm2/s, of the oils that have `y` at 100 degC.
[[nodiscard]] constexpr reference_oils reference_oils_at(double y) noexcept {
    const viscosity_index_row* row = viscosity_index_table;
    for (const auto& r : viscosity_index_table)
        if (y >= r.above) row = &r;
    return {.index_zero = (row->l_a * y + row->l_b) * y + row->l_c,
            .index_hundred = (row->h_d * y + row->h_e) * y + row->h_f};
}

/// The viscosity at 40 degC of an oil of so much at 100 degC and this index, mm2/s.
[[nodiscard]] inline double viscosity_at_40(double at_100, double index) noexcept {
    const auto [l, h] = reference_oils_at(at_100);
    if (index <= 100) return l - index / 100 * (l - h);
    return h / std::pow(at_100, std::log10((index - 100) * 0.00715 + 1));
}

/// The other way, which has no formula: by halving. 0 where the index is not defined.
[[nodiscard]] inline double viscosity_at_100(double at_40, double index) noexcept {
    double low = least_indexed;
    double high = at_40; // hot oil is thinner
    if (!(viscosity_at_40(low, index) <= at_40)) return 0;
    for (int i = 0; i < 60 && high - low > 1e-12 * high; ++i) {
        const double middle = (low + high) / 2;
        (viscosity_at_40(middle, index) < at_40 ? low : high) = middle;
    }
    return (low + high) / 2;
}

[[nodiscard, gnu::cold, gnu::noinline]] inline error index_not_defined() noexcept {
    return error::composer(error_code::viscosity_index_not_defined)
           << "the viscosity index is not defined for oils below 2 mm2/s at 100 degC: allowed are thicker "
              "oils; give a thin one two viscosities at two temperatures";
}

[[nodiscard, gnu::cold, gnu::noinline]] inline error index_out_of_range() noexcept {
    return error::composer(error_code::viscosity_index_not_defined)
           << "this is no viscosity index: allowed are 0 to 400; plain mineral oils have about 95";
}

} // namespace detail

/// The index of an oil from the two viscosities of its data sheet.
/// Error: less than 2 mm2/s at 100 degC; not thinner when hot.
[[nodiscard]] inline result<viscosity_index> index_of(sheet_viscosities v) noexcept {
    const double u = v.at_40_degC.value() * 1e6;
    const double y = v.at_100_degC.value() * 1e6;
    if (!(y >= detail::least_indexed)) return detail::index_not_defined();
    if (!(u > y))
        return error::composer(error_code::viscosity_points_unusable)
               << "an oil as thick at 100 degC as at 40: allowed are viscosities that fall as it warms";
    const auto [l, h] = detail::reference_oils_at(y);
    if (u >= h) return viscosity_index(100 * (l - u) / (l - h));
    const double n = (std::log10(h) - std::log10(u)) / std::log10(y);
    return viscosity_index((std::pow(10, n) - 1) / 0.00715 + 100);
}

} // namespace fitwright

#endif
