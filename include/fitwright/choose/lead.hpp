#ifndef FITWRIGHT_CHOOSE_LEAD_HPP
#define FITWRIGHT_CHOOSE_LEAD_HPP

#include <fitwright/limits.hpp>
#include <fitwright/tool/drawer.hpp>

// What is there already and decides: a part, its limits, or the tool that will cut the hole.

namespace fitwright {

/// What leads: limits on a drawing, a part that was measured, a tool.
enum class lead_kind : std::uint8_t { nothing, drawn_hole, drawn_shaft, found_hole, found_shaft, tool };

/// What leads, made from it: `.leads = measured_shaft(7.97_mm, 2_um)`, `.leads = "8 H7"_hole`,
/// `.leads = hand_reamer(8_mm, "H7"_hole_class)`. Limits that don't say whose they are do not compile.
class leading_part {
public:
    /// Nothing: both parts are to be made.
    constexpr leading_part() noexcept = default;
    constexpr leading_part(const hole_limits& hole) noexcept : hole_(hole), kind_(lead_kind::drawn_hole) {}
    constexpr leading_part(const shaft_limits& shaft) noexcept
        : shaft_(shaft), kind_(lead_kind::drawn_shaft) {}
    constexpr leading_part(measured_hole hole) noexcept
        : hole_(hole.limits()), kind_(lead_kind::found_hole) {}
    constexpr leading_part(measured_shaft shaft) noexcept
        : shaft_(shaft.limits()), kind_(lead_kind::found_shaft) {}
    /// A reamer or a half-round bit: the hole is what it is expected to cut.
    constexpr leading_part(const drawer_tool& tool) noexcept : tool_(tool), kind_(lead_kind::tool) {}

    [[nodiscard]] constexpr lead_kind kind() const noexcept { return kind_; }
    /// Of a hole that leads.
    [[nodiscard]] constexpr const hole_limits& hole() const noexcept { return hole_; }
    /// Of a shaft that leads.
    [[nodiscard]] constexpr const shaft_limits& shaft() const noexcept { return shaft_; }
    /// Of a tool that leads.
    [[nodiscard]] constexpr const drawer_tool& tool() const noexcept { return tool_; }

    /// Whether the hole is decided, and only the shaft left to choose.
    [[nodiscard]] constexpr bool decides_hole() const noexcept {
        return kind_ == lead_kind::drawn_hole || kind_ == lead_kind::found_hole || kind_ == lead_kind::tool;
    }
    /// Whether the shaft is decided, and only the hole left to choose.
    [[nodiscard]] constexpr bool decides_shaft() const noexcept {
        return kind_ == lead_kind::drawn_shaft || kind_ == lead_kind::found_shaft;
    }

private:
    hole_limits hole_;
    shaft_limits shaft_;
    drawer_tool tool_;
    lead_kind kind_ = lead_kind::nothing;
};

} // namespace fitwright

#endif
