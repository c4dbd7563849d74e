#include "answer.hpp"

#include "cautions.hpp"
#include "figures.hpp"
#include "look_at.hpp"
#include <fitwright/grid.hpp>
#include <fitwright/io/source.hpp>

#include <fmt/format.h>

#include <algorithm>

namespace job_sheet {

namespace {

using fitwright::length;
using fitwright::side;
using fitwright::size_limits;

/// A measured part may have any size of its range, so the range only ever grows.
template <side Side> inch_limits inches_around(const size_limits<Side>& l) {
    const length step = length::from_nanometres(254);
    return {step * multiples_below(l.lower_limit(), step), step * multiples_above(l.upper_limit(), step), 5};
}

template <side Side> size_answer size_of(const size_limits<Side>& l, bool measured) {
    return {
        .nominal = l.nominal(),
        .lower_deviation = l.lower_deviation(),
        .upper_deviation = l.upper_deviation(),
        .lower_limit = l.lower_limit(),
        .upper_limit = l.upper_limit(),
        .inches = measured ? inches_around(l) : inches_within(l.lower_limit(), l.upper_limit()),
        .measured = measured,
        .target = std::nullopt,
        .source = measured ? "as measured" : std::string(written(l.origin())),
    };
}

template <side Side> part_answer part_of(const role<Side>& r) {
    part_answer p{.role = Side == side::hole ? "hole" : "shaft",
                  .name = r.part.name,
                  .material = r.part.material,
                  .as_read = r.as_read,
                  .is_made_here = is_made_here<Side>(r),
                  .size = {}};
    if (r.limits) p.size = size_of(*r.limits, r.measured);
    return p;
}

part_answer part_of(const link& l, std::string role) {
    part_answer p{.role = std::move(role),
                  .name = l.name,
                  .material = {},
                  .as_read = l.callout,
                  .is_made_here = false,
                  .size = {}};
    if (l.limits) p.size = size_of(*l.limits, false);
    return p;
}

clearance_answer clearance_of(const fitwright::fit& f) {
    return {f.min_clearance(), f.mean_clearance(), f.max_clearance(), f.kind()};
}

/// Only a hole that is bored here has a size to aim at, on the steps of the boring head's dial.
void aim(pair_answer& a, const job& j) {
    const auto& hole = a.asked.hole;
    if (!is_made_here(hole) || !j.drawer || !j.drawer->boring_head) return;
    const fitwright::drawer_tool& head = j.drawer->boring_head->value;
    if (hole->limits->lower_limit() < head.least || hole->limits->upper_limit() > head.most) return;
    const auto target = fitwright::target_on_grid(*hole->limits, head.step);
    if (target) a.parts.front().size->target = *target;
    else a.look_at.push_back({verdict::look_at, "hole: " + std::string(target.error().message())});
}

/// Parts without a size of their own get the one that was chosen for them, each pair in its turn, since one
/// part may be in several; bushes in their seats first, since a bore moves as its seat lets it.
class settled_job {
public:
    explicit settled_job(job j)
        : job_(std::move(j)), leading_(job_.pairs.size()), choosing_(job_.pairs.size()) {
        for (const bool is_a_seat : {true, false})
            for (std::size_t i = 0; i < job_.pairs.size(); ++i)
                if (is_a_seat == (job_.pairs[i].shaft && job_.pairs[i].shaft->bore)) settle(i);
    }

    [[nodiscard]] const job& settled() const { return job_; }
    [[nodiscard]] const std::optional<leading_answer>& leading(std::size_t i) const { return leading_[i]; }
    [[nodiscard]] const std::optional<choosing_answer>& choosing(std::size_t i) const { return choosing_[i]; }

private:
    void settle(std::size_t i) {
        pair& p = job_.pairs[i];
        if (p.is_open()) {
            choosing_[i] = choosing_of(wanting::of(p, job_));
            if (!choosing_[i]) return;
            choosing_[i]->decides = true;
            leading_[i] = leading_of(p, *choosing_[i], job_);
            take_sizes(*choosing_[i], p);
            return;
        }
        leading_[i] = leading_of(p, job_);
        if (!leading_[i] || !leading_[i]->bore || p.hole->limits) return;
        p.hole->limits = *leading_[i]->bore;
        p.hole->as_read = "to suit the shaft";
    }

