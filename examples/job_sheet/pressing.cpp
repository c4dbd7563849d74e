#include "pressing.hpp"

#include "figures.hpp"
#include "heat.hpp"
#include "stuff.hpp"
#include <fitwright/io/source.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <variant>

namespace job_sheet {

namespace {

using fitwright::length;

constexpr length one_um = length::from_nanometres(1'000);
/// So small a part is as warm as its seat before it is in; common practice, no source.
constexpr length too_small_to_shrink = length::from_nanometres(15'000'000);

/// The pair holds by its interference: it is tight, or is to stay put though it may come out loose.
bool holds_by_itself(const pair& p, const fitwright::fit& f) {
    const bool is_to_hold =
        p.wants_to(want::stays_put) || p.wants_to(want::no_creep) || p.wants_to(want::pressure_tight);
    return f.kind() == fitwright::fit_kind::interference ||
           (is_to_hold && f.kind() == fitwright::fit_kind::transition);
}

/// The outside of the hub: as stated, or by its thinnest wall, or the largest circle within its envelope.
std::optional<length> outside_of(const role<fitwright::side::hole>& hole, length nominal) {
    if (hole.outside) return hole.outside->value;
    if (hole.wall) return nominal + hole.wall->value * 2;
    std::optional<length> least;
    for (const auto& one : hole.part.envelope)
        if (!least || one.value < *least) least = one.value;
    return least;
}

void take(const fitwright::press_result& r, pressing_answer& a) {
    r.doubts.for_each([&](fitwright::press_doubt d) {
        const std::string words(in_words(d));
        if (std::find(a.doubts.begin(), a.doubts.end(), words) == a.doubts.end()) a.doubts.push_back(words);
    });
    a.take_care |= r.take_care;
}

/// The joint in each state of the job.
void go_through_states(const pair& p, const job& j, fitwright::joint joint, pressing_answer& a) {
    for (const state& s : j.states) {
        if (!counts_for(p, s)) continue;
        const auto hub_at = temperature_of(p.hole->part, s, j);
        const auto shaft_at = temperature_of(p.shaft->part, s, j);
        if (!hub_at || !shaft_at) continue;
        joint.hub.at = hub_at->value;
        joint.shaft.at = shaft_at->value;
        const auto pressed = fitwright::press(joint);
        if (!pressed) {
            a.doubts.push_back(
                fmt::format("state '{}': {}", s.id, std::string_view(pressed.error().message())));
            continue;
        }
        take(*pressed, a);
        pressed_row row{
            .state = s.id, .joint = pressed->in_service, .bore_moves = pressed->bore_moves_by, .plug = {}};
        if (p.pressure && p.wants_to(want::pressure_tight)) {
            const auto plug = fitwright::plug_under_pressure(
                joint, {.of_fluid = p.pressure->value, .safety = p.safety.value_or(1)});
            if (plug) row.plug = plug->in_service;
        }
        a.rows.push_back(std::move(row));
    }
}

/// What the bore of a bush is to be: the limits of the hole that it is in another pair.
void add_bush(const pair& p, const job& j, pressing_answer& a) {
    if (!p.shaft->bore) return;
    bush_answer b{.wanted_by = {}, .way = {}, .bore = p.shaft->bore->value};
    for (const pair& other : j.pairs) {
        if (!other.hole || other.hole->part.id != p.shaft->part.id) continue;
        if (!other.hole->limits) continue;
        const auto way = fitwright::ream_after_pressing(*other.hole->limits, *a.at_20);
        if (!way) continue;
        b.wanted_by = other.id;
        b.way = *way;
    }
    a.bush = b;
}

// ---- in words

/// Three figures, as what rests on friction and handbooks deserves.
std::string about(double number) {
    return number >= 100 ? fmt::format("{:.0f}", number) : fmt::format("{:.3g}", number);
}

std::string megapascals(const fitwright::range<fitwright::figure<fitwright::pressure>>& r) {
    return fmt::format("{} to {} MPa", about(r.least.value() / 1e6), about(r.most.value() / 1e6));
}

std::string newtons(double n) { return n < 1000 ? about(n) + " N" : about(n / 1000) + " kN"; }

std::string about(length least, length most) { return about_um({least, most}) + " um"; }

/// Down to a tenth, so that nothing looks stronger than it is.
std::string margin_in_words(double margin) { return fmt::format("{:.1f}", std::floor(margin * 10) / 10); }

std::string stress(std::string_view part, const worst_wall& w) {
    std::string words =
        fmt::format("{} up to {} MPa {}", part, about(w.wall.greatest.value() / 1e6), w.where);
    if (const auto margin = w.wall.margin())
        words += fmt::format(", it bears {} times that", margin_in_words(*margin));
    else words += ", what it bears is not known";
    return words;
}

std::string kelvin(const fitwright::temperature& t) { return fmt::format("{:.0f} C", t.value()); }

void add_drop_in(const pressing_answer& a, std::vector<fact>& all) {
    if (a.at_20->diameter < too_small_to_shrink)
        all.push_back({"drop in",
                       "press it: so small a part is warm or cold for a second or two only (common "
                       "practice, no source); by temperature it would be:"});
    if (!a.no_drop_in.empty()) all.push_back({"drop in", a.no_drop_in});
    if (!a.drop_in) return;
    const fitwright::shrink_plan& plan = *a.drop_in;
    std::string words(in_words(plan.advice));
    const fitwright::shrink_way& way = plan.best();
    if (!plan.missing_figure.empty()) words += ": " + std::string(plan.missing_figure);
    const bool is_possible = way.is_possible();
    if (way.hub && *way.hub > fitwright::celsius(20.5))
        words += (is_possible ? ": hub at " : "; heat alone would take the hub to ") + kelvin(*way.hub);
    if (plan.hub_limit)
        words += fmt::format("; the hub no hotter than {} ({})", kelvin(*plan.hub_limit),
                             std::string_view(plan.hub_limit_reason));
    words += fmt::format("; leaves {} um while it goes in", um(plan.assembly_clearance));
    all.push_back({"drop in", words});
    if (is_possible)
        all.push_back({"drop in", "not worked out: " + std::string(fitwright::shrink_plan::not_covered)});
}

/// A plug is as good as in the state in which it seals least.
void add_plug(const pressing_answer& a, const pair& p, std::vector<fact>& all) {
    const pressed_row* worst = nullptr;
    for (const pressed_row& r : a.rows)
        if (r.plug && (worst == nullptr || r.plug->seal_margin.least < worst->plug->seal_margin.least))
            worst = &r;
    if (worst == nullptr) return;
    all.push_back(
        {"plug",
         fmt::format("worst in the state '{}': holds {} {}: {}, seals: {}; grip at least {} times the push, "
                     "joint pressure at least {} times the fluid's",
                     worst->state, p.pressure->written,
                     p.safety ? fmt::format("{:g} times over", *p.safety)
                              : std::string("without reserve (safety = 1)"),
                     std::string_view(in_words(worst->plug->holds)),
                     std::string_view(in_words(worst->plug->seals)), about(worst->plug->grip_margin.least),
                     about(worst->plug->seal_margin.least))});
}

/// To a tenth of a micrometre, upwards.
std::string um_up(length l) {
    const length tenth = length::from_nanometres(100);
    return um(tenth * multiples_above(l, tenth));
}

void add_bush(const pressing_answer& a, std::vector<fact>& all) {
    if (!a.bush) return;
    const auto& closes = a.at_20->at_20.bore_closes_by;
    const auto say = [&](std::string words) { all.push_back({"bore", std::move(words)}); };
    say(fmt::format("of {} mm closes by {} on diameter when pressed", mm(a.bush->bore),
                    about(closes.least, closes.most)));
    if (const auto& way = a.bush->way) {
        if (way->may_yield)
            say(fmt::format(
                "press first, then ream or bore to size: the bush yields and closes further than that; "
                "before pressing no larger than {} mm",
                mm(one_um * multiples_below(way->largest_before_reaming, one_um))));
        else if (way->ream_after_pressing)
            say(fmt::format(
                "press first, then ream or bore to size: the spread of {} um is more than the {} um "
                "of tolerance that pair {} gives; before pressing no larger than {} mm",
                um_up(closes.most - closes.least), um(way->tolerance), a.bush->wanted_by,
                mm(one_um * multiples_below(way->largest_before_reaming, one_um))));
        else
            say(fmt::format("bored before pressing to {} to {} mm it then is what pair {} wants",
                            mm(one_um * multiples_above(way->before.lower_limit(), one_um)),
                            mm(one_um * multiples_below(way->before.upper_limit(), one_um)),
                            a.bush->wanted_by));
    } else {
        say("finish it after pressing");
    }
    std::string moves;
    for (const pressed_row& r : a.rows)
        if (r.bore_moves != fitwright::range<length>{})
            moves += fmt::format("{}{} {}", moves.empty() ? "" : ", ", r.state,
                                 about_um({r.bore_moves.least, r.bore_moves.most}));
    if (!moves.empty()) say("in its seat it moves from 20 C on by, um: " + moves);
}

} // namespace

const pressed_row* pressing_answer::weakest() const {
    const pressed_row* found = nullptr;
    for (const pressed_row& r : rows)
        if (found == nullptr || r.joint.joint_pressure.least < found->joint.joint_pressure.least) found = &r;
    return found;
}

namespace {

worst_wall worst_of(const pressing_answer& a, fitwright::pressed_wall fitwright::pressed_state::*which) {
    worst_wall worst{a.at_20->at_20.*which, "at 20 C"};
    for (const pressed_row& r : a.rows)
        if ((r.joint.*which).greatest > worst.wall.greatest)
            worst = {r.joint.*which, fmt::format("in the state '{}'", r.state)};
    return worst;
}

} // namespace

worst_wall pressing_answer::hub() const { return worst_of(*this, &fitwright::pressed_state::hub); }
worst_wall pressing_answer::shaft() const { return worst_of(*this, &fitwright::pressed_state::shaft); }

std::optional<pressing_answer> pressing_of(const pair& p, const job& j) {
    if (!p.hole || !p.shaft || !p.hole->limits || !p.shaft->limits) return std::nullopt;
    const fitwright::fit f(*p.hole->limits, *p.shaft->limits);
    if (!holds_by_itself(p, f)) return std::nullopt;
    pressing_answer a;
    const auto joint = joint_of(p, f);
    if (const auto* const missing = std::get_if<std::string>(&joint)) {
        a.cannot_tell = *missing;
        return a;
    }
    const auto& together = std::get<fitwright::joint>(joint);
    const auto at_20 = fitwright::press(together);
    if (!at_20) {
        a.cannot_tell = at_20.error().message();
        return a;
    }
    a.at_20 = *at_20;
    take(*at_20, a);
    a.sources = {std::string(written(at_20->from)),
                 "friction: " + std::string(written(at_20->friction_from))};
    go_through_states(p, j, together, a);
    add_bush(p, j, a);
    const auto drop_in = fitwright::shrink_temperatures(f, together.hub.made_of, together.shaft.made_of);
    if (drop_in) {
        a.drop_in = *drop_in;
        a.take_care |= drop_in->take_care;
    } else a.no_drop_in = "can't tell: " + std::string(drop_in.error().message());
    return a;
}

std::variant<fitwright::joint, std::string> joint_of(const pair& p, const fitwright::fit& f) {
    const reckoned hub = material_of(p.hole->part);
    const reckoned shaft = material_of(p.shaft->part);
    if (!hub.material) return hub.words;
    if (!shaft.material) return shaft.words;
    const auto outside = outside_of(*p.hole, f.hole().nominal());
    if (!outside)
        return fmt::format(
            "what is around the hole of the {} is not stated: outside = \"30 mm\" or wall = \"6 mm\"",
            p.hole->part.name);
    if (!p.land) return std::string("how long the parts touch is not stated: land = \"12 mm\"");
    const fitwright::friction_pair between{hub.material->family, shaft.material->family,
                                           fitwright::joined_by::pressing, fitwright::seat_surface::dry};
    fitwright::joint j{.seat = f,
                       .hub = {.made_of = *hub.material, .outside = *outside},
                       .shaft = {.made_of = *shaft.material},
                       .joint_length = p.land->value,
                       .between = fitwright::friction_for(between)};
    if (p.hole->part.rz) j.roughness.hub = p.hole->part.rz->value;
    if (p.shaft->part.rz) j.roughness.shaft = p.shaft->part.rz->value;
    if (p.shaft->bore) j.shaft.bore = p.shaft->bore->value;
    return j;
}

const pair* seat_of(const part& bush, const job& j) {
    for (const pair& p : j.pairs)
        if (p.hole && p.shaft && p.shaft->part.id == bush.id && p.shaft->bore && p.hole->limits &&
            p.shaft->limits && holds_by_itself(p, fitwright::fit(*p.hole->limits, *p.shaft->limits)))
            return &p;
    return nullptr;
}

std::optional<fitwright::range<length>> bore_moves_in(const pair& seat, const state& s, const job& j) {
    auto joint = joint_of(seat, fitwright::fit(*seat.hole->limits, *seat.shaft->limits));
    const auto hub_at = temperature_of(seat.hole->part, s, j);
    const auto shaft_at = temperature_of(seat.shaft->part, s, j);
    auto* const together = std::get_if<fitwright::joint>(&joint);
    if (together == nullptr || !hub_at || !shaft_at) return std::nullopt;
    together->hub.at = hub_at->value;
    together->shaft.at = shaft_at->value;
    const auto pressed = fitwright::press(*together);
    if (!pressed) return std::nullopt;
    return pressed->bore_moves_by;
}

std::vector<fact> facts_of(const pressing_answer& a, const pair& p) {
    std::vector<fact> all;
    if (!a.at_20) {
        all.push_back({"pressed", "can't tell: " + a.cannot_tell});
        return all;
    }
    const fitwright::pressed_state& cold = a.at_20->at_20;
    all.push_back({"pressed", fmt::format("joint pressure {} at 20 C", megapascals(cold.joint_pressure))});
    const pressed_row* const weakest = a.weakest();
    if (weakest != nullptr)
        all.push_back({"pressed", fmt::format("weakest in the state '{}': {}", weakest->state,
                                              megapascals(weakest->joint.joint_pressure))});
    std::string force =
        "with up to " + newtons(a.at_20->press_in_force.value()) + ", growing evenly with the depth";
    if (a.at_20->press_capacity > a.at_20->press_in_force)
        force += "; have a press of " + newtons(a.at_20->press_capacity.value());
    all.push_back({"press in", std::move(force)});
    const fitwright::pressed_state& grips = weakest != nullptr ? weakest->joint : cold;
    all.push_back({"grip", grips.may_let_go()
                               ? std::string("none is left at the least interference and friction")
                               : fmt::format("at least {} along, or {} N m turning",
                                             newtons(grips.axial_grip.least.value()),
                                             about(grips.turning_grip.least.value()))});
    if (!p.hole->part.rz || !p.shaft->part.rz) {
        const length least = grips.interference.least.value;
        if (least > length())
            all.push_back(
                {"grip", fmt::format("all this as if the seats were perfectly smooth, since their rz is not "
                                     "stated: nothing is left of it from {} um of Rz on, both together",
                                     um(one_um * multiples_below(least * 5 / 4, one_um)))});
    }
    all.push_back({"stress", stress("hole part", a.hub()) + "; " + stress("shaft part", a.shaft())});
    add_plug(a, p, all);
    add_bush(a, all);
    add_drop_in(a, all);
    for (const std::string& d : a.doubts) all.push_back({"mind", d});
    for (const std::string& s : a.sources) all.push_back({"figures", s});
    return all;
}

} // namespace job_sheet
