#ifndef FITWRIGHT_PICTURE_PIXELS_HPP
#define FITWRIGHT_PICTURE_PIXELS_HPP

#include <fitwright/text.hpp>

#include <compare>

namespace fitwright::detail::svg {

/// A place or a length on the paper: a whole number of hundredths of a pixel, so that every machine draws
/// the same bytes.
struct px {
    std::int64_t hundredths = 0;

    [[nodiscard]] static constexpr px of(std::int64_t whole) noexcept { return {whole * 100}; }

    constexpr px& operator+=(px other) noexcept {
        hundredths += other.hundredths;
        return *this;
    }
    constexpr px operator-() const noexcept { return {-hundredths}; }
    friend constexpr px operator+(px a, px b) noexcept { return {a.hundredths + b.hundredths}; }
    friend constexpr px operator-(px a, px b) noexcept { return {a.hundredths - b.hundredths}; }
    friend constexpr px operator*(px a, std::int64_t n) noexcept { return {a.hundredths * n}; }
    friend constexpr px operator/(px a, std::int64_t n) noexcept { return {a.hundredths / n}; }
    friend constexpr auto operator<=>(px, px) noexcept = default;
};

/// A place on the paper, from the left and from the top.
struct spot {
    px x;
    px y;
};

/// An upright rectangle.
struct area {
    px left;
    px top;
    px right;
    px bottom;
};

/// "117", "83.5", "-0.25".
[[nodiscard]] constexpr fixed_text<23> written(px p) noexcept {
    fixed_text<23> t;
    std::int64_t n = p.hundredths;
    if (n < 0) {
        t << text("-");
        n = -n;
    }
    t << n / 100;
    if (n % 100 == 0) return t;
    t << text(".") << n / 10 % 10;
    if (n % 10 != 0) t << n % 10;
    return t;
}

} // namespace fitwright::detail::svg

#endif
