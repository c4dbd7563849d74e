#include "not_yet.hpp"

namespace job_sheet {

namespace {

bool may_be(const pair_answer& a, fitwright::fit_kind kind) {
    return a.clearance && a.clearance->kind == kind;
}

bool is_pressed(const pair_answer& a) {
    const bool transition = may_be(a, fitwright::fit_kind::transition) && a.asked.wants_to(want::stays_put);
    return transition || may_be(a, fitwright::fit_kind::interference);
}

struct capability {
    const char* name;
    bool (*needed)(const pair_answer&, const job&);
};

constexpr capability missing[] = {
    {"stack", [](const pair_answer& a, const job&) { return a.asked.stack.has_value(); }},
    {"leak", [](const pair_answer& a, const job&) { return a.asked.wants_to(want::little_leak); }},
    {"oil film", [](const pair_answer& a, const job&) { return a.asked.wants_to(want::oil_film); }},
    {"press force", [](const pair_answer& a, const job&) { return is_pressed(a); }},
    {"closing-in of the bore",
     [](const pair_answer& a, const job&) { return is_pressed(a) && a.asked.shaft && a.asked.shaft->bore; }},
};

} // namespace

std::vector<std::string> not_yet_computed(const pair_answer& a, const job& j) {
    std::vector<std::string> all;
    for (const capability& c : missing)
        if (c.needed(a, j)) all.emplace_back(c.name);
    return all;
}

} // namespace job_sheet
