#ifndef JOB_SHEET_JSON_SHOP_HPP
#define JOB_SHEET_JSON_SHOP_HPP

#include "answer.hpp"

#include <nlohmann/json.hpp>

namespace job_sheet {

/// {"nm": 14018000, "mm": "14.018"}
[[nodiscard]] nlohmann::ordered_json size_in_json(fitwright::length l);
/// {"nm": 18000, "um": "18"}
[[nodiscard]] nlohmann::ordered_json difference_in_json(fitwright::length l);

/// How to make and to check: "leading", "making", "gauges", "readings" and "chance", where the pair has them.
/// A pair in each state of the job.
[[nodiscard]] nlohmann::ordered_json hot_in_json(const heat_answer& h);

void add_shop_answers(const pair_answer& a, nlohmann::ordered_json& to);

} // namespace job_sheet

#endif
