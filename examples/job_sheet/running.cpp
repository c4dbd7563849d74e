#include "running.hpp"

#include "figures.hpp"
#include <fitwright/io/source.hpp>

#include <fmt/format.h>

#include <algorithm>

namespace job_sheet {

namespace {

using fitwright::clearance_window;
using fitwright::length;

template <class Doubt> void add_doubts(fitwright::flags<Doubt> doubts, std::vector<std::string>& all) {
    doubts.for_each([&](Doubt d) {
        std::string words(in_words(d));
        if (std::find(all.begin(), all.end(), words) == all.end()) all.push_back(std::move(words));
    });
}

// ---- leak

/// Without a word about it, the pressure is on from one shot to the next.
double seconds_under_pressure(const fluid& f) {
    return f.seconds_under_pressure ? f.seconds_under_pressure->value : f.seconds_a_shot->value;
}

void add_leak(std::string where, const clearance_window& c, const pair& p, const job& j, leak_answer& a,
              std::vector<leak_row>& rows) {
    if (c.most <= length()) return; // tight: nothing leaks
    const clearance_window open{(std::max)(c.least, length::from_nanometres(1)), c.most};
    const auto lost = fitwright::leakage(plunger_of(p, j, p.shaft->limits->nominal(), open));
    if (!lost) {
        a.doubts.push_back(where + ": " + std::string(std::string_view(lost.error().message())));
        return;
    }
    add_doubts(lost->doubts, a.doubts);
    a.source = std::string(written(lost->from));
    rows.push_back({std::move(where), c, lost->percent_lost.least, lost->percent_lost.most,
                    lost->percent_lost.most <= a.budget_percent});
}

// ---- film

double in_um(length l) { return static_cast<double>(l.nanometres()) / 1000; }

/// A plain mineral oil, of which the grade says nothing more; common practice, no source.
constexpr double usual_index = 95;

std::string missing_for_a_film(const pair& p, const std::optional<heat_answer>& heat) {
    if (!p.load || !p.speed || !p.oil) return "it takes 'load', 'speed' and 'oil'";
    if (!p.land) return "it takes 'land', how long the bearing is";
    if (!heat || !heat->tightest) return "its clearance in the states of the job is not known";
    return {};
}

} // namespace

std::string percent(double share) {
    if (share < 0.01) return "0";
    return share >= 10 ? fmt::format("{:.0f}", share) : fmt::format("{:.2g}", share);
}

const film_row* film_answer::thinnest() const {
    const film_row* found = nullptr;
    for (const film_row& r : rows)
        if (r.film && (found == nullptr || r.film->least_film() < found->film->least_film())) found = &r;
    return found;
}

std::string missing_for_a_leak(const pair& p, const job& j) {
    if (!p.pressure || !p.leak_at_most || !p.land) return "it takes 'pressure', 'leak_at_most' and 'land'";
    if (!j.fluid) return "what leaks is not stated: [fluid]";
    if (!j.fluid->viscosity || !j.fluid->stroke || !j.fluid->seconds_a_shot)
        return "it takes the fluid's 'viscosity', 'stroke' and 'shot_every'";
    return {};
}

fitwright::plunger plunger_of(const pair& p, const job& j, length diameter,
                              const clearance_window& clearance) {
    return {.around = {.diameter = diameter,
                       .clearance = clearance,
                       .land = p.land->value,
                       .pressure_drop = p.pressure->value,
                       .viscosity = j.fluid->viscosity->value},
            .stroke = j.fluid->stroke->value,
            .under_pressure = fitwright::seconds(seconds_under_pressure(*j.fluid))};
}

std::optional<fitwright::fluid> oil_of(const pair& p) {
    const auto oil =
        fitwright::oil(fitwright::oil_kind::hydraulic, p.oil->value, fitwright::viscosity_index(usual_index));
    if (!oil) return std::nullopt;
    return *oil;
}

std::optional<leak_answer> leak_of(const pair& p, const std::optional<heat_answer>& heat,
                                   const std::optional<leading_answer>& leading, const job& j) {
    if (!p.wants_to(want::little_leak) || !p.hole || !p.shaft) return std::nullopt;
    leak_answer a;
    a.cannot_tell = missing_for_a_leak(p, j);
    if (a.cannot_tell.empty() && (!p.hole->limits || !p.shaft->limits))
        a.cannot_tell = "the pair has no sizes";
    if (!a.cannot_tell.empty()) return a;
    a.budget_percent = p.leak_at_most->value * 100;

    if (heat)
        for (const hot_row& r : heat->rows)
            if (r.clearance) add_leak(r.state, *r.clearance, p, j, a, a.states);
    const fitwright::fit at_20(*p.hole->limits, *p.shaft->limits);
    if (a.states.empty()) add_leak("20 C", {at_20.min_clearance(), at_20.max_clearance()}, p, j, a, a.states);
    for (const alternative& other : p.instead)
        add_leak(other.callout, {other.fit.min_clearance(), other.fit.max_clearance()}, p, j, a, a.instead);
    if (leading)
        for (const hole_tried& t : leading->tried) add_leak(t.what, t.clearance, p, j, a, a.instead);
    const auto greatest = fitwright::greatest_clearance(
        plunger_of(p, j, p.shaft->limits->nominal(), {at_20.min_clearance(), at_20.max_clearance()}),
        fitwright::percent{a.budget_percent});
    if (greatest) a.greatest_clearance = greatest->greatest;

    a.assumptions.push_back(
        fmt::format("the plunger anywhere between the middle and one side; viscosity {}{} in "
                    "every state",
                    j.fluid->viscosity->written,
                    j.fluid->viscosity_at ? " as at " + j.fluid->viscosity_at->written : ""));
    a.assumptions.push_back(
        j.fluid->seconds_under_pressure
            ? fmt::format("under pressure for {} of each shot", j.fluid->seconds_under_pressure->written)
            : fmt::format("under pressure all the {} from shot to shot: 'pressure_lasts' is not stated",
                          j.fluid->seconds_a_shot->written));
    return a;
}

std::optional<film_answer> film_of(const pair& p, const std::optional<heat_answer>& heat, const job& j) {
    if (!p.wants_to(want::oil_film) || !p.hole || !p.shaft) return std::nullopt;
    film_answer a;
    a.cannot_tell = missing_for_a_film(p, heat);
    if (!a.cannot_tell.empty()) return a;
    const length diameter = p.shaft->limits->nominal();
    const auto advice =
        fitwright::recommended_clearance(fitwright::running_use::oil_lubricated_journal, diameter);
    if (advice) a.advice = *advice;
    const auto oil =
        fitwright::oil(fitwright::oil_kind::hydraulic, p.oil->value, fitwright::viscosity_index(usual_index));
    if (!oil) {
        a.cannot_tell = oil.error().message();
        return a;
    }
    a.oil = fmt::format("{}, as a mineral oil of viscosity index {:.0f}", p.oil->written, usual_index);
    for (const state& s : j.states) {
        const auto row = std::find_if(heat->rows.begin(), heat->rows.end(),
                                      [&](const hot_row& r) { return r.state == s.id; });
        const auto at = temperature_of(p.hole->part, s, j);
        if (row == heat->rows.end() || !row->clearance || !at) continue;
        film_row made{.state = s.id, .film = {}, .no_film = {}};
        const auto film = fitwright::film({.diameter = diameter,
                                           .width = p.land->value,
                                           .clearance = *row->clearance,
                                           .load = fitwright::newtons(p.load->value),
                                           .speed = fitwright::revolutions_per_minute(p.speed->value),
                                           .lubricant = *oil,
                                           .oil_in = at->value});
        if (film) {
            made.film = *film;
            a.source = std::string(written(film->from));
        } else made.no_film = film.error().message();
        a.rows.push_back(std::move(made));
    }
    if (const film_row* const thinnest = a.thinnest()) {
        thinnest->film->doubts.for_each([&](fitwright::film_doubt d) {
            // The clearance here is that of the state.
            if (d != fitwright::film_doubt::clearance_taken_cold) add_doubts(fitwright::flags(d), a.doubts);
        });
        add_doubts(thinnest->film->viscosity_doubts, a.doubts);
    }
    return a;
}

std::vector<fact> facts_of(const leak_answer& a) {
    std::vector<fact> all;
    const auto say = [&](std::string words) { all.push_back({"leak", std::move(words)}); };
    if (!a.cannot_tell.empty()) {
        say("can't tell: " + a.cannot_tell);
        return all;
    }
    const auto in_words = [&](const leak_row& r) {
        return fmt::format("{}: {} um, {} to {} % of a shot{}", r.where, about_um(r.clearance),
                           percent(r.least_percent), percent(r.most_percent),
                           r.is_within_budget ? ""
                                              : fmt::format(": more than {} %", percent(a.budget_percent)));
    };
    for (const leak_row& r : a.states) say(in_words(r));
    for (const leak_row& r : a.instead) say("instead " + in_words(r));
    if (a.greatest_clearance)
        say(fmt::format("{} % is kept up to {} um of clearance", percent(a.budget_percent),
                        um(*a.greatest_clearance)));
    for (const std::string& one : a.assumptions) say(one);
    for (const std::string& d : a.doubts) all.push_back({"mind", d});
    if (!a.source.empty()) all.push_back({"figures", a.source});
    return all;
}

std::vector<fact> facts_of(const film_answer& a) {
    std::vector<fact> all;
    const auto say = [&](std::string words) { all.push_back({"oil film", std::move(words)}); };
    if (!a.cannot_tell.empty()) {
        say("can't tell: " + a.cannot_tell);
        return all;
    }
    if (const film_row* const r = a.thinnest()) {
        const fitwright::film_result& f = *r->film;
        say(fmt::format("thinnest in the state '{}': {:.2g} um, where {:.2g} um are wanted", r->state,
                        in_um(f.least_film()), in_um(f.limit_film)));
        say(std::string(std::string_view(in_words(f.regime))));
    }
    for (const film_row& r : a.rows)
        if (!r.film) say(fmt::format("state '{}': {}", r.state, r.no_film));
    if (a.advice) {
        const clearance_window& w = a.advice->window;
        say(fmt::format("catalogue clearance {} um: {}",
                        w.least == w.most ? um(w.most) : um(w.least) + " to " + um(w.most),
                        std::string(written(a.advice->from))));
    }
    say(a.oil);
    for (const std::string& d : a.doubts) all.push_back({"mind", d});
    if (!a.source.empty()) all.push_back({"figures", a.source});
    return all;
}

} // namespace job_sheet