    job job_;
    std::vector<std::optional<leading_answer>> leading_;
    std::vector<std::optional<choosing_answer>> choosing_;
};

pair_answer answer_pair(std::size_t number, const settled_job& from) {
    const job& j = from.settled();
    pair_answer a{.asked = j.pairs[number],
                  .parts = {},
                  .clearance = {},
                  .instead = {},
                  .heat = {},
                  .pressing = {},
                  .leak = {},
                  .film = {},
                  .end_float = {},
                  .seated_first = {},
                  .leading = from.leading(number),
                  .judging = {},
                  .choosing = from.choosing(number),
                  .making = {},
                  .gauges = {},
                  .readings = {},
                  .chance = {},
                  .look_at = {},
                  .biting = {},
                  .cautions = {}};
    const pair& asked = a.asked;
    if (asked.hole) a.parts.push_back(part_of(*asked.hole));
    if (asked.shaft) a.parts.push_back(part_of(*asked.shaft));
    if (asked.stack) {
        for (const link& l : asked.stack->opens) a.parts.push_back(part_of(l, "opens"));
        for (const link& l : asked.stack->closes) a.parts.push_back(part_of(l, "closes"));
    }
    const bool both = asked.hole && asked.shaft && asked.hole->limits && asked.shaft->limits;
    if (both) a.clearance = clearance_of(fitwright::fit(*asked.hole->limits, *asked.shaft->limits));
    const auto wanted = wanting::of(asked, j);
    a.judging = judging_of(asked, wanted);
    if (!a.choosing && a.judging && !a.judging->all_hold()) a.choosing = choosing_of(wanted);
    a.heat = heat_of(asked, j);
    a.pressing = pressing_of(asked, j);
    a.leak = leak_of(asked, a.heat, a.leading, j);
    a.film = film_of(asked, a.heat, j);
    a.end_float = float_of(asked);
    if (asked.hole)
        if (const pair* const seat = seat_of(asked.hole->part, j))
            a.seated_first = fmt::format("finish it once it is pressed into the {} (pair {})",
                                         seat->hole->part.name, seat->id);
    for (const alternative& other : asked.instead)
        a.instead.push_back({other.callout, clearance_of(other.fit), heat_of(asked, other.fit, j)});

    a.making = making_of(asked.hole, j);
    a.gauges = gauges_of(asked);
    a.readings = readings_of(asked);
    a.chance = chance_of(asked);
    a.look_at = what_to_look_at(a, j);
    aim(a, j);
    a.biting = biting(a, j);
    a.cautions = cautions_of(a);
    if (!asked.faults.empty()) a.status = status::refused;
    else if (!a.look_at.empty()) a.status = status::look_at;
    return a;
}

} // namespace

sheet answer(job j, const std::function<void(std::size_t)>& answered) {
    const settled_job from(std::move(j));
    sheet s{.asked = from.settled(), .pairs = {}};
    for (std::size_t i = 0; i < s.asked.pairs.size(); ++i) {
        s.pairs.push_back(answer_pair(i, from));
        if (answered) answered(s.pairs.size());
    }
    return s;
}

verdict pair_answer::verdict() const {
    if (status == job_sheet::status::refused) return job_sheet::verdict::cannot_tell;
    return look_at.empty() ? job_sheet::verdict::good : look_at.front().brings;
}

std::size_t sheet::count(status wanted) const {
    const auto has_it = [&](const pair_answer& p) { return p.status == wanted; };
    return static_cast<std::size_t>(std::count_if(pairs.begin(), pairs.end(), has_it));
}

std::size_t sheet::count(verdict wanted) const {
    const auto has_it = [&](const pair_answer& p) { return p.verdict() == wanted; };
    return static_cast<std::size_t>(std::count_if(pairs.begin(), pairs.end(), has_it));
}

} // namespace job_sheet
