#include "chances.hpp"

#include "making.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace job_sheet {

namespace {

using fitwright::length;
using fitwright::side;

constexpr std::size_t most_others = 3;

template <side Side>
void add_others(const fitwright::size_limits<Side>& changed, auto fit_with,
                fitwright::rows<fitwright::tolerance_class<Side>> classes, chance_answer& c) {
    struct candidate {
        other_class words;
        length tolerance;
    };
    std::vector<candidate> tighter;
    std::vector<candidate> looser;
    for (const auto one : classes) {
        const auto limits = fitwright::limits(changed.nominal(), one);
        if (!limits) continue;
        const fitwright::fit f = fit_with(*limits);
        if (f.kind() == fitwright::fit_kind::transition) continue;
        auto& list = f.kind() == fitwright::fit_kind::interference ? tighter : looser;
        list.push_back({{std::string(written(changed.nominal(), one)), f.min_clearance(), f.max_clearance()},
                        limits->tolerance()});
    }
    // The closest first; of as close ones the wider tolerance, which is easier to hold.
    std::stable_sort(tighter.begin(), tighter.end(), [](const candidate& a, const candidate& b) {
        return a.words.most != b.words.most ? a.words.most > b.words.most : a.tolerance > b.tolerance;
    });
    std::stable_sort(looser.begin(), looser.end(), [](const candidate& a, const candidate& b) {
        return a.words.least != b.words.least ? a.words.least < b.words.least : a.tolerance > b.tolerance;
    });
    for (const candidate& one : tighter)
        if (c.tighter.size() < most_others) c.tighter.push_back(one.words);
    for (const candidate& one : looser)
        if (c.looser.size() < most_others) c.looser.push_back(one.words);
}

} // namespace

std::optional<chance_answer> chance_of(const pair& p) {
    if (!p.hole || !p.shaft || !p.hole->limits || !p.shaft->limits) return std::nullopt;
    if (p.hole->measured || p.shaft->measured) return std::nullopt;
    const fitwright::hole_limits& hole = *p.hole->limits;
    const fitwright::shaft_limits& shaft = *p.shaft->limits;
    const fitwright::fit drawn(hole, shaft);
    if (drawn.kind() != fitwright::fit_kind::transition) return std::nullopt;
    const auto evenly = fitwright::spread::both(fitwright::size_distribution::uniform());
    const auto how_often = fitwright::clearances(drawn, evenly);
    if (!how_often) return std::nullopt; // a part without a tolerance
    chance_answer c{.tight = how_often->share_interfering(), .changed = {}, .tighter = {}, .looser = {}};

    // What is bought or found stays as it is; of two made here the hole does, since reamers are dear.
    const bool shaft_stays = p.shaft->part.supply != supply::made;
    if (shaft_stays && is_made_here(p.hole)) {
        c.changed = "hole";
        add_others<side::hole>(
            hole, [&](const auto& h) { return fitwright::fit(h, shaft); },
            fitwright::preferred_hole_classes(), c);
    } else if (!shaft_stays) {
        c.changed = "shaft";
        add_others<side::shaft>(
            shaft, [&](const auto& s) { return fitwright::fit(hole, s); },
            fitwright::preferred_shaft_classes(), c);
    }
    return c;
}

std::string percent(const chance_answer& c) { return fmt::format("{:.1f}", 100 * c.tight); }

} // namespace job_sheet
