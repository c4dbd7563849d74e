#ifndef POST_BORES_PLANNED_HOLE_HPP
#define POST_BORES_PLANNED_HOLE_HPP

#include "hole_list.hpp"
#include "machine.hpp"
#include <fitwright/tool/plan_hole.hpp>

namespace post_bores {

/// One step of a hole with one tool.
struct operation {
    fitwright::hole_operation what = fitwright::hole_operation::centre;
    fitwright::drawer_tool tool = {};
    const post_bores::mill* mill = nullptr; ///< if it bores
    length diameter = {};                   ///< of the tool
    length bottom = {};                     ///< Z of its tip
    std::vector<length> passes = {};        ///< diameters, if it bores; the last is the target
    int turns_a_minute = 0;
    double feed = 0; ///< mm a minute

    /// "13 mm drill", "8 mm mill"
    [[nodiscard]] std::string tool_name() const;
};

/// A hole with its way through the machine.
struct planned_hole {
    const hole_row* row = nullptr;
    hole asked;
    std::optional<fitwright::hole_plan> plan;
    std::vector<operation> operations;

    /// The size that is milled, where it is.
    [[nodiscard]] std::optional<length> target() const;
};

/// How to make a hole on the machine; or what is missing, as a fault of the
/// hole's row.
[[nodiscard]] std::variant<planned_hole, fault> plan(const hole_list& list, const hole_row& row,
                                                     const machine& m);

} // namespace post_bores

#endif
