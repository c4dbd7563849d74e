#ifndef FITWRIGHT_RUNNING_OIL_HPP
#define FITWRIGHT_RUNNING_OIL_HPP

#include <fitwright/running/fluid.hpp>
#include <fitwright/running/oil_grade.hpp>
#include <fitwright/running/viscosity_index.hpp>

namespace fitwright {

/// What kind of oil, for its density; the kinds of oil differ by a fifth.
enum class oil_kind : std::uint8_t { hydraulic, engine, gear, polyalphaolefin, polyglycol };

namespace sources {
inline constexpr source oil_by_index{"ISO 3448; ASTM D2270-10, ISO 2909",
                                     "second point from the viscosity index", confidence::memory};
inline constexpr source sae_oil_by_index{"SAE J300, J306; ASTM D2270-10, ISO 2909",
                                         "middle of the grade; second point from the viscosity index",
                                         confidence::memory};
} // namespace sources

namespace detail {

/// Typical densities at 15 degC, within 3 %, and volume expansions: data sheets, from memory.
struct oil_kind_row {
    const char* name;
    double density, volume_expansion; ///< kg/m3, 1/K
};
// clang-format off
inline constexpr oil_kind_row oil_kinds[] = {
    {"hydraulic oil",   870, 0.00064},
    {"engine oil",      885, 0.00064},
    {"gear oil",        890, 0.00064},
    {"polyalphaolefin", 835, 0.00070},
    {"polyglycol",     1050, 0.00075},
};
// clang-format on

[[nodiscard]] constexpr fluid oil_through(oil_kind kind, double at_40, double at_100,
                                          const source& from) noexcept {
    const oil_kind_row& k = oil_kinds[static_cast<int>(kind)];
    return {.name = k.name,
            .known = {centistokes(at_40), celsius(40)},
            .also_known = {centistokes(at_100), celsius(100)},
            .density_at_15_degC = property<mass_density>::printed(k.density, confidence::memory),
            .volume_expansion =
                property<expansion_coefficient>::printed(k.volume_expansion, confidence::memory),
            .heat_capacity = heat_capacity_of_oils,
            .from = from};
}

} // namespace detail

/// The oil in the middle of a grade with a viscosity index: `oil(oil_kind::hydraulic, iso_vg::vg32,
/// viscosity_index(95))`. Density and heat capacity are typical ones, from memory.
/// Error: an oil thinner than 2 mm2/s at 100 degC, where the index is not defined; an index outside 0 to 400.
[[nodiscard]] inline result<fluid> oil(oil_kind kind, iso_vg grade, viscosity_index index) noexcept {
    const auto allowed = limits(grade);
    if (!allowed) return allowed.error();
    if (!(index.value >= 0 && index.value <= 400)) return detail::index_out_of_range();
    const double at_40 = allowed->middle.value() * 1e6;
    const double at_100 = detail::viscosity_at_100(at_40, index.value);
    if (at_100 == 0) return detail::index_not_defined();
    fluid made = detail::oil_through(kind, at_40, at_100, sources::oil_by_index);
    made.spread_per_cent = 10;
    made.spread_at = celsius(40);
    return made;
}

/// The oil in the middle of an SAE grade with a viscosity index.
/// Error: a grade without upper limit, which has no middle; an index outside 0 to 400.
[[nodiscard]] inline result<fluid> oil(oil_kind kind, const sae_grade& grade,
                                       viscosity_index index) noexcept {
    if (!(index.value >= 0 && index.value <= 400)) return detail::index_out_of_range();
    if (!grade.below_at_100_degC)
        return error::composer(error_code::viscosity_not_known)
               << "grade " << grade.name
               << " says only how thick the oil is at least: allowed are grades with both limits, such as 30 or "
                  "10W-40, or two viscosities of the oil";
    const double least = grade.least_at_100_degC.value() * 1e6;
    const double below = grade.below_at_100_degC.value().value() * 1e6;
    const double at_100 = (least + below) / 2;
    fluid made = detail::oil_through(kind, detail::viscosity_at_40(at_100, index.value), at_100,
                                     sources::sae_oil_by_index);
    made.spread_per_cent = (below - least) / (below + least) * 100;
    made.spread_at = celsius(100);
    made.is_multigrade = grade.is_multigrade;
    return made;
}

} // namespace fitwright

#endif
