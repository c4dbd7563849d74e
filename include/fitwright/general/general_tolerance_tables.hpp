#ifndef FITWRIGHT_GENERAL_GENERAL_TOLERANCE_TABLES_HPP
#define FITWRIGHT_GENERAL_GENERAL_TOLERANCE_TABLES_HPP

#include <cstdint>

// ISO 2768-1:1989, Tables 1 to 3: plus and minus. Sizes above the row before, up to and including
// `upto_mm`; the first row of lengths and of edges begins with 0.5 mm itself. `none`: no value, `open`: no end.

namespace fitwright::detail::general {

/// A row of a table: f m c v are the classes fine, medium, coarse and very coarse.
struct row {
    std::int16_t upto_mm; ///< `open` in a last row without an end
    std::int16_t of_class[4];
};

inline constexpr std::int16_t open = INT16_MAX;
inline constexpr std::int16_t none = -1;

// clang-format off
/// Table 1, lengths: in micrometres.
inline constexpr row lengths[] = {
    //upto     f     m     c     v
    {   3, {  50,  100,  200, none}},
    {   6, {  50,  100,  300,  500}},
    {  30, { 100,  200,  500, 1000}},
    { 120, { 150,  300,  800, 1500}},
    { 400, { 200,  500, 1200, 2500}},
    {1000, { 300,  800, 2000, 4000}},
    {2000, { 500, 1200, 3000, 6000}},
    {4000, {none, 2000, 4000, 8000}},
};

/// Table 2, external radii and heights of chamfers: in micrometres.
inline constexpr row edges[] = {
    //upto     f     m     c     v
    {   3, { 200,  200,  400,  400}},
    {   6, { 500,  500, 1000, 1000}},
    {open, {1000, 1000, 2000, 2000}},
};

/// Table 3, angles by the length of their shorter side: in minutes of arc.
inline constexpr row angles[] = {
    //upto     f     m     c     v
    {  10, {  60,   60,   90,  180}},
    {  50, {  30,   30,   60,  120}},
    { 120, {  20,   20,   30,   60}},
    { 400, {  10,   10,   15,   30}},
    {open, {   5,    5,   10,   20}},
};
// clang-format on

static_assert(sizeof lengths / sizeof lengths[0] == 8);
static_assert(sizeof edges / sizeof edges[0] == 3);
static_assert(sizeof angles / sizeof angles[0] == 5);

} // namespace fitwright::detail::general

#endif
