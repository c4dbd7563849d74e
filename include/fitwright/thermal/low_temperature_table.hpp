#ifndef FITWRIGHT_THERMAL_LOW_TEMPERATURE_TABLE_HPP
#define FITWRIGHT_THERMAL_LOW_TEMPERATURE_TABLE_HPP

#include <fitwright/source.hpp>

#include <cstdint>

// How much materials shrink in the cold, by the names that they have in `materials.hpp`.

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
    const char* name;
    double coefficient[5];
};

/// Shrinkage from 293 K to 77 K, in thousandths of a percent.
struct total_shrinkage {
    const char* name;
    std::uint16_t thousandths_of_a_percent;
    const char* printed_for;
};

// clang-format off

// NIST cryogenic material properties, page of each material. From memory; they give 0 at 293 K and the known
// totals.
inline constexpr cryogenic_polynomial cryogenic_polynomials[] = {
    //                       a           b             c             d            e
    {"aluminium 6061-T6", {-412.77, -0.3064,  0.008796,  -1.0055e-05, 0}},
    {"stainless 304",     {-295.54, -0.39811, 0.0092683, -2.0261e-05, 1.7127e-08}},
};
static_assert(sizeof cryogenic_polynomials / sizeof cryogenic_polynomials[0] == 2);

// J. Ekin, Experimental Techniques for Low-Temperature Measurements (2006), App. A6.4. From memory,
// uncertain in the last digit.
inline constexpr total_shrinkage total_shrinkages[] = {
    {"steel 100Cr6",         190, "carbon steel (iron)"},
    {"tool steel O1",        190, "carbon steel (iron)"},
    {"brass C36000",         353, "brass 65/35"},
    {"brass CuZn39Pb3",      353, "brass 65/35"},
    {"titanium Ti-6Al-4V",   163, "titanium 6Al-4V"},
    {"Invar 36",              48, "Invar 36"},
    {"PTFE",                1940, "PTFE"},
    {"nylon PA66, dry",     1260, "nylon"},
};
static_assert(sizeof total_shrinkages / sizeof total_shrinkages[0] == 8);

// clang-format on

} // namespace detail

} // namespace fitwright

#endif
