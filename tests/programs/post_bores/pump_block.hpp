#ifndef FITWRIGHT_TESTS_POST_BORES_PUMP_BLOCK_HPP
#define FITWRIGHT_TESTS_POST_BORES_PUMP_BLOCK_HPP

#include "checker.hpp"

// The holes of examples/jobs/pump_block_holes.csv, written down once more, and the machines beside it.

namespace checker {

/// Limits from ISO 286-1:2010, Table 1 (hole H: 0 to + IT): IT7 over 6 to 10 mm 15 um, over 10 to 18 mm
/// 18 um; IT8 over 30 to 50 mm 39 um; IT13 over 3 to 6 mm 180 um.
inline const std::vector<hole> pump_block = {
    {"A", 25, 20, 0, 28, 14, 14.018, true},    {"I", 25, 20, 0, 4, 32, 32.039, true},
    {"L1", 6, 12, -2, 10, 9, 9.015, false},    {"L2", 6, 28, -2, 10, 9, 9.015, false},
    {"M", 44, 20, 0, 32, 6.5, 6.515, false},   {"P", 44, 34.5, 0, 18, 8.5, 8.6, true},
    {"S1", 3.5, 3.5, 0, 20, 4.5, 4.68, false}, {"S2", 46.5, 36.5, 0, 20, 4.5, 4.68, false},
};

inline const rules bench_machine = {
    .clearance = 2,
    .deeper_at_most = 1 + 0.3 * 13, // breakthrough, and the point of the largest drill
    .pitch = 1,
    .decimals = 3,
    .always_a_point = true,
    .comment_length = 68,
    .probe_word = "G38.2",
    .probe_tool = 11,
    .length_offset = "G43",
    .mill_radius = {{7, 3}, {8, 4}},
    .sunk_diameter = {{2, 4.5}, {3, 6.1}, {4, 8.3}, {5, 8.6}, {6, 13}, {9, 6.5}, {10, 9}},
};

inline const rules old_inch_machine = {
    .clearance = 2.54,
    .deeper_at_most = 1.27 + 0.3 * 13,
    .pitch = 0.04 * 25.4,
    .decimals = 4,
    .always_a_point = false,
    .comment_length = 40,
    .probe_word = "G31",
    .probe_tool = 11,
    .length_offset = "",
    .mill_radius = {{7, 25.4 / 8}, {8, 25.4 * 5 / 32}},
    .sunk_diameter = {{2, 4.5}, {3, 6.1}, {4, 8.3}, {5, 8.6}, {6, 13}, {9, 6.5}, {10, 9}},
};

} // namespace checker

#endif
