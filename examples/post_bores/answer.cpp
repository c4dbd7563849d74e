#include "answer.hpp"

#include <algorithm>
#include <tuple>

namespace post_bores {

namespace {

/// Tool by tool: every hole is spotted before one is drilled, small drills come
/// before large ones, and what is probed comes last.
void put_in_order(answer& a) {
    for (const planned_hole& h : a.holes) {
        for (const operation& o : h.operations) a.tasks.push_back({&h, &o});
        if (h.asked.probe) a.tasks.push_back({&h, nullptr});
    }
    const auto key = [](const task& t) {
        if (t.what == nullptr) return std::tuple(99, length(), std::string());
        return std::tuple(static_cast<int>(t.what->what), t.what->diameter, t.what->tool_name());
    };
    std::stable_sort(a.tasks.begin(), a.tasks.end(),
                     [&](const task& one, const task& other) { return key(one) < key(other); });
}

void number_tools(answer& a) {
    for (task& t : a.tasks) {
        const std::string name = t.what != nullptr ? t.what->tool_name() : "probe";
        if (a.tools.empty() || a.tools.back().name != name)
            a.tools.push_back({static_cast<int>(a.tools.size()) + 1, name,
                               t.what != nullptr ? t.what->mill : nullptr, t.what == nullptr});
        t.tool = a.tools.back().number;
    }
}

} // namespace

answer answer_of(hole_list& list, const machine& m) {
    answer a;
    a.list = &list;
    a.on = &m;
    for (hole_row& row : list.rows) {
        if (row.asked) {
            auto made = plan(list, row, m);
            if (auto* const planned = std::get_if<planned_hole>(&made))
                a.holes.push_back(std::move(*planned));
            else row.faults.push_back(std::get<fault>(made));
        }
        if (!row.faults.empty()) a.left_out.push_back(&row);
    }
    put_in_order(a);
    number_tools(a);
    return a;
}

const std::vector<std::string>& cautions() {
    static const std::vector<std::string> all = {
        "Check this program on the machine's own simulator.",
        "Dry run above the work first, work offset raised, a hand on the feed "
        "hold.",
        "Guards shut, work clamped; follow the machine's manual and local codes.",
        "What goes through comes out below: keep table and vice clear.",
    };
    return all;
}

} // namespace post_bores
