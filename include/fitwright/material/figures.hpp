#ifndef FITWRIGHT_MATERIAL_FIGURES_HPP
#define FITWRIGHT_MATERIAL_FIGURES_HPP

#include <cstdint>

// The numbers of the materials, a line each; their names, and the documents they were read in, are in
// `materials.hpp`. 0: not known.
//
// The letters say how surely each number is known, in the order of the columns: 20-100, lowest and
// highest together, to 200, to 300, to 500, cooled; E, nu, density; yield, heating.
//   p  read in the document            m  from memory of the document
//   u  the documents differ too much, or the number could not be read where it should stand
//   -  not known
// The least yield strengths were all read.

namespace fitwright::detail {

struct material_figures {
    std::uint16_t to_100_degC, lowest, highest;
    std::uint16_t to_200_degC, to_300_degC, to_500_degC, cooled_to_minus_190_degC;
    std::uint16_t youngs_modulus, poissons_ratio, density;
    std::uint16_t yield_strength, least_yield_strength, highest_heating;
    char how_sure[14];
};

} // namespace fitwright::detail

namespace fitwright::detail::figures {

// clang-format off
//                                                        mean coefficient of expansion, 1e-8/K               E        nu density   yield least  heat  how surely
//                                                        20-100    low  high    -200  -300  -500  cold   10 MPa 1/1000  kg/m3     MPa   MPa     C
inline constexpr material_figures steel_1018             {  1170,  1170,  1220,  1210, 1280, 1390,  850,  20500,  290,  7870,    370,  350,  300, "ppmmmp mmm mm"};
inline constexpr material_figures steel_c45              {  1130,  1120,  1210,  1230, 1310, 1420,  850,  20500,  290,  7850,    310,  290,  300, "ppmmmp mmp mm"};
inline constexpr material_figures steel_11smnpb30        {  1150,  1150,  1220,  1210, 1280, 1380,  850,  20000,  290,  7870,    415,    0,  200, "mmuuup pmp mm"};
inline constexpr material_figures steel_a36              {  1170,  1170,  1210,  1210, 1280, 1390,  850,  20000,  260,  7850,    250,    0,  400, "ppmmmp mmp pm"};
inline constexpr material_figures steel_42crmo4          {  1230,  1110,  1230,  1270, 1310, 1390,  850,  20500,  290,  7850,    655,    0,  300, "ppmmmp mmm mm"};
inline constexpr material_figures steel_34crnimo6        {  1230,  1210,  1230,  1270, 1310, 1390,  850,  20500,  290,  7850,    860,    0,  200, "ppmmmp mmp um"};
inline constexpr material_figures steel_100cr6           {  1190,  1190,  1250,  1230, 1280,    0,    0,  20800,  300,  7810,   1700,    0,  120, "ppmm-- mmp mp"};
inline constexpr material_figures tool_steel_o1          {  1120,  1060,  1200,  1150, 1200, 1280,    0,  19300,  290,  7850,   1500,    0,  150, "upuuu- pmp pm"};
inline constexpr material_figures tool_steel_d2          {  1040,  1040,  1100,  1030, 1100, 1220,    0,  21000,  290,  7700,   1900,    0,  180, "ppmum- pmp mm"};
inline constexpr material_figures tool_steel_m2          {  1010,  1000,  1010,   940,    0, 1190,    0,  21000,  290,  8160,   2500,    0,  500, "ppu-u- pmp mm"};
inline constexpr material_figures tool_steel_h13         {  1040,  1040,  1200,  1150, 1190, 1240,    0,  21000,  300,  7760,   1400,    0,  500, "upuuu- mmm mm"};
inline constexpr material_figures stainless_303          {  1720,  1600,  1720,  1750, 1780, 1840,    0,  19300,  270,  8030,    240,    0,  350, "mmmmm- mmm mm"};
inline constexpr material_figures stainless_304          {  1720,  1600,  1720,  1750, 1780, 1840, 1300,  19300,  290,  8000,    215,  205,  350, "ppmmmm pmp mm"};
inline constexpr material_figures stainless_316          {  1590,  1590,  1660,  1600, 1620, 1750,    0,  19300,  270,  8000,    240,  205,  350, "ppmmm- pmp mm"};
inline constexpr material_figures stainless_416          {   990,   990,  1050,  1050, 1100, 1160,    0,  20000,  280,  7750,    585,    0,  350, "ppmmm- pmm mm"};
inline constexpr material_figures stainless_440c         {  1020,  1010,  1040,  1040, 1080, 1160,    0,  20000,  280,  7650,   1900,    0,  150, "ppmmm- pmm mm"};
inline constexpr material_figures stainless_17_4ph       {  1080,  1080,  1090,  1080, 1120, 1150,    0,  19700,  270,  7800,   1170,    0,  300, "ppmmm- mmp mm"};
inline constexpr material_figures stainless_431          {  1120,  1000,  1120,  1150, 1170, 1200,    0,  21600,  280,  7700,    600,    0,  400, "ppppp- pmp pm"};
inline constexpr material_figures valve_steel_21_4n      {  1550,  1450,  1550,  1650, 1750, 1850,    0,  20500,  290,  7800,    580,    0,  700, "uuuuu- pmp mm"};
inline constexpr material_figures valve_steel_x45crsi9_3 {  1150,  1090,  1290,  1170, 1190, 1260,    0,  21000,  290,  7700,    700,    0,  550, "upuuu- mmm mm"};
inline constexpr material_figures grey_iron_gjl_250      {  1050,  1050,  1210,  1170, 1230, 1300,  800,  11000,  260,  7200,    165,    0,  400, "ppmmmp pmm mm"};
inline constexpr material_figures ductile_iron_gjs_400_15{  1120,  1060,  1120,  1170, 1210, 1250,  850,  16900,  275,  7100,    250,    0,  350, "ppmmmm pmp pm"};
inline constexpr material_figures aluminium_6061_t6      {  2360,  2340,  2360,  2430, 2540,    0, 1800,   6890,  330,  2700,    276,    0,  150, "ppmm-p pmp pm"};
inline constexpr material_figures aluminium_6082_t6      {  2340,  2320,  2340,  2400, 2500,    0, 1800,   7000,  330,  2700,    255,  250,  150, "upmm-p pmp pm"};
inline constexpr material_figures aluminium_2024_t351    {  2290,  2290,  2320,  2390, 2470,    0, 1800,   7310,  330,  2780,    325,    0,  100, "pmmm-p mmm pm"};
inline constexpr material_figures aluminium_7075_t6      {  2340,  2340,  2360,  2430, 2520,    0, 1800,   7170,  330,  2810,    503,    0,  110, "pmmm-p mmm mm"};
inline constexpr material_figures aluminium_356_t6       {  2150,     0,     0,  2250, 2350,    0, 1800,   7240,  330,  2680,    185,    0,  150, "p-mm-p pmm mm"};
inline constexpr material_figures brass_c36000           {  2050,     0,     0,  2050, 2090,    0,    0,   9700,  340,  8500,    310,    0,  200, "p-pm-- pmm pm"};
inline constexpr material_figures brass_cuzn39pb3        {  2090,  2040,  2170,  2090, 2140,    0,    0,   9600,  340,  8470,    250,    0,  200, "upuu-- mmm mm"};
inline constexpr material_figures phosphor_bronze_cusn5  {  1780,  1780,  1780,  1780, 1780,    0,    0,  11000,  340,  8860,    515,    0,  200, "pppp-- ppp mm"};
inline constexpr material_figures bronze_cusn7zn4pb7     {  1800,  1800,  1800,  1800, 1840,    0,    0,  10000,  340,  8930,    125,   97,  230, "pppm-- pmm pm"};
inline constexpr material_figures aluminium_bronze_c95400{  1620,  1620,  1620,  1620, 1620,    0,    0,  10700,  320,  7450,    241,  221,  300, "pppp-- pmp mm"};
inline constexpr material_figures copper_cu_etp          {  1700,  1700,  1700,  1730, 1770, 1830, 1400,  11700,  340,  8920,    310,    0,  150, "ppppmm pmp pm"};
inline constexpr material_figures beryllium_copper_c17200{  1670,  1670,  1690,  1700, 1780,    0,    0,  12800,  300,  8250,   1100,    0,  260, "ppmm-- pmm mm"};
inline constexpr material_figures titanium_6al_4v        {   860,   860,   950,   900,  920,  970,    0,  11380,  340,  4430,    880,  830,  400, "ppmmm- pmm mm"};
inline constexpr material_figures titanium_grade_2       {   860,     0,     0,   890,  920,  970,    0,  10300,  370,  4510,    275,    0,  300, "m-mmm- mmm mm"};
inline constexpr material_figures magnesium_az31         {  2600,  2520,  2600,  2700,    0,    0,    0,   4500,  350,  1770,    200,    0,  150, "ppm--- pmm pm"};
inline constexpr material_figures magnesium_az91         {  2600,     0,     0,  2720,    0,    0,    0,   4500,  350,  1810,    160,    0,  120, "p-m--- ppp pm"};
inline constexpr material_figures zinc_zamak_3           {  2740,     0,     0,     0,    0,    0,    0,   8550,  300,  6600,    208,    0,   80, "p----- ump up"};
inline constexpr material_figures invar_36               {   160,   120,   200,   210,  490,    0,    0,  14100,  290,  8050,    276,    0,  200, "pmmm-- mmm pm"};
inline constexpr material_figures tungsten_carbide_6_co  {   490,   430,   550,   500,  510,  540,    0,  63000,  220, 14900,      0,    0,  500, "uuuuu- umm -m"};
inline constexpr material_figures silicon_nitride        {   290,     0,     0,   300,  310,  320,    0,  31000,  270,  3200,      0,    0,  800, "u-uuu- uuu -u"};
inline constexpr material_figures ptfe                   { 12400, 11900, 13100,     0,    0,    0,    0,     50,  460,  2170,     10,    0,  260, "pp---- ppp pp"};
inline constexpr material_figures acetal_pom_c           { 11000, 10650, 12000, 12500,    0,    0,    0,    280,  350,  1410,     66,    0,  100, "mpm--- mmp mp"};
inline constexpr material_figures nylon_pa66_dry         {  8000,  8000, 14400,  9500,    0,    0,    0,    330,  390,  1140,     85,    0,   80, "mpm--- mmm mm"};
inline constexpr material_figures peek                   {  5000,     0,     0,     0, 6000,    0,    0,    390,  390,  1310,    100,    0,  250, "m--m-- mmm mm"};
inline constexpr material_figures uhmw_polyethylene      { 20000, 15000, 23000,     0,    0,    0,    0,     75,  460,   935,     20,    0,   80, "uu---- mmm mm"};
inline constexpr material_figures epoxy_unfilled         {  6000,  4500, 11700,     0,    0,    0,    0,    300,  370,  1200,     60,    0,   80, "up---- mmm mm"};
inline constexpr material_figures nickel_200             {  1330,     0,     0,  1390, 1430, 1520,    0,  20400,  310,  8890,    148,    0,  300, "p-mmm- mmm pm"};
inline constexpr material_figures monel_400              {  1390,  1390,  1390,  1450, 1490, 1550,    0,  18000,  320,  8800,    240,    0,  300, "ppmmm- pmm pm"};
inline constexpr material_figures inconel_718            {  1300,     0,     0,  1330, 1360, 1420,    0,  20000,  290,  8190,   1030,    0,  500, "m-mmm- mmm mm"};
inline constexpr material_figures gauge_block_steel      {  1150,  1050,  1250,     0,    0,    0,    0,  20500,  290,  7800,      0,    0,   60, "mm---- mmm -m"};
inline constexpr material_figures granite                {   650,   650,   790,     0,    0,    0,    0,   6000,  250,  2900,      0,    0,   60, "um---- mmm -m"};
inline constexpr material_figures borosilicate_glass     {   330,   330,   400,   330,  330,    0,    0,   6400,  200,  2230,      0,    0,  450, "mmmm-- mmm -m"};
// clang-format on

} // namespace fitwright::detail::figures

#endif
