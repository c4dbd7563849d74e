#ifndef FITWRIGHT_TESTS_SUPPORT_GAUGE_CHECKS_HPP
#define FITWRIGHT_TESTS_SUPPORT_GAUGE_CHECKS_HPP

#include "csv.hpp"

#include <fitwright/gauge.hpp>

#include <map>
#include <string>

// Gauges worked out from the published formulas and constants (tests/data/gauge_*.csv), held against the
// library's. The test of the gauges and its mutation run share it.

namespace fitwright_tests {

/// A formula as printed, "K - y + alpha" or "G - z1, +/- H1/2": what is added up, and the half width.
struct gauge_formula {
    std::vector<std::pair<std::string, int>> terms; ///< name and sign
    std::string half_of;                            ///< of this the half is the half width; empty for a single size
};

inline gauge_formula read_gauge_formula(const std::string& words, std::string& fault) {
    gauge_formula f;
    const std::size_t comma = words.find(',');
    int sign = 1;
    std::string name;
    for (const char c : words.substr(0, comma) + " ") {
        if (c != ' ') {
            name += c;
            continue;
        }
        if (name == "+") sign = 1;
        else if (name == "-") sign = -1;
        else if (!name.empty()) f.terms.emplace_back(name, sign);
        name.clear();
    }
    if (comma != std::string::npos) {
        const std::string band = words.substr(comma);
        const std::size_t slash = band.find("/2");
        if (!band.starts_with(", +/- ") || slash == std::string::npos) fault = "can't read the formula " + words;
        else f.half_of = band.substr(6, slash - 6);
    }
    if (f.terms.empty()) fault = "can't read the formula " + words;
    return f;
}

/// One line of gauge_constants.csv, by the names the formulas have for them, in nanometres.
struct gauge_constant_row {
    int grade = 0;
    std::int64_t over = 0;
    std::int64_t upto = 0;
    std::map<std::string, std::int64_t> values;
};

struct gauge_reference {
    std::string fault;
    std::vector<gauge_constant_row> constants;
    /// By the gauge's name and the work, "GO new hole (plug)": up to 180 mm, and above.
    std::map<std::string, std::pair<gauge_formula, gauge_formula>> formulas;
};

inline gauge_reference read_gauges(const std::string& folder) {
    gauge_reference r;
    csv_table table = read_csv(folder + "/gauge_constants.csv");
    r.fault = table.fault;
    const std::pair<const char*, const char*> names[] = {
        {"T", "t_um"},   {"z", "z_um"},   {"y", "y_um"},   {"alpha", "alpha_um"},   {"H", "h_um"},  {"Hs", "hs_um"},
        {"z1", "z1_um"}, {"y1", "y1_um"}, {"H1", "h1_um"}, {"alpha1", "alpha1_um"}, {"Hp", "hp_um"}};
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        gauge_constant_row row;
        row.grade = std::stoi(table.cell(i, "it_grade"));
        row.over = *scaled(table.cell(i, "over_mm"), 6);
        row.upto = *scaled(table.cell(i, "upto_mm"), 6);
        for (const auto& [name, heading] : names)
            if (const auto value = scaled(table.cell(i, heading), 3)) row.values[name] = *value;
            else if (std::string(name) != "Hs" || row.over >= 6'000'000) r.fault = "a constant is missing";
        r.constants.push_back(std::move(row));
    }
    if (!table.fault.empty()) r.fault = table.fault;

    csv_table formulas = read_csv(folder + "/gauge_formulas.csv");
    if (!formulas.fault.empty()) r.fault = formulas.fault;
    for (std::size_t i = 0; i < formulas.rows.size(); ++i)
        r.formulas[formulas.cell(i, "gauge") + " " + formulas.cell(i, "for")] = {
            read_gauge_formula(formulas.cell(i, "upto_180_mm"), r.fault),
            read_gauge_formula(formulas.cell(i, "over_180_mm"), r.fault)};
    if (!formulas.fault.empty()) r.fault = formulas.fault;
    return r;
}

/// How much was compared and what was wrong.
struct gauge_tally {
    int compared = 0;
    int wrong = 0;
    std::string first_wrong;

    void take(bool right, const char* what, int it, std::int64_t nominal) {
        ++compared;
        if (right) return;
        if (wrong++ == 0) first_wrong = std::string(what) + ", IT" + std::to_string(it) + " at " + std::to_string(nominal) + " nm";
    }
};

