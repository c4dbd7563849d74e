#ifndef FITWRIGHT_RUNNING_OIL_GRADE_HPP
#define FITWRIGHT_RUNNING_OIL_GRADE_HPP

#include <fitwright/error.hpp>
#include <fitwright/figure.hpp>
#include <fitwright/material/property.hpp>
#include <fitwright/rows.hpp>
#include <fitwright/running/oil_grade_tables.hpp>
#include <fitwright/running/units.hpp>
#include <fitwright/source.hpp>

namespace fitwright {

/// The viscosity grades of industrial oils, ISO 3448: the number is mm2/s at 40 degC.
enum class iso_vg : std::uint16_t {
    vg2 = 2,
    vg3 = 3,
    vg5 = 5,
    vg7 = 7,
    vg10 = 10,
    vg15 = 15,
    vg22 = 22,
    vg32 = 32,
    vg46 = 46,
    vg68 = 68,
    vg100 = 100,
    vg150 = 150,
    vg220 = 220,
    vg320 = 320,
    vg460 = 460,
    vg680 = 680,
    vg1000 = 1000,
    vg1500 = 1500,
    vg2200 = 2200,
    vg3200 = 3200,
};

/// What a grade lets the kinematic viscosity at 40 degC be.
struct iso_vg_limits {
    figure<kinematic_viscosity> least;
    figure<kinematic_viscosity> middle;
    figure<kinematic_viscosity> most;
    source from;
};

/// How thick an oil may be at most at a temperature below 0.
struct cold_limit {
    property<dynamic_viscosity> most = {};
    property<temperature> at = {};
};

/// A grade of SAE J300 (engine oils) or J306 (gear oils): what it lets the oil be when hot.
struct sae_grade {
    text name;                                       ///< "40"; of a multigrade the part that holds when hot
    figure<kinematic_viscosity> least_at_100_degC;   ///< kinematic viscosity
    property<kinematic_viscosity> below_at_100_degC; ///< the limit is not allowed itself; not known: none
    property<dynamic_viscosity> high_shear_at_150_degC; ///< at least; what counts in a fast bearing
    bool is_multigrade = false;                         ///< with a W: tested cold too
    /// Of engine oils with a W: how thick it may be in the cold.
    cold_limit cranking = {};
    cold_limit pumping = {}; ///< the temperature at which it is still pumped
    source from;
};

namespace sources {
inline constexpr source iso_3448{"ISO 3448:1992", "Table 1", confidence::published};
inline constexpr source iso_3448_memory{"ISO 3448:1992", "Table 1, above VG 68: rule of 10 % either way",
                                        confidence::memory};
inline constexpr source sae_j300{"SAE J300 (2015, 2021)", "engine oil viscosity grades",
                                 confidence::published};
inline constexpr source sae_j306{"SAE J306:2005", "gear oil viscosity grades", confidence::published};
} // namespace sources

namespace detail {

[[nodiscard]] constexpr kinematic_viscosity hundredths(std::int32_t n) noexcept {
    return centistokes(n / 100.0);
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error not_a_sae_grade(text name,
                                                                        rows<sae_row> table) noexcept {
    error::composer say(error_code::oil_grade_not_known);
    say.quote(name) << " is no grade of this standard: allowed are";
    text last;
    for (const sae_row& r : table) {
        if (last != text(r.name)) say << " " << r.name;
        last = r.name;
    }
    return say << ", and a grade with W, a dash and one without, such as 10W-40";
}

struct found_grade {
    sae_grade grade;
    int winter_row; ///< -1: no grade with W
};

/// "40", "10W" or "10W-40"; of a doubled grade the first row holds behind the first three winter grades.
[[nodiscard]] constexpr result<found_grade> sae_grade_of(text name, rows<sae_row> table, int winter_rows,
                                                         const source& from) noexcept {
    const std::size_t dash = name.find("-");
    const bool is_multigrade = dash != text::npos;
    const text with_w = is_multigrade ? text(name.data(), dash) : name;
    const text hot = is_multigrade ? text(name.data() + dash + 1, name.size() - dash - 1) : name;
    int winter_row = -1;
    for (int i = 0; i < winter_rows; ++i)
        if (with_w == text(table[static_cast<std::size_t>(i)].name)) winter_row = i;
    if (is_multigrade && winter_row < 0) return not_a_sae_grade(name, table);

    const sae_row* found = nullptr;
    const bool is_light = is_multigrade && winter_row < 3;
    for (const sae_row& r : table) {
        if (hot != text(r.name)) continue;
        if (found == nullptr || !is_light) found = &r;
    }
    const bool hot_is_winter = found != nullptr && found - table.begin() < winter_rows;
    if (found == nullptr || (is_multigrade && hot_is_winter)) return not_a_sae_grade(name, table);
    sae_grade made{.name = found->name,
                   .least_at_100_degC = hundredths(found->least),
                   .below_at_100_degC = {},
                   .high_shear_at_150_degC = {},
                   .is_multigrade = is_multigrade,
                   .from = from};
    if (found->below != 0) made.below_at_100_degC = {hundredths(found->below), from.how_sure};
    if (found->high_shear != 0)
        made.high_shear_at_150_degC = {millipascal_seconds(found->high_shear / 10.0), from.how_sure};
    return found_grade{.grade = made, .winter_row = winter_row};
}

} // namespace detail

/// The grade by its number. Error: a number that is no grade.
[[nodiscard]] constexpr result<iso_vg> iso_vg_of(int number) noexcept {
    for (const auto& r : detail::iso_3448)
        if (r.grade == number) return static_cast<iso_vg>(number);
    error::composer say(error_code::oil_grade_not_known);
    say << "VG " << number << " is no grade of ISO 3448: allowed are";
    for (const auto& r : detail::iso_3448) say << " " << r.grade;
    return say;
}

/// What a grade allows at 40 degC: ISO 3448, 10 % either way. Error: a number that is no grade.
[[nodiscard]] constexpr result<iso_vg_limits> limits(iso_vg grade) noexcept {
    for (const auto& r : detail::iso_3448)
        if (r.grade == static_cast<int>(grade))
            return iso_vg_limits{.least = detail::hundredths(r.least),
                                 .middle = detail::hundredths(r.middle),
                                 .most = detail::hundredths(r.most),
                                 .from = r.grade <= 68 ? sources::iso_3448 : sources::iso_3448_memory};
    return iso_vg_of(static_cast<int>(grade)).error();
}

/// An engine oil's grade from its name, "30", "10W" or "10W-40": SAE J300. Error: no such grade.
[[nodiscard]] constexpr result<sae_grade> engine_oil_grade(text name) noexcept {
    const auto found =
        detail::sae_grade_of(name, detail::sae_j300, detail::sae_j300_winter_rows, sources::sae_j300);
    if (!found) return found.error();
    sae_grade made = found->grade;
    if (found->winter_row < 0) return made;
    const detail::sae_winter_row& cold = detail::sae_j300_winter[found->winter_row];
    made.cranking = {millipascal_seconds(cold.cranking), celsius(cold.cranking_at)};
    made.pumping = {millipascal_seconds(cold.pumping), celsius(cold.pumping_at)};
    return made;
}

/// A gear oil's grade from its name, "90" or "80W-90": SAE J306. Error: no such grade.
[[nodiscard]] constexpr result<sae_grade> gear_oil_grade(text name) noexcept {
    const auto found =
        detail::sae_grade_of(name, detail::sae_j306, detail::sae_j306_winter_rows, sources::sae_j306);
    if (!found) return found.error();
    return found->grade;
}

} // namespace fitwright

#endif
