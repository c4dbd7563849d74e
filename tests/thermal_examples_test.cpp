// Worked examples of textbooks, each by the function that a user would call for it.

#include "support/csv.hpp"
#include <fitwright/thermal.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>
#include <string>

using namespace fitwright;
using namespace fitwright_tests;

namespace {

/// "L[m]=20; alpha[1e-6/K]=10", each number in metres, kelvins, pascals or °C.
std::map<std::string, double> numbers(const std::string& list) {
    const std::map<std::string, double> unit{
        {"m", 1}, {"cm", 1e-2},    {"mm", 1e-3}, {"in", 0.0254}, {"1e-6/K", 1e-6}, {"1e-6/F", 1.8e-6},
        {"K", 1}, {"dF", 1 / 1.8}, {"C", 1},     {"GPa", 1e9},   {"MPa", 1e6}};
    std::map<std::string, double> found;
    std::size_t at = 0;
    while (at < list.size()) {
        const std::size_t end = (std::min)(list.find(';', at), list.size());
        const std::string item = list.substr(at, end - at);
        const std::size_t open = item.find('[');
        const std::size_t close = item.find(']');
        const std::size_t first = item.find_first_not_of(' ');
        REQUIRE(close != std::string::npos);
        const std::string name = item.substr(first, open - first);
        const std::string in = item.substr(open + 1, close - open - 1);
        REQUIRE_MESSAGE(unit.count(in) == 1, in);
        found[name] = std::atof(item.c_str() + item.find('=') + 1) * unit.at(in);
        at = end + 1;
    }
    return found;
}

/// A material as the textbooks have it: one coefficient at all temperatures. What comes of its mean is theirs.
material steady(double per_kelvin) {
    const auto a = expansion_coefficient::from_value(per_kelvin);
    return {.name = per_kelvin > 0 ? "steady metal" : "stuff",
            .family = material_family::steel,
            .expansion = {.to_100_degC = a,
                          .lowest = a,
                          .highest = a,
                          .to_200_degC = a,
                          .to_300_degC = a,
                          .to_500_degC = a,
                          .cooled_to_minus_190_degC = a}};
}

length metres(double number) { return length(quantity<metre>::from_value(number)); }
double metres(length l) { return static_cast<double>(l.nanometres()) / 1e9; }

/// What the library says to an example, as the row prints it.
double answer(const std::string& kind, std::map<std::string, double> in, const std::string& wanted) {
    if (kind == "growth") {
        const length size = metres(in["L"]);
        const material m = steady(in["alpha"]);
        const temperature t = celsius(20 + in["dT"]);
        return metres(wanted == "dL" ? growth(size, m, t)->by_mean
                                     : size_at_temperature(size, m, t)->by_mean);
    }
    if (kind == "temperature_to_shift") {
        const material m = steady(in["alpha"]);
        const length size = metres(in["L"]);
        const length shift = metres(in["shift"]);
        const shrink_wishes just_in{.assembly_clearance = length::from_nanometres(1)};
        if (shift > length()) { // a hub is heated until the shaft goes in
            const fit f(between(size, size), between(size + shift, size + shift));
            return (*shrink_temperatures(f, m, m, just_in)->shaft_at_room.hub_by_mean).value() - 20;
        }
        const fit f(between(size + shift, size + shift), between(size, size)); // a shaft is cooled
        return in["T0"] + (*shrink_temperatures(f, m, m, just_in)->shaft_alone_by_mean).value() - 20;
    }
    if (kind == "common_temperature") {
        const length ring = metres(in["d_ring"]);
        const length rod = metres(in["d_rod"]);
        const auto parts = parting_temperature(fit(between(ring, ring), between(rod, rod)),
                                               steady(in["a_ring"]), steady(in["a_rod"]));
        const common_temperature& way = parts->heated.is_possible() ? parts->heated : parts->cooled;
        return in["T0"] + (*way.by_mean).value() - 20;
    }
    if (kind == "restrained_bar") {
        material m = steady(in["alpha"]);
        m.youngs_modulus = pressure::from_value(in["E"]);
        return stress_when_restrained({.made_of = m,
                                       .size = metres(in["L"]),
                                       .gap = metres(in["gap"]),
                                       .at = celsius(20 + in["dT"])})
            ->by_mean.value();
    }
    FAIL("no such kind: " << kind);
    return 0;
}

/// The same by the formula of a textbook.
double by_formula(const std::string& kind, std::map<std::string, double> in, const std::string& wanted) {
    if (kind == "growth") return in["L"] * ((wanted == "dL" ? 0 : 1) + in["alpha"] * in["dT"]);
    if (kind == "temperature_to_shift")
        return (wanted == "T" ? in["T0"] : 0) + in["shift"] / (in["L"] * in["alpha"]);
    if (kind == "common_temperature")
        return in["T0"] +
               (in["d_rod"] - in["d_ring"]) / (in["d_ring"] * in["a_ring"] - in["d_rod"] * in["a_rod"]);
    return in["E"] * (in["alpha"] * in["dT"] - in["gap"] / in["L"]);
}

} // namespace

TEST_CASE("worked examples, as printed and by their formulas") {
    csv_table examples = read_csv(FITWRIGHT_TEST_DATA "/thermal_examples.csv");
    for (std::size_t row = 0; row < examples.rows.size(); ++row) {
        const std::string kind = examples.cell(row, "kind");
        const auto in = numbers(examples.cell(row, "inputs"));
        const auto printed = numbers(examples.cell(row, "printed"));
        REQUIRE(printed.size() == 1);
        const auto& [name, value] = *printed.begin();
        CAPTURE(examples.cell(row, "id"));
        CAPTURE(examples.cell(row, "source"));
        const double ours = answer(kind, in, name);
        CHECK(std::fabs(ours - value) <= 0.01 * std::fabs(value));
        CHECK(ours == doctest::Approx(by_formula(kind, in, name)).epsilon(1e-4));
    }
    CHECK(examples.fault == "");
    CHECK(examples.rows.size() == 9);
}
