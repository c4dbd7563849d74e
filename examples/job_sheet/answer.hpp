#ifndef JOB_SHEET_ANSWER_HPP
#define JOB_SHEET_ANSWER_HPP

#include "chances.hpp"
#include "checking.hpp"
#include "choosing.hpp"
#include "end_float.hpp"
#include "heat.hpp"
#include "job.hpp"
#include "judging.hpp"
#include "leading.hpp"
#include "making.hpp"
#include "pressing.hpp"
#include "running.hpp"

#include <functional>
#include <optional>
#include <string>
#include <vector>

// What the sheet says of each pair: the same for every format it is written in.

namespace job_sheet {

/// Limits in whole 0.0001 in (4 decimals) or, where too little is left of them, 0.00001 in.
struct inch_limits {
    fitwright::length lower;
    fitwright::length upper;
    int decimals;
};

struct size_answer {
    fitwright::length nominal;
    fitwright::length lower_deviation;
    fitwright::length upper_deviation;
    fitwright::length lower_limit;
    fitwright::length upper_limit;
    std::optional<inch_limits> inches;       ///< rounded inwards; of a measured part outwards
    bool measured;                           ///< a reading with its uncertainty, no limits to work to
    std::optional<fitwright::length> target; ///< what to set the machine to
    std::string source;
};

struct part_answer {
    std::string role; ///< "hole", "shaft"; in a stack "opens", "closes"
    std::string name;
    std::string material;
    std::string as_read;
    bool is_made_here = false;
    std::optional<size_answer> size;
};

/// On diameter, hole less shaft; below zero where the parts interfere.
struct clearance_answer {
    fitwright::length least;
    fitwright::length mean;
    fitwright::length greatest;
    fitwright::fit_kind kind;
};

struct alternative_answer {
    std::string callout;
    clearance_answer clearance;
    std::optional<heat_answer> heat;
};

/// How far the file could be answered.
enum class status { answered, look_at, refused };

/// What the sheet says of a pair in one word, from best to worst.
enum class verdict {
    good,        ///< all that is wanted holds in every pair within the limits, in every state
    look_at,     ///< somebody has to decide
    cannot_tell, ///< something is missing, or not known
    wont_do,     ///< a pair within the limits may fail
};

/// What somebody has to know of a pair, and the verdict that it alone would bring.
struct remark {
    job_sheet::verdict brings = verdict::look_at;
    std::string text;
    std::optional<want> about = {}; ///< the want that it says enough of
};

struct pair_answer {
    pair asked; ///< with the limits that were chosen for a part that has none
    std::vector<part_answer> parts;
    std::optional<clearance_answer> clearance;
    std::vector<alternative_answer> instead;
    std::optional<heat_answer> heat;
    std::optional<pressing_answer> pressing;
    std::optional<leak_answer> leak;
    std::optional<film_answer> film;
    std::optional<float_answer> end_float;
    std::string seated_first; ///< what the hole's part is pressed into before it is finished
    std::optional<leading_answer> leading;
    std::optional<judging_answer> judging;   ///< want by want
    std::optional<choosing_answer> choosing; ///< what is made, or where a want fails what would do
    std::optional<making_answer> making;
    std::vector<gauge_answer> gauges;
    std::vector<reading_answer> readings;
    std::optional<chance_answer> chance;
    std::vector<remark> look_at;       ///< the worst first
    fitwright::cautions biting;        ///< what can hurt someone here
    std::vector<std::string> cautions; ///< the same in words, with the job's own
    job_sheet::status status = status::answered;

    /// That of the worst remark; of a pair that the file states wrongly nothing can be told.
    [[nodiscard]] job_sheet::verdict verdict() const;
};

struct sheet {
    job asked;
    std::vector<pair_answer> pairs;

    [[nodiscard]] std::size_t count(status s) const;
    [[nodiscard]] std::size_t count(verdict v) const;
};

/// `answered` hears after each pair how many are done.
[[nodiscard]] sheet answer(job j, const std::function<void(std::size_t)>& answered = {});

} // namespace job_sheet

#endif
