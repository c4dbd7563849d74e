#include "support/csv.hpp"
#include <fitwright/press.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

// Every published worked example: within its tolerance of the printed figure, and within 1 % of the same
// figure worked out afresh (tests/data/press_examples.csv, SOURCES_press.md).

namespace {

/// How much of the SI unit one of these is; 0 for a unit that isn't known.
double in_si(const std::string& unit) {
    static const std::map<std::string, double> units{
        {"", 1},  {"m", 1},     {"mm", 1e-3}, {"mm2", 1e-6}, {"in", 0.0254},
        {"N", 1}, {"kNm", 1e3}, {"MPa", 1e6}, {"GPa", 1e9},  {"psi", 6894.757293168}};
    const auto found = units.find(unit);
    return found == units.end() ? 0 : found->second;
}

/// "d[mm]=40; E_o[GPa]=207" in SI.
std::map<std::string, double> inputs_of(const std::string& words) {
    std::map<std::string, double> made;
    for (std::size_t at = 0; at < words.size();) {
        const std::size_t end = std::min(words.find("; ", at), words.size());
        const std::string one = words.substr(at, end - at);
        const std::size_t equals = one.find('=');
        const std::size_t open = one.find('[');
        const bool has_unit = open != std::string::npos;
        const std::string unit = has_unit ? one.substr(open + 1, equals - open - 2) : "";
        made[one.substr(0, has_unit ? open : equals)] = std::stod(one.substr(equals + 1)) * in_si(unit);
        at = end + 2;
    }
    return made;
}

struct example {
    std::map<std::string, double> in;

    double number(const char* name, double otherwise = 0) const {
        const auto found = in.find(name);
        return found == in.end() ? otherwise : found->second;
    }
    length size(const char* name) const { return quantity<metre>::from_value(number(name)); }

    material metal(const char* modulus, const char* poisson) const {
        return {.name = modulus,
                .youngs_modulus = pressure::from_value(number(modulus)),
                .poissons_ratio = number(poisson, 0.3)};
    }

    joint as_joint() const {
        const char* most = in.contains("delta_max") ? "delta_max" : "delta";
        const char* least = in.contains("delta_min") ? "delta_min" : "delta";
        const double mu = number("mu", 0.1);
        return {.seat = press_seat(size("d"),
                                   {diametral_interference(size(least)), diametral_interference(size(most))}),
                .hub = {.made_of = metal("E_o", "nu_o"), .outside = size("D")},
                .shaft = {.made_of = metal("E_i", "nu_i"), .bore = size("di")},
                .joint_length = in.contains("L") ? size("L") : 10_mm,
                .between = {.least = mu, .most = mu},
                .load = {.turning = torque::from_value(number("T"))}};
    }
};

/// What the library has for a quantity of an example, in SI; a NaN if the example is refused or not known.
double answer(const std::string& kind, const std::string& quantity_name, const example& e) {
    const double none = std::nan("");
    if (kind == "fit_pressure") {
        const auto r = press(e.as_joint());
        if (!r) return none;
        const pressed_state& s = r->at_20;
        const std::map<std::string, double> has{
            {"p", s.joint_pressure.most.value()},
            {"p_max", s.joint_pressure.most.value()},
            {"p_min", s.joint_pressure.least.value()},
            {"hub_hoop_bore", s.hub.at_joint.hoop.value()},
            {"hub_hoop_od", s.hub.at_free_side.hoop.value()},
            {"hub_vonmises", s.hub.at_joint.von_mises().value()},
            {"shaft_hoop_od", s.shaft.at_joint.hoop.value()},
            {"shaft_hoop_bore", s.shaft.at_free_side.hoop.value()},
            {"shaft_vonmises_od", s.shaft.at_joint.von_mises().value()},
        };
        const auto found = has.find(quantity_name);
        return found == has.end() ? none : found->second;
    }
    if (kind == "fit_delta") {
        const auto wanted = interference_for_pressure(e.as_joint(), pressure::from_value(e.number("p")));
        return wanted ? wanted->interference.on_radius().value.in<metre>() : none;
    }
    if (kind == "fit_from_torque") {
        if (quantity_name == "delta_radial") {
            const auto wanted = interference_to_hold(e.as_joint());
            return wanted ? wanted->interference.on_radius().value.in<metre>() : none;
        }
        // What the joint grips with at that interference, taken apart again.
        joint j = e.as_joint();
        const auto wanted = interference_to_hold(j);
        if (!wanted) return none;
        j.seat = press_seat(j.seat.diameter(), wanted->interference);
        const auto r = press(j);
        if (!r) return none;
        const double along = r->at_20.axial_grip.least.value();
        if (quantity_name == "tangential_force") return along;
        if (quantity_name == "normal_force") return along / j.between.least;
        if (quantity_name == "area") return along / j.between.least / r->at_20.joint_pressure.least.value();
        return none;
    }
    if (kind == "lame_internal") {
        const ring_wall wall{.inside = e.size("a") * 2, .outside = e.size("b") * 2};
        const auto s = stress_in_wall(wall, {.inside = pressure::from_value(e.number("p"))}, e.size("r") * 2);
        if (!s) return none;
        return quantity_name == "hoop"     ? s->hoop.value()
               : quantity_name == "radial" ? s->radial.value()
                                           : none;
    }
    if (kind ==
        "lame_yield") { // the outside has a share of the inside's pressure; where does the bore yield?
        const ring_wall wall{.inside = e.size("a") * 2, .outside = e.size("b") * 2};
        const auto s = stress_in_wall(
            wall, {.inside = pressure::from_value(1), .outside = pressure::from_value(1 / e.number("ratio"))},
            wall.inside);
        if (!s) return none;
        if (quantity_name == "hoop_per_p") return s->hoop.value();
        if (quantity_name == "p_maxshear") return e.number("yield") / (s->hoop.value() - s->radial.value());
        if (quantity_name == "p_vonmises") return e.number("yield") / s->von_mises().value();
    }
    return none;
}

} // namespace

TEST_CASE("every published worked example") {
    csv_table table = read_csv(FITWRIGHT_TEST_DATA "/press_examples.csv");
    REQUIRE(table.fault == "");
    REQUIRE(table.rows.size() == 33);
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const auto cell = [&](const char* heading) { return table.cell(i, heading); };
        CAPTURE(cell("source"));
        CAPTURE(cell("quantity"));
        const double unit = in_si(cell("unit"));
        REQUIRE(unit > 0);
        const double got = answer(cell("kind"), cell("quantity"), {inputs_of(cell("inputs"))}) / unit;
        const double printed = std::stod(cell("printed"));
        const double recomputed = std::stod(cell("recomputed"));
        CHECK(std::abs(got - printed) <= std::stod(cell("tolerance_percent")) / 100 * std::abs(printed));
        // The bar is 1 %; sizes on whole nanometres cost less than a ten thousandth.
        CHECK(std::abs(got - recomputed) <= 1e-4 * std::abs(recomputed));
    }
    CHECK(table.fault == "");
}
