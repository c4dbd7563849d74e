#ifndef FITWRIGHT_TESTS_POST_BORES_MADE_HPP
#define FITWRIGHT_TESTS_POST_BORES_MADE_HPP

#include "checker.hpp"

#include <string>
#include <vector>

namespace checker {

struct point {
    double x = 0;
    double y = 0;
    double z = 1e9;
};

/// What has become of the holes so far. Its answers are faults; empty if all is well.
class made_holes {
public:
    made_holes(const std::vector<hole>& holes, const rules& r);

    /// Z that no rapid move goes below, there and anywhere.
    [[nodiscard]] double clearance_at(double x, double y) const;
    [[nodiscard]] double highest_clearance() const;

    /// A tool went straight down; 0 if it went sideways too.
    [[nodiscard]] std::string sunk(const point& to, int tool);
    /// A mill's edge went round, counter-clockwise.
    [[nodiscard]] std::string milled(const point& from, const point& to, const point& centre);

    [[nodiscard]] std::vector<std::string> faults_at_the_end() const;

private:
    struct state {
        hole wanted;
        int last_tool = 0;      ///< that was sunk to its depth
        double round_floor = 0; ///< angle gone round at its depth and its size
        double radius = 0;      ///< with this radius
    };

    const rules& rules_;
    std::vector<state> holes_;
};

} // namespace checker

#endif
