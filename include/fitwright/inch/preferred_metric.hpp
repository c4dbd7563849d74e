#ifndef FITWRIGHT_INCH_PREFERRED_METRIC_HPP
#define FITWRIGHT_INCH_PREFERRED_METRIC_HPP

#include <fitwright/iso286/preferred.hpp>
#include <fitwright/rows.hpp>

namespace fitwright {

namespace sources {
inline constexpr source ansi_b4_2{"ANSI B4.2-1978", "preferred fits, hole basis and shaft basis",
                                  confidence::published};
} // namespace sources

namespace detail::preferred_metric {

using enum position;
inline constexpr grade it6 = grade::it6, it7 = grade::it7, it8 = grade::it8, it9 = grade::it9,
                       it11 = grade::it11;

// ANSI B4.2-1978: the ten preferred fits, from loose to tight, and their twins on the shaft's basis. The
// twin of H7/h6 is itself.
// clang-format off
inline constexpr const char* names[] = {
    "loose running", "free running", "close running", "sliding", "locational clearance",
    "locational transition", "locational transition", "locational interference", "medium drive", "force",
};
inline constexpr class_pair hole_basis[] = {
    {{h, it11}, {c, it11}}, {{h, it9}, {d, it9}}, {{h, it8}, {f, it7}}, {{h, it7}, {g, it6}}, {{h, it7}, {h, it6}},
    {{h, it7}, {k, it6}},   {{h, it7}, {n, it6}}, {{h, it7}, {p, it6}}, {{h, it7}, {s, it6}}, {{h, it7}, {u, it6}},
};
inline constexpr class_pair shaft_basis[] = {
    {{c, it11}, {h, it11}}, {{d, it9}, {h, it9}}, {{f, it8}, {h, it7}}, {{g, it7}, {h, it6}}, {{h, it7}, {h, it6}},
    {{k, it7}, {h, it6}},   {{n, it7}, {h, it6}}, {{p, it7}, {h, it6}}, {{s, it7}, {h, it6}}, {{u, it7}, {h, it6}},
};
// clang-format on

static_assert(sizeof names / sizeof names[0] == 10);
static_assert(sizeof hole_basis / sizeof hole_basis[0] == 10);
static_assert(sizeof shaft_basis / sizeof shaft_basis[0] == 10);

} // namespace detail::preferred_metric

/// The ten preferred metric fits of ANSI B4.2-1978 (`sources::ansi_b4_2`), from loose to tight; the
/// shaft-basis twin of each stands at the same place. `limits(nominal, pair)` gives the fit.
[[nodiscard]] constexpr rows<class_pair> preferred_metric_fits(basis b) noexcept {
    if (b == basis::hole) return detail::preferred_metric::hole_basis;
    return detail::preferred_metric::shaft_basis;
}

/// What ANSI B4.2 calls the fit at that place: "loose running", "sliding" … "?" beyond the ten.
[[nodiscard]] constexpr text preferred_metric_fit_name(std::size_t place) noexcept {
    constexpr std::size_t count = sizeof detail::preferred_metric::names / sizeof(const char*);
    return place < count ? detail::preferred_metric::names[place] : "?";
}

} // namespace fitwright

#endif
