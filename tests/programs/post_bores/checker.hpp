#ifndef FITWRIGHT_TESTS_POST_BORES_CHECKER_HPP
#define FITWRIGHT_TESTS_POST_BORES_CHECKER_HPP

#include <map>
#include <string>
#include <string_view>
#include <vector>

// Reads a program for drilled, reamed and helically milled holes again, as a control would, and says what
// is wrong with it. It shares nothing with the program that wrote it: no code, and no type of the library.

namespace checker {

/// A hole that the program has to make, in millimetres, from the drawing and the published table.
struct hole {
    std::string tag;
    double x;
    double y;
    double top;
    double depth;
    double lower;
    double upper;
    bool is_milled;
};

/// What the machine wants, in millimetres.
struct rules {
    double clearance;                    ///< above a hole's top: no rapid move goes below
    double deeper_at_most;               ///< than a hole's depth: points of drills, breakthrough
    double pitch;                        ///< of a helix, at most
    int decimals;                        ///< of a coordinate, at most
    bool always_a_point;                 ///< in every coordinate
    std::size_t comment_length;          ///< of a comment, at most
    std::string probe_word;              ///< "G31"
    int probe_tool;                      ///< the spindle stands still for it
    std::string length_offset;           ///< "G43", or none
    std::map<int, double> mill_radius;   ///< by the number of the tool
    std::map<int, double> sunk_diameter; ///< of drills and reamers, by the number of the tool
};

/// "line 12: a rapid move below the clearance of A", and so on; empty if all is well.
[[nodiscard]] std::vector<std::string> faults_of(std::string_view program, const std::vector<hole>& holes,
                                                 const rules& r);

} // namespace checker

#endif
