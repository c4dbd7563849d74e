#ifndef FITWRIGHT_TOOL_DRILL_TABLES_HPP
#define FITWRIGHT_TOOL_DRILL_TABLES_HPP

#include <cstddef>
#include <cstdint>

namespace fitwright::detail {

// clang-format off

// Metric twist drills: the steps of ISO 235 and BS 328, 0.2 to 25 mm, in 0.01 mm. Which of the larger
// sizes are jobber drills, and which only stub or taper shank, is left open.
inline constexpr std::int16_t metric_drill_table[] = {
    20, 22, 25, 28, 30, 32, 35, 38, 40, 42, 45, 48, 50, 52, 55, 58,
    60, 62, 65, 68, 70, 72, 75, 78, 80, 82, 85, 88, 90, 92, 95, 98,
    100, 105, 110, 115, 120, 125, 130, 135, 140, 145, 150, 155, 160, 165, 170, 175, 180, 185, 190, 195,
    200, 205, 210, 215, 220, 225, 230, 235, 240, 245, 250, 255, 260, 265, 270, 275, 280, 285, 290, 295,
     300,  310,  320,  330,  340,  350,  360,  370,  380,  390,
     400,  410,  420,  430,  440,  450,  460,  470,  480,  490,
     500,  510,  520,  530,  540,  550,  560,  570,  580,  590,
     600,  610,  620,  630,  640,  650,  660,  670,  680,  690,
     700,  710,  720,  730,  740,  750,  760,  770,  780,  790,
     800,  810,  820,  830,  840,  850,  860,  870,  880,  890,
     900,  910,  920,  930,  940,  950,  960,  970,  980,  990,
    1000, 1010, 1020, 1030, 1040, 1050, 1060, 1070, 1080, 1090,
    1100, 1110, 1120, 1130, 1140, 1150, 1160, 1170, 1180, 1190,
    1200, 1210, 1220, 1230, 1240, 1250, 1260, 1270, 1280, 1290,
    1300, 1310, 1320, 1330, 1340, 1350, 1360, 1370, 1380, 1390,
    1400, 1425, 1450, 1475,
    1500, 1525, 1550, 1575,
    1600, 1625, 1650, 1675,
    1700, 1725, 1750, 1775,
    1800, 1825, 1850, 1875,
    1900, 1925, 1950, 1975,
    2000, 2025, 2050, 2075,
    2100, 2125, 2150, 2175,
    2200, 2225, 2250, 2275,
    2300, 2325, 2350, 2375,
    2400, 2425, 2450, 2475,
    2500,
};

// ASME B94.11M, number drills 80 to 1, in 0.0001 in.
inline constexpr std::int16_t number_drill_table[] = {
     135,  145,  160,  180,  200,  210,  225,  240,  250,  260, // 80 to 71
     280,  292,  310,  320,  330,  350,  360,  370,  380,  390, // 70 to 61
     400,  410,  420,  430,  465,  520,  550,  595,  635,  670, // 60 to 51
     700,  730,  760,  785,  810,  820,  860,  890,  935,  960, // 50 to 41
     980,  995, 1015, 1040, 1065, 1100, 1110, 1130, 1160, 1200, // 40 to 31
    1285, 1360, 1405, 1440, 1470, 1495, 1520, 1540, 1570, 1590, // 30 to 21
    1610, 1660, 1695, 1730, 1770, 1800, 1820, 1850, 1890, 1910, // 20 to 11
    1935, 1960, 1990, 2010, 2040, 2055, 2090, 2130, 2210, 2280, // 10 to 1
};

// Those of them that five lists agree on, but of which no printed table was read.
inline constexpr std::int8_t number_drills_not_read[] = {39, 34, 28, 24, 23, 22, 19, 17, 15, 8, 6, 5};

// ASME B94.11M, letter drills A to Z, in 0.001 in.
inline constexpr std::int16_t letter_drill_table[] = {
    234, 238, 242, 246, 250, 257, 261, 266, 272, 277, 281, 290, 295,
    302, 316, 323, 332, 339, 348, 358, 368, 377, 386, 397, 404, 413,
};

// clang-format on

// ASME B94.11M, fractional drills: every 1/64 in up to 1 in on a straight shank, on to 1 3/4 in with
// a taper shank.
inline constexpr std::size_t fractional_drill_count = 112;

inline constexpr std::size_t metric_drill_count = sizeof metric_drill_table / sizeof metric_drill_table[0];
inline constexpr std::size_t number_drill_count = sizeof number_drill_table / sizeof number_drill_table[0];
inline constexpr std::size_t letter_drill_count = sizeof letter_drill_table / sizeof letter_drill_table[0];
static_assert(metric_drill_count == 227);
static_assert(number_drill_count == 80);
static_assert(letter_drill_count == 26);

} // namespace fitwright::detail

#endif
