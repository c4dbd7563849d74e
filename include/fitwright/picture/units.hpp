#ifndef FITWRIGHT_PICTURE_UNITS_HPP
#define FITWRIGHT_PICTURE_UNITS_HPP

#include <fitwright/clearance_window.hpp>
#include <fitwright/figure.hpp>
#include <fitwright/grid.hpp>
#include <fitwright/written.hpp>

// How pictures write sizes and temperatures.

namespace fitwright::detail::svg {

/// Words put together: a row of a legend.
using phrase = fixed_text<600>;

[[nodiscard]] constexpr bool is_inch(written_unit u) noexcept {
    return u == written_unit::in || u == written_unit::thousandth;
}

/// The unit of deviations beside sizes in a unit: um beside mm, thou beside inches.
[[nodiscard]] constexpr written_unit unit_of_deviations(written_unit u) noexcept {
    if (u == written_unit::mm) return written_unit::um;
    return u == written_unit::in ? written_unit::thousandth : u;
}

/// "mm", "um" with a micro sign, "in".
[[nodiscard]] constexpr text sign_of(written_unit u) noexcept {
    return u == written_unit::um ? text("\xC2\xB5m") : in_words(u);
}

/// "0.021 to 0.0508": outwards to a tenth of a micrometre, or a hundredth of a thou. What is worked out from
/// handbooks is not known better.
constexpr void put_outwards(phrase& t, clearance_window w, written_unit u) noexcept {
    const length step = length::from_nanometres(is_inch(u) ? 254 : 100);
    t << written(multiple_at_or_below(w.least, step), {.unit = u}).view() << text(" to ")
      << written(multiple_at_or_above(w.most, step), {.unit = u}).view();
}

/// To a tenth of a degree Celsius: "95", "87.7".
[[nodiscard]] constexpr fixed_text<31> celsius_digits(double celsius) noexcept {
    const bool is_below = celsius < 0;
    const auto tenths = static_cast<std::int64_t>((is_below ? -celsius : celsius) * 10 + 0.5);
    fixed_text<31> t;
    if (is_below && tenths > 0) t << text("-");
    t << tenths / 10;
    if (tenths % 10 != 0) t << text(".") << tenths % 10;
    return t;
}

} // namespace fitwright::detail::svg

#endif
