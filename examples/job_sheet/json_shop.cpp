#include "json_shop.hpp"

#include "figures.hpp"
#include "read_pair.hpp"
#include <fitwright/io/source.hpp>

namespace job_sheet {

namespace {

using fitwright::length;
using nlohmann::ordered_json;

ordered_json from_to(length lower, length upper) {
    return {{"lower", size_in_json(lower)}, {"upper", size_in_json(upper)}};
}

ordered_json clearance(fitwright::clearance_window w) {
    return {{"least", difference_in_json(w.least)}, {"most", difference_in_json(w.most)}};
}

std::string in_full(const fitwright::source& s) { return std::string(written(s)); }

ordered_json step_in_json(const fitwright::hole_step& s) {
    ordered_json o = {{"operation", std::string(in_words(s.operation))},
                      {"tool", std::string(s.tool.name())},
                      {"decides_size", s.decides_size},
                      {"put_right", std::string(s.put_right())}};
    if (s.operation == fitwright::hole_operation::centre) return o;
    o["least"] = size_in_json(s.least);
    o["mean"] = size_in_json(s.mean);
    o["most"] = size_in_json(s.most);
    if (!s.decides_size) {
        o["counted_stock"] = size_in_json(s.counted_stock);
        o["least_stock"] = size_in_json(s.least_stock);
        o["most_stock"] = size_in_json(s.most_stock);
        o["wanted_stock"] = from_to(s.wanted_stock.least, s.wanted_stock.most);
    }
    o["source"] = in_full(s.origin());
    o["note"] = std::string(s.note);
    return o;
}

ordered_json making_in_json(const making_answer& m) {
    ordered_json o = {{"material", m.material}};
    if (m.reamer.exist()) {
        o["reamer"] = from_to(m.reamer.lower_limit(), m.reamer.upper_limit());
        o["reamer"]["source"] = in_full(m.reamer.origin());
    }
    o["reamers_that_suit"] = m.suiting;
    if (m.plan) {
        o["plan"] = ordered_json::array();
        for (const fitwright::hole_step& s : m.plan->steps()) o["plan"].push_back(step_in_json(s));
    }
    if (!m.no_plan.empty()) o["no_plan"] = m.no_plan;
    return o;
}

ordered_json gauge_in_json(const gauge_answer& g) {
    ordered_json o = {{"role", g.role}};
    if (g.sizes) {
        o["go"] = from_to(g.sizes->go_lower, g.sizes->go_upper);
        o["not_go"] = from_to(g.sizes->not_go_lower, g.sizes->not_go_upper);
        o["worn"] = size_in_json(g.sizes->worn);
        o["source"] = g.sizes->source;
    }
    o["remark"] = g.remark;
    return o;
}

ordered_json reading_in_json(const reading_answer& r) {
    return {{"role", r.role},
            {"reading", r.written},
            {"instrument", r.instrument},
            {"uncertainty", difference_in_json(r.uncertainty)},
            {"verdict", std::string(in_words(r.verdict))},
            {"would_do", r.would_do}};
}

ordered_json tried_in_json(const hole_tried& t) {
    return {{"hole", t.what},
            {"limits", from_to(t.lower, t.upper)},
            {"clearance", clearance(t.clearance)},
            {"sure", t.is_sure}};
}

ordered_json happening_in_json(const fitwright::common_temperature& t) {
    ordered_json o = {{"outcome", std::string(in_words(t.outcome))},
                      {"looked_up_to_degC", t.looked_upto.value()},
                      {"limited_by", std::string(t.limited_by)}};
    if (t.earliest) o["earliest_degC"] = (*t.earliest).value();
    if (t.by_mean) o["by_mean_degC"] = (*t.by_mean).value();
    if (t.latest) o["latest_degC"] = (*t.latest).value();
    return o;
}

ordered_json heat_in_json(const heat_answer& h) {
    ordered_json o = {{"can_tell", h.can_tell}, {"reckoned_with", h.reckoned_with}};
    o["states"] = ordered_json::array();
    for (const hot_row& r : h.rows) {
        ordered_json one = {{"state", r.state}, {"hole", r.hole_at}, {"shaft", r.shaft_at}};
        if (r.clearance) one["clearance"] = clearance(*r.clearance);
        else one["no_answer"] = r.no_answer;
        o["states"].push_back(std::move(one));
    }
    if (h.tightest) o["tightest"] = h.rows[*h.tightest].state;
    if (h.loosest) o["loosest"] = h.rows[*h.loosest].state;
    for (const happening_answer& one : h.happenings)
        o["equally_warm"][one.what] = {{"heated", happening_in_json(one.at.heated)},
                                       {"cooled", happening_in_json(one.at.cooled)}};
    o["doubts"] = h.doubts;
    o["sources"] = h.sources;
    return o;
}

ordered_json number(double least, double most) { return {{"least", least}, {"most", most}}; }

ordered_json pressed_state_in_json(const fitwright::pressed_state& s) {
    ordered_json o = {
        {"joint_pressure_pa", number(s.joint_pressure.least.value(), s.joint_pressure.most.value())},
        {"axial_grip_n", number(s.axial_grip.least.value(), s.axial_grip.most.value())},
        {"turning_grip_newton_metres", number(s.turning_grip.least.value(), s.turning_grip.most.value())},
        {"bore_closes_by", clearance({s.bore_closes_by.least, s.bore_closes_by.most})},
        {"hole_part_stress_pa", s.hub.greatest.value()},
        {"shaft_part_stress_pa", s.shaft.greatest.value()}};
    if (const auto margin = s.hub.margin()) o["hole_part_margin"] = *margin;
    if (const auto margin = s.shaft.margin()) o["shaft_part_margin"] = *margin;
    return o;
}

ordered_json pressing_in_json(const pressing_answer& a) {
    if (!a.at_20) return {{"cannot_tell", a.cannot_tell}};
    ordered_json o = {{"at_20_degC", pressed_state_in_json(a.at_20->at_20)},
                      {"press_in_force_n", a.at_20->press_in_force.value()}};
    o["states"] = ordered_json::array();
    for (const pressed_row& r : a.rows) {
        ordered_json one = pressed_state_in_json(r.joint);
        one["state"] = r.state;
        one["bore_moves_by"] = clearance({r.bore_moves.least, r.bore_moves.most});
        if (r.plug)
            one["plug"] = {
                {"holds", std::string(in_words(r.plug->holds))},
                {"seals", std::string(in_words(r.plug->seals))},
                {"grip_over_push", number(r.plug->grip_margin.least, r.plug->grip_margin.most)},
                {"pressure_over_fluid", number(r.plug->seal_margin.least, r.plug->seal_margin.most)}};
        o["states"].push_back(std::move(one));
    }
    if (a.bush && a.bush->way)
        o["bush"] = {{"wanted_by_pair", a.bush->wanted_by},
                     {"ream_after_pressing", a.bush->way->ream_after_pressing},
                     {"before_pressing",
                      from_to(a.bush->way->before.lower_limit(), a.bush->way->before.upper_limit())},
                     {"largest_before_reaming", size_in_json(a.bush->way->largest_before_reaming)}};
    if (a.drop_in) {
        o["drop_in"] = {{"advice", std::string(in_words(a.drop_in->advice))}};
        if (const auto& hub = a.drop_in->best().hub) o["drop_in"]["hub_degC"] = (*hub).value();
        if (const auto& shaft = a.drop_in->best().shaft) o["drop_in"]["shaft_degC"] = (*shaft).value();
        if (const auto& limit = a.drop_in->hub_limit) o["drop_in"]["hub_limit_degC"] = (*limit).value();
    }
    o["doubts"] = a.doubts;
    o["sources"] = a.sources;
    return o;
}

ordered_json leak_in_json(const leak_answer& a) {
    if (!a.cannot_tell.empty()) return {{"cannot_tell", a.cannot_tell}};
    const auto rows = [](const std::vector<leak_row>& from) {
        ordered_json all = ordered_json::array();
        for (const leak_row& r : from)
            all.push_back({{"where", r.where},
                           {"clearance", clearance(r.clearance)},
                           {"percent", number(r.least_percent, r.most_percent)},
                           {"within_budget", r.is_within_budget}});
        return all;
    };
    ordered_json o = {
        {"budget_percent", a.budget_percent}, {"states", rows(a.states)}, {"instead", rows(a.instead)}};
    if (a.greatest_clearance) o["greatest_clearance"] = difference_in_json(*a.greatest_clearance);
    o["assumptions"] = a.assumptions;
    o["doubts"] = a.doubts;
    o["source"] = a.source;
    return o;
}

ordered_json film_in_json(const film_answer& a) {
    if (!a.cannot_tell.empty()) return {{"cannot_tell", a.cannot_tell}};
    ordered_json o = {{"oil", a.oil}, {"states", ordered_json::array()}};
    for (const film_row& r : a.rows) {
        ordered_json one = {{"state", r.state}};
        if (r.film) {
            one["least_film"] = difference_in_json(r.film->least_film());
            one["limit_film"] = difference_in_json(r.film->limit_film);
            one["regime"] = std::string(in_words(r.film->regime));
        } else one["no_film"] = r.no_film;
        o["states"].push_back(std::move(one));
    }
    o["doubts"] = a.doubts;
    o["source"] = a.source;
    return o;
}

ordered_json float_in_json(const float_answer& a) {
    if (!a.cannot_tell.empty()) return {{"cannot_tell", a.cannot_tell}};
    ordered_json o = {
        {"worst_case", from_to(a.chain.worst_case.least, a.chain.worst_case.most)},
        {"root_sum_square", from_to(a.chain.root_sum_square.least, a.chain.root_sum_square.most)},
        {"wanted", from_to(a.wanted.least, a.wanted.most)},
        {"does_for_all", a.does_for_all},
        {"for_all", a.for_all},
        {"by_measure", ordered_json::array()}};
    for (const shim_row& r : a.by_measure)
        o["by_measure"].push_back(
            {{"measured", from_to(r.measured.least, r.measured.most)}, {"shims", r.shims}});
    o["doubts"] = a.doubts;
    o["source"] = a.source;
    return o;
}

ordered_json leading_in_json(const leading_answer& l) {
    ordered_json o = {{"wanted_clearance", clearance(l.wanted)}};
    if (l.bore) o["bore"] = from_to(l.bore->lower_limit(), l.bore->upper_limit());
    if (!l.no_bore.empty()) o["no_bore"] = l.no_bore;
    o["not_the_nominal"] = l.not_the_nominal;
    o["nearest_classes"] = ordered_json::array();
    for (const class_tried& c : l.nearest) {
        ordered_json one = tried_in_json(c.hole);
        one["miss"] = difference_in_json(c.miss);
        one["preferred"] = c.is_preferred;
        o["nearest_classes"].push_back(std::move(one));
    }
    o["tried"] = ordered_json::array();
    for (const hole_tried& t : l.tried) o["tried"].push_back(tried_in_json(t));
    return o;
}

ordered_json others_in_json(const std::vector<other_class>& others) {
    ordered_json all = ordered_json::array();
    for (const other_class& other : others)
        all.push_back({{"callout", other.callout}, {"clearance", clearance({other.least, other.most})}});
    return all;
}

/// What has no bound is left out.
ordered_json allowed_in_json(const fitwright::clearance_window& w) {
    const bounds b = bounds_of(w);
    ordered_json o = {{"in_words", allowed_in_words(w)}};
    if (b.least) o["least"] = difference_in_json(*b.least);
    if (b.most) o["most"] = difference_in_json(*b.most);
    return o;
}

ordered_json want_end_in_json(const want_end& e) {
    ordered_json o = {{"holds", std::string(in_words(e.holds))}, {"in_words", e.words}};
    if (e.margin) o["margin"] = *e.margin;
    return o;
}

ordered_json judging_in_json(const judging_answer& a) {
    ordered_json o = {{"wants", ordered_json::array()}, {"not_judged", ordered_json::array()}};
    for (const want_row& r : a.rows)
        o["wants"].push_back({{"want", in_words(r.wanted)},
                              {"holds", std::string(in_words(r.holds))},
                              {"tightest_pair", want_end_in_json(r.tightest)},
                              {"loosest_pair", want_end_in_json(r.loosest)},
                              {"allows_at_20_degC", allowed_in_json(r.allows)}});
    for (const open_want& w : a.unjudged)
        o["not_judged"].push_back({{"want", in_words(w.mine)}, {"takes", w.missing}});
    if (!a.cannot_tell.empty()) o["cannot_tell"] = a.cannot_tell;
    return o;
}

ordered_json choosing_in_json(const choosing_answer& a) {
    ordered_json o = {{"decides", a.decides}, {"given_up", a.given_up}, {"choices", ordered_json::array()}};
    if (!a.no_choice.empty()) o["no_choice"] = a.no_choice;
    if (a.allowed) o["all_wants_allow_at_20_degC"] = allowed_in_json(*a.allowed);
    for (const choice& c : a.all) {
        const fitwright::fit f = c.pair.pair();
        ordered_json one = {{"hole", c.hole},
                            {"hole_limits", from_to(f.hole().lower_limit(), f.hole().upper_limit())},
                            {"shaft", c.shaft},
                            {"shaft_limits", from_to(f.shaft().lower_limit(), f.shaft().upper_limit())},
                            {"clearance", clearance({f.min_clearance(), f.max_clearance()})},
                            {"all_wants_hold", c.stopped_by.empty()},
                            {"stopped_by", c.stopped_by},
                            {"tools", c.tools},
                            {"against", c.against}};
        o["choices"].push_back(std::move(one));
    }
    return o;
}

} // namespace

ordered_json size_in_json(length l) { return {{"nm", l.nanometres()}, {"mm", mm(l)}}; }
ordered_json difference_in_json(length l) { return {{"nm", l.nanometres()}, {"um", um(l)}}; }

ordered_json hot_in_json(const heat_answer& h) { return heat_in_json(h); }

void add_shop_answers(const pair_answer& a, ordered_json& to) {
    if (a.judging) to["judging"] = judging_in_json(*a.judging);
    if (a.choosing) to["choosing"] = choosing_in_json(*a.choosing);
    if (a.heat) to["heat"] = heat_in_json(*a.heat);
    if (a.pressing) to["pressing"] = pressing_in_json(*a.pressing);
    if (!a.seated_first.empty()) to["seated_first"] = a.seated_first;
    if (a.leak) to["leak"] = leak_in_json(*a.leak);
    if (a.end_float) to["end_float"] = float_in_json(*a.end_float);
    if (a.film) to["film"] = film_in_json(*a.film);
    if (a.leading) to["leading"] = leading_in_json(*a.leading);
    if (a.making) to["making"] = making_in_json(*a.making);
    to["gauges"] = ordered_json::array();
    for (const gauge_answer& g : a.gauges) to["gauges"].push_back(gauge_in_json(g));
    to["readings"] = ordered_json::array();
    for (const reading_answer& r : a.readings) to["readings"].push_back(reading_in_json(r));
    if (a.chance)
        to["chance"] = {{"percent", percent(*a.chance)},
                        {"assumption", "both sizes spread evenly over their tolerances"},
                        {"changed", a.chance->changed},
                        {"never_loose", others_in_json(a.chance->tighter)},
                        {"never_tight", others_in_json(a.chance->looser)}};
}

} // namespace job_sheet
