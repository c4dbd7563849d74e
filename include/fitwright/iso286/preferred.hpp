#ifndef FITWRIGHT_ISO286_PREFERRED_HPP
#define FITWRIGHT_ISO286_PREFERRED_HPP

#include <fitwright/fit.hpp>
#include <fitwright/iso286/limits.hpp>
#include <fitwright/rows.hpp>

namespace fitwright {

/// Which part keeps its H or h and leaves it to the other to make the fit.
enum class basis : bool { hole, shaft };

/// A hole's class and a shaft's: H7/g6.
struct class_pair {
    hole_class hole;
    shaft_class shaft;

    friend constexpr bool operator==(class_pair, class_pair) noexcept = default;
};

namespace sources {
inline constexpr source preferred_hole_basis{"ISO 286-1:2010", "preferred fits of the hole-basis system",
                                             confidence::published};
inline constexpr source preferred_shaft_basis{"ISO 286-1:2010", "preferred fits of the shaft-basis system",
                                              confidence::memory};
inline constexpr source preferred_classes{"ISO 286-1:2010", "preferred tolerance classes",
                                          confidence::memory};
} // namespace sources

namespace detail::preferred {

using enum position;
inline constexpr grade it5 = grade::it5, it6 = grade::it6, it7 = grade::it7, it8 = grade::it8,
                       it9 = grade::it9, it10 = grade::it10, it11 = grade::it11;

// clang-format off
inline constexpr class_pair hole_basis[] = {
    // H6
    {{ h, it6}, { g, it5}}, {{ h, it6}, { h, it5}}, {{ h, it6}, {js, it5}}, {{ h, it6}, { k, it5}}, {{ h, it6}, { m, it5}},
    {{ h, it6}, { n, it5}}, {{ h, it6}, { p, it5}},
    // H7
    {{ h, it7}, { f, it6}}, {{ h, it7}, { g, it6}}, {{ h, it7}, { h, it6}}, {{ h, it7}, {js, it6}}, {{ h, it7}, { k, it6}},
    {{ h, it7}, { m, it6}}, {{ h, it7}, { n, it6}}, {{ h, it7}, { p, it6}}, {{ h, it7}, { r, it6}}, {{ h, it7}, { s, it6}},
    {{ h, it7}, { t, it6}}, {{ h, it7}, { u, it6}}, {{ h, it7}, { x, it6}},
    // H8
    {{ h, it8}, { e, it7}}, {{ h, it8}, { f, it7}}, {{ h, it8}, { h, it7}}, {{ h, it8}, {js, it7}}, {{ h, it8}, { k, it7}},
    {{ h, it8}, { m, it7}}, {{ h, it8}, { s, it7}}, {{ h, it8}, { u, it7}}, {{ h, it8}, { d, it8}}, {{ h, it8}, { e, it8}},
    {{ h, it8}, { f, it8}}, {{ h, it8}, { h, it8}},
    // H9
    {{ h, it9}, { d, it8}}, {{ h, it9}, { e, it8}}, {{ h, it9}, { f, it8}}, {{ h, it9}, { h, it8}},
    // H10
    {{ h, it10}, { b, it9}}, {{ h, it10}, { c, it9}}, {{ h, it10}, { d, it9}}, {{ h, it10}, { e, it9}}, {{ h, it10}, { h, it9}},
    // H11
    {{ h, it11}, { b, it11}}, {{ h, it11}, { c, it11}}, {{ h, it11}, { d, it10}}, {{ h, it11}, { h, it10}},
};
inline constexpr class_pair shaft_basis[] = {
    // h5
    {{ g, it6}, { h, it5}}, {{ h, it6}, { h, it5}}, {{js, it6}, { h, it5}}, {{ k, it6}, { h, it5}}, {{ m, it6}, { h, it5}},
    {{ n, it6}, { h, it5}}, {{ p, it6}, { h, it5}},
    // h6
    {{ f, it7}, { h, it6}}, {{ g, it7}, { h, it6}}, {{ h, it7}, { h, it6}}, {{js, it7}, { h, it6}}, {{ k, it7}, { h, it6}},
    {{ m, it7}, { h, it6}}, {{ n, it7}, { h, it6}}, {{ p, it7}, { h, it6}}, {{ r, it7}, { h, it6}}, {{ s, it7}, { h, it6}},
    {{ t, it7}, { h, it6}}, {{ u, it7}, { h, it6}}, {{ x, it7}, { h, it6}},
    // h7
    {{ e, it8}, { h, it7}}, {{ f, it8}, { h, it7}}, {{ h, it8}, { h, it7}},
    // h8
    {{ d, it9}, { h, it8}}, {{ e, it9}, { h, it8}}, {{ f, it9}, { h, it8}}, {{ h, it9}, { h, it8}},
    // h9
    {{ e, it8}, { h, it9}}, {{ f, it8}, { h, it9}}, {{ h, it8}, { h, it9}}, {{ d, it9}, { h, it9}}, {{ e, it9}, { h, it9}},
    {{ f, it9}, { h, it9}}, {{ h, it9}, { h, it9}}, {{ b, it11}, { h, it9}}, {{ c, it10}, { h, it9}}, {{ d, it10}, { h, it9}},
    {{ h, it10}, { h, it9}},
};
inline constexpr hole_class holes[] = {
    { g, it6}, { h, it6}, {js, it6}, { k, it6}, { m, it6}, { n, it6}, { p, it6},
    { r, it6}, { s, it6}, { t, it6},
    { f, it7}, { g, it7}, { h, it7}, {js, it7}, { k, it7}, { m, it7}, { n, it7},
    { p, it7}, { r, it7}, { s, it7}, { t, it7}, { u, it7}, { x, it7},
    { e, it8}, { f, it8}, { h, it8}, {js, it8}, { k, it8}, { m, it8}, { n, it8},
    { p, it8}, { r, it8},
    { d, it9}, { e, it9}, { f, it9}, { h, it9},
    { d, it10}, { e, it10}, { h, it10},
    { a, it11}, { b, it11}, { c, it11}, { d, it11}, { h, it11},
};
inline constexpr shaft_class shafts[] = {
    { g, it5}, { h, it5}, {js, it5}, { k, it5}, { m, it5}, { n, it5}, { p, it5},
    { r, it5}, { s, it5}, { t, it5},
    { f, it6}, { g, it6}, { h, it6}, {js, it6}, { k, it6}, { m, it6}, { n, it6},
    { p, it6}, { r, it6}, { s, it6}, { t, it6}, { u, it6}, { x, it6},
    { e, it7}, { f, it7}, { h, it7}, {js, it7}, { k, it7}, { m, it7}, { n, it7},
    { p, it7}, { r, it7}, { s, it7}, { t, it7}, { u, it7},
    { d, it8}, { e, it8}, { f, it8}, { h, it8},
    { d, it9}, { e, it9}, { h, it9},
    { d, it10},
    { a, it11}, { b, it11}, { c, it11}, { h, it11},
};
// clang-format on

static_assert(sizeof hole_basis / sizeof hole_basis[0] == 45);
static_assert(sizeof shaft_basis / sizeof shaft_basis[0] == 38);
static_assert(sizeof holes / sizeof holes[0] == 44);
static_assert(sizeof shafts / sizeof shafts[0] == 47);

} // namespace detail::preferred

/// The preferred fits of ISO 286-1:2010 in the order of its figures (`sources::preferred_hole_basis`,
/// `sources::preferred_shaft_basis`: the second is from memory).
[[nodiscard]] constexpr rows<class_pair> preferred_fits(basis b) noexcept {
    if (b == basis::hole) return detail::preferred::hole_basis;
    return detail::preferred::shaft_basis;
}

/// The preferred tolerance classes for holes (`sources::preferred_classes`).
[[nodiscard]] constexpr rows<hole_class> preferred_hole_classes() noexcept {
    return detail::preferred::holes;
}

/// The preferred tolerance classes for shafts (`sources::preferred_classes`).
[[nodiscard]] constexpr rows<shaft_class> preferred_shaft_classes() noexcept {
    return detail::preferred::shafts;
}

/// The fit of a pair of classes at a nominal size. Errors as of `limits` for either part.
[[nodiscard]] constexpr result<fit> limits(length nominal, class_pair classes) noexcept {
    const auto hole = limits(nominal, classes.hole);
    if (!hole) return hole.error();
    const auto shaft = limits(nominal, classes.shaft);
    if (!shaft) return shaft.error();
    return fit(*hole, *shaft);
}

} // namespace fitwright

#endif
