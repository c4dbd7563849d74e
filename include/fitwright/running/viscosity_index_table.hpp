#ifndef FITWRIGHT_RUNNING_VISCOSITY_INDEX_TABLE_HPP
#define FITWRIGHT_RUNNING_VISCOSITY_INDEX_TABLE_HPP

// ASTM D2270-10, Table X2.1 (the same method as ISO 2909): coefficients for L and H, the viscosities at
// 40 degC of the reference oils of index 0 and 100 that have the viscosity Y at 100 degC, in mm2/s:
// L = a Y^2 + b Y + c, H = d Y^2 + e Y + f. They keep to the standard's Table 1 within 0.1 %.
//
// The first two rows, the last one and the worked examples were read in print; the others are from memory
// and meet their neighbours where the ranges join.

namespace fitwright::detail {

struct viscosity_index_row {
    double above, l_a, l_b, l_c, h_d, h_e, h_f;
};

// clang-format off
inline constexpr viscosity_index_row viscosity_index_table[] = {
    //  Y     a         b         c        d        e        f
    { 2.0, 1.14673,   1.7576,   -0.109, 0.84155,  1.5521,  -0.077},
    { 3.8, 3.38095, -15.4952,   33.196, 0.78571,  1.7929,  -0.183},
    { 4.4, 2.5000,   -7.2143,   13.812, 0.82143,  1.5679,   0.119},
    { 5.0, 0.10100,  16.6350,  -45.469, 0.04985,  9.1613, -18.557},
    { 6.4, 3.35714, -23.5643,   78.466, 0.22619,  7.7369, -16.656},
    { 7.0, 0.01191,  21.4750,  -72.870, 0.79762, -0.7321,  14.610},
    { 7.7, 0.41858,  16.1558,  -56.040, 0.05794, 10.5156, -28.240},
    { 9.0, 0.88779,   7.5527,  -16.600, 0.26665,  6.7015, -10.810},
    {12.0, 0.76720,  10.7972,  -38.180, 0.20073,  8.4658, -22.490},
    {15.0, 0.97305,   5.3135,   -2.200, 0.28889,  5.9741,  -4.930},
    {18.0, 0.97256,   5.2500,   -0.980, 0.24504,  7.4160, -16.730},
    {22.0, 0.91413,   7.4759,  -21.820, 0.20323,  9.1267, -34.230},
    {28.0, 0.87031,   9.7157,  -50.770, 0.18411, 10.1015, -46.750},
    {40.0, 0.84703,  12.6752, -133.310, 0.17029, 11.4866, -80.620},
    {55.0, 0.85921,  11.1009,  -83.190, 0.17130, 11.3680, -76.940},
    {70.0, 0.83531,  14.6731, -216.246, 0.16841, 11.8493, -96.947},
};
// clang-format on

static_assert(sizeof viscosity_index_table / sizeof viscosity_index_table[0] == 16);

} // namespace fitwright::detail

#endif
