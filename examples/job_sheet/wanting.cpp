#include "wanting.hpp"

#include "heat.hpp"
#include "leading.hpp"
#include "pressing.hpp"
#include "running.hpp"
#include "stuff.hpp"

#include <algorithm>
#include <variant>

namespace job_sheet {

namespace {

using fitwright::length;
using fitwright::side;

/// Whether a part stays as it is: bought, found, measured, or drawn while the other is left to choose.
template <side Side> bool stays(const role<Side>& r, const pair& p) {
    return r.limits && (r.measured || r.part.supply != supply::made || (p.is_open() && r.has_own_size));
}

/// A bush in its seat grows neither as its own metal nor as the seat's. What its bore does there in the
/// states of the job, as if it were a metal of its own.
fitwright::material held(const fitwright::material& free, const pair& p, const pair& seat, const job& j) {
    double least = 0;
    double most = 0;
    bool any = false;
    for (const state& s : j.states) {
        const auto at = temperature_of(p.hole->part, s, j);
        const auto moves = counts_for(p, s) ? bore_moves_in(seat, s, j) : std::nullopt;
        if (!at || !moves) continue;
        const double kelvin = at->value.value() - 20;
        if (kelvin > -1 && kelvin < 1) continue;
        const double bore = seat.shaft->bore->value.in<fitwright::metre>();
        for (const length move : {moves->least, moves->most}) {
            const double growth = move.in<fitwright::metre>() / (bore * kelvin);
            least = any ? (std::min)(least, growth) : growth;
            most = any ? (std::max)(most, growth) : growth;
            any = true;
        }
    }
    fitwright::material made = free;
    if (!any) return made;
    const auto per_kelvin = [&](double e) {
        return fitwright::property<fitwright::expansion_coefficient>(fitwright::ppm_per_kelvin(e * 1e6),
                                                                     free.expansion.to_100_degC.how_sure());
    };
    made.expansion = {.to_100_degC = per_kelvin((least + most) / 2),
                      .lowest = per_kelvin(least),
                      .highest = per_kelvin(most)};
    return made;
}

} // namespace

std::optional<length> nominal_of(const pair& p) {
    if (p.size) return p.size->value;
    const auto of = [](const auto& r) -> std::optional<length> {
        if (!r || !r->limits) return std::nullopt;
        return r->measured ? whole_mm_near(r->limits->nominal()) : r->limits->nominal();
    };
    if (p.hole && p.hole->limits && !p.hole->measured) return of(p.hole);
    if (p.shaft && p.shaft->limits && !p.shaft->measured) return of(p.shaft);
    const auto hole = of(p.hole);
    return hole ? hole : of(p.shaft);
}

void wanting::ask(want mine, fitwright::want theirs) {
    asked_.push_back({mine, theirs});
    wants_.must |= theirs;
}

void wanting::ask_for_shake(const pair& p, want mine) {
    if (p.shake_at_most) ask(mine, fitwright::want::stays_central);
    else unjudged_.push_back({mine, "shake_at_most = \"30 um\""});
}

void wanting::ask_for_a_joint(const pair& p) {
    const length n = wants_.nominal;
    const fitwright::fit line_to_line(fitwright::hole_limits::between(n, n),
                                      fitwright::shaft_limits::between(n, n));
    const auto joint = joint_of(p, line_to_line);
    if (const auto* const missing = std::get_if<std::string>(&joint)) {
        for (const want w : {want::stays_put, want::no_creep, want::pressure_tight})
            if (p.wants_to(w)) unjudged_.push_back({w, *missing});
        return;
    }
    const auto& together = std::get<fitwright::joint>(joint);
    wants_.joint = {.hub_outside = together.hub.outside,
                    .shaft_bore = together.shaft.bore,
                    .joint_length = together.joint_length,
                    .roughness = together.roughness,
                    .between = together.between,
                    .safety = {.against_slipping = p.safety.value_or(1)}};
    any_grip_will_do_ = !p.holds;
    wants_.joint.load.along = fitwright::newtons(p.holds ? p.holds->value : 1);
    if (p.pressure) wants_.joint.of_fluid = p.pressure->value;
    for (const want w : {want::stays_put, want::no_creep})
        if (p.wants_to(w)) ask(w, fitwright::want::never_moves);
    if (p.wants_to(want::pressure_tight) && p.pressure)
        ask(want::pressure_tight, fitwright::want::pressure_tight);
    if (p.press_at_most) {
        wants_.joint.press_at_most = fitwright::newtons(p.press_at_most->value);
        ask(want::goes_in, fitwright::want::presses_in);
    }
}

void wanting::ask_for_a_leak(const pair& p, const job& j) {
    if (const std::string missing = missing_for_a_leak(p, j); !missing.empty()) {
        unjudged_.push_back({want::little_leak, missing});
        return;
    }
    wants_.leak = fitwright::leak_budget(plunger_of(p, j, wants_.nominal, {}),
                                         fitwright::percent{p.leak_at_most->value * 100});
    ask(want::little_leak, fitwright::want::holds_oil);
}

void wanting::ask_for_a_film(const pair& p) {
    const auto oil = p.oil ? oil_of(p) : std::nullopt;
    if (!p.load || !p.speed || !oil || !p.land || states_.empty()) {
        unjudged_.push_back({want::oil_film, "load, speed, oil, land and the states of the job"});
        return;
    }
    const auto warmer = [](const auto& a, const auto& b) { return a.hole.value() < b.hole.value(); };
    wants_.film = {.width = p.land->value,
                   .load = fitwright::newtons(p.load->value),
                   .oil_in = std::max_element(states_.begin(), states_.end(), warmer)->hole};
    wants_.speed = fitwright::revolutions_per_minute(p.speed->value);
    wants_.liquid = *oil;
    ask(want::oil_film, fitwright::want::runs_on_oil);
}

void wanting::take_states(const pair& p, const job& j) {
    const reckoned hole = material_of(p.hole->part);
    const reckoned shaft = material_of(p.shaft->part);
    if (!hole.material || !shaft.material) return;
    wants_.hole_made_of = *hole.material;
    wants_.shaft_made_of = *shaft.material;
    if (const pair* const seat = seat_of(p.hole->part, j))
        wants_.hole_made_of = held(*hole.material, p, *seat, j);
    for (const state& s : j.states) {
        const auto hole_at = temperature_of(p.hole->part, s, j);
        const auto shaft_at = temperature_of(p.shaft->part, s, j);
        if (counts_for(p, s) && hole_at && shaft_at)
            states_.push_back({s.id, hole_at->value, shaft_at->value});
    }
    if (j.drawer) tools_ = j.drawer->tools();
}

void wanting::take_lead(const pair& p) {
    const bool hole_stays = stays(*p.hole, p);
    const bool shaft_stays = stays(*p.shaft, p);
    leaves_a_choice_ = !hole_stays || !shaft_stays;
    hole_is_made_ = !p.hole->measured && p.hole->part.supply == supply::made;
    if (hole_stays && p.hole->measured) wants_.leads = p.hole->reading();
    else if (hole_stays) wants_.leads = *p.hole->limits;
    else if (shaft_stays && p.shaft->measured) wants_.leads = p.shaft->reading();
    else if (shaft_stays) wants_.leads = *p.shaft->limits;
}

void wanting::ask(const pair& p, const job& j) {
    using theirs = fitwright::want;
    comes_off_ = p.wants_to(want::comes_off);
    if (p.shake_at_most) wants_.shake_at_most = p.shake_at_most->value;
    if (p.left_at_least) wants_.left_at_least = p.left_at_least->value;
    const bool leaves_some = p.left_at_least && !states_.empty();
    for (const want w : p.wants) {
        switch (w) {
        case want::slides:
        case want::turns:
        case want::never_rubs: ask(w, theirs::turns_freely); break;
        case want::passes_heat: // the closer the better
            ask(w, p.shake_at_most ? theirs::slides_without_shake : theirs::turns_freely);
            break;
        case want::never_seizes: ask(w, leaves_some ? theirs::never_seizes : theirs::turns_freely); break;
        case want::no_shake:
        case want::centred: ask_for_shake(p, w); break;
        case want::comes_off_by_hand: // cold, unless the job says in which states
            ask(w, p.states.empty() ? theirs::comes_apart_by_hand : theirs::turns_freely);
            break;
        case want::little_leak: ask_for_a_leak(p, j); break;
        case want::oil_film: ask_for_a_film(p); break;
        case want::stays_put:
        case want::no_creep:
        case want::pressure_tight: // all three at once, below
        case want::comes_off:      // the sheet's own: a puller may help
        case want::goes_in:
        case want::end_float: break;
        }
    }
    if (p.wants_to(want::stays_put) || p.wants_to(want::no_creep) || p.wants_to(want::pressure_tight))
        ask_for_a_joint(p);
}

std::optional<wanting> wanting::of(const pair& p, const job& j) {
    const auto nominal = nominal_of(p);
    if (!p.hole || !p.shaft || !nominal) return std::nullopt;
    wanting made;
    made.wants_.nominal = *nominal;
    if (j.finest) made.wants_.finest = j.finest->value;
    made.take_states(p, j);
    made.take_lead(p);
    made.ask(p, j);
    return made;
}

fitwright::wants wanting::to_judge() const {
    fitwright::wants all = wants_;
    all.states = states_;
    all.leads = {};
    return all;
}

void wanting::give_up(fitwright::want theirs) {
    std::erase_if(asked_, [&](const asked_want& one) { return one.theirs == theirs; });
    if (theirs == fitwright::want::comes_apart_by_hand) comes_off_ = false;
    fitwright::flags<fitwright::want> others;
    for (const asked_want& one : asked_) others |= one.theirs;
    wants_.must = others;
}

fitwright::wants wanting::to_choose() const {
    fitwright::wants all = wants_;
    all.states = states_;
    if (hole_is_made_) all.drawer = tools_;
    if (comes_off_) all.must |= fitwright::want::comes_apart_by_hand; // what is chosen needs no puller
    return all;
}

} // namespace job_sheet
