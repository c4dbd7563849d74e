#ifndef FITWRIGHT_LENGTH_HPP
#define FITWRIGHT_LENGTH_HPP

#include <compare>
#include <cstdint>
#include <type_traits>

namespace boost::units {
template <class Unit, class Y> class quantity; // all that is needed of Boost.Units down here
}

/// Engineering fits and clearances: everything public is in here, outside `detail`.
namespace fitwright {

namespace detail {

/// True for the units of length of Boost.Units; `units.hpp` tells which those are.
template <class Unit> inline constexpr bool is_length_unit = false;

/// A factor that needs no rounding.
template <class Number>
inline constexpr bool is_whole_number = std::is_integral_v<Number> && !std::is_same_v<Number, bool>;

/// How many nanometres one `Unit` holds, exactly where that is a whole number; see `units.hpp`.
template <class Unit> struct nanometres_in;

template <class Number> constexpr std::int64_t nanometres_from(Number value, double per_unit) noexcept;

} // namespace detail

/// A length, exact: a whole number of nanometres.
///
/// Every ISO 286 value and half value, 1/64 in (396 875 nm), 0.0001 in (2 540 nm) and 0.001 in
/// (25 400 nm) is a whole number of nanometres, so sizes compare with `==` and print without
/// rounding. Range: +/- 9.2 million km; sums are not checked beyond it (a constant expression is).
class length {
public:
    /// Nothing: 0 nm.
    constexpr length() noexcept = default;

    /// So many nanometres, below zero too.
    [[nodiscard]] static constexpr length from_nanometres(std::int64_t n) noexcept {
        length made;
        made.nanometres_ = n;
        return made;
    }

    /// From a Boost.Units length, to the nearest nanometre, ties away from zero. Beyond the range it
    /// is the end of the range; what is not a number becomes the lowest length, which no table takes.
    /// `to_length` in `units.hpp` gives an error instead.
    template <class Unit, class Number>
        requires detail::is_length_unit<Unit>
    constexpr length(const boost::units::quantity<Unit, Number>& q) noexcept
        : nanometres_(detail::nanometres_from(q.value(), detail::nanometres_in<Unit>::value)) {}

    /// The whole of it.
    [[nodiscard]] constexpr std::int64_t nanometres() const noexcept { return nanometres_; }

    /// The number of `Unit`s, the nearest `double`: `(12018_um).in<millimetre>() == 12.018`.
    template <class Unit> [[nodiscard]] constexpr double in() const noexcept {
        return static_cast<double>(nanometres_) / detail::nanometres_in<Unit>::value;
    }

    /// The Boost.Units quantity in `Unit`, the nearest `double`. Needs `units.hpp`.
    template <class Unit> [[nodiscard]] constexpr boost::units::quantity<Unit, double> as() const noexcept {
        return boost::units::quantity<Unit, double>::from_value(in<Unit>());
    }

    constexpr length operator-() const noexcept { return from_nanometres(-nanometres_); }

    constexpr length& operator+=(length other) noexcept {
        nanometres_ += other.nanometres_;
        return *this;
    }
    constexpr length& operator-=(length other) noexcept {
        nanometres_ -= other.nanometres_;
        return *this;
    }
    friend constexpr length operator+(length a, length b) noexcept { return a += b; }
    friend constexpr length operator-(length a, length b) noexcept { return a -= b; }

    /// By whole numbers only: a factor such as 0.5 would have to round without saying so.
    template <class Integer>
        requires detail::is_whole_number<Integer>
    friend constexpr length operator*(length a, Integer n) noexcept {
        return from_nanometres(a.nanometres_ * static_cast<std::int64_t>(n));
    }
    template <class Integer>
        requires detail::is_whole_number<Integer>
    friend constexpr length operator*(Integer n, length a) noexcept { return a * n; }
    /// To the nearest nanometre, ties away from zero. The divisor is not 0.
    template <class Integer>
        requires detail::is_whole_number<Integer>
    friend constexpr length operator/(length a, Integer n) noexcept {
        const auto divisor = static_cast<std::int64_t>(n);
        const std::int64_t quotient = a.nanometres_ / divisor;
        const std::int64_t rest = a.nanometres_ % divisor;
        const std::int64_t rest_size = rest < 0 ? -rest : rest;
        const bool away = rest_size >= (divisor < 0 ? -divisor : divisor) - rest_size;
        const bool below_zero = (a.nanometres_ < 0) != (divisor < 0);
        return from_nanometres(quotient + (!away ? 0 : below_zero ? -1 : 1));
    }

