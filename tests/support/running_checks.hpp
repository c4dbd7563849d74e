#ifndef FITWRIGHT_TESTS_SUPPORT_RUNNING_CHECKS_HPP
#define FITWRIGHT_TESTS_SUPPORT_RUNNING_CHECKS_HPP

#include "csv.hpp"
#include <fitwright/error.hpp>

#include <cmath>
#include <map>
#include <string>

// What the tests of lubricants and films share.

namespace fitwright_tests {

/// Whether two numbers agree within a share: `agree(9.98, 10, 0.01)`.
inline bool agree(double got, double wanted, double share) {
    return std::fabs(got - wanted) <= share * std::fabs(wanted);
}

template <class Result> bool says(const Result& r, fitwright::error_code code, fitwright::text piece) {
    return !r && r.error().code() == code && r.error().message().find(piece) != fitwright::text::npos &&
           r.error().message().find("allowed") != fitwright::text::npos;
}

/// "D[mm]=60; N[rpm]=1260" as printed, turned into SI (temperatures stay degC, mm2/s stay mm2/s). A unit
/// that isn't known is a fault.
inline std::map<std::string, double> quantities(const std::string& written, std::string& fault) {
    static const std::map<std::string, double> units = {{"", 1},
                                                        {"mm", 1e-3},
                                                        {"in", 0.0254},
                                                        {"rev/s", 1},
                                                        {"rpm", 1 / 60.0},
                                                        {"N", 1},
                                                        {"lbf", 4.4482216152605},
                                                        {"Pa", 1},
                                                        {"psi", 6894.757293168},
                                                        {"cP", 1e-3},
                                                        {"poise", 0.1},
                                                        {"ureyn", 6894.757293168e-6},
                                                        {"lb/ft.s", 0.45359237 / 0.3048},
                                                        {"lbf.s/ft2", 4.4482216152605 / (0.3048 * 0.3048)},
                                                        {"lbf.in", 4.4482216152605 * 0.0254},
                                                        {"hp", 745.69987},
                                                        {"kW", 1e3},
                                                        {"in3/s", 1.6387064e-5},
                                                        {"mm3/s", 1e-9},
                                                        {"L/min", 1e-3 / 60},
                                                        {"K", 1},
                                                        {"C", 1},
                                                        {"cSt", 1}};
    std::map<std::string, double> made;
    std::size_t at = 0;
    while (at < written.size()) {
        std::size_t end = written.find(';', at);
        if (end == std::string::npos) end = written.size();
        const std::string part = written.substr(at, end - at);
        at = end + 1;
        const std::size_t first = part.find_first_not_of(' ');
        const std::size_t equals = part.find('=');
        if (first == std::string::npos || equals == std::string::npos) {
            fault = "not a quantity: " + part;
            continue;
        }
        std::string name = part.substr(first, equals - first);
        std::string unit;
        if (const std::size_t open = name.find('['); open != std::string::npos) {
            unit = name.substr(open + 1, name.size() - open - 2);
            name.resize(open);
        }
        if (!units.contains(unit)) fault = "unit not known: " + unit;
        else made[name] = std::stod(part.substr(equals + 1)) * units.at(unit);
    }
    return made;
}

/// Three per cent unless the row says otherwise.
inline double tolerance_of(const std::string& per_cent) {
    return per_cent.empty() ? 0.03 : std::stod(per_cent) / 100;
}

} // namespace fitwright_tests

#endif
