#include "judging.hpp"

#include "figures.hpp"
#include "read_pair.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace job_sheet {

namespace {

using fitwright::holding;
using fitwright::length;
using fitwright::margin_unit;

struct shown_unit {
    double per_unit;
    std::string_view name;
};

shown_unit shown(margin_unit u) {
    switch (u) {
    case margin_unit::metres: return {1e6, "um"};
    case margin_unit::cubic_metres_per_second: return {1e9, "mm3/s"};
    case margin_unit::percent: return {1, "% of a shot"};
    case margin_unit::times: return {1, "times"};
    case margin_unit::newtons: return {1, "N"};
    }
    return {1, ""};
}

/// To a tenth of the unit, from a thousand on to the unit: what is to spare down, what is missed up.
std::string margin_in_words(double margin, margin_unit in) {
    const auto [per_unit, name] = shown(in);
    const double number = std::abs(margin) * per_unit;
    const double step = number < 1000 ? 10 : 1;
    if (margin >= 0) return fmt::format("{} {} to spare", std::floor(number * step) / step, name);
    return fmt::format("misses by {} {}", std::ceil(number * step) / step, name);
}

/// A wish may miss by its strength, too tight, or by its grip, too loose.
std::string pressed_in_words(const fitwright::want_at_end& e, bool any_grip_will_do) {
    if (e.holds == holding::yes) return any_grip_will_do ? "grips" : "holds";
    if (e.holds == holding::cannot_tell) return std::string(in_words(e.holds));
    if (e.too_tight && e.too_loose) return "yields, and does not hold";
    return e.too_tight ? "yields" : "does not hold";
}

/// Line to line still slides, as H7/h6 does; the library's freedom to turn wants more than nothing.
fitwright::want_answer as_sliding(fitwright::want_answer a) {
    for (fitwright::want_at_end* const e : {&a.tight, &a.loose})
        if (e->holds == holding::no && e->margin && *e->margin > -1.5e-9)
            *e = {.holds = holding::yes, .margin = 0.0};
    return a;
}

want_end end_of(const fitwright::want_answer& a, const fitwright::want_at_end& e, bool any_grip_will_do) {
    if (a.in == margin_unit::times)
        return {
            e.holds, {}, pressed_in_words(e, any_grip_will_do && a.wanted == fitwright::want::never_moves)};
    if (e.holds == holding::cannot_tell || !e.margin) return {e.holds, {}, std::string(in_words(e.holds))};
    return {e.holds, *e.margin * shown(a.in).per_unit, margin_in_words(*e.margin, a.in)};
}

const fitwright::want_answer* find(const fitwright::candidate& c, fitwright::want w) {
    for (const fitwright::want_answer& a : c.answers())
        if (a.wanted == w) return &a;
    return nullptr;
}

} // namespace

bool judging_answer::all_hold() const {
    return cannot_tell.empty() &&
           std::all_of(rows.begin(), rows.end(), [](const want_row& r) { return r.holds == holding::yes; });
}

std::optional<judging_answer> judging_of(const pair& p, const std::optional<wanting>& w) {
    if (!w || !p.hole || !p.shaft || !p.hole->limits || !p.shaft->limits) return std::nullopt;
    if (w->asked().empty() && w->unjudged().empty()) return std::nullopt;
    judging_answer a;
    a.unjudged = w->unjudged();
    if (w->asked().empty()) return a;
    const auto held =
        fitwright::held_against(w->to_judge(), fitwright::fit(*p.hole->limits, *p.shaft->limits));
    // A spring in a wide hole is no fit; the sheet's own rules judge it.
    if (!held && held.error().code() == fitwright::error_code::nominal_sizes_differ) return std::nullopt;
    if (!held) {
        a.cannot_tell = held.error().message();
        return a;
    }
    a.pair = *held;
    for (const asked_want& one : w->asked()) {
        const fitwright::want_answer* const found = find(*held, one.theirs);
        if (found == nullptr) continue;
        const bool slides = (one.mine == want::slides || one.mine == want::comes_off_by_hand) &&
                            one.theirs == fitwright::want::turns_freely;
        const fitwright::want_answer what = slides ? as_sliding(*found) : *found;
        a.rows.push_back({.wanted = one.mine,
                          .holds = what.holds(),
                          .tightest = end_of(what, what.tight, w->any_grip_will_do()),
                          .loosest = end_of(what, what.loose, w->any_grip_will_do()),
                          .allows = what.allows,
                          .is_a_question_of_yield = what.in == margin_unit::times && what.tight.too_tight &&
                                                    !what.tight.too_loose && !what.loose.too_loose});
    }
    return a;
}

bounds bounds_of(const fitwright::clearance_window& allowed) {
    const length unbounded = length::from_nanometres(1'000'000'000); // as the library says it
    bounds b;
    if (allowed.least > -unbounded) b.least = allowed.least;
    if (allowed.most < unbounded) b.most = allowed.most;
    return b;
}

std::string allowed_in_words(const fitwright::clearance_window& w) {
    const length tenth = length::from_nanometres(100);
    bounds b = bounds_of(w);
    if (b.least) b.least = tenth * multiples_above(*b.least, tenth);
    if (b.most) b.most = tenth * multiples_below(*b.most, tenth);
    if (b.least && b.most)
        return *b.least > *b.most ? "none" : fmt::format("{} to {} um", um(*b.least), um(*b.most));
    if (b.least) return fmt::format("from {} um", um(*b.least));
    return b.most ? fmt::format("up to {} um", um(*b.most)) : "any";
}

std::vector<fact> facts_of(const judging_answer& a) {
    std::vector<fact> all;
    if (!a.cannot_tell.empty()) {
        all.push_back({"wants", "can't tell: " + a.cannot_tell});
        return all;
    }
    for (const want_row& r : a.rows) {
        const bool same = r.tightest.words == r.loosest.words;
        all.push_back({"wants", fmt::format("{}: {}; {}; it allows {} at 20 C", in_words(r.wanted),
                                            r.holds == holding::yes  ? "yes"
                                            : r.holds == holding::no ? "no"
                                                                     : "can't tell",
                                            same ? "the tightest pair and the loosest: " + r.tightest.words
                                                 : fmt::format("the tightest pair: {}, the loosest: {}",
                                                               r.tightest.words, r.loosest.words),
                                            allowed_in_words(r.allows))});
    }
    for (const open_want& w : a.unjudged)
        all.push_back({"wants", fmt::format("{}: not judged, it takes {}", in_words(w.mine), w.missing)});
    return all;
}

} // namespace job_sheet
