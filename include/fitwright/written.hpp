#ifndef FITWRIGHT_WRITTEN_HPP
#define FITWRIGHT_WRITTEN_HPP

#include <fitwright/limits.hpp>
#include <fitwright/text.hpp>

namespace fitwright {

/// The units that lengths are written in.
enum class written_unit : std::uint8_t { mm, um, nm, in, thousandth };

/// How to write a length as digits.
struct number_format {
    written_unit unit = written_unit::mm; ///< of the digits
    /// Digits behind the point, 0 to 9; `as_needed` writes no zero at the end, and no more digits than
    /// are needed to read back the same nanometre (mm 6, um 3, nm 0, in 8, thou 5).
    int decimals = as_needed;
    /// A plus before what is above zero, as a deviation has it.
    bool with_plus = false;

    static constexpr int as_needed = -1; ///< as many digits as it takes to read back the same length
};

/// "mm", "um", "nm", "in", "thou".
[[nodiscard]] constexpr text in_words(written_unit u) noexcept {
    switch (u) {
    case written_unit::mm: return "mm";
    case written_unit::um: return "um";
    case written_unit::nm: return "nm";
    case written_unit::in: return "in";
    case written_unit::thousandth: return "thou";
    }
    return "";
}

/// One of the unit, as a length.
[[nodiscard]] constexpr length one(written_unit u) noexcept {
    switch (u) {
    case written_unit::mm: return length::from_nanometres(1'000'000);
    case written_unit::um: return length::from_nanometres(1'000);
    case written_unit::nm: return length::from_nanometres(1);
    case written_unit::in: return length::from_nanometres(25'400'000);
    case written_unit::thousandth: return length::from_nanometres(25'400);
    }
    return {};
}

/// The digits of a length, worked out in integers: no `double` on the way. Where the format has room
/// for all digits they are exact, otherwise the nearest, ties away from zero. This rounds a limit
/// outwards as readily as inwards: round limits by `rounded_inwards` first.
[[nodiscard]] constexpr fixed_text<47> written(length l, number_format f = {}) noexcept {
    const bool trim = f.decimals < 0;
    int decimals = f.decimals;
    if (trim) {
        constexpr int enough[] = {6, 3, 0, 8, 5};
        decimals = enough[static_cast<int>(f.unit)];
    }
    if (decimals > 9) decimals = 9;

    const auto unit = static_cast<std::uint64_t>(one(f.unit).nanometres());
    const bool below_zero = l.nanometres() < 0;
    auto magnitude = static_cast<std::uint64_t>(l.nanometres());
    if (below_zero) magnitude = 0 - magnitude;

    std::uint64_t whole = magnitude / unit;
    std::uint64_t rest = magnitude % unit;
    std::uint64_t fraction = 0;
    std::uint64_t one_whole = 1;
    for (int i = 0; i < decimals; ++i) {
        rest *= 10;
        fraction = fraction * 10 + rest / unit;
        rest %= unit;
        one_whole *= 10;
    }
    if (2 * rest >= unit) ++fraction;
    if (fraction == one_whole) {
        fraction = 0;
        ++whole;
    }
    while (trim && decimals > 0 && fraction % 10 == 0) {
        fraction /= 10;
        one_whole /= 10;
        --decimals;
    }

    fixed_text<47> digits;
    const bool is_zero = whole == 0 && fraction == 0;
    if (!is_zero && below_zero) digits << text("-");
    if (!is_zero && !below_zero && f.with_plus) digits << text("+");
    digits.put_digits(whole);
    if (decimals > 0) {
        digits << text(".");
        while (one_whole > 1) {
            one_whole /= 10;
            digits << static_cast<std::int64_t>(fraction / one_whole % 10);
        }
    }
    return digits;
}

namespace detail {

using written_limits = fixed_text<119>;

/// How many decimals it takes to write a length to the nanometre.
[[nodiscard]] constexpr int decimals_needed(length l, written_unit u) noexcept {
    const auto digits = written(l, {.unit = u});
    const std::size_t point = digits.view().find(".");
    return point == text::npos ? 0 : static_cast<int>(digits.size() - point - 1);
}

/// " +0.018/0", " +/-0.009": both deviations with the same number of decimals, 0 as 0 (ISO 129-1).
template <side Side>
[[nodiscard]] constexpr written_limits written_deviations(const size_limits<Side>& l,
                                                          written_unit u) noexcept {
    const length upper = l.upper_deviation();
    const length lower = l.lower_deviation();
    if (upper == -lower && upper >= length())
        return written_limits() << text(" +/-") << written(upper, {.unit = u}).view();

    const int of_upper = decimals_needed(upper, u);
    const int of_lower = decimals_needed(lower, u);
    const number_format both{
        .unit = u, .decimals = of_upper > of_lower ? of_upper : of_lower, .with_plus = true};
    const auto one_of_them = [&](length d) {
        return d == length() ? fixed_text<47>() << text("0") : written(d, both);
    };
    return written_limits() << text(" ") << one_of_them(upper).view() << text("/")
                            << one_of_them(lower).view();
}

} // namespace detail

/// Limits as the nominal size and its deviations, "14 +0.018/0"; the unit's name follows the size
/// unless it is millimetres.
template <side Side>
[[nodiscard]] constexpr detail::written_limits written(const size_limits<Side>& l,
                                                       written_unit u = written_unit::mm) noexcept {
    detail::written_limits t;
    t << written(l.nominal(), {.unit = u}).view();
    if (u != written_unit::mm) t << text(" ") << in_words(u);
    return t << detail::written_deviations(l, u).view();
}

} // namespace fitwright

#endif
