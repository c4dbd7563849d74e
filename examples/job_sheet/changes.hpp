#ifndef JOB_SHEET_CHANGES_HPP
#define JOB_SHEET_CHANGES_HPP

#include "answer.hpp"
#include "text_lines.hpp"

#include <optional>
#include <string>
#include <vector>

// Two states of a job, pair by pair: what a changed class, material or temperature does to it.

namespace job_sheet {

struct pair_change {
    std::string id;
    std::string name;
    std::optional<verdict> before;   ///< nothing of a pair that is new
    std::optional<verdict> after;    ///< nothing of a pair that is gone
    std::vector<std::string> causes; ///< "call-out 14 H7/p6, was 14 H7/s6"
    std::vector<std::string> lost;   ///< wants that held and do not any more
    std::vector<std::string> won;    ///< wants that hold now
    std::vector<std::string> new_remarks;
    std::vector<std::string> old_remarks; ///< that need not be made any more

    [[nodiscard]] bool is_new() const { return !before; }
    [[nodiscard]] bool is_gone() const { return !after; }
    /// A worse verdict, or the same and a want that is lost.
    [[nodiscard]] bool is_worse() const;
    [[nodiscard]] bool is_better() const;
};

struct changes {
    std::size_t pairs = 0; ///< that the job has now
    std::vector<pair_change>
        list; ///< those that are not as they were, in the order of the job; gone ones last

    /// Whether a pair of before is worse now.
    [[nodiscard]] bool any_worse() const;
};

/// Pairs are told by their ids.
[[nodiscard]] changes changes_between(const sheet& before, const sheet& after);

[[nodiscard]] std::string in_lines(const changes& c, lettering l);

} // namespace job_sheet

#endif
