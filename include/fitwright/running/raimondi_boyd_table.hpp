#ifndef FITWRIGHT_RUNNING_RAIMONDI_BOYD_TABLE_HPP
#define FITWRIGHT_RUNNING_RAIMONDI_BOYD_TABLE_HPP

// A. A. Raimondi, J. Boyd: A solution for the finite journal bearing and its application to analysis and
// design, ASLE Transactions 1 (1958): full bearing, oil at the widest gap, as Bhandari and others reprint it.
//
// From memory; a solution of the Reynolds equation worked out afresh gives S within 3.1 %. One row was not
// in the reprint and is from that solution.

namespace fitwright::detail {

/// Friction and flow count the whole circumference, the broken film too.
struct raimondi_boyd_row {
    double s;                 ///< S = (r/c)^2 eta N / P
    double friction;          ///< f r/c
    double flow;              ///< Q / (r c N L)
    double side_share;        ///< Qs / Q
    double pressure_evenness; ///< P / pmax
};

/// The eccentricity ratio of each row.
inline constexpr double raimondi_boyd_eccentricity[] = {0.1, 0.2, 0.4, 0.6, 0.8, 0.9, 0.97};

// clang-format off
inline constexpr raimondi_boyd_row raimondi_boyd[][7] = {
    //         S     f r/c  Q/rcNL   Qs/Q  P/pmax
    {   // L/D = infinite
        {    0.24,    4.8,   3.03,      0,  0.826},
        {   0.123,   2.57,   2.83,      0,  0.814},
        {  0.0626,   1.52,   2.26,      0,  0.764},
        {  0.0389,    1.2,   1.56,      0,  0.667},
        {   0.021,  0.961,   0.76,      0,  0.495},
        {  0.0115,  0.756,  0.411,      0,  0.358},
        {0.003746, 0.4558, 0.1159,      0, 0.1973}, // by calculation
    },
    {   // L/D = 1
        {    1.33,   26.4,   3.37,   0.15,   0.54},
        {   0.631,   12.8,   3.59,   0.28,  0.529},
        {   0.264,   5.79,   3.99,  0.497,  0.484},
        {   0.121,   3.22,   4.33,   0.68,  0.415},
        {  0.0446,    1.7,   4.62,  0.842,  0.313},
        {  0.0188,   1.05,   4.74,  0.919,  0.247},
        { 0.00474,  0.514,   4.82,  0.973,  0.152},
    },
    {   // L/D = 1/2
        {    4.31,   85.6,   3.43,  0.173,  0.523},
        {    2.03,   40.9,   3.72,  0.318,  0.506},
        {   0.779,     17,   4.29,  0.552,  0.441},
        {   0.319,    8.1,   4.85,   0.73,  0.365},
        {  0.0923,   3.26,   5.41,  0.874,  0.267},
        {  0.0313,    1.6,   5.69,  0.939,  0.206},
        { 0.00609,   0.61,   5.88,   0.98,  0.126},
    },
    {   // L/D = 1/4
        {    16.2,    322,   3.45,   0.18,  0.515},
        {    7.57,    153,   3.76,   0.33,  0.489},
        {    2.83,   61.1,   4.37,  0.567,  0.415},
        {    1.07,   26.7,   4.99,  0.746,  0.334},
        {   0.261,    8.8,    5.6,  0.884,   0.24},
        {  0.0736,    3.5,   5.91,  0.945,   0.18},
        {  0.0101,  0.922,   6.12,  0.984,  0.108},
    },
};
// clang-format on

static_assert(sizeof raimondi_boyd / sizeof raimondi_boyd[0] == 4);

} // namespace fitwright::detail

#endif
