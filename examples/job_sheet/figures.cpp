#include "figures.hpp"

#include <fitwright/grid.hpp>
#include <fitwright/written.hpp>

#include <fmt/format.h>

namespace job_sheet {

using fitwright::length;
using fitwright::written_unit;

std::int64_t multiples_below(length l, length step) {
    const std::int64_t quotient = l.nanometres() / step.nanometres();
    return step * quotient > l ? quotient - 1 : quotient;
}

std::int64_t multiples_above(length l, length step) { return -multiples_below(-l, step); }

std::string mm(length l, int least_decimals) {
    std::string digits(written(l, {.unit = written_unit::mm}));
    const std::size_t point = digits.find('.');
    const std::size_t decimals = point == std::string::npos ? 0 : digits.size() - point - 1;
    if (decimals >= static_cast<std::size_t>(least_decimals)) return digits;
    return std::string(written(l, {.unit = written_unit::mm, .decimals = least_decimals}));
}

std::string um(length l) { return std::string(written(l, {.unit = written_unit::um})); }

std::string signed_um(length deviation) {
    return std::string(written(deviation, {.unit = written_unit::um, .with_plus = true}));
}

std::optional<inch_limits> inches_within(length lower, length upper) {
    struct inch_step {
        length step;
        int decimals;
    };
    constexpr inch_step steps[] = {{length::from_nanometres(2540), 4}, {length::from_nanometres(254), 5}};
    for (const inch_step& s : steps) {
        const auto rounded =
            fitwright::rounded_inwards(fitwright::hole_limits::between(lower, upper), s.step);
        if (rounded && rounded->lower_limit() < rounded->upper_limit())
            return inch_limits{rounded->lower_limit(), rounded->upper_limit(), s.decimals};
    }
    return std::nullopt;
}

std::string range_in_words(length lower, length upper, units_shown units) {
    const auto in = units == units_shown::inch ? inches_within(lower, upper) : std::nullopt;
    if (in)
        return fmt::format("{} to {} in", inches(in->lower, in->decimals), inches(in->upper, in->decimals));
    return fmt::format("{} to {} mm", mm(lower), mm(upper));
}

std::string inches(length l, int decimals) {
    return std::string(written(l, {.unit = written_unit::in, .decimals = decimals}));
}

tenths in_tenths(const clearance_answer& c) {
    const length tenth = length::from_nanometres(2540);
    const std::int64_t below = multiples_below(c.mean, tenth);
    const length over = c.mean - tenth * below;
    return {multiples_below(c.least, tenth), below + (over * 2 >= tenth ? 1 : 0),
            multiples_above(c.greatest, tenth)};
}

std::string in_short(const fitwright::source& s) {
    return fmt::format("{} ({})", std::string_view(s.document), std::string_view(in_words(s.how_sure)));
}

std::string aim_in_words(const size_answer& s) {
    const std::string aim = "aim at " + mm(*s.target, 2) + " mm";
    const bool on_a_limit = *s.target == s.lower_limit || *s.target == s.upper_limit;
    return on_a_limit ? aim + ": a limit itself, the steps are coarse for this" : aim;
}

std::string_view kind_in_words(fitwright::fit_kind kind) {
    switch (kind) {
    case fitwright::fit_kind::clearance: return "clearance fit: the hole is never smaller than the shaft";
    case fitwright::fit_kind::transition: return "transition fit: comes out loose or tight";
    case fitwright::fit_kind::interference:
        return "interference fit: the hole is never larger than the shaft";
    }
    return "";
}

std::string in_words(const fault& f) {
    return fmt::format("line {}, column {}: {}", f.where.line, f.where.column, f.message);
}

std::string_view in_words(status s) {
    switch (s) {
    case status::answered: return "answered";
    case status::look_at: return "look at";
    case status::refused: return "refused";
    }
    return "";
}

std::string_view in_words(verdict v) {
    switch (v) {
    case verdict::good: return "good";
    case verdict::look_at: return "look at it";
    case verdict::cannot_tell: return "can't tell";
    case verdict::wont_do: return "won't do";
    }
    return "";
}

std::string count_in_words(const sheet& s) {
    return fmt::format("{} pair{}: {} good, {} to look at, {} can't be told, {} won't do", s.pairs.size(),
                       s.pairs.size() == 1 ? "" : "s", s.count(verdict::good), s.count(verdict::look_at),
                       s.count(verdict::cannot_tell), s.count(verdict::wont_do));
}

std::vector<std::string> texts(const std::vector<remark>& remarks) {
    std::vector<std::string> all;
    for (const remark& r : remarks) all.push_back(r.text);
    return all;
}

} // namespace job_sheet
