#include "not_yet.hpp"

namespace job_sheet {

namespace {

struct capability {
    const char* name;
    bool (*needed)(const pair_answer&, const job&);
};

constexpr capability missing[] = {
    {"stack", [](const pair_answer& a, const job&) { return a.asked.stack.has_value(); }},
};

} // namespace

std::vector<std::string> not_yet_computed(const pair_answer& a, const job& j) {
    std::vector<std::string> all;
    for (const capability& c : missing)
        if (c.needed(a, j)) all.emplace_back(c.name);
    return all;
}

} // namespace job_sheet
