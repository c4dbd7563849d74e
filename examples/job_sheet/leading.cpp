#include "leading.hpp"

#include "figures.hpp"
#include "making.hpp"
#include "stuff.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace job_sheet {

namespace {

using fitwright::length;
using fitwright::measured_shaft;

bool is_preferred(fitwright::hole_class c) {
    const auto all = fitwright::preferred_hole_classes();
    return std::find(all.begin(), all.end(), c) != all.end();
}

hole_tried tried(std::string what, length lower, length upper, measured_shaft shaft) {
    return {std::move(what), lower, upper,
            fitwright::clearance_of(fitwright::hole_limits::between(lower, upper), shaft)};
}

class_tried class_tried_at(length nominal, fitwright::hole_class c, const fitwright::hole_limits& limits,
                           length miss, measured_shaft shaft) {
    return {tried(std::string(written(nominal, c)), limits.lower_limit(), limits.upper_limit(), shaft), miss,
            is_preferred(c)};
}

/// Of all classes the nearest, and if that is an unusual one, the nearest of the preferred ones too.
void add_nearest(const fitwright::hole_limits& bore, length nominal, measured_shaft shaft,
                 std::vector<class_tried>& all) {
    const auto best = fitwright::nearest_class(bore, nominal);
    if (!best) return;
    all.push_back(class_tried_at(nominal, best->tolerance_class, best->limits, best->miss(), shaft));
    if (all.back().is_preferred) return;
    std::optional<class_tried> usual;
    for (const fitwright::hole_class c : fitwright::preferred_hole_classes()) {
        const auto limits = fitwright::limits(nominal, c);
        if (!limits) continue;
        const length miss = (std::max)({length(), bore.lower_limit() - limits->lower_limit(),
                                        limits->upper_limit() - bore.upper_limit()});
        if (!usual || miss < usual->miss) usual = class_tried_at(nominal, c, *limits, miss, shaft);
    }
    if (usual) all.push_back(*usual);
}

/// Far from the bore nobody takes a tool for the right one.
bool is_about(const fitwright::expected_hole& e, const fitwright::hole_limits& bore) {
    const length about = length::from_nanometres(100'000);
    return e.most() >= bore.lower_limit() - about && e.least() <= bore.upper_limit() + about;
}

void add_tools(const pair& p, const job& j, const fitwright::hole_limits& bore, measured_shaft shaft,
               std::vector<hole_tried>& all) {
    if (!j.drawer) return;
    const auto add = [&](const fitwright::drawer_tool& t, const fitwright::expected_hole& e) {
        if (!is_about(e, bore)) return;
        all.push_back(tried(std::string(t.name()), e.least(), e.most(), shaft));
        all.back().is_sure = e.origin().how_sure != fitwright::confidence::uncertain;
    };
    const stuff of = stuff_of(p.hole->part);
    for (const auto& reamer : j.drawer->reamers) {
        if (!of.family) break;
        const fitwright::reamer_size size = reamer_of(reamer.value);
        const fitwright::reamer_match match = match_reamer(size, bore, *of.family);
        add(reamer.value, match.suits() ? match.hole : reamed_hole(size, *of.family));
    }
    for (const auto& bit : j.drawer->bit_stock)
        add(bit.value, bit_hole(fitwright::tool_limits(bit.value.least, bit.value.most), bit.value.over));
}

std::string not_the_nominal(measured_shaft shaft) {
    const length nominal = whole_mm_near(shaft.size());
    const fitwright::shaft_limits l = shaft.limits();
    if (l.allow(nominal)) return {};
    const bool below = l.upper_limit() < nominal;
    const length least = below ? nominal - l.upper_limit() : l.lower_limit() - nominal;
    const length most = below ? nominal - l.lower_limit() : l.upper_limit() - nominal;
    return fmt::format("the shaft is not {} mm: it is {} to {} um {}",
                       std::string_view(written(nominal).view()), um(least), um(most),
                       below ? "below" : "above");
}

fitwright::clearance_window inwards_to_um(const fitwright::clearance_window& w) {
    const length one_um = length::from_nanometres(1'000);
    return {one_um * multiples_above(w.least, one_um), one_um * multiples_below(w.most, one_um)};
}

/// What else there is than the bore: the nearest classes, the job's alternatives, the tools of the drawer.
void look_around(const pair& p, const job& j, leading_answer& a) {
    const measured_shaft shaft = p.shaft->reading();
    add_nearest(*a.bore, whole_mm_near(shaft.size()), shaft, a.nearest);
    if (whole_mm_near(shaft.size()) != shaft.size()) add_nearest(*a.bore, shaft.size(), shaft, a.nearest);
    for (const alternative& other : p.instead)
        a.tried.push_back(tried("as " + other.callout, other.fit.hole().lower_limit(),
                                other.fit.hole().upper_limit(), shaft));
    add_tools(p, j, *a.bore, shaft, a.tried);
}

} // namespace

length whole_mm_near(length l) {
    const length one_mm = length::from_nanometres(1'000'000);
    return one_mm * multiples_below(l + one_mm / 2, one_mm);
}

std::optional<leading_answer> leading_of(const pair& p, const job& j) {
    if (!p.shaft_leads || !p.clearance || !p.hole || !p.shaft || !p.shaft->limits) return std::nullopt;
    leading_answer a{.wanted = p.clearance->value,
                     .bore = {},
                     .no_bore = {},
                     .not_the_nominal = not_the_nominal(p.shaft->reading()),
                     .nearest = {},
                     .tried = {}};
    const auto bore = fitwright::bore_for(p.shaft->reading(), a.wanted);
    if (!bore) {
        a.no_bore = bore.error().message();
        return a;
    }
    a.bore = *bore;
    look_around(p, j, a);
    return a;
}

std::optional<leading_answer> leading_of(const pair& p, const choosing_answer& chosen, const job& j) {
    if (!p.shaft || !p.shaft->measured || !p.hole || chosen.all.empty() || !chosen.allowed)
        return std::nullopt;
    leading_answer a{.wanted = inwards_to_um(*chosen.allowed),
                     .bore = chosen.all.front().pair.hole,
                     .no_bore = {},
                     .not_the_nominal = not_the_nominal(p.shaft->reading()),
                     .nearest = {},
                     .tried = {}};
    look_around(p, j, a);
    return a;
}

} // namespace job_sheet
