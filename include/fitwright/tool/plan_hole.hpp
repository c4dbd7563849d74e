#ifndef FITWRIGHT_TOOL_PLAN_HOLE_HPP
#define FITWRIGHT_TOOL_PLAN_HOLE_HPP

#include <fitwright/tool/hole_plan.hpp>
#include <fitwright/tool/hole_planner.hpp>

namespace fitwright {

/// How to make a hole with the tools of a drawer: centre, drill, and then bore, ream, cut with a
/// half-round bit or lap, with the size to be expected after each step. Only plans whose final hole lies
/// within the limits, least and most, are given.
///
/// The plan with the fewest steps; of as many steps the surest: first a reamer, then boring, then a
/// half-round bit; lapping only where nothing else holds the limits. Of two tools of a kind the one with
/// the larger margin to the limits, then the first in the drawer. Under a reamer or a bit goes the drill
/// that leaves a stock nearest the middle of the rule, as the rule counts it (0.05 mm over the drill), of two
/// as near the smaller; under a boring head the largest that leaves enough. In any case the largest hole to
/// be expected of the drill leaves something to cut. Nothing uncertain decides a size: neither a half-round
/// bit without an overcut from trials, nor a reamer or a drill in plastic or in a thin wall.
///
/// Drilled holes are expected as `drilled_hole` in the material says, outside its tests as
/// `jig_drilled_hole`, though without a jig. A centre drill or a spotting tool is taken for granted. The
/// plan keeps copies of its tools, so the drawer may be a braced list: `plan_hole(bore, {a, b}, steel)`.
///
/// `material` is a family or anything that has one, such as `materials::brass_cuzn39pb3`, or `thin_walled`
/// of it.
/// Error: no tool in the drawer holds the limits, or none prepares the hole for the one that does: says
/// what is missing and what would do; a tool that is not one; limits the wrong way round or not above 0;
/// ceramic, which none of these tools cuts.
[[nodiscard]] constexpr result<hole_plan> plan_hole(const hole_limits& wanted, rows<drawer_tool> drawer,
                                                    work_material material) noexcept {
    return detail::hole_planner({wanted, drawer, material}).plan();
}

/// The same for a list of tools in braces.
template <std::size_t Size>
[[nodiscard]] constexpr result<hole_plan>
plan_hole(const hole_limits& wanted, const drawer_tool (&&drawer)[Size], work_material material) noexcept {
    drawer_tool tools[Size]; // a copy: g++ 12 compares no pointer to a temporary in a constant expression
    for (std::size_t i = 0; i < Size; ++i) tools[i] = drawer[i];
    return plan_hole(wanted, rows<drawer_tool>(tools), material);
}

} // namespace fitwright

#endif
