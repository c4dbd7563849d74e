#ifndef FITWRIGHT_ISO286_TOLERANCE_CLASS_HPP
#define FITWRIGHT_ISO286_TOLERANCE_CLASS_HPP

#include <fitwright/limits.hpp>

namespace fitwright {

namespace detail {

// clang-format off
inline constexpr text grade_names[] = {
    "01", "0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12", "13", "14", "15", "16", "17", "18",
};
inline constexpr text hole_letters[] = {
    "A", "B", "C", "CD", "D", "E", "EF", "F", "FG", "G", "H", "JS", "J", "K", "M", "N", "P", "R", "S", "T", "U", "V",
    "X", "Y", "Z", "ZA", "ZB", "ZC",
};
inline constexpr text shaft_letters[] = {
    "a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h", "js", "j", "k", "m", "n", "p", "r", "s", "t", "u", "v",
    "x", "y", "z", "za", "zb", "zc",
};
// clang-format on

} // namespace detail

/// A standard tolerance grade of ISO 286-1: IT01, IT0, IT1 to IT18. The higher, the wider.
class grade {
public:
    /// IT `number`, from 0 to 18: `grade(7)` is IT7. IT01 is `grade::it01`. Any other number makes a
    /// grade that is not one: everything that takes a grade answers it with an error.
    constexpr explicit grade(int number) noexcept
        : step_(static_cast<std::int8_t>(number < 0 || number > 18 ? no_step : number + 1)) {}

    static const grade it01; ///< the finest
    /// The grades of these names.
    static const grade it0, it1, it2, it3, it4, it5, it6, it7, it8, it9;
    /// The grades of these names.
    static const grade it10, it11, it12, it13, it14, it15, it16, it17, it18;

    /// How many grades there are.
    static constexpr int count = 20;

    /// The place in the order IT01, IT0, IT1 … IT18, from 0 to 19.
    [[nodiscard]] constexpr int step() const noexcept { return step_; }
    /// The inverse of `step()`.
    [[nodiscard]] static constexpr grade from_step(int step) noexcept {
        return step == 0 ? grade() : grade(step - 1);
    }
    [[nodiscard]] constexpr bool exists() const noexcept { return step_ < count; }

    /// As written after the letter: "01", "0", "1" … "18"; "?" if there is no such grade.
    [[nodiscard]] constexpr text name() const noexcept {
        return exists() ? detail::grade_names[step_] : text("?");
    }

    friend constexpr auto operator<=>(grade, grade) noexcept = default;

    /// Public only so that a class can be a template argument; read it by `step()`.
    std::int8_t step_;

private:
    static constexpr std::int8_t no_step = 127;
    constexpr grade() noexcept : step_(0) {} // IT01
};

inline constexpr grade grade::it01 = grade();
inline constexpr grade grade::it0 = grade(0);
inline constexpr grade grade::it1 = grade(1);
inline constexpr grade grade::it2 = grade(2);
inline constexpr grade grade::it3 = grade(3);
inline constexpr grade grade::it4 = grade(4);
inline constexpr grade grade::it5 = grade(5);
inline constexpr grade grade::it6 = grade(6);
inline constexpr grade grade::it7 = grade(7);
inline constexpr grade grade::it8 = grade(8);
inline constexpr grade grade::it9 = grade(9);
inline constexpr grade grade::it10 = grade(10);
inline constexpr grade grade::it11 = grade(11);
inline constexpr grade grade::it12 = grade(12);
inline constexpr grade grade::it13 = grade(13);
inline constexpr grade grade::it14 = grade(14);
inline constexpr grade grade::it15 = grade(15);
inline constexpr grade grade::it16 = grade(16);
inline constexpr grade grade::it17 = grade(17);
inline constexpr grade grade::it18 = grade(18);

/// Where the tolerance interval lies: the letters of ISO 286-1, from farthest below a shaft's
/// nominal size to farthest above (for a hole the other way round). I L O Q W are not used.
// clang-format off
enum class position : std::uint8_t {
    a, b, c, cd, d, e, ef, f, fg, g, h, js, j, k, m, n, p, r, s, t, u, v, x, y, z, za, zb, zc,
};
// clang-format on

/// How many positions there are.
inline constexpr int position_count = 28;
static_assert(sizeof detail::hole_letters / sizeof detail::hole_letters[0] == position_count);
static_assert(sizeof detail::shaft_letters / sizeof detail::shaft_letters[0] == position_count);
static_assert(sizeof detail::grade_names / sizeof detail::grade_names[0] == grade::count);

/// The letters as a drawing has them: capitals for a hole, small letters for a shaft.
[[nodiscard]] constexpr text letters(position p, side s) noexcept {
    const auto i = static_cast<int>(p);
    if (i >= position_count) return "?";
    return s == side::hole ? detail::hole_letters[i] : detail::shaft_letters[i];
}

/// A tolerance class of ISO 286-1: position and grade, `H7` for a hole or `g6` for a shaft.
template <side Side> struct tolerance_class {
    fitwright::position position; ///< the letter
    fitwright::grade grade;       ///< the number

    friend constexpr bool operator==(tolerance_class, tolerance_class) noexcept = default;
};

/// Of a hole: `H7`.
using hole_class = tolerance_class<side::hole>;
/// Of a shaft: `g6`.
using shaft_class = tolerance_class<side::shaft>;

} // namespace fitwright

#endif
