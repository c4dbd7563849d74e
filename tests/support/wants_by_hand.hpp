#ifndef FITWRIGHT_TESTS_SUPPORT_WANTS_BY_HAND_HPP
#define FITWRIGHT_TESTS_SUPPORT_WANTS_BY_HAND_HPP

#include <fitwright/choose/choose.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

// Whether a want holds for a pair, worked out once more: bare doubles in SI units and the formulas of the books
// (expansion; Poiseuille in an annular gap; Lamé's rings). The film alone is asked of `film`.

namespace fitwright_tests {

using namespace fitwright;

struct by_hand {
    const wants& w;

    static double metres(length l) { return static_cast<double>(l.nanometres()) * 1e-9; }
    static constexpr double pi = 3.141592653589793;

    /// How two parts have grown, in every combination of the ends of their spreads.
    struct grown {
        double hole, shaft;
    };
    std::vector<grown> growths(const thermal_state* s) const {
        if (s == nullptr) return {{0, 0}};
        const auto ends = [](const material& m, const temperature& at) {
            const auto of_a_metre = growth(length::from_nanometres(1'000'000'000), m, at);
            const double least = metres(of_a_metre->least);
            const double most = metres(of_a_metre->most);
            return at.value() < 20 ? std::pair(most, least) : std::pair(least, most); // by the lowest first
        };
        const auto h = ends(w.hole_made_of, s->hole);
        const auto t = ends(w.shaft_made_of, s->shaft);
        if (w.hole_made_of.name == w.shaft_made_of.name) return {{h.first, t.first}, {h.second, t.second}};
        return {{h.first, t.first}, {h.first, t.second}, {h.second, t.first}, {h.second, t.second}};
    }

    struct window {
        double least = 1e9, most = -1e9;
        void take(double c) {
            least = std::min(least, c);
            most = std::max(most, c);
        }
    };
    window clearance(length hole, length shaft, const thermal_state* s) const {
        window made;
        for (const grown& g : growths(s))
            made.take(metres(hole - shaft) + metres(hole) * g.hole - metres(shaft) * g.shaft);
        return made;
    }
    window clearance(length hole, length shaft, bool with_20, bool with_states) const {
        window made;
        const auto take = [&](const thermal_state* s) {
            const window one = clearance(hole, shaft, s);
            made.take(one.least);
            made.take(one.most);
        };
        if (with_20) take(nullptr);
        if (with_states)
            for (const thermal_state& s : w.states) take(&s);
        return made;
    }

    /// What leaks at most, in the unit of the budget.
    double leak(length hole, length shaft, const thermal_state* s, double clearance_most) const {
        (void)hole;
        (void)shaft;
        if (clearance_most <= 0) return 0;
        const gap& g = w.leak.past().around;
        const double d = g.diameter == length() ? metres(w.nominal) : metres(g.diameter);
        double viscous = g.viscosity.value();
        double density = g.density ? (*g.density).value() : 0;
        if (viscous == 0) {
            const double t =
                s == nullptr ? 20 : std::max(s->hole.value(), s->shaft.value()); // the warmer part
            const auto v = viscosity(w.liquid, celsius(t));
            viscous = (*v->dynamic).value();
            if (density == 0) density = (*v->density).value();
        }
        const double h = clearance_most / 2;
        const double eased = 1 + 1.5 * g.lies.most * g.lies.most;
        // drop = drag v + 1.5 density / 2 v^2
        const double drag = 12 * viscous * metres(g.land) / (h * h * eased);
        const double drop = g.pressure_drop.value();
        const double a = 0.75 * density;
        const double v = a > 0 ? (-drag + std::sqrt(drag * drag + 4 * a * drop)) / (2 * a) : drop / drag;
        const double flow = pi * d * h * v;
        if (!w.leak.is_of_a_plunger()) return flow;
        const double swept = pi / 4 * d * d * metres(w.leak.past().stroke);
        return 100 * flow * w.leak.past().under_pressure.value() / swept;
    }

    /// Pressure between the parts for each metre of interference on diameter, and what goes with it.
    struct lame {
        double per_metre, hub_stress, shaft_stress, hub_bore;
    };
    lame rings() const {
        const double d = metres(w.nominal);
        const double outer = metres(w.joint.hub_outside);
        const double inner = metres(w.joint.shaft_bore);
        const double eh = (*w.hole_made_of.youngs_modulus).value();
        const double es = (*w.shaft_made_of.youngs_modulus).value();
        const double hub = (outer * outer + d * d) / (outer * outer - d * d) + *w.hole_made_of.poissons_ratio;
        const double shaft =
            (d * d + inner * inner) / (d * d - inner * inner) - *w.shaft_made_of.poissons_ratio;
        const double q = d * d / (outer * outer);
        return {1 / (d * (hub / eh + shaft / es)), std::sqrt(3 + q * q) / (1 - q),
                inner > 0 ? 2 / (1 - inner * inner / (d * d)) : 1, d * hub / eh};
    }
    double strength(const material& m, const property<pressure>& stated) const {
        if (stated) return (*stated).value();
        if (m.least_yield_strength) return (*m.least_yield_strength).value();
        return m.yield_strength ? (*m.yield_strength).value() : -1;
    }
    /// Load or fluid over what the joint holds, and stress over strength: 0 or more margin in all is a yes.
    double pressed(length hole, length shaft, const thermal_state* s, want what) const {
        const lame r = rings();
        const double d = metres(w.nominal);
        const double area = pi * d * metres(w.joint.joint_length);
        const double smoothed =
            0.8 * metres(w.joint.roughness.hub.height() + w.joint.roughness.shaft.height());
        double margin = 1e9;
        for (const thermal_state* state : {static_cast<const thermal_state*>(nullptr), s})
            for (const grown& g : growths(state)) {
                const double u = metres(shaft - hole) + d * (g.shaft - g.hole);
                const double fluid = what == want::pressure_tight ? w.joint.of_fluid.value() : 0;
                const double held =
                    std::max(0.0, u - smoothed - fluid * r.hub_bore) * r.per_metre; // the drilling widens
                const double grip = held * area * w.joint.between.least;
                double load = w.joint.load.along.value();
                if (w.joint.load.turning.value() > 0)
                    load = std::hypot(load, 2 * w.joint.load.turning.value() / d);
                if (what == want::pressure_tight) {
                    load = fluid * pi * d * d / 4;
                    margin = std::min(margin, held / fluid - w.joint.safety.against_slipping);
                }
                margin = std::min(margin, grip / load - w.joint.safety.against_slipping);
                const double most = std::max(0.0, u) * r.per_metre;
                const double hub = strength(w.hole_made_of, w.joint.hub_may_bear);
                const double inner = strength(w.shaft_made_of, w.joint.shaft_may_bear);
                if (hub < 0 || inner < 0) return -1; // nobody can tell
                if (most == 0) continue;
                margin = std::min(margin, hub / (most * r.hub_stress) - w.joint.safety.against_yield);
                margin = std::min(margin, inner / (most * r.shaft_stress) - w.joint.safety.against_yield);
            }
        return margin;
    }

    double film_margin(length hole, length shaft) const {
        journal j{.diameter = w.nominal,
                  .width = w.film.width,
                  .clearance = diametral_clearance(hole - shaft),
                  .load = w.film.load,
                  .speed = w.speed,
                  .lubricant = w.liquid,
                  .oil_in = w.film.oil_in,
                  .roughness = w.film.roughness};
        if (w.states.empty()) {
            j.growth = {w.shaft_made_of.expansion.to_100_degC, w.hole_made_of.expansion.to_100_degC};
        } else {
            const window c = clearance(hole, shaft, false, true);
            j.clearance = clearance_window{length(quantity<metre>::from_value(c.least)),
                                           length(quantity<metre>::from_value(c.most))};
        }
        const auto f = film(j);
        if (!f || f->doubts.contains(film_doubt::beyond_the_table)) return -1;
        return metres(f->least_film() - f->limit_film) / metres(w.nominal) * 1e6;
    }

    /// 0 or more: it holds; how far from 0 says how sure rounding leaves it. In micrometres, or as a share.
    double margin(want what, length hole, length shaft) const {
        const window all = clearance(hole, shaft, true, true);
        const window cold = clearance(hole, shaft, true, false);
        switch (what) {
        case want::turns_freely: return (all.least - 1e-9) * 1e6;
        case want::never_seizes: return (all.least - metres(w.left_at_least)) * 1e6;
        case want::slides_without_shake: return std::min(all.least, metres(w.shake_at_most) - all.most) * 1e6;
        case want::stays_central: return (metres(w.shake_at_most) - all.most) * 1e6;
        case want::comes_apart_by_hand: return cold.least * 1e6;
        case want::runs_on_oil: return film_margin(hole, shaft);
        case want::holds_oil: {
            double worst = 0;
            if (w.states.empty()) worst = leak(hole, shaft, nullptr, cold.most);
            for (const thermal_state& s : w.states)
                worst = std::max(worst, leak(hole, shaft, &s, clearance(hole, shaft, &s).most));
            return 1 - worst / w.leak.at_most();
        }
        case want::never_moves:
        case want::pressure_tight: {
            double worst = w.states.empty() ? pressed(hole, shaft, nullptr, what) : 1e9;
            for (const thermal_state& s : w.states) worst = std::min(worst, pressed(hole, shaft, &s, what));
            return worst;
        }
        case want::presses_in: {
            const double force = std::max(0.0, metres(shaft - hole)) * rings().per_metre * pi *
                                 metres(w.nominal) * metres(w.joint.joint_length) * w.joint.between.most;
            return 1 - force / w.joint.press_at_most.value();
        }
        }
        return -1;
    }
    /// Of the worse end.
    double margin(want what, const fit& f) const {
        return std::min(margin(what, f.hole().lower_limit(), f.shaft().upper_limit()),
                        margin(what, f.hole().upper_limit(), f.shaft().lower_limit()));
    }
    int broken(const fit& f, double slack) const {
        int count = 0;
        w.must.for_each([&](want what) { count += margin(what, f) < slack ? 1 : 0; });
        return count;
    }
};

} // namespace fitwright_tests

#endif
