#ifndef FITWRIGHT_ISO286_FUNDAMENTAL_DEVIATIONS_HPP
#define FITWRIGHT_ISO286_FUNDAMENTAL_DEVIATIONS_HPP

#include <cstdint>

// ISO 286-1:2010, Tables 4 and 5: fundamental deviations of shafts, in micrometres.
// Nominal sizes above the row before, up to and including `upto_mm`. `nov`: the standard has no value.
//
// Left out, since they need no table: h is 0, js is half the tolerance, k outside IT4 to IT7 is 0.
// Holes (Tables 2 and 3) have no table of their own: `hole_deviation` works them out of this one by
// the rules the standard made them by; the tests hold every cell against the printed tables.
//
// Read in print but for: cd, ef, fg over 10 mm (new in the 2010 edition; uncertain), and x over 355
// up to 400 mm (from memory; it fits the formula, one textbook prints 650).

namespace fitwright::detail {

inline constexpr std::int16_t nov = INT16_MIN;

// clang-format off
inline constexpr std::int16_t range_upto_mm[] = {
    3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180,
    200, 225, 250, 280, 315, 355, 400, 450, 500,
    560, 630, 710, 800, 900, 1000, 1120, 1250, 1400, 1600, 1800, 2000, 2240, 2500, 2800, 3150,
};

// Upper deviation es of a to g.
inline constexpr std::int16_t shaft_table_a_to_g[][10] = {
    //    a     b     c    cd     d     e    ef     f    fg    g    upto mm
    {  -270, -140,  -60,  -34,  -20,  -14,  -10,   -6,   -4,  -2}, //    3
    {  -270, -140,  -70,  -46,  -30,  -20,  -14,  -10,   -6,  -4}, //    6
    {  -280, -150,  -80,  -56,  -40,  -25,  -18,  -13,   -8,  -5}, //   10
    {  -290, -150,  -95,  -70,  -50,  -32,  -23,  -16,  -10,  -6}, //   14
    {  -290, -150,  -95,  -70,  -50,  -32,  -23,  -16,  -10,  -6}, //   18
    {  -300, -160, -110,  -85,  -65,  -40,  -28,  -20,  -12,  -7}, //   24
    {  -300, -160, -110,  -85,  -65,  -40,  -28,  -20,  -12,  -7}, //   30
    {  -310, -170, -120, -100,  -80,  -50,  -35,  -25,  -15,  -9}, //   40
    {  -320, -180, -130, -100,  -80,  -50,  -35,  -25,  -15,  -9}, //   50
    {  -340, -190, -140,  nov, -100,  -60,  nov,  -30,  nov, -10}, //   65
    {  -360, -200, -150,  nov, -100,  -60,  nov,  -30,  nov, -10}, //   80
    {  -380, -220, -170,  nov, -120,  -72,  nov,  -36,  nov, -12}, //  100
    {  -410, -240, -180,  nov, -120,  -72,  nov,  -36,  nov, -12}, //  120
    {  -460, -260, -200,  nov, -145,  -85,  nov,  -43,  nov, -14}, //  140
    {  -520, -280, -210,  nov, -145,  -85,  nov,  -43,  nov, -14}, //  160
    {  -580, -310, -230,  nov, -145,  -85,  nov,  -43,  nov, -14}, //  180
    {  -660, -340, -240,  nov, -170, -100,  nov,  -50,  nov, -15}, //  200
    {  -740, -380, -260,  nov, -170, -100,  nov,  -50,  nov, -15}, //  225
    {  -820, -420, -280,  nov, -170, -100,  nov,  -50,  nov, -15}, //  250
    {  -920, -480, -300,  nov, -190, -110,  nov,  -56,  nov, -17}, //  280
    { -1050, -540, -330,  nov, -190, -110,  nov,  -56,  nov, -17}, //  315
    { -1200, -600, -360,  nov, -210, -125,  nov,  -62,  nov, -18}, //  355
    { -1350, -680, -400,  nov, -210, -125,  nov,  -62,  nov, -18}, //  400
    { -1500, -760, -440,  nov, -230, -135,  nov,  -68,  nov, -20}, //  450
    { -1650, -840, -480,  nov, -230, -135,  nov,  -68,  nov, -20}, //  500
    {   nov,  nov,  nov,  nov, -260, -145,  nov,  -76,  nov, -22}, //  560
    {   nov,  nov,  nov,  nov, -260, -145,  nov,  -76,  nov, -22}, //  630
    {   nov,  nov,  nov,  nov, -290, -160,  nov,  -80,  nov, -24}, //  710
    {   nov,  nov,  nov,  nov, -290, -160,  nov,  -80,  nov, -24}, //  800
    {   nov,  nov,  nov,  nov, -320, -170,  nov,  -86,  nov, -26}, //  900
    {   nov,  nov,  nov,  nov, -320, -170,  nov,  -86,  nov, -26}, // 1000
    {   nov,  nov,  nov,  nov, -350, -195,  nov,  -98,  nov, -28}, // 1120
    {   nov,  nov,  nov,  nov, -350, -195,  nov,  -98,  nov, -28}, // 1250
    {   nov,  nov,  nov,  nov, -390, -220,  nov, -110,  nov, -30}, // 1400
    {   nov,  nov,  nov,  nov, -390, -220,  nov, -110,  nov, -30}, // 1600
    {   nov,  nov,  nov,  nov, -430, -240,  nov, -120,  nov, -32}, // 1800
    {   nov,  nov,  nov,  nov, -430, -240,  nov, -120,  nov, -32}, // 2000
    {   nov,  nov,  nov,  nov, -480, -260,  nov, -130,  nov, -34}, // 2240
    {   nov,  nov,  nov,  nov, -480, -260,  nov, -130,  nov, -34}, // 2500
    {   nov,  nov,  nov,  nov, -520, -290,  nov, -145,  nov, -38}, // 2800
    {   nov,  nov,  nov,  nov, -520, -290,  nov, -145,  nov, -38}, // 3150
};

// Lower deviation ei of j (by grade) and k (IT4 to IT7).
inline constexpr std::int16_t shaft_table_j_and_k[][4] = {
    //j5,j6    j7    j8  k    upto mm
    {    -2,   -4,   -6, 0}, //    3
    {    -2,   -4,  nov, 1}, //    6
    {    -2,   -5,  nov, 1}, //   10
    {    -3,   -6,  nov, 1}, //   14
    {    -3,   -6,  nov, 1}, //   18
    {    -4,   -8,  nov, 2}, //   24
    {    -4,   -8,  nov, 2}, //   30
    {    -5,  -10,  nov, 2}, //   40
    {    -5,  -10,  nov, 2}, //   50
    {    -7,  -12,  nov, 2}, //   65
    {    -7,  -12,  nov, 2}, //   80
    {    -9,  -15,  nov, 3}, //  100
    {    -9,  -15,  nov, 3}, //  120
    {   -11,  -18,  nov, 3}, //  140
    {   -11,  -18,  nov, 3}, //  160
    {   -11,  -18,  nov, 3}, //  180
    {   -13,  -21,  nov, 4}, //  200
    {   -13,  -21,  nov, 4}, //  225
    {   -13,  -21,  nov, 4}, //  250
    {   -16,  -26,  nov, 4}, //  280
    {   -16,  -26,  nov, 4}, //  315
    {   -18,  -28,  nov, 4}, //  355
    {   -18,  -28,  nov, 4}, //  400
    {   -20,  -32,  nov, 5}, //  450
    {   -20,  -32,  nov, 5}, //  500
    {   nov,  nov,  nov, 0}, //  560
    {   nov,  nov,  nov, 0}, //  630
    {   nov,  nov,  nov, 0}, //  710
    {   nov,  nov,  nov, 0}, //  800
    {   nov,  nov,  nov, 0}, //  900
    {   nov,  nov,  nov, 0}, // 1000
    {   nov,  nov,  nov, 0}, // 1120
    {   nov,  nov,  nov, 0}, // 1250
    {   nov,  nov,  nov, 0}, // 1400
    {   nov,  nov,  nov, 0}, // 1600
    {   nov,  nov,  nov, 0}, // 1800
    {   nov,  nov,  nov, 0}, // 2000
    {   nov,  nov,  nov, 0}, // 2240
    {   nov,  nov,  nov, 0}, // 2500
    {   nov,  nov,  nov, 0}, // 2800
    {   nov,  nov,  nov, 0}, // 3150
};

// Lower deviation ei of m to zc, any grade.
inline constexpr std::int16_t shaft_table_m_to_zc[][14] = {
    // m    n    p    r     s     t     u     v     x     y     z    za    zb    zc    upto mm
    {  2,   4,   6,  10,   14,  nov,   18,  nov,   20,  nov,   26,   32,   40,   60}, //    3
    {  4,   8,  12,  15,   19,  nov,   23,  nov,   28,  nov,   35,   42,   50,   80}, //    6
    {  6,  10,  15,  19,   23,  nov,   28,  nov,   34,  nov,   42,   52,   67,   97}, //   10
    {  7,  12,  18,  23,   28,  nov,   33,  nov,   40,  nov,   50,   64,   90,  130}, //   14
    {  7,  12,  18,  23,   28,  nov,   33,   39,   45,  nov,   60,   77,  108,  150}, //   18
    {  8,  15,  22,  28,   35,  nov,   41,   47,   54,   63,   73,   98,  136,  188}, //   24
    {  8,  15,  22,  28,   35,   41,   48,   55,   64,   75,   88,  118,  160,  218}, //   30
    {  9,  17,  26,  34,   43,   48,   60,   68,   80,   94,  112,  148,  200,  274}, //   40
    {  9,  17,  26,  34,   43,   54,   70,   81,   97,  114,  136,  180,  242,  325}, //   50
    { 11,  20,  32,  41,   53,   66,   87,  102,  122,  144,  172,  226,  300,  405}, //   65
    { 11,  20,  32,  43,   59,   75,  102,  120,  146,  174,  210,  274,  360,  480}, //   80
    { 13,  23,  37,  51,   71,   91,  124,  146,  178,  214,  258,  335,  445,  585}, //  100
    { 13,  23,  37,  54,   79,  104,  144,  172,  210,  254,  310,  400,  525,  690}, //  120
    { 15,  27,  43,  63,   92,  122,  170,  202,  248,  300,  365,  470,  620,  800}, //  140
    { 15,  27,  43,  65,  100,  134,  190,  228,  280,  340,  415,  535,  700,  900}, //  160
    { 15,  27,  43,  68,  108,  146,  210,  252,  310,  380,  465,  600,  780, 1000}, //  180
    { 17,  31,  50,  77,  122,  166,  236,  284,  350,  425,  520,  670,  880, 1150}, //  200
    { 17,  31,  50,  80,  130,  180,  258,  310,  385,  470,  575,  740,  960, 1250}, //  225
    { 17,  31,  50,  84,  140,  196,  284,  340,  425,  520,  640,  820, 1050, 1350}, //  250
    { 20,  34,  56,  94,  158,  218,  315,  385,  475,  580,  710,  920, 1200, 1550}, //  280
    { 20,  34,  56,  98,  170,  240,  350,  425,  525,  650,  790, 1000, 1300, 1700}, //  315
    { 21,  37,  62, 108,  190,  268,  390,  475,  590,  730,  900, 1150, 1500, 1900}, //  355
    { 21,  37,  62, 114,  208,  294,  435,  530,  660,  820, 1000, 1300, 1650, 2100}, //  400
    { 23,  40,  68, 126,  232,  330,  490,  595,  740,  920, 1100, 1450, 1850, 2400}, //  450
    { 23,  40,  68, 132,  252,  360,  540,  660,  820, 1000, 1250, 1600, 2100, 2600}, //  500
    { 26,  44,  78, 150,  280,  400,  600,  nov,  nov,  nov,  nov,  nov,  nov,  nov}, //  560
    { 26,  44,  78, 155,  310,  450,  660,  nov,  nov,  nov,  nov,  nov,  nov,  nov}, //  630
    { 30,  50,  88, 175,  340,  500,  740,  nov,  nov,  nov,  nov,  nov,  nov,  nov}, //  710
    { 30,  50,  88, 185,  380,  560,  840,  nov,  nov,  nov,  nov,  nov,  nov,  nov}, //  800
    { 34,  56, 100, 210,  430,  620,  940,  nov,  nov,  nov,  nov,  nov,  nov,  nov}, //  900
    { 34,  56, 100, 220,  470,  680, 1050,  nov,  nov,  nov,  nov,  nov,  nov,  nov}, // 1000
    { 40,  66, 120, 250,  520,  780, 1150,  nov,  nov,  nov,  nov,  nov,  nov,  nov}, // 1120
    { 40,  66, 120, 260,  580,  840, 1300,  nov,  nov,  nov,  nov,  nov,  nov,  nov}, // 1250
    { 48,  78, 140, 300,  640,  960, 1450,  nov,  nov,  nov,  nov,  nov,  nov,  nov}, // 1400
    { 48,  78, 140, 330,  720, 1050, 1600,  nov,  nov,  nov,  nov,  nov,  nov,  nov}, // 1600
    { 58,  92, 170, 370,  820, 1200, 1850,  nov,  nov,  nov,  nov,  nov,  nov,  nov}, // 1800
    { 58,  92, 170, 400,  920, 1350, 2000,  nov,  nov,  nov,  nov,  nov,  nov,  nov}, // 2000
    { 68, 110, 195, 440, 1000, 1500, 2300,  nov,  nov,  nov,  nov,  nov,  nov,  nov}, // 2240
    { 68, 110, 195, 460, 1100, 1650, 2500,  nov,  nov,  nov,  nov,  nov,  nov,  nov}, // 2500
    { 76, 135, 240, 550, 1250, 1900, 2900,  nov,  nov,  nov,  nov,  nov,  nov,  nov}, // 2800
    { 76, 135, 240, 580, 1400, 2100, 3200,  nov,  nov,  nov,  nov,  nov,  nov,  nov}, // 3150
};
// clang-format on

inline constexpr int range_count = sizeof range_upto_mm / sizeof range_upto_mm[0];
static_assert(range_count == 41);
static_assert(sizeof shaft_table_a_to_g / sizeof shaft_table_a_to_g[0] == range_count);
static_assert(sizeof shaft_table_j_and_k / sizeof shaft_table_j_and_k[0] == range_count);
static_assert(sizeof shaft_table_m_to_zc / sizeof shaft_table_m_to_zc[0] == range_count);

} // namespace fitwright::detail

#endif
