#include "made.hpp"

#include <cmath>
#include <numbers>

namespace checker {

namespace {

constexpr double turn = 2 * std::numbers::pi;
constexpr double equal = 1e-6;
constexpr double on_its_place = 0.002; // mm: half a step of 0.0001 in, both ways

double angle(const point& from, const point& to, const point& centre) {
    const double gone =
        std::atan2(to.y - centre.y, to.x - centre.x) - std::atan2(from.y - centre.y, from.x - centre.x);
    return gone > 1e-9 ? gone : gone + turn; // the same place is once around
}

bool is_at(const hole& h, const point& p) { return std::hypot(p.x - h.x, p.y - h.y) <= on_its_place; }

} // namespace

made_holes::made_holes(const std::vector<hole>& holes, const rules& r) : rules_(r) {
    for (const hole& h : holes) holes_.push_back({h});
}

double made_holes::clearance_at(double x, double y) const {
    double highest = -1e9;
    for (const state& s : holes_)
        if (std::hypot(x - s.wanted.x, y - s.wanted.y) <= s.wanted.upper / 2)
            highest = (std::fmax)(highest, s.wanted.top + rules_.clearance);
    return highest > -1e9 ? highest : highest_clearance();
}

double made_holes::highest_clearance() const {
    double highest = -1e9;
    for (const state& s : holes_) highest = (std::fmax)(highest, s.wanted.top + rules_.clearance);
    return highest;
}

std::string made_holes::sunk(const point& to, int tool) {
    bool is_a_hole = false;
    bool is_deep_enough_for_one = false;
    for (state& s : holes_) {
        if (!is_at(s.wanted, to)) continue;
        is_a_hole = true;
        const double floor = s.wanted.top - s.wanted.depth;
        if (to.z >= floor - rules_.deeper_at_most - equal) is_deep_enough_for_one = true;
        if (to.z <= floor + on_its_place && rules_.sunk_diameter.count(tool) > 0) s.last_tool = tool;
    }
    if (!is_a_hole || tool == 0) return "a cut into the work where there is no hole";
    return is_deep_enough_for_one ? "" : "a cut deeper than any hole here";
}

std::string made_holes::milled(const point& from, const point& to, const point& centre) {
    const double radius = std::hypot(to.x - centre.x, to.y - centre.y);
    const double gone = angle(from, to, centre);
    bool stays_inside = false;
    for (state& s : holes_) {
        const hole& h = s.wanted;
        const double off = std::hypot(centre.x - h.x, centre.y - h.y);
        const double floor = h.top - h.depth;
        if (!h.is_milled || off + radius > h.upper / 2 + on_its_place) continue;
        if (to.z < floor - rules_.deeper_at_most - equal) continue;
        if (!is_at(h, centre)) { // the arc in or out
            stays_inside = true;
            continue;
        }
        if (radius > h.upper / 2 + equal) continue;
        stays_inside = true;
        if (radius < h.lower / 2 - equal || to.z > floor + on_its_place || from.z - to.z > equal) continue;
        if (std::fabs(radius - s.radius) > equal) s.round_floor = 0;
        s.radius = radius;
        s.round_floor += gone;
    }
    if (!stays_inside) return "an arc outside every bore's limits";
    if (from.z - to.z > rules_.pitch * gone / turn + on_its_place) return "a helix that is too steep";
    return "";
}

std::vector<std::string> made_holes::faults_at_the_end() const {
    std::vector<std::string> all;
    for (const state& s : holes_) {
        const hole& h = s.wanted;
        if (h.is_milled) {
            if (s.round_floor < turn - equal)
                all.push_back("hole " + h.tag + " is not bored within its limits");
            continue;
        }
        const auto tool = rules_.sunk_diameter.find(s.last_tool);
        if (tool == rules_.sunk_diameter.end()) all.push_back("hole " + h.tag + " is not made to its depth");
        else if (tool->second < h.lower - equal || tool->second > h.upper + equal)
            all.push_back("hole " + h.tag + " is not finished by its tool");
    }
    return all;
}

} // namespace checker
