#include "making.hpp"

#include "stuff.hpp"

namespace job_sheet {

fitwright::reamer_size reamer_of(const fitwright::drawer_tool& t) {
    return {fitwright::tool_limits(t.least, t.most), t.over.most, t.over.origin()};
}

std::optional<making_answer> making_of(const std::optional<role<fitwright::side::hole>>& hole, const job& j) {
    if (!is_made_here(hole)) return std::nullopt;
    const stuff of = stuff_of(hole->part);
    making_answer m{.reamer = fitwright::reamer_for(*hole->limits),
                    .suiting = {},
                    .material = of.words,
                    .is_material_known = of.family.has_value(),
                    .plan = {},
                    .no_plan = {}};
    if (!j.drawer) return m;
    if (!of.family) {
        m.no_plan = of.words;
        return m;
    }
    for (const auto& reamer : j.drawer->reamers)
        if (match_reamer(reamer_of(reamer.value), *hole->limits, *of.family).suits())
            m.suiting.emplace_back(reamer.value.name().view());
    const auto plan = fitwright::plan_hole(*hole->limits, j.drawer->tools(), *of.family);
    if (plan) m.plan = *plan;
    else m.no_plan = plan.error().message();
    return m;
}

} // namespace job_sheet
