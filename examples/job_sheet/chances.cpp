#include "chances.hpp"

#include "making.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>

namespace job_sheet {

namespace {

using fitwright::length;
using fitwright::side;

constexpr length widest_tolerance = length::from_nanometres(10'000'000); // its square times 1000 fits
constexpr std::size_t most_others = 3;

/// Both sizes spread evenly over their tolerances fill a rectangle, hole by shaft, of which the part with
/// the hole below the shaft is tight. Up to a shaft of `above` nanometres over the smallest hole it has
/// this area, twice: a triangle as far as the hole's tolerance goes, then a strip as wide as it.
std::int64_t twice_tight_area(std::int64_t above, std::int64_t hole_tolerance) {
    if (above <= 0) return 0;
    if (above <= hole_tolerance) return above * above;
    return hole_tolerance * hole_tolerance + 2 * hole_tolerance * (above - hole_tolerance);
}

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
    const bool both_spread = hole.tolerance() > length() && shaft.tolerance() > length();
    const bool fits_in = hole.tolerance() <= widest_tolerance && shaft.tolerance() <= widest_tolerance;
    if (fitwright::fit(hole, shaft).kind() != fitwright::fit_kind::transition || !both_spread || !fits_in)
        return std::nullopt;

    const std::int64_t width = hole.tolerance().nanometres();
    const std::int64_t twice_tight =
        twice_tight_area((shaft.upper_limit() - hole.lower_limit()).nanometres(), width) -
        twice_tight_area((shaft.lower_limit() - hole.lower_limit()).nanometres(), width);
    const std::int64_t twice_all = 2 * width * shaft.tolerance().nanometres();
    const std::int64_t common = std::gcd(twice_tight, twice_all);
    chance_answer c{
        .tight = twice_tight / common, .of = twice_all / common, .changed = {}, .tighter = {}, .looser = {}};

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

std::string percent(const chance_answer& c) {
    const std::int64_t thousandths = (2 * 1000 * c.tight + c.of) / (2 * c.of);
    return fmt::format("{}.{}", thousandths / 10, thousandths % 10);
}

} // namespace job_sheet
