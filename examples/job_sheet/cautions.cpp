#include "cautions.hpp"

namespace job_sheet {

namespace {

using fitwright::caution;

/// Bare metal warmer than this burns on a touch; common practice, no source.
const fitwright::temperature burns_above = fitwright::celsius(60);

bool gets_hot(const part& p, const job& j) {
    if (p.of_its_own) return p.of_its_own->value > burns_above;
    for (std::size_t g = 0; g < j.groups.size(); ++g) {
        if (j.groups[g].id != p.group) continue;
        for (const state& s : j.states)
            if (s.temperatures[g] && s.temperatures[g]->value > burns_above) return true;
    }
    return false;
}

} // namespace

fitwright::cautions biting(const pair_answer& a, const job& j) {
    const pair& p = a.asked;
    const auto either = [&](auto has) {
        return (p.hole && has(p.hole->part)) || (p.shaft && has(p.shaft->part));
    };
    const bool may_be_tight = a.clearance && a.clearance->least < fitwright::length();
    fitwright::cautions all;
    if (a.making && a.making->plan) all = a.making->plan->warnings();
    for (const gauge_answer& g : a.gauges)
        if (g.sizes) all = all | caution::rotating;
    if (either([&](const part& part) { return gets_hot(part, j); })) all |= caution::hot;
    if (a.heat) all |= a.heat->take_care;
    if (a.pressing) all |= a.pressing->take_care;
    if (may_be_tight) all = all | caution::press_force;
    if (p.pressure) all = all | caution::under_pressure;
    if (p.wants_to(want::turns)) all = all | caution::rotating;
    if (either([](const part& part) { return part.brittle; })) all = all | caution::brittle;
    return all;
}

std::vector<std::string> cautions_of(const pair_answer& a) {
    std::vector<std::string> all;
    for (const caution c : all_cautions)
        if (a.biting.contains(c)) all.emplace_back(in_words(c));
    all.insert(all.end(), a.asked.cautions.begin(), a.asked.cautions.end());
    if (!all.empty()) all.emplace_back(whom_to_ask);
    return all;
}

} // namespace job_sheet
