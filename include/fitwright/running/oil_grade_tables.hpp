#ifndef FITWRIGHT_RUNNING_OIL_GRADE_TABLES_HPP
#define FITWRIGHT_RUNNING_OIL_GRADE_TABLES_HPP

#include <cstdint>

namespace fitwright::detail {

/// Kinematic viscosity in hundredths of mm2/s.
struct iso_vg_row {
    std::int32_t grade, middle, least, most;
};
struct sae_row {
    const char* name;
    std::int32_t least, below; ///< at 100 degC, hundredths of mm2/s; 0 below: no upper limit
    std::int32_t high_shear; ///< least dynamic viscosity at 150 degC and high shear, tenths of mPa.s; 0: none
};

// clang-format off
// ISO 3448:1992, Table 1: kinematic viscosity at 40 degC. VG 2 to VG 68 read in print; above, the limits are
// 10 % either side of the middle by the standard's rule, and from memory.
inline constexpr iso_vg_row iso_3448[] = {
    // VG  middle   least    most
    {   2,    220,    198,    242},
    {   3,    320,    288,    352},
    {   5,    460,    414,    506},
    {   7,    680,    612,    748},
    {  10,   1000,    900,   1100},
    {  15,   1500,   1350,   1650},
    {  22,   2200,   1980,   2420},
    {  32,   3200,   2880,   3520},
    {  46,   4600,   4140,   5060},
    {  68,   6800,   6120,   7480},
    { 100,  10000,   9000,  11000},
    { 150,  15000,  13500,  16500},
    { 220,  22000,  19800,  24200},
    { 320,  32000,  28800,  35200},
    { 460,  46000,  41400,  50600},
    { 680,  68000,  61200,  74800},
    {1000, 100000,  90000, 110000},
    {1500, 150000, 135000, 165000},
    {2200, 220000, 198000, 242000},
    {3200, 320000, 288000, 352000},
};

// SAE J300 (2015 and 2021): engine oils, read in print. Grade 40 is there twice: behind 0W, 5W and 10W it
// needs less under high shear than behind the others and alone.
inline constexpr sae_row sae_j300[] = {
    // at 100 degC: least below  high shear
    {"0W",     380,    0,  0},
    {"5W",     380,    0,  0},
    {"10W",    410,    0,  0},
    {"15W",    560,    0,  0},
    {"20W",    560,    0,  0},
    {"25W",    930,    0,  0},
    {"8",      400,  610, 17},
    {"12",     500,  710, 20},
    {"16",     610,  820, 23},
    {"20",     690,  930, 26},
    {"30",     930, 1250, 29},
    {"40",    1250, 1630, 35}, // 0W-40, 5W-40, 10W-40
    {"40",    1250, 1630, 37}, // 15W-40, 20W-40, 25W-40, 40
    {"50",    1630, 2190, 37},
    {"60",    2190, 2610, 37},
};
inline constexpr int sae_j300_winter_rows = 6;

// SAE J306:2005: gear oils, read in print.
inline constexpr sae_row sae_j306[] = {
    // at 100 degC: least below
    {"70W",    410,    0,  0},
    {"75W",    410,    0,  0},
    {"80W",    700,    0,  0},
    {"85W",   1100,    0,  0},
    {"80",     700, 1100,  0},
    {"85",    1100, 1350,  0},
    {"90",    1350, 1850,  0},
    {"110",   1850, 2400,  0},
    {"140",   2400, 3250,  0},
    {"190",   3250, 4100,  0},
    {"250",   4100,    0,  0},
};
inline constexpr int sae_j306_winter_rows = 4;

/// How thick an engine oil may be in the cold: SAE J300 (2015 and 2021), read in print.
struct sae_winter_row {
    std::int32_t cranking, cranking_at; ///< most mPa.s, at degC
    std::int32_t pumping, pumping_at;   ///< most mPa.s, at degC
};
inline constexpr sae_winter_row sae_j300_winter[] = {
    { 6200, -35, 60000, -40}, // 0W
    { 6600, -30, 60000, -35}, // 5W
    { 7000, -25, 60000, -30}, // 10W
    { 7000, -20, 60000, -25}, // 15W
    { 9500, -15, 60000, -20}, // 20W
    {13000, -10, 60000, -15}, // 25W
};
// clang-format on

static_assert(sizeof iso_3448 / sizeof iso_3448[0] == 20);
static_assert(sizeof sae_j300 / sizeof sae_j300[0] == 15);
static_assert(sizeof sae_j306 / sizeof sae_j306[0] == 11);
static_assert(sizeof sae_j300_winter / sizeof sae_j300_winter[0] == 6);

} // namespace fitwright::detail

#endif
