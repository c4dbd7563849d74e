#ifndef FITWRIGHT_RUNNING_BUSH_FITS_HPP
#define FITWRIGHT_RUNNING_BUSH_FITS_HPP

#include <fitwright/error.hpp>
#include <fitwright/iso286/tolerance_class.hpp>
#include <fitwright/source.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

/// Bushes as they are bought.
enum class bush_kind : std::uint8_t {
    wrapped_ptfe,    ///< steel strip lined with PTFE, runs dry
    wrapped_pom,     ///< steel strip lined with POM, greased
    plain_metal,     ///< of one metal
    solid_bronze,    ///< ISO 4379
    sintered_bronze, ///< ISO 2795, soaked with oil
};

/// The bush itself, where a standard gives it. Of a wrapped bush the wall decides: its housing and shaft alone
/// make no clearance.
struct bush_classes {
    bool are_known;         ///< if not, the classes mean nothing
    shaft_class outside;    ///< of the bush
    hole_class bore_before; ///< before it is pressed in
    hole_class bore_after;  ///< about
};

/// What the housing and the shaft of a bush are made to.
struct bush_advice {
    hole_class housing;      ///< for the bore it goes into
    shaft_class shaft;       ///< running
    shaft_class close_shaft; ///< for little play; the same where only one is named
    bush_classes bush;       ///< for the bush itself
    source from;
};

namespace detail {

struct bush_row {
    bush_kind kind;
    int from_mm, below_mm; ///< diameter of the shaft
    bush_advice advice;
};

inline constexpr source bush_catalogue{"a bearing maker's catalogue", "recommended fitting tolerances",
                                       confidence::published};
inline constexpr source bush_maker{"a bush maker's page", "shaft tolerances for H7 housings",
                                   confidence::published};
inline constexpr source iso_4379{"ISO 4379:1993", "copper-alloy bushes", confidence::memory};
inline constexpr source iso_2795{"ISO 2795:1991", "sintered bushes", confidence::memory};

namespace bush_table {

using enum position;
inline constexpr grade it6 = grade::it6, it7 = grade::it7, it8 = grade::it8;

// clang-format off
inline constexpr bush_classes not_known{false, {h, it6}, {h, it7}, {h, it7}};
//                                          outside   bore before   after
inline constexpr bush_classes of_iso_4379{true, {s, it6}, {e, it6}, {h, it8}};
inline constexpr bush_classes of_iso_2795{true, {r, it6}, {f, it7}, {h, it7}};

inline constexpr bush_row rows[] = {
    //                        shaft, mm      housing  shaft: running, close    bush
    {bush_kind::wrapped_ptfe,      0,    5, {{h, it6}, {h, it6}, {h, it6}, not_known,   bush_catalogue}},
    {bush_kind::wrapped_ptfe,      5,   80, {{h, it7}, {f, it7}, {f, it7}, not_known,   bush_catalogue}},
    {bush_kind::wrapped_ptfe,     80, 1000, {{h, it7}, {h, it8}, {h, it8}, not_known,   bush_catalogue}},
    {bush_kind::wrapped_pom,       0, 1000, {{h, it7}, {h, it8}, {h, it8}, not_known,   bush_catalogue}},
    {bush_kind::plain_metal,      10,  180, {{h, it7}, {f, it8}, {f, it8}, not_known,   bush_maker}},
    {bush_kind::solid_bronze,      0, 1000, {{h, it7}, {e, it7}, {g, it7}, of_iso_4379, iso_4379}},
    {bush_kind::sintered_bronze,   0, 1000, {{h, it7}, {f, it7}, {g, it6}, of_iso_2795, iso_2795}},
};
// clang-format on

static_assert(sizeof rows / sizeof rows[0] == 7);

} // namespace bush_table

} // namespace detail

/// What a bush wants its housing and its shaft made to.
/// Error: a shaft not above 0; a diameter the catalogue or standard is not known for.
[[nodiscard]] constexpr result<bush_advice> recommended_bush_fit(bush_kind kind,
                                                                 length shaft_diameter) noexcept {
    const auto millimetres = [](int n) { return length::from_nanometres(n * std::int64_t{1'000'000}); };
    for (const auto& row : detail::bush_table::rows) {
        const bool is_in_range = shaft_diameter >= millimetres(row.from_mm) &&
                                 shaft_diameter < millimetres(row.below_mm) && shaft_diameter > length();
        if (row.kind == kind && is_in_range) return row.advice;
    }
    return error::composer(error_code::size_without_advice)
           << "no fit of such a bush is known for a shaft of " << written(shaft_diameter).view()
           << " mm: allowed is above 0 below 1000 mm; plain metal bushes from 10 below 180 mm";
}

} // namespace fitwright

#endif
