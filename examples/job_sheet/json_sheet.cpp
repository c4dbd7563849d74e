#include "facts.hpp"
#include "figures.hpp"
#include "json_shop.hpp"
#include "writers.hpp"

#include <nlohmann/json.hpp>

namespace job_sheet {

namespace {

using nlohmann::ordered_json;

ordered_json inches_in_json(const inch_limits& i) {
    return {
        {"lower", {{"nm", i.lower.nanometres()}, {"in", inches(i.lower, i.decimals)}}},
        {"upper", {{"nm", i.upper.nanometres()}, {"in", inches(i.upper, i.decimals)}}},
    };
}

ordered_json clearance_in_json(const clearance_answer& c) {
    const tenths t = in_tenths(c);
    return {
        {"kind", std::string(in_words(c.kind))},
        {"least", difference_in_json(c.least)},
        {"mean", difference_in_json(c.mean)},
        {"greatest", difference_in_json(c.greatest)},
        {"tenths_of_a_thou", {{"least", t.least}, {"mean", t.mean}, {"greatest", t.greatest}}},
    };
}

ordered_json alternative_in_json(const alternative_answer& a) {
    ordered_json o = {{"callout", a.callout}, {"clearance", clearance_in_json(a.clearance)}};
    if (a.heat) o["heat"] = hot_in_json(*a.heat);
    return o;
}

ordered_json part_in_json(const part_answer& p) {
    ordered_json o = {{"role", p.role}, {"name", p.name}, {"material", p.material}, {"callout", p.as_read}};
    if (!p.size) return o;
    const size_answer& s = *p.size;
    o["measured"] = s.measured;
    o["nominal"] = size_in_json(s.nominal);
    o["lower_deviation"] = difference_in_json(s.lower_deviation);
    o["upper_deviation"] = difference_in_json(s.upper_deviation);
    o["lower_limit"] = size_in_json(s.lower_limit);
    o["upper_limit"] = size_in_json(s.upper_limit);
    if (s.inches) o["inches"] = inches_in_json(*s.inches);
    if (s.target) o["target"] = size_in_json(*s.target);
    o["source"] = s.source;
    return o;
}

ordered_json faults_in_json(const std::vector<fault>& faults) {
    ordered_json all = ordered_json::array();
    for (const fault& f : faults)
        all.push_back({{"line", f.where.line}, {"column", f.where.column}, {"message", f.message}});
    return all;
}

/// What the page says of the job itself.
ordered_json states_in_json(const job& j) {
    ordered_json all = ordered_json::array();
    for (const state& s : j.states) {
        ordered_json one = {{"state", s.id}, {"temperatures", ordered_json::array()}, {"note", s.note}};
        for (std::size_t g = 0; g < j.groups.size(); ++g)
            if (s.temperatures[g])
                one["temperatures"].push_back(
                    {{"group", j.groups[g].name}, {"temperature", s.temperatures[g]->written}});
        all.push_back(std::move(one));
    }
    return all;
}

ordered_json facts_in_json(const job& j) {
    ordered_json all = ordered_json::array();
    for (const facts& of : facts_of(j))
        for (const fact& one : of.lines)
            all.push_back({{"about", of.title}, {"label", one.label}, {"text", one.text}});
    return all;
}

ordered_json remarks_in_json(const std::vector<remark>& remarks) {
    ordered_json all = ordered_json::array();
    for (const remark& r : remarks) all.push_back({{"brings", in_words(r.brings)}, {"text", r.text}});
    return all;
}

ordered_json pair_in_json(const pair_answer& a) {
    ordered_json o = {{"id", a.asked.id},
                      {"name", a.asked.name},
                      {"status", in_words(a.status)},
                      {"verdict", in_words(a.verdict())},
                      {"behaviour", a.asked.behaviour}};
    o["callout"] = a.asked.callout;
    o["given"] = given(a.asked);
    o["parts"] = ordered_json::array();
    for (const part_answer& p : a.parts) o["parts"].push_back(part_in_json(p));
    if (a.clearance) o["clearance"] = clearance_in_json(*a.clearance);
    o["instead"] = ordered_json::array();
    for (const alternative_answer& other : a.instead) o["instead"].push_back(alternative_in_json(other));
    add_shop_answers(a, o);
    o["look_at"] = texts(a.look_at);
    o["remarks"] = remarks_in_json(a.look_at);
    o["cautions"] = a.cautions;
    o["errors"] = faults_in_json(a.asked.faults);
    return o;
}

} // namespace

std::string json_sheet(const sheet& s) {
    ordered_json o = {{"job", s.asked.title}, {"about", s.asked.about}};
    if (s.asked.sizes_at) o["sizes_at"] = s.asked.sizes_at->written;
    o["cautions"] = s.asked.cautions;
    o["states"] = states_in_json(s.asked);
    o["shop"] = facts_in_json(s.asked);
    o["pairs"] = ordered_json::array();
    for (const pair_answer& a : s.pairs) o["pairs"].push_back(pair_in_json(a));
    o["errors"] = faults_in_json(s.asked.faults);
    o["count"] = {{"answered", s.count(status::answered)},
                  {"look_at", s.count(status::look_at)},
                  {"refused", s.count(status::refused)}};
    o["verdicts"] = {{"good", s.count(verdict::good)},
                     {"look_at_it", s.count(verdict::look_at)},
                     {"cannot_tell", s.count(verdict::cannot_tell)},
                     {"wont_do", s.count(verdict::wont_do)}};
    return o.dump(2, ' ', false, ordered_json::error_handler_t::replace) + '\n';
}

} // namespace job_sheet
