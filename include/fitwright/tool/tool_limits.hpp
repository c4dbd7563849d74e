#ifndef FITWRIGHT_TOOL_TOOL_LIMITS_HPP
#define FITWRIGHT_TOOL_TOOL_LIMITS_HPP

#include <fitwright/limits.hpp>

namespace fitwright {

/// The limits of size of a tool that leaves a hole: how it is made, or how it was measured.
///
/// Neither a hole's limits nor a shaft's: a reamer marked H7 is not H7 in size. It can be stated as
/// `between(7.980_mm, 7.984_mm)`, or measured over its outside as a shaft is:
/// `measured_shaft{7.982_mm, 2_um}`.
class tool_limits {
public:
    /// No tool at all: `exist()` is false and no size is allowed.
    constexpr tool_limits() noexcept = default;

    /// Both limits are allowed sizes. `origin` is kept as a pointer: a constant.
    constexpr tool_limits(length lower, length upper, const source& origin = stated_by_user) noexcept
        : lower_(lower), upper_(upper), source_(&origin) {}

    constexpr tool_limits(stated_limits stated) noexcept : tool_limits(stated.lower, stated.upper) {}

    /// A tool, or the rod it is made of, as measured over its outside.
    constexpr tool_limits(const measured_shaft& outside) noexcept
        : tool_limits(outside.limits().lower_limit(), outside.limits().upper_limit()) {}

    [[nodiscard]] constexpr length lower_limit() const noexcept { return lower_; }
    [[nodiscard]] constexpr length upper_limit() const noexcept { return upper_; }

    /// Halfway between the limits, to the nearest nanometre.
    [[nodiscard]] constexpr length middle() const noexcept { return (lower_ + upper_) / 2; }
    [[nodiscard]] constexpr length tolerance() const noexcept { return upper_ - lower_; }

    /// True for a size from the lower to the upper limit, both included.
    [[nodiscard]] constexpr bool allow(length size) const noexcept {
        return exist() && lower_ <= size && size <= upper_;
    }

    /// False where there is no such tool: sizes not above 0, or limits the wrong way round.
    [[nodiscard]] constexpr bool exist() const noexcept { return length() < lower_ && lower_ <= upper_; }

    /// The document the limits come from.
    [[nodiscard]] constexpr const source& origin() const noexcept { return *source_; }

    // The same as Boost.Units quantities, `reamer.upper_limit<inch>()`: needs units.hpp.
    template <class Unit> [[nodiscard]] constexpr auto lower_limit() const noexcept {
        return lower_limit().template as<Unit>();
    }
    template <class Unit> [[nodiscard]] constexpr auto upper_limit() const noexcept {
        return upper_limit().template as<Unit>();
    }
    template <class Unit> [[nodiscard]] constexpr auto middle() const noexcept {
        return middle().template as<Unit>();
    }
    template <class Unit> [[nodiscard]] constexpr auto tolerance() const noexcept {
        return tolerance().template as<Unit>();
    }

    /// The same limits, wherever they come from.
    friend constexpr bool operator==(const tool_limits& a, const tool_limits& b) noexcept {
        return a.lower_ == b.lower_ && a.upper_ == b.upper_;
    }

private:
    length lower_;
    length upper_;
    const source* source_ = &stated_by_user;
};

} // namespace fitwright

#endif