/// Works out one formula for limits from `lower` to `upper`, and compares a gauge with it. `band` stands for the
/// name of the tolerance where it isn't the one of the formula (Hs for H).
template <fitwright::side Side>
bool is_by_formula(const gauge_reference& r, const gauge_constant_row& row, const std::string& gauge, std::int64_t lower,
                   std::int64_t upper, const fitwright::size_limits<Side>& got, const char* band = nullptr) {
    const auto found = r.formulas.find(gauge);
    if (found == r.formulas.end()) return false;
    const gauge_formula& f = row.over >= 180'000'000 ? found->second.second : found->second.first;
    std::int64_t middle = 0;
    for (const auto& [name, sign] : f.terms)
        middle += sign * (name == "K" ? lower : name == "G" ? upper : row.values.at(name));
    const std::int64_t half = f.half_of.empty() ? 0 : row.values.at(band != nullptr ? band : f.half_of) / 2;
    return got.lower_limit().nanometres() == middle - half && got.upper_limit().nanometres() == middle + half;
}

/// A single size as limits, for `is_by_formula`.
inline fitwright::shaft_limits only(fitwright::length l) { return fitwright::between(l, l); }

/// Every row of the constants: plugs, rods, rings and check gauges at both ends of the range, for work at
/// the nominal size and away from it. Stops at the first difference if asked to.
inline gauge_tally check_gauges_against(const gauge_reference& r, bool stop_at_first) {
    using namespace fitwright;
    gauge_tally t;
    for (const gauge_constant_row& row : r.constants) {
        const length tolerance = length::from_nanometres(row.values.at("T"));
        const std::int64_t lowest = row.over == 0 ? 2'000'000 : row.over + 1;
        for (const std::int64_t nominal_nm : {lowest, row.upto}) {
            for (const length lower_deviation : {length(), -tolerance, length::from_nanometres(-37'500)}) {
                const length nominal = length::from_nanometres(nominal_nm);
                const deviations d{.upper = lower_deviation + tolerance, .lower = lower_deviation};
                const hole_limits hole(nominal, d);
                const shaft_limits shaft(nominal, d);
                const std::int64_t lower = hole.lower_limit().nanometres();
                const std::int64_t upper = hole.upper_limit().nanometres();
                const auto take = [&](bool right, const char* what) { t.take(right, what, row.grade, nominal_nm); };

                const auto plug = plug_gauge(hole);
                take(plug && plug->constants_of == grade(row.grade), "the grade of a plug");
                if (plug) {
                    take(is_by_formula(r, row, "GO new hole (plug)", lower, upper, plug->go), "GO plug");
                    take(is_by_formula(r, row, "NOT GO hole (plug)", lower, upper, plug->not_go), "NOT GO plug");
                    take(is_by_formula(r, row, "GO wear limit hole (plug)", lower, upper, only(plug->worn)), "worn plug");
                }
                const auto rod = rod_gauge(hole);
                take(rod.has_value() == row.values.contains("Hs"), "whether there is a rod");
                if (rod && row.values.contains("Hs")) {
                    take(is_by_formula(r, row, "GO new hole (plug)", lower, upper, rod->go, "Hs"), "GO rod");
                    take(is_by_formula(r, row, "NOT GO hole (plug)", lower, upper, rod->not_go, "Hs"), "NOT GO rod");
                    take(is_by_formula(r, row, "GO wear limit hole (plug)", lower, upper, only(rod->worn)), "worn rod");
                }
                const auto ring = ring_gauge(shaft);
                take(ring && ring->constants_of == grade(row.grade), "the grade of a ring");
                if (ring) {
                    take(is_by_formula(r, row, "GO new shaft (ring or gap)", lower, upper, ring->go), "GO ring");
                    take(is_by_formula(r, row, "NOT GO shaft (ring or gap)", lower, upper, ring->not_go), "NOT GO ring");
                    take(is_by_formula(r, row, "GO wear limit shaft (ring or gap)", lower, upper, only(ring->worn)), "worn ring");
                }
                const auto checks = checks_for_ring(shaft);
                take(checks && checks->constants_of == grade(row.grade), "the grade of check gauges");
                if (checks) {
                    take(is_by_formula(r, row, "check gauge GO shaft", lower, upper, checks->go), "check gauge GO");
                    take(is_by_formula(r, row, "check gauge NOT GO shaft", lower, upper, checks->not_go), "check gauge NOT GO");
                    take(is_by_formula(r, row, "check gauge for wear shaft", lower, upper, checks->worn), "check gauge for wear");
                }
                if (t.wrong > 0 && stop_at_first) return t;
            }
        }
    }
    return t;
}

} // namespace fitwright_tests

#endif
