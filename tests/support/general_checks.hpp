#ifndef FITWRIGHT_TESTS_SUPPORT_GENERAL_CHECKS_HPP
#define FITWRIGHT_TESTS_SUPPORT_GENERAL_CHECKS_HPP

#include "csv.hpp"

#include <fitwright/general.hpp>

#include <string>

// General tolerances, clearance holes and tapping drills against tests/data/. The test of general.hpp and its
// mutation run share it.

namespace fitwright_tests {

struct general_reference {
    csv_table tolerances, iso_273, asme_inch, asme_metric, iso_2306;
    std::string fault;
};

inline general_reference read_general(const std::string& folder) {
    general_reference r{.tolerances = read_csv(folder + "/general_tolerances_iso2768_1.csv"),
                        .iso_273 = read_csv(folder + "/clearance_holes_iso273.csv"),
                        .asme_inch = read_csv(folder + "/clearance_holes_asme_b18_2_8_inch.csv"),
                        .asme_metric = read_csv(folder + "/clearance_holes_asme_b18_2_8_metric.csv"),
                        .iso_2306 = read_csv(folder + "/tap_drills_iso2306.csv"),
                        .fault = {}};
    for (const csv_table* t : {&r.tolerances, &r.iso_273, &r.asme_inch, &r.asme_metric, &r.iso_2306}) r.fault += t->fault;
    return r;
}

/// How much was compared and what was wrong.
struct general_tally {
    int compared = 0;
    int wrong = 0;
    std::string first_wrong;

    void take(bool right, const std::string& what) {
        ++compared;
        if (!right && wrong++ == 0) first_wrong = what;
    }
};

inline fitwright::length millimetres(const std::string& words) {
    return fitwright::length::from_nanometres(scaled(words, 6).value_or(-1));
}
/// "M1.6" is 1.6 mm.
inline fitwright::length thread_size(const std::string& words) { return millimetres(words.substr(1)); }
inline fitwright::length inches(const std::string& words) {
    return fitwright::length::from_nanometres(scaled(words, 4).value_or(-1) * 2540);
}

/// ISO 2768-1: each cell, just above its range's lower end, inside and at the upper end.
inline void check_general_tolerances(general_reference& r, general_tally& t) {
    using namespace fitwright;
    const char* names[] = {"f", "m", "c", "v"};
    for (std::size_t i = 0; i < r.tolerances.rows.size(); ++i) {
        const std::string kind = r.tolerances.cell(i, "kind");
        const length over = millimetres(r.tolerances.cell(i, "over_mm"));
        const std::string end = r.tolerances.cell(i, "upto_mm");
        const length upto = end.empty() ? over + length::from_nanometres(40'000'000'000) : millimetres(end);
        // The first range of lengths and edges holds its lower end.
        const length first = over == length::from_nanometres(500'000) ? over : over + length::from_nanometres(1);
        if (kind == "linear" && upto == length::from_nanometres(4'000'000'000)) {
            const auto beyond = general_tolerance(upto + length::from_nanometres(1), general_class::medium);
            t.take(!beyond && beyond.error().code() == error_code::size_out_of_range, "the end of lengths");
        }
        for (int column = 0; column < 4; ++column) {
            const std::string& cell = r.tolerances.cell(i, names[column]);
            const auto c = static_cast<general_class>(column);
            for (const length size : {first, (over + upto) / 2, upto}) {
                const std::string what = kind + " " + names[column] + ", row " + std::to_string(i);
                if (kind.starts_with("angle")) {
                    const auto got = general_angle_tolerance(size, c);
                    t.take(got && got->count == scaled(cell, 0), what);
                    continue;
                }
                const auto got = kind == "linear" ? general_tolerance(size, c) : general_edge_tolerance(size, c);
                if (cell.empty()) t.take(!got && got.error().code() == error_code::no_value_in_standard, what);
                else t.take(got && *got == millimetres(cell), what);
            }
        }
    }
}

inline void check_clearance_holes(general_reference& r, general_tally& t) {
    using namespace fitwright;
    const char* series[] = {"fine_mm", "medium_mm", "coarse_mm"};
    const grade grades[] = {grade::it12, grade::it13, grade::it14};
    for (std::size_t i = 0; i < r.iso_273.rows.size(); ++i)
        for (int s = 0; s < 3; ++s) {
            const std::string& thread = r.iso_273.cell(i, "thread");
            const length least = millimetres(r.iso_273.cell(i, series[s]));
            const auto got = clearance_hole(thread_size(thread), static_cast<clearance_series>(s));
            t.take(got && *got == limits(least, hole_class{position::h, grades[s]}).value(), thread + " " + series[s]);
        }

    const auto fit_named = [](const std::string& name) {
        return name == "close" ? screw_fit::close : name == "normal" ? screw_fit::normal : screw_fit::loose;
    };
    for (std::size_t i = 0; i < r.asme_inch.rows.size(); ++i) {
        const std::string& fit = r.asme_inch.cell(i, "fit");
        const auto got = asme_clearance_hole(inches(r.asme_inch.cell(i, "screw_diameter_in")), fit_named(fit));
        const bool is_read = r.asme_inch.cell(i, "confirmed") == "limits seen";
        t.take(got && got->hole.lower_limit() == inches(r.asme_inch.cell(i, "hole_min_in")) &&
                   got->hole.upper_limit() == inches(r.asme_inch.cell(i, "hole_max_in")) &&
                   got->drill == r.asme_inch.cell(i, "drill") &&
                   got->hole.origin().how_sure == (is_read ? confidence::published : confidence::memory),
               r.asme_inch.cell(i, "screw") + " " + fit);
    }
    for (std::size_t i = 0; i < r.asme_metric.rows.size(); ++i) {
        const std::string& fit = r.asme_metric.cell(i, "fit");
        const auto got = asme_clearance_hole(thread_size(r.asme_metric.cell(i, "screw")), fit_named(fit));
        const length least = millimetres(r.asme_metric.cell(i, "hole_min_mm"));
        t.take(got && got->hole == limits(least, hole_class{position::h, grades[static_cast<int>(fit_named(fit))]}).value() &&
                   got->drill == r.asme_metric.cell(i, "nearest_inch_drill") &&
                   got->hole.origin().how_sure == confidence::memory,
               r.asme_metric.cell(i, "screw") + " " + fit);
    }
}

inline void check_tapping_drills(general_reference& r, general_tally& t) {
    using namespace fitwright;
    for (std::size_t i = 0; i < r.iso_2306.rows.size(); ++i) {
        const std::string what = r.iso_2306.cell(i, "thread") + " x " + r.iso_2306.cell(i, "pitch_mm");
        const metric_thread thread{.diameter = thread_size(r.iso_2306.cell(i, "thread")),
                                   .pitch = millimetres(r.iso_2306.cell(i, "pitch_mm"))};
        const auto got = tapping_drill(thread);
        const bool is_read = r.iso_2306.cell(i, "confirmed") == "yes";
        t.take(got && got->drill == millimetres(r.iso_2306.cell(i, "drill_mm")) &&
                   got->origin.how_sure == (is_read ? confidence::published : confidence::memory),
               what);
        if (r.iso_2306.cell(i, "series") != "coarse") continue;
        const auto coarse = coarse_thread(thread.diameter);
        t.take(coarse && *coarse == thread, "coarse " + what);
    }
}

inline general_tally check_general_against(general_reference& r) {
    general_tally t;
    check_general_tolerances(r, t);
    check_clearance_holes(r, t);
    check_tapping_drills(r, t);
    return t;
}

} // namespace fitwright_tests

#endif
