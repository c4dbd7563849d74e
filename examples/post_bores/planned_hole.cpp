#include "planned_hole.hpp"

#include <fitwright/grid.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace post_bores {

namespace {

using fitwright::drawer_tool;
using fitwright::hole_operation;
using fitwright::tool_kind;

double in_mm(length l) { return static_cast<double>(l.nanometres()) / 1e6; }
std::string mm(length l) { return std::string(fitwright::written(l).view()); }

/// The drills of a set one by one.
void add_drills(const drawer_tool& set, std::vector<drawer_tool>& all) {
    if (set.kind == tool_kind::drill_series) {
        for (const fitwright::drill_size& d : fitwright::drills(set.series))
            if (d.diameter <= set.most) all.push_back(fitwright::twist_drill(d));
    } else if (set.kind == tool_kind::drill_steps) {
        for (length d = set.least; d <= set.most; d += set.step) all.push_back(fitwright::twist_drill(d));
    } else {
        all.push_back(set);
    }
}

/// The tools a process may use. Where a hole is to be bored or reamed, a drill
/// that alone would hold its limits is left in the drawer.
std::vector<drawer_tool> tools_for(const hole& h, const machine& m) {
    std::vector<drawer_tool> all;
    for (const drawer_tool& t : m.drawer) {
        if (t.kind != tool_kind::machine_reamer) add_drills(t, all);
        else if (h.process == process::ream || h.process == process::as_planned) all.push_back(t);
    }
    if (h.process == process::bore || h.process == process::ream)
        std::erase_if(all, [&](const drawer_tool& t) {
            return t.kind == tool_kind::drill && fitwright::plan_hole(h.limits, std::vector{t}, h.material);
        });
    if (h.process != process::drill)
        for (const mill& one : m.mills) all.push_back(one.as_bores);
    return all;
}

const mill* mill_behind(const drawer_tool& head, const machine& m) {
    for (const mill& one : m.mills)
        if (one.as_bores.least == head.least && one.as_bores.most == head.most) return &one;
    return nullptr;
}

/// The diameters of the passes from a drilled hole out: equal steps, and the
/// last of them takes the least stock for boring. Where nothing would be cut
/// before it, it is the only one.
std::vector<length> passes(const fitwright::hole_step& drilled, length target, const mill& by,
                           const dialect& words) {
    const length finish = length::from_nanometres(200'000); // on diameter
    const length last_rough = words.on_grid((target - finish) / 2) * 2;
    std::vector<length> all;
    const length room = last_rough > drilled.most ? (last_rough - drilled.least) / 2 : length();
    const std::int64_t steps = (room.nanometres() + by.sideways.nanometres() - 1) / by.sideways.nanometres();
    for (std::int64_t i = 1; room > length() && i <= steps; ++i) {
        const length d = i == steps ? last_rough : words.on_grid(drilled.least / 2 + room * i / steps) * 2;
        if (d * 5 >= by.diameter * 6) all.push_back(d); // else there is no room for the entry
    }
    all.push_back(target);
    return all;
}

class planner {
public:
    planner(const hole_list& list, const hole_row& row, const machine& m)
        : list_(list), row_(row), machine_(m), hole_(*row.asked) {}

    std::variant<planned_hole, fault> plan() {
        planned_hole p{.row = &row_, .asked = hole_, .plan = {}, .operations = {}};
        const auto made = fitwright::plan_hole(hole_.limits, tools_for(hole_, machine_), hole_.material);
        if (!made) return at("callout", std::string(made.error().message()));
        p.plan = *made;
        if (hole_.process == process::ream && made->deciding_step().operation != hole_operation::ream)
            return at("process", "no reamer in the drawer holds these limits with a drill under "
                                 "it; another "
                                 "process would: " +
                                     std::string(in_words(made->deciding_step().operation)));
        if (hole_.probe && !machine_.probe) return at("process", "the machine file has no [probe]");
        const fitwright::hole_step* before = nullptr;
        for (const fitwright::hole_step& s : made->steps()) {
            operation o{.what = s.operation, .tool = s.tool};
            if (auto wrong = size(o, s, before)) return *wrong;
            if (auto wrong = reach_down(o, *made)) return *wrong;
            if (auto wrong = set_speed(o)) return *wrong;
            p.operations.push_back(std::move(o));
            before = &s;
        }
        return p;
    }

private:
    fault at(std::string_view column, std::string message) const {
        return {list_.cell(row_, column).where, std::move(message)};
    }

    std::optional<fault> size(operation& o, const fitwright::hole_step& s,
                              const fitwright::hole_step* before) const {
        o.diameter =
            o.what == hole_operation::centre ? machine_.spot.diameter : (s.tool.least + s.tool.most) / 2;
        if (o.what != hole_operation::bore) return std::nullopt;
        o.mill = mill_behind(s.tool, machine_);
        o.diameter = o.mill->diameter;
        const length step = machine_.dialect.increment() * 2; // a radius is what is written
        length target = machine_.dialect.on_grid(s.mean / 2) * 2;
        if (s.decides_size) {
            const auto on_grid = fitwright::target_on_grid(hole_.limits, step);
            if (!on_grid) return at("callout", std::string(on_grid.error().message()));
            target = *on_grid;
        }
        o.passes = passes(*before, target, *o.mill, machine_.dialect);
        return std::nullopt;
    }

    /// How deep the tip goes. What is reamed is drilled deeper by the reamer's
    /// tip; through holes go out at the far side with the full diameter.
    std::optional<fault> reach_down(operation& o, const fitwright::hole_plan& made) const {
        const heights& h = machine_.heights;
        const bool is_reamed = made.deciding_step().operation == hole_operation::ream;
        length deep = hole_.depth;
        if (hole_.through) deep += h.breakthrough;
        if (o.what == hole_operation::ream || (is_reamed && !hole_.through)) deep += h.reamer_lead;
        if (o.what == hole_operation::drill) deep += point_of(o.diameter);
        if (o.what == hole_operation::centre) deep = machine_.spot.depth;
        if (o.mill != nullptr && deep > o.mill->reach)
            return at("depth", fmt::format("the {} reaches {} mm deep, this bore goes {} mm", o.tool_name(),
                                           mm(o.mill->reach), mm(deep)));
        o.bottom = machine_.dialect.on_grid(hole_.z_top - deep);
        return std::nullopt;
    }

    /// The point of a drill of 118 degrees is as high as 0.3 of its diameter
    /// (half of it over the tangent of 59 degrees).
    static length point_of(length diameter) { return diameter * 3 / 10; }

    std::optional<fault> set_speed(operation& o) const {
        const cutting* stuff = nullptr;
        for (const cutting& c : machine_.cutting)
            if (c.family == hole_.material) stuff = &c;
        if (stuff == nullptr)
            return at("material", fmt::format("the machine file has no [[cutting]] for {}",
                                              std::string_view(in_words(hole_.material))));
        const cutting::rate& rate = o.what == hole_operation::ream   ? stuff->ream
                                    : o.what == hole_operation::bore ? stuff->mill
                                                                     : stuff->drill;
        const double wanted = rate.speed * 1000 / (std::numbers::pi * in_mm(o.diameter));
        if (wanted < machine_.slowest)
            return at("material",
                      fmt::format("the {} wants {:.0f} turns a minute, the spindle's slowest is {}",
                                  o.tool_name(), wanted, machine_.slowest));
        const double turns = (std::min)(wanted, static_cast<double>(machine_.fastest));
        o.turns_a_minute = static_cast<int>(turns >= 100 ? std::floor(turns / 10) * 10 : turns);
        o.feed = rate.feed * in_mm(o.diameter) * o.turns_a_minute;
        return std::nullopt;
    }

    const hole_list& list_;
    const hole_row& row_;
    const machine& machine_;
    const hole& hole_;
};

} // namespace

std::string operation::tool_name() const {
    if (mill != nullptr) return mm(mill->diameter) + " mm mill";
    return std::string(tool.name().view());
}

std::optional<length> planned_hole::target() const {
    if (operations.empty() || operations.back().passes.empty()) return std::nullopt;
    return operations.back().passes.back();
}

std::variant<planned_hole, fault> plan(const hole_list& list, const hole_row& row, const machine& m) {
    return planner(list, row, m).plan();
}

} // namespace post_bores
