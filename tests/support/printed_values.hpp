#ifndef FITWRIGHT_TESTS_SUPPORT_PRINTED_VALUES_HPP
#define FITWRIGHT_TESTS_SUPPORT_PRINTED_VALUES_HPP

#include <cmath>
#include <cstdlib>
#include <map>
#include <string>
#include <vector>

// Worked examples as books print them: `D[mm]=25; c[mm]=0.005; Re=0.0375`.

namespace fitwright_tests {

struct printed_value {
    std::string name;
    std::string written; ///< as printed: a number, or a link `sign:nominal:tolerance`
    double unit = 0;     ///< in SI; 0 if the unit isn't known

    [[nodiscard]] double number() const { return std::strtod(written.c_str(), nullptr); }
    [[nodiscard]] double si() const { return number() * unit; }
};

inline double unit_in_si(const std::string& unit) {
    constexpr double psi = 6894.757293168;
    static const std::map<std::string, double> known = {
        {"", 1},         {"m", 1},      {"mm", 1e-3}, {"in", 0.0254},
        {"MPa", 1e6},    {"kPa", 1e3},  {"psi", psi}, {"Pa.s", 1},
        {"cP", 1e-3},    {"kg/m3", 1},  {"m/s", 1},   {"rpm", 1. / 60},
        {"mm3/s", 1e-9}, {"L/s", 1e-3}, {"N", 1},     {"in3/h", 0.0254 * 0.0254 * 0.0254 / 3600}};
    const auto found = known.find(unit);
    return found == known.end() ? 0 : found->second;
}

inline std::vector<printed_value> printed_values(const std::string& cell) {
    std::vector<printed_value> values;
    for (std::size_t at = 0; at < cell.size();) {
        std::size_t end = cell.find(';', at);
        if (end == std::string::npos) end = cell.size();
        const std::string part = cell.substr(at, end - at);
        at = cell.find_first_not_of("; ", end);
        if (at == std::string::npos) at = cell.size();
        const std::size_t equals = part.find('=');
        const std::size_t bracket = part.find('[');
        const bool has_unit = bracket < equals;
        values.push_back({part.substr(0, has_unit ? bracket : equals), part.substr(equals + 1),
                          unit_in_si(has_unit ? part.substr(bracket + 1, equals - bracket - 2) : "")});
    }
    return values;
}

/// By name, in SI; what isn't there is not a number.
inline double si_of(const std::vector<printed_value>& values, const std::string& name) {
    for (const auto& v : values)
        if (v.name == name) return v.si();
    return std::nan("");
}

/// Whether two numbers agree within a share of the second.
inline bool agree_within(double got, double wanted, double share) {
    return std::fabs(got - wanted) <= share * std::fabs(wanted);
}

} // namespace fitwright_tests

#endif
