#ifndef FITWRIGHT_GENERAL_TAPPING_DRILL_TABLE_HPP
#define FITWRIGHT_GENERAL_TAPPING_DRILL_TABLE_HPP

#include <cstdint>

// ISO 2306:1972: drills for tapping ISO metric threads, in hundredths of a millimetre. Not exactly
// diameter less pitch: the drills are taken from the series drills are made in (M8: 6.8, not 6.75).

namespace fitwright::detail::tapping {

enum class read_in : bool { print, memory };

struct row {
    std::int16_t diameter;
    std::int16_t pitch;
    std::int16_t drill;
    read_in how = read_in::print;
};

inline constexpr read_in from_memory = read_in::memory;

// clang-format off
inline constexpr row coarse[] = {
    //diameter pitch drill
    { 100,   25,   75}, // M1
    { 110,   25,   85, from_memory}, // M1.1
    { 120,   25,   95}, // M1.2
    { 140,   30,  110}, // M1.4
    { 160,   35,  125}, // M1.6
    { 180,   35,  145}, // M1.8
    { 200,   40,  160}, // M2
    { 220,   45,  175}, // M2.2
    { 250,   45,  205}, // M2.5
    { 300,   50,  250}, // M3
    { 350,   60,  290}, // M3.5
    { 400,   70,  330}, // M4
    { 450,   75,  370, from_memory}, // M4.5
    { 500,   80,  420}, // M5
    { 600,  100,  500}, // M6
    { 700,  100,  600}, // M7
    { 800,  125,  680}, // M8
    { 900,  125,  780}, // M9
    {1000,  150,  850}, // M10
    {1100,  150,  950}, // M11
    {1200,  175, 1020}, // M12
    {1400,  200, 1200}, // M14
    {1600,  200, 1400}, // M16
    {1800,  250, 1550}, // M18
    {2000,  250, 1750}, // M20
    {2200,  250, 1950}, // M22
    {2400,  300, 2100}, // M24
    {2700,  300, 2400}, // M27
    {3000,  350, 2650}, // M30
    {3300,  350, 2950}, // M33
    {3600,  400, 3200}, // M36
    {3900,  400, 3500}, // M39
    {4200,  450, 3750}, // M42
    {4500,  450, 4050}, // M45
    {4800,  500, 4300}, // M48
    {5200,  500, 4700}, // M52
    {5600,  550, 5050}, // M56
    {6000,  550, 5450}, // M60
    {6400,  600, 5800}, // M64
};
inline constexpr row fine[] = {
    { 300,   35,  265}, // M3 x 0.35
    { 400,   50,  350}, // M4 x 0.5
    { 500,   50,  450}, // M5 x 0.5
    { 600,   75,  520, from_memory}, // M6 x 0.75
    { 800,   75,  720, from_memory}, // M8 x 0.75
    { 800,  100,  700}, // M8 x 1
    {1000,   75,  920, from_memory}, // M10 x 0.75
    {1000,  100,  900}, // M10 x 1
    {1000,  125,  880, from_memory}, // M10 x 1.25
    {1200,  100, 1100, from_memory}, // M12 x 1
    {1200,  125, 1080, from_memory}, // M12 x 1.25
    {1200,  150, 1050}, // M12 x 1.5
    {1400,  125, 1280, from_memory}, // M14 x 1.25
    {1400,  150, 1250}, // M14 x 1.5
    {1600,  100, 1500, from_memory}, // M16 x 1
    {1600,  150, 1450}, // M16 x 1.5
    {1800,  100, 1700, from_memory}, // M18 x 1
    {1800,  150, 1650}, // M18 x 1.5
    {1800,  200, 1600}, // M18 x 2
    {2000,  100, 1900, from_memory}, // M20 x 1
    {2000,  150, 1850}, // M20 x 1.5
    {2000,  200, 1800}, // M20 x 2
    {2200,  100, 2100, from_memory}, // M22 x 1
    {2200,  150, 2050}, // M22 x 1.5
    {2200,  200, 2000}, // M22 x 2
    {2400,  100, 2300, from_memory}, // M24 x 1
    {2400,  150, 2250, from_memory}, // M24 x 1.5
    {2400,  200, 2200}, // M24 x 2
    {2700,  200, 2500}, // M27 x 2
    {3000,  200, 2800}, // M30 x 2
    {3300,  200, 3100}, // M33 x 2
    {3600,  300, 3300}, // M36 x 3
    {3900,  300, 3600}, // M39 x 3
    {4200,  300, 3900}, // M42 x 3
    {4500,  300, 4200}, // M45 x 3
    {4800,  300, 4500}, // M48 x 3
};
// clang-format on

static_assert(sizeof coarse / sizeof coarse[0] == 39);
static_assert(sizeof fine / sizeof fine[0] == 36);

} // namespace fitwright::detail::tapping

#endif
