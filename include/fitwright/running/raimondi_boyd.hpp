#ifndef FITWRIGHT_RUNNING_RAIMONDI_BOYD_HPP
#define FITWRIGHT_RUNNING_RAIMONDI_BOYD_HPP

#include <fitwright/running/raimondi_boyd_table.hpp>

#include <cmath>

namespace fitwright::detail {

/// Radian.
inline constexpr double half_turn = 3.14159265358979323846;

/// What the table has for one Sommerfeld number.
struct raimondi_boyd_reading {
    double gap_left; ///< least film by radial clearance, 1 - eccentricity
    double friction, flow, side_share, pressure_evenness;
};

/// The table at one ratio of length to diameter. Between the ratios that it is printed for, each figure is
/// the cubic through the four of them over diameter by length, taken at the same eccentricity: the formula
/// that Raimondi and Boyd give. Only the flows of bearings shorter than half the diameter go straight from
/// 1/2 to 1/4: the cubic, bent by the infinite bearing, would be a tenth off there, the line is within 2 %
/// of a fresh solution.
class raimondi_boyd_column {
public:
    /// `length_by_diameter`: from 1/4.
    explicit raimondi_boyd_column(double length_by_diameter) noexcept {
        const double x = 1 / length_by_diameter; // 0, 1, 2, 4 are printed
        const double cubic[] = {(x - 1) * (x - 2) * (x - 4) / -8, x * (x - 2) * (x - 4) / 3,
                                x * (x - 1) * (x - 4) / -4, x * (x - 1) * (x - 2) / 24};
        const double line[] = {0, 0, (4 - x) / 2, (x - 2) / 2};
        const auto& of_flow = x > 2 ? line : cubic;
        for (int row = 0; row < count; ++row) {
            double side_flow = 0;
            for (int ratio = 0; ratio < 4; ++ratio) {
                const raimondi_boyd_row& printed = raimondi_boyd[ratio][row];
                rows_[row].s += cubic[ratio] * printed.s;
                rows_[row].friction += cubic[ratio] * printed.friction;
                rows_[row].pressure_evenness += cubic[ratio] * printed.pressure_evenness;
                rows_[row].flow += of_flow[ratio] * printed.flow;
                side_flow += of_flow[ratio] * printed.flow * printed.side_share;
            }
            rows_[row].side_share = side_flow / rows_[row].flow;
        }
    }

    /// Between the rows film and friction are interpolated by their logarithms over that of S: the film
    /// straight over log S would come out too thick, by a fifth where it is thinnest. Beyond the first row
    /// the journal floats up to the middle, and friction goes to Petroff's; beyond the last one the film
    /// falls with S.
    [[nodiscard]] raimondi_boyd_reading at(double s) const noexcept {
        if (s >= rows_[0].s) return lightly_loaded(s);
        if (s <= rows_[count - 1].s) return nearly_touching(s);
        int row = 0;
        while (s < rows_[row + 1].s) ++row;
        const raimondi_boyd_row& one = rows_[row];
        const raimondi_boyd_row& next = rows_[row + 1];
        const double u = std::log(s / one.s) / std::log(next.s / one.s);
        const double gap_one = 1 - raimondi_boyd_eccentricity[row];
        const double gap_next = 1 - raimondi_boyd_eccentricity[row + 1];
        const double left = gap_one * std::pow(gap_next / gap_one, u);
        const double along =
            (gap_one - left) / (gap_one - gap_next); // flows are nearly straight lines over it
        const auto between = [along](double a, double b) { return a + along * (b - a); };
        return {.gap_left = left,
                .friction = one.friction * std::pow(next.friction / one.friction, u),
                .flow = between(one.flow, next.flow),
                .side_share = between(one.side_share, next.side_share),
                .pressure_evenness = between(one.pressure_evenness, next.pressure_evenness)};
    }

private:
    static constexpr int count = 7;

    [[nodiscard]] raimondi_boyd_reading lightly_loaded(double s) const noexcept {
        const raimondi_boyd_row& first = rows_[0];
        const double along = first.s / s; // of the way from the middle to the first row
        const double more_than_petroff = first.friction / (2 * half_turn * half_turn * first.s) - 1;
        return {.gap_left = 1 - raimondi_boyd_eccentricity[0] * along,
                .friction = 2 * half_turn * half_turn * s * (1 + more_than_petroff * along * along),
                .flow = half_turn + along * (first.flow - half_turn),
                .side_share = along * first.side_share,
                .pressure_evenness = first.pressure_evenness};
    }

    [[nodiscard]] raimondi_boyd_reading nearly_touching(double s) const noexcept {
        const raimondi_boyd_row& last = rows_[count - 1];
        const double along = s / last.s;
        return {.gap_left = (1 - raimondi_boyd_eccentricity[count - 1]) * along,
                .friction = last.friction * std::sqrt(along),
                .flow = last.flow,
                .side_share = last.side_share,
                .pressure_evenness = last.pressure_evenness};
    }

    raimondi_boyd_row rows_[count] = {};
};

} // namespace fitwright::detail

#endif
