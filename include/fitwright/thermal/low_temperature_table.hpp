#ifndef FITWRIGHT_THERMAL_LOW_TEMPERATURE_TABLE_HPP
#define FITWRIGHT_THERMAL_LOW_TEMPERATURE_TABLE_HPP

#include <fitwright/material/figures.hpp>
#include <fitwright/source.hpp>

#include <cstdint>

// How much materials shrink in the cold: those of `materials.hpp`, by their name and their figures. A user's
// own material of the same name has figures of its own.

namespace fitwright {

namespace sources {
inline constexpr source nist_cryogenic{"NIST cryogenic material properties", "dL/L, a polynomial in T",
                                       confidence::memory};
inline constexpr source ekin_low_temperature{
    "J. Ekin, Experimental Techniques for Low-Temperature Measurements (2006)", "Appendix A6.4",
    confidence::uncertain};
} // namespace sources

namespace detail {

/// dL/L = (a + b T + c T^2 + d T^3 + e T^4) * 1e-5, T in kelvin, 0 at 293 K, from 23 K to 300 K.
struct cryogenic_polynomial {
    text name;
    const material_figures* known_by;
    double coefficient[5];
    double to_100_degC = known_by->to_100_degC / 1e8; ///< by which all others are told at a glance
};

/// Shrinkage from 293 K to 77 K, in thousandths of a percent.
struct total_shrinkage {
    text name;
    const material_figures* known_by;
    std::uint16_t thousandths_of_a_percent;
    const char* printed_for;
    double to_100_degC = known_by->to_100_degC / 1e8; ///< as above
};

// clang-format off

// NIST cryogenic material properties, page of each material. From memory; they give 0 at 293 K and the known
// totals.
inline constexpr cryogenic_polynomial cryogenic_polynomials[] = {
    //                                                      a           b             c             d            e
    {"aluminium 6061-T6",  &figures::aluminium_6061_t6,   {-412.77, -0.3064,  0.008796,  -1.0055e-05, 0}},
    {"stainless 304",      &figures::stainless_304,       {-295.54, -0.39811, 0.0092683, -2.0261e-05, 1.7127e-08}},
};
static_assert(sizeof cryogenic_polynomials / sizeof cryogenic_polynomials[0] == 2);

// J. Ekin, Experimental Techniques for Low-Temperature Measurements (2006), App. A6.4. From memory,
// uncertain in the last digit.
inline constexpr total_shrinkage total_shrinkages[] = {
    {"steel 100Cr6",       &figures::steel_100cr6,        190, "carbon steel (iron)"},
    {"tool steel O1",      &figures::tool_steel_o1,       190, "carbon steel (iron)"},
    {"brass C36000",       &figures::brass_c36000,        353, "brass 65/35"},
    {"brass CuZn39Pb3",    &figures::brass_cuzn39pb3,     353, "brass 65/35"},
    {"titanium Ti-6Al-4V", &figures::titanium_6al_4v,     163, "titanium 6Al-4V"},
    {"Invar 36",           &figures::invar_36,             48, "Invar 36"},
    {"PTFE",               &figures::ptfe,               1940, "PTFE"},
    {"nylon PA66, dry",    &figures::nylon_pa66_dry,      1260, "nylon"},
};
static_assert(sizeof total_shrinkages / sizeof total_shrinkages[0] == 8);

// clang-format on

} // namespace detail

} // namespace fitwright

#endif
