#ifndef JOB_SHEET_WANTING_HPP
#define JOB_SHEET_WANTING_HPP

#include "job.hpp"
#include <fitwright/choose.hpp>

#include <optional>
#include <string>
#include <vector>

// What a pair wants, as the library takes it.

namespace job_sheet {

/// A want of the job, and the library's that it comes to.
struct asked_want {
    want mine;
    fitwright::want theirs;
};

/// A want that can't be judged, and the figure that would judge it.
struct open_want {
    want mine;
    std::string missing; ///< `shake_at_most = "30 um"`
};

/// The wants of a pair together with all that they refer to.
class wanting {
public:
    /// Nothing for a stack, or a pair without a nominal size.
    [[nodiscard]] static std::optional<wanting> of(const pair& p, const job& j);

    /// To hold a given pair against.
    [[nodiscard]] fitwright::wants to_judge() const;
    /// To choose by: with the part that is as it is, if there is one, in the lead.
    [[nodiscard]] fitwright::wants to_choose() const;

    [[nodiscard]] const std::vector<asked_want>& asked() const { return asked_; }
    [[nodiscard]] const std::vector<open_want>& unjudged() const { return unjudged_; }
    /// Whether there is a part left to choose.
    [[nodiscard]] bool leaves_a_choice() const { return leaves_a_choice_; }
    /// Whether the hole is made here, with the tools of the drawer.
    [[nodiscard]] bool hole_is_made() const { return hole_is_made_; }
    /// To choose without a want that no pair can have.
    void give_up(fitwright::want theirs);
    /// Whether it is to hold any force at all, since none is stated.
    [[nodiscard]] bool any_grip_will_do() const { return any_grip_will_do_; }

private:
    void ask(const pair& p, const job& j);
    void ask(want mine, fitwright::want theirs);
    void ask_for_shake(const pair& p, want mine);
    void ask_for_a_joint(const pair& p);
    void ask_for_a_leak(const pair& p, const job& j);
    void ask_for_a_film(const pair& p);
    void take_states(const pair& p, const job& j);
    void take_lead(const pair& p);

    fitwright::wants wants_;
    std::vector<asked_want> asked_;
    std::vector<open_want> unjudged_;
    std::vector<fitwright::thermal_state> states_;
    std::vector<fitwright::drawer_tool> tools_;
    bool leaves_a_choice_ = true;
    bool hole_is_made_ = true;
    bool comes_off_ = false;
    bool any_grip_will_do_ = false;
};

/// The size that a pair's classes are of: as stated, else of its call-out, else of a measured part the whole
/// millimetre next to it.
[[nodiscard]] std::optional<fitwright::length> nominal_of(const pair& p);

} // namespace job_sheet

#endif
