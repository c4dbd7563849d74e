#include "pictures.hpp"

#include "figures.hpp"
#include "heat.hpp"
#include "pressing.hpp"
#include "wanting.hpp"
#include <fitwright/picture.hpp>

#include <algorithm>
#include <variant>

namespace job_sheet {

namespace {

using namespace fitwright;

written_unit unit_of(units_shown units) {
    return units == units_shown::inch ? written_unit::in : written_unit::mm;
}

const part_answer* part_with_size(const pair_answer& a, std::string_view role) {
    for (const part_answer& p : a.parts)
        if (p.role == role && p.size) return &p;
    return nullptr;
}

template <side Side> shown_part<Side> shown(const part_answer* p) {
    if (p == nullptr) return {};
    shown_part<Side> made{.name = p->name, .is_measured = p->size->measured};
    if (p->size->target) made.target = *p->size->target;
    return made;
}

template <side Side> size_limits<Side> limits_or_none(const std::optional<role<Side>>& r) {
    return r && r->limits ? *r->limits : size_limits<Side>();
}

/// The readings of one part stand as a mark in its interval.
template <side Side> void mark_reading(const pair_answer& a, std::string_view role, shown_part<Side>& of) {
    for (const reading_answer& r : a.readings)
        if (r.role == role) of.reading = measured<Side>(r.reading, r.uncertainty);
}

template <class Picture> void add(const Picture& p, std::string caption, std::vector<drawn>& all) {
    drawn one{.svg = {}, .caption = std::move(caption)};
    const auto made = draw(p, [&](text piece) { one.svg.append(piece.data(), piece.size()); });
    if (made) all.push_back(std::move(one));
}

std::optional<fit> fit_of(const pair& p) {
    if (!p.hole || !p.shaft || !p.hole->limits || !p.shaft->limits) return std::nullopt;
    return fit(*p.hole->limits, *p.shaft->limits);
}

/// Whether a state turns clearance into interference, or the other way, or leaves less than a quarter of either.
bool heat_decides(const pair_answer& a) {
    if (!a.heat || !a.heat->tightest || !a.clearance) return false;
    const length least = a.heat->rows[*a.heat->tightest].clearance->least;
    const length most = a.heat->rows[*a.heat->loosest].clearance->most;
    if (a.clearance->kind == fit_kind::clearance) return least < a.clearance->least / 4;
    return a.clearance->kind == fit_kind::interference && most > a.clearance->greatest / 4;
}

} // namespace

std::vector<drawn> picture_of_sizes(const pair_answer& a, const job& j, units_shown units) {
    const part_answer* const hole = part_with_size(a, "hole");
    const part_answer* const shaft = part_with_size(a, "shaft");
    std::vector<drawn> all;
    if (a.asked.stack || (hole == nullptr && shaft == nullptr)) return all;
    zone_picture p{.of = {limits_or_none(a.asked.hole), limits_or_none(a.asked.shaft)},
                   .hole = shown<side::hole>(hole),
                   .shaft = shown<side::shaft>(shaft),
                   .unit = unit_of(units),
                   .names_doubts = false};
    if (shaft == nullptr) p.only = side::hole;
    if (hole == nullptr) p.only = side::shaft;
    mark_reading(a, "hole", p.hole);
    mark_reading(a, "shaft", p.shaft);
    const auto w = wanting::of(a.asked, j);
    if (hole != nullptr && shaft != nullptr && heat_decides(a) && w) {
        const wants all_wants = w->to_judge();
        const std::string& tightest = a.heat->rows[*a.heat->tightest].state;
        for (const thermal_state& s : all_wants.states) {
            if (std::string_view(s.name) != tightest) continue;
            const auto hot =
                at_temperature(p.of, {all_wants.hole_made_of, s.hole}, {all_wants.shaft_made_of, s.shaft});
            if (!hot) continue;
            p.hot = *hot;
            p.hot_state = s.name;
        }
    }
    add(p, "Sizes at 20 \u00B0C", all);
    return all;
}

std::vector<drawn> picture_of_heat(const pair_answer& a, const job& j, units_shown units) {
    std::vector<drawn> all;
    const auto f = fit_of(a.asked);
    const auto w = wanting::of(a.asked, j);
    if (!f || !w || !heat_decides(a)) return all;
    const wants all_wants = w->to_judge();
    if (all_wants.states.empty() || all_wants.states.size() > heat_picture::most_states) return all;
    add(heat_picture{.of = *f,
                     .hole = all_wants.hole_made_of,
                     .shaft = all_wants.shaft_made_of,
                     .states = all_wants.states,
                     .unit = unit_of(units),
                     .names_doubts = false},
        "Clearance from state to state", all);
    return all;
}

std::vector<drawn> picture_of_pressing(const pair_answer& a, const job& j) {
    std::vector<drawn> all;
    const auto f = fit_of(a.asked);
    if (!f || !a.pressing || !a.pressing->at_20 || !a.pressing->bush) return all;
    auto made = joint_of(a.asked, *f);
    auto* const together = std::get_if<joint>(&made);
    if (together == nullptr) return all;
    std::string caption = "Pressure, and how far the bore closes";
    if (const pressed_row* const weakest = a.pressing->weakest()) {
        for (const state& s : j.states) {
            const auto hub_at = temperature_of(a.asked.hole->part, s, j);
            const auto shaft_at = temperature_of(a.asked.shaft->part, s, j);
            if (s.id != weakest->state || !hub_at || !shaft_at) continue;
            together->hub.at = hub_at->value;
            together->shaft.at = shaft_at->value;
            caption += "; in service: " + s.id;
        }
    }
    add(press_picture{.of = *together, .names_doubts = false}, caption, all);
    return all;
}

std::vector<drawn> picture_of_chance(const pair_answer& a, units_shown units) {
    std::vector<drawn> all;
    const auto f = fit_of(a.asked);
    if (!f || !a.chance) return all;
    add(chance_picture{.of = *f,
                       .spread = spread::both(size_distribution::uniform()),
                       .window = {f->min_clearance(), length()},
                       .unit = unit_of(units),
                       .names_doubts = false},
        "How often it comes out tight, sizes spread evenly", all);
    return all;
}

std::vector<drawn> picture_of_plan(const pair_answer& a, units_shown units) {
    std::vector<drawn> all;
    if (!a.making || !a.making->plan || a.making->plan->steps().size() < 4) return all;
    add(plan_picture{.of = *a.making->plan, .unit = unit_of(units), .names_doubts = false},
        "The hole, step by step", all);
    return all;
}

} // namespace job_sheet
