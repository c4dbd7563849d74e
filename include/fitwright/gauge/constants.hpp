#ifndef FITWRIGHT_GAUGE_CONSTANTS_HPP
#define FITWRIGHT_GAUGE_CONSTANTS_HPP

#include <cstdint>

// ISO/R 1938:1971, with the same figures in DIN 7162:1965 and GOST 24853-81: constants of limit gauges for
// work of IT6 to IT16 up to 500 mm, in tenths of a micrometre. Sizes above the row before, up to and
// including the one at the end of the row. IT6 and IT7 were read in print; most of IT8 to IT16 is from memory.
//
// Plugs and rings share their constants but in IT6, where a ring has a z and a y of its own.

namespace fitwright::detail {

// clang-format off
/// z: how far inside the work's tolerance the middle of a new GO gauge lies.
inline constexpr std::int16_t gauge_z[][12] = {
    //IT6   IT6   IT7   IT8   IT9  IT10  IT11  IT12  IT13  IT14  IT15  IT16
    //plug  ring                                                              upto mm
    {  10,   15,   15,   20,   50,   50,  100,  100,  200,  200,  400,  400}, //    3
    {  15,   20,   20,   30,   60,   60,  120,  120,  240,  240,  480,  480}, //    6
    {  15,   20,   20,   30,   70,   70,  140,  140,  280,  280,  560,  560}, //   10
    {  20,   25,   25,   40,   80,   80,  160,  160,  320,  320,  640,  640}, //   18
    {  20,   30,   30,   50,   90,   90,  190,  190,  360,  360,  720,  720}, //   30
    {  25,   35,   35,   60,  110,  110,  220,  220,  420,  420,  800,  800}, //   50
    {  25,   40,   40,   70,  130,  130,  250,  250,  480,  480,  900,  900}, //   80
    {  30,   50,   50,   80,  150,  150,  280,  280,  540,  540, 1000, 1000}, //  120
    {  40,   60,   60,   90,  180,  180,  320,  320,  600,  600, 1100, 1100}, //  180
    {  50,   70,   70,  120,  210,  240,  400,  450,  800, 1000, 1700, 2100}, //  250
    {  60,   80,   80,  140,  240,  270,  450,  500,  900, 1100, 1900, 2400}, //  315
    {  70,  100,  100,  160,  280,  320,  500,  650, 1000, 1250, 2100, 2800}, //  400
    {  80,  110,  110,  180,  320,  370,  550,  700, 1100, 1450, 2400, 3200}, //  500
};

/// y: how far beyond the work's limit a GO gauge may wear. Nothing from IT9 on.
inline constexpr std::int16_t gauge_y[][4] = {
    //IT6   IT6   IT7   IT8
    //plug  ring              upto mm
    {  10,   15,   15,   30}, //    3
    {  10,   15,   15,   30}, //    6
    {  10,   15,   15,   30}, //   10
    {  15,   20,   20,   40}, //   18
    {  15,   30,   30,   40}, //   30
    {  20,   30,   30,   50}, //   50
    {  20,   30,   30,   50}, //   80
    {  30,   40,   40,   60}, //  120
    {  30,   40,   40,   60}, //  180
    {  40,   50,   60,   70}, //  250
    {  50,   60,   70,   90}, //  315
    {  60,   60,   80,   90}, //  400
    {  70,   70,   90,  110}, //  500
};

/// alpha: how much is kept back on either side above 180 mm, since large sizes are measured less surely.
inline constexpr std::int16_t gauge_alpha[][11] = {
    //IT6   IT7   IT8   IT9  IT10  IT11  IT12  IT13  IT14  IT15  IT16   upto mm
    {  20,   30,   40,   40,   70,  100,  150,  250,  450,  700, 1100}, //  250
    {  30,   40,   60,   60,   90,  150,  200,  350,  550,  900, 1400}, //  315
    {  40,   60,   70,   70,  110,  150,  300,  450,  700, 1100, 1800}, //  400
    {  50,   70,   90,   90,  140,  200,  350,  550,  900, 1400, 2200}, //  500
};

/// The grade (IT) that the gauge itself is made to, for each grade of the work.
struct gauge_grades {
    std::int8_t plug;  ///< H: a plug with a cylinder
    std::int8_t rod;   ///< Hs: a rod or plug with spherical ends
    std::int8_t ring;  ///< H1: a ring or gap gauge
    std::int8_t check; ///< Hp: a check gauge for it
};
inline constexpr gauge_grades gauge_made_to[] = {
    //plug rod ring check   work
    {  2,  2,  3,  1}, // IT6
    {  3,  2,  3,  1}, // IT7
    {  3,  2,  4,  2}, // IT8
    {  3,  2,  4,  2}, // IT9
    {  3,  2,  4,  2}, // IT10
    {  5,  4,  5,  2}, // IT11
    {  5,  4,  5,  2}, // IT12
    {  7,  6,  7,  3}, // IT13
    {  7,  6,  7,  3}, // IT14
    {  7,  6,  7,  3}, // IT15
    {  7,  6,  7,  3}, // IT16
};
// clang-format on

static_assert(sizeof gauge_z / sizeof gauge_z[0] == 13);
static_assert(sizeof gauge_y / sizeof gauge_y[0] == 13);
static_assert(sizeof gauge_alpha / sizeof gauge_alpha[0] == 4);
static_assert(sizeof gauge_made_to / sizeof gauge_made_to[0] == 11);

inline constexpr int gauge_range_count = 13;     ///< the ranges of the standard tolerances, up to 500 mm
inline constexpr int first_range_with_alpha = 9; ///< above 180 mm

} // namespace fitwright::detail

#endif
