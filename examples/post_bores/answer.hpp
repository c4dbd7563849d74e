#ifndef POST_BORES_ANSWER_HPP
#define POST_BORES_ANSWER_HPP

#include "planned_hole.hpp"

namespace post_bores {

/// One tool of the program, with its number.
struct numbered_tool {
    int number = 1;
    std::string name;
    const post_bores::mill* mill = nullptr;
    bool is_probe = false;
};

/// An operation of a hole, with its tool; none probes.
struct task {
    const planned_hole* hole = nullptr;
    const operation* what = nullptr;
    int tool = 1;
};

/// All that is written of a list: what is made and how, in the order of the
/// work, and what is left out.
struct answer {
    std::string list_name; ///< of the file
    const hole_list* list = nullptr;
    const machine* on = nullptr;
    std::vector<planned_hole> holes; ///< in the order of the list
    std::vector<const hole_row*> left_out;
    std::vector<task> tasks;
    std::vector<numbered_tool> tools;
};

/// Plans every hole whose row is good. A hole that can't be made gets a fault
/// of its row.
[[nodiscard]] answer answer_of(hole_list& list, const machine& m);

/// The program: RS-274, ISO 6983.
[[nodiscard]] std::string program(const answer& a);

/// The inspection sheet as CSV: a row a hole, with what to accept, and room for
/// readings.
[[nodiscard]] std::string sheet(const answer& a);

/// What to heed before the program is run.
[[nodiscard]] const std::vector<std::string>& cautions();

} // namespace post_bores

#endif
