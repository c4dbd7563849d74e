#include "shop_words.hpp"

#include "figures.hpp"
#include <fitwright/io/source.hpp>

#include <fmt/format.h>

#include <algorithm>

namespace job_sheet {

namespace {

using fitwright::length;

std::string range(length lower, length upper) { return fmt::format("{} to {}", mm(lower), mm(upper)); }

/// Expected sizes are no limits: in whole micrometres, the least down and the most up.
std::string about(length least, length most) {
    const length one_um = length::from_nanometres(1'000);
    return range(one_um * multiples_below(least, one_um), one_um * multiples_above(most, one_um));
}

std::string joined(const std::vector<std::string>& all, std::string_view separator) {
    std::string list;
    for (const std::string& one : all) {
        if (!list.empty()) list += separator;
        list += one;
    }
    return list;
}

// ---- in short

void add_making(const pair_answer& a, units_shown units, std::vector<fact>& all) {
    for (const part_answer& p : a.parts) {
        if (!p.size || !p.is_made_here) continue;
        std::string words = p.role + ' ' + range_in_words(p.size->lower_limit, p.size->upper_limit, units);
        if (const std::string way = way_to_make(a); p.role == "hole" && !way.empty()) words += ": " + way;
        all.push_back({"make", words});
        if (p.role == "hole" && !a.seated_first.empty()) all.push_back({"make", a.seated_first});
    }
    if (a.leading && !a.leading->no_bore.empty()) all.push_back({"make", "no bore: " + a.leading->no_bore});
}

void add_checks(const pair_answer& a, units_shown units, std::vector<fact>& all) {
    for (const gauge_answer& g : a.gauges) all.push_back({"check", g.role + ": " + check_in_words(g, units)});
    for (const reading_answer& r : a.readings) all.push_back({"reading", r.role + ' ' + reading_in_words(r)});
}

// ---- the reasons

std::string hole_in_words(const hole_tried& t, fitwright::clearance_window wanted) {
    return fmt::format("{}: hole {} mm, clearance {}{}", t.what, range(t.lower, t.upper),
                       clearance_in_words(t.clearance, wanted),
                       t.is_sure ? "" : "; uncertain: nobody has measured what it cuts over");
}

void add_leading(const leading_answer& l, std::vector<fact>& all) {
    const auto say = [&](std::string words) { all.push_back({"leads", std::move(words)}); };
    if (!l.not_the_nominal.empty()) say(l.not_the_nominal);
    if (l.bore)
        say(fmt::format("for {} to {} um of clearance, wherever in its uncertainty the shaft lies, the bore "
                        "is {} mm",
                        um(l.wanted.least), um(l.wanted.most),
                        range(l.bore->lower_limit(), l.bore->upper_limit())));
    for (const hole_tried& t : l.tried) say(hole_in_words(t, l.wanted));
    for (const class_tried& c : l.nearest)
        say(fmt::format("nearest {}class {}, {}", c.is_preferred ? "preferred " : "",
                        hole_in_words(c.hole, l.wanted),
                        c.miss == length() ? std::string("within the bore's limits")
                                           : fmt::format("misses the bore's limits by {} um", um(c.miss))));
}

void add_reamer(const making_answer& m, std::vector<fact>& all) {
    std::string words = "none: DIN 1420 leaves nothing of so small a tolerance";
    if (m.reamer.exist())
        words = fmt::format("for this hole {} mm: {}", range(m.reamer.lower_limit(), m.reamer.upper_limit()),
                            in_short(m.reamer.origin()));
    all.push_back({"reamer", words});
    if (m.is_material_known && (m.plan || !m.no_plan.empty()))
        all.push_back({"reamer", m.suiting.empty() ? "none in the drawer suits it"
                                                   : "in the drawer: " + joined(m.suiting, ", ")});
}

void add_gauges(const pair_answer& a, std::vector<fact>& all) {
    for (const gauge_answer& g : a.gauges) {
        std::vector<std::string> words;
        if (g.sizes)
            words.push_back(fmt::format("GO is worn out {} {} mm", g.role == "hole" ? "below" : "above",
                                        mm(g.sizes->worn)));
        if (!g.remark.empty()) words.push_back(g.remark);
        if (g.sizes) words.push_back(g.sizes->source);
        all.push_back({"gauge", g.role + ": " + joined(words, "; ")});
    }
}

std::string others_in_words(const std::vector<other_class>& others) {
    std::vector<std::string> all;
    for (const other_class& o : others)
        all.push_back(fmt::format("{} ({} to {} um)", o.callout, um(o.least), um(o.most)));
    return joined(all, ", ");
}

void add_chance(const chance_answer& c, std::vector<fact>& all) {
    all.push_back(
        {"how often", fmt::format("{} % of the pairs come out tight, the others loose: if both sizes "
                                  "are spread evenly over their tolerances",
                                  percent(c))});
    if (c.changed.empty()) return;
    const std::string whose = "preferred " + c.changed + "s";
    const auto say = [&](std::string_view which, const std::vector<other_class>& others) {
        all.push_back({"rather", others.empty()
                                     ? fmt::format("no {} {}", whose, which)
                                     : fmt::format("{} that {}: {}", whose, which, others_in_words(others))});
    };
    say("are never loose", c.tighter);
    say("are never tight", c.looser);
}

} // namespace

std::string clearance_in_words(fitwright::clearance_window has, fitwright::clearance_window wanted) {
    std::string words = fmt::format("{} to {} um", um(has.least), um(has.most));
    const bool loose = has.most > wanted.most;
    const bool tight = has.least < wanted.least;
    if (loose) words += fmt::format(": up to {} um too loose", um(has.most - wanted.most));
    if (tight)
        words += fmt::format("{} up to {} um too tight", loose ? " or" : ":", um(wanted.least - has.least));
    return loose || tight ? words : words + ": as wanted";
}

std::string decisive_state(const alternative_answer& other) {
    if (!other.heat || !other.heat->tightest) return {};
    const bool is_held = other.clearance.kind == fitwright::fit_kind::interference;
    const hot_row& r = other.heat->rows[is_held ? *other.heat->loosest : *other.heat->tightest];
    std::string words = fmt::format("; in the state '{}' {} um", r.state, about_um(*r.clearance));
    if (is_held && r.clearance->most > length()) words += ": lets go";
    if (!is_held && r.clearance->least < length()) words += ": seizes";
    return words;
}

std::vector<fact> brief(const pair_answer& a, units_shown units) {
    std::vector<fact> all;
    add_making(a, units, all);
    add_checks(a, units, all);
    return all;
}

std::vector<step_row> rows_of(const fitwright::hole_plan& plan) {
    std::vector<step_row> all;
    for (const fitwright::hole_step& s : plan.steps()) {
        step_row row{.step = std::string(s.tool.name().view()), .after = {}, .leaves = {}, .rule = {}};
        if (s.operation == fitwright::hole_operation::bore) row.step = "bore: " + row.step;
        const bool is_centre = s.operation == fitwright::hole_operation::centre;
        if (!is_centre) row.after = s.decides_size ? range(s.least, s.most) : about(s.least, s.most);
        if (s.decides_size) row.leaves = "decides the size";
        else if (!is_centre) {
            row.leaves = mm(s.counted_stock);
            row.rule = range(s.wanted_stock.least, s.wanted_stock.most);
        }
        all.push_back(std::move(row));
    }
    return all;
}

std::vector<std::string> about_plans(const sheet& s) {
    for (const pair_answer& a : s.pairs) {
        if (!a.making || !a.making->plan) continue;
        const auto steps = a.making->plan->steps();
        if (steps.size() < 3) continue; // a drill alone has no stock to leave
        const fitwright::hole_step& drilled = steps[1];
        return {
            "Sizes after a step are expected, from least to most; what it leaves for the next, on diameter, "
            "is counted as the rule beside it does: a drilled hole 0.05 mm over its drill; before boring, "
            "the rule's most is for the last of several passes.",
            "Centre. " + std::string(steps[0].put_right()),
            "A step before the last. " + std::string(drilled.put_right()),
            fmt::format("Drilled holes: {}; {}.", std::string_view(written(drilled.origin()).view()),
                        std::string_view(drilled.note))};
    }
    return {};
}

std::string way_of(const fitwright::hole_plan& plan, const std::optional<length>& target) {
    std::vector<std::string> steps;
    for (const fitwright::hole_step& s : plan.steps()) {
        if (s.operation == fitwright::hole_operation::centre) continue;
        const bool is_set =
            s.operation == fitwright::hole_operation::bore || s.operation == fitwright::hole_operation::lap;
        std::string step(s.tool.name().view());
        if (is_set)
            step = fmt::format("{} to {} mm", std::string_view(in_words(s.operation)),
                               mm(s.decides_size && target ? *target : s.mean));
        steps.push_back(std::move(step));
    }
    return joined(steps, ", then ");
}

std::string way_to_make(const pair_answer& a) {
    if (!a.making) return {};
    if (!a.making->plan) return a.making->no_plan.empty() ? "" : "no plan, see below";
    for (const part_answer& p : a.parts)
        if (p.role == "hole" && p.size) return way_of(*a.making->plan, p.size->target);
    return {};
}

std::string check_in_words(const gauge_answer& g, units_shown units) {
    if (!g.sizes) return "measure it and judge the reading; no gauge, see below";
    return fmt::format("GO {} {}, NOT GO {}", g.role == "hole" ? "plug" : "ring",
                       range_in_words(g.sizes->go_lower, g.sizes->go_upper, units),
                       range_in_words(g.sizes->not_go_lower, g.sizes->not_go_upper, units));
}

std::string reading_in_words(const reading_answer& r) {
    const bool can_tell = r.verdict != fitwright::verdict::cannot_tell;
    return fmt::format("{} by the {}, good for +/-{} um: {}", r.written, r.instrument, um(r.uncertainty),
                       can_tell ? std::string_view(in_words(r.verdict)) : std::string_view("can't tell"));
}

std::string to_make(const pair_answer& a, units_shown units) {
    std::vector<std::string> all;
    for (const part_answer& p : a.parts)
        if (p.size && p.is_made_here)
            all.push_back(p.role + ' ' + range_in_words(p.size->lower_limit, p.size->upper_limit, units));
    return joined(all, ", ");
}

std::vector<fact> remarks_on(const fitwright::hole_plan& plan) {
    std::vector<fact> all;
    const fitwright::hole_step& last = plan.deciding_step();
    all.push_back({"last step", std::string(last.put_right())});
    std::string holds(written(last.origin()).view());
    if (!last.note.empty()) holds += "; " + std::string(last.note);
    if (plan.needs_trial_hole()) holds += "; the tool alone decides: prove it by a trial hole";
    all.push_back({"size from", holds});
    return all;
}

std::vector<fact> details(const pair_answer& a) {
    std::vector<fact> all;
    if (a.leading) add_leading(*a.leading, all);
    if (a.chance) add_chance(*a.chance, all);
    for (const reading_answer& r : a.readings)
        if (!r.would_do.empty()) all.push_back({"reading", r.would_do});
    if (a.making) add_reamer(*a.making, all);
    if (a.making && !a.making->no_plan.empty()) all.push_back({"no plan", a.making->no_plan});
    add_gauges(a, all);
    return all;
}

} // namespace job_sheet