    friend constexpr auto operator<=>(length, length) noexcept = default;

    /// Public only so that a length can be a template argument; read it by `nanometres()`.
    std::int64_t nanometres_ = 0;
};

namespace detail {

template <class Number> constexpr std::int64_t nanometres_from(Number value, double per_unit) noexcept {
    const double number = static_cast<double>(value);
    const double most = 9.2e18 / per_unit;    // looked at before the product, which might overflow
    if (!(number > -most)) return -INT64_MAX; // and what is not a number
    if (number > most) return INT64_MAX;
    const double nanometres = number * per_unit;
    const auto whole = static_cast<std::int64_t>(nanometres);
    const double rest = nanometres - static_cast<double>(whole);
    return whole + (rest >= 0.5 ? 1 : rest <= -0.5 ? -1 : 0);
}

// The names of these say what is wrong with a literal: a compiler prints them, since calling
// them is what makes the literal not constant.
void a_length_is_written_with_digits_and_one_point_at_most();
void a_length_literal_has_no_fraction_of_a_nanometre();
void a_length_literal_is_too_long();

/// The characters of a literal as C++ hands them over: `12`, `7.968`, `1'000`.
constexpr length length_literal(const char* written, std::int64_t nanometres_per_unit, bool to_nearest) {
    std::int64_t digits = 0;
    std::int64_t scale = 1;
    bool behind_point = false;
    const bool leading_zero = written[0] == '0' && written[1] != '\0' && written[1] != '.';
    if (leading_zero) a_length_is_written_with_digits_and_one_point_at_most(); // 0x1F, and 012
    for (const char* c = written; *c != '\0'; ++c) {
        if (*c == '\'') continue;
        if (*c == '.' && !behind_point) {
            behind_point = true;
            continue;
        }
        if (*c < '0' || *c > '9') a_length_is_written_with_digits_and_one_point_at_most();
        if (digits > 9'999'999'999) a_length_literal_is_too_long();
        digits = digits * 10 + (*c - '0');
        if (behind_point) scale *= 10;
    }
    if (digits > INT64_MAX / 2 / nanometres_per_unit) a_length_literal_is_too_long();
    const std::int64_t scaled = digits * nanometres_per_unit;
    if (scaled % scale != 0 && !to_nearest) a_length_literal_has_no_fraction_of_a_nanometre();
    return length::from_nanometres(scaled) / scale;
}

/// The literal as a constant: what is wrong with it does not compile. (A consteval operator would do
/// the same, but clang 14 does not link one that is used in a template.)
template <std::int64_t NanometresPerUnit, bool ToNearest, char... Written>
[[nodiscard]] constexpr length constant_length() noexcept {
    constexpr char written[] = {Written..., '\0'};
    constexpr length made = length_literal(written, NanometresPerUnit, ToNearest);
    return made;
}

} // namespace detail

/// `12_mm`, `7.968_mm`, `18_um`, `2540_nm`, `0.25_in`, `1.5_thou`: written out, checked while compiling.
namespace literals {

/// A fraction of a nanometre is refused.
template <char... Written> [[nodiscard]] constexpr length operator""_mm() noexcept {
    return detail::constant_length<1'000'000, false, Written...>();
}
/// A fraction of a nanometre is refused.
template <char... Written> [[nodiscard]] constexpr length operator""_um() noexcept {
    return detail::constant_length<1'000, false, Written...>();
}
/// A fraction of a nanometre is refused.
template <char... Written> [[nodiscard]] constexpr length operator""_nm() noexcept {
    return detail::constant_length<1, false, Written...>();
}
/// To the nearest nanometre.
template <char... Written> [[nodiscard]] constexpr length operator""_in() noexcept {
    return detail::constant_length<25'400'000, true, Written...>();
}
/// A thousandth of an inch; to the nearest nanometre.
template <char... Written> [[nodiscard]] constexpr length operator""_thou() noexcept {
    return detail::constant_length<25'400, true, Written...>();
}

} // namespace literals

} // namespace fitwright

#endif
