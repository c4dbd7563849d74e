#include "changes.hpp"

#include "facts.hpp"
#include "figures.hpp"
#include "read_pair.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace job_sheet {

namespace {

void add_if_changed(std::string_view what, const std::string& before, const std::string& after,
                    std::vector<std::string>& causes) {
    if (before == after) return;
    const auto shown = [](const std::string& s) { return s.empty() ? std::string("nothing") : s; };
    causes.push_back(fmt::format("{} {}, was {}", what, shown(after), shown(before)));
}

std::string limits_of(const part_answer& p) {
    return p.size ? fmt::format("{} to {} mm", mm(p.size->lower_limit), mm(p.size->upper_limit))
                  : std::string();
}

template <fitwright::side Side> std::string stands_in(const std::optional<role<Side>>& r) {
    return r && r->part.taken_as ? r->part.taken_as->written : std::string();
}

std::string temperatures_of(const hot_row* r) {
    return r == nullptr ? std::string() : fmt::format("hole {}, shaft {}", r->hole_at, r->shaft_at);
}

const hot_row* row_of(const pair_answer& a, const std::string& state) {
    if (!a.heat) return nullptr;
    for (const hot_row& r : a.heat->rows)
        if (r.state == state) return &r;
    return nullptr;
}

/// What is not as it was of what the job states. A size that was chosen or follows from another changes with it.
std::vector<std::string> causes_of(const pair_answer& before, const pair_answer& after) {
    std::vector<std::string> all;
    add_if_changed("call-out", before.asked.callout, after.asked.callout, all);
    for (const part_answer& now : after.parts) {
        const auto was = std::find_if(before.parts.begin(), before.parts.end(), [&](const part_answer& p) {
            return p.role == now.role && (p.role == "hole" || p.role == "shaft" || p.name == now.name);
        });
        if (was == before.parts.end()) continue;
        add_if_changed(now.role, was->name, now.name, all);
        add_if_changed(now.role + " of", was->material, now.material, all);
        add_if_changed(now.role, limits_of(*was), limits_of(now), all);
    }
    add_if_changed("hole taken as", stands_in(before.asked.hole), stands_in(after.asked.hole), all);
    add_if_changed("shaft taken as", stands_in(before.asked.shaft), stands_in(after.asked.shaft), all);
    if (after.heat)
        for (const hot_row& r : after.heat->rows)
            add_if_changed(fmt::format("state '{}':", r.state), temperatures_of(row_of(before, r.state)),
                           temperatures_of(&r), all);
    if (before.heat)
        for (const hot_row& r : before.heat->rows)
            if (row_of(after, r.state) == nullptr)
                all.push_back(fmt::format("no state '{}' any more", r.state));
    add_if_changed("given:", given(before.asked), given(after.asked), all);
    return all;
}

bool holds(const pair_answer& a, want w) {
    if (!a.judging) return false;
    return std::any_of(a.judging->rows.begin(), a.judging->rows.end(), [&](const want_row& r) {
        return r.wanted == w && r.holds == fitwright::holding::yes;
    });
}

/// Wants that hold in `one` and that `other` has too, but not fulfilled.
std::vector<std::string> held_only_in(const pair_answer& one, const pair_answer& other) {
    std::vector<std::string> all;
    if (!one.judging) return all;
    for (const want_row& r : one.judging->rows)
        if (holds(one, r.wanted) && !holds(other, r.wanted) && other.asked.wants_to(r.wanted))
            all.emplace_back(in_words(r.wanted));
    return all;
}

std::vector<std::string> only_in(const std::vector<std::string>& these,
                                 const std::vector<std::string>& those) {
    std::vector<std::string> all;
    for (const std::string& one : these)
        if (std::find(those.begin(), those.end(), one) == those.end()) all.push_back(one);
    return all;
}

std::vector<std::string> remarks_on(const pair_answer& a) {
    std::vector<std::string> all = texts(a.look_at);
    for (const fault& f : a.asked.faults) all.push_back(f.message);
    return all;
}

std::optional<pair_change> change_of(const pair_answer& before, const pair_answer& after) {
    pair_change c{.id = after.asked.id,
                  .name = after.asked.name,
                  .before = before.verdict(),
                  .after = after.verdict(),
                  .causes = causes_of(before, after),
                  .lost = held_only_in(before, after),
                  .won = held_only_in(after, before),
                  .new_remarks = only_in(remarks_on(after), remarks_on(before)),
                  .old_remarks = only_in(remarks_on(before), remarks_on(after))};
    const bool is_same = c.before == c.after && c.causes.empty() && c.new_remarks.empty() &&
                         c.old_remarks.empty() && c.lost.empty() && c.won.empty();
    if (is_same) return std::nullopt;
    return c;
}

const pair_answer* find(const sheet& s, const std::string& id) {
    for (const pair_answer& a : s.pairs)
        if (a.asked.id == id) return &a;
    return nullptr;
}

std::string verdicts_of(const pair_change& c) {
    if (c.is_new()) return fmt::format("new: {}", in_words(*c.after));
    if (c.is_gone()) return fmt::format("gone: was {}", in_words(*c.before));
    if (c.before == c.after) return fmt::format("{}, as before", in_words(*c.after));
    return fmt::format("{}, was {}", in_words(*c.after), in_words(*c.before));
}

} // namespace

bool pair_change::is_worse() const {
    return before && after && (*after > *before || (*after == *before && !lost.empty()));
}

bool pair_change::is_better() const {
    return before && after && !is_worse() && (*after < *before || !won.empty());
}

bool changes::any_worse() const {
    return std::any_of(list.begin(), list.end(), [](const pair_change& c) { return c.is_worse(); });
}

changes changes_between(const sheet& before, const sheet& after) {
    changes all{.pairs = after.pairs.size(), .list = {}};
    for (const pair_answer& now : after.pairs) {
        if (const pair_answer* const was = find(before, now.asked.id)) {
            if (auto change = change_of(*was, now)) all.list.push_back(*std::move(change));
        } else {
            all.list.push_back({.id = now.asked.id,
                                .name = now.asked.name,
                                .before = {},
                                .after = now.verdict(),
                                .causes = {},
                                .lost = {},
                                .won = {},
                                .new_remarks = remarks_on(now),
                                .old_remarks = {}});
        }
    }
    for (const pair_answer& was : before.pairs)
        if (find(after, was.asked.id) == nullptr)
            all.list.push_back({.id = was.asked.id,
                                .name = was.asked.name,
                                .before = was.verdict(),
                                .after = {},
                                .causes = {},
                                .lost = {},
                                .won = {},
                                .new_remarks = {},
                                .old_remarks = {}});
    return all;
}

std::string in_lines(const changes& c, lettering l) {
    const text_lines page(l);
    std::string lines;
    const auto each = [&](std::string_view label, const std::vector<std::string>& all) {
        for (const std::string& one : all) lines += page.wrapped(fmt::format("   {:<10}", label), one);
    };
    std::size_t worse = 0;
    std::size_t better = 0;
    std::size_t is_new = 0;
    std::size_t gone = 0;
    for (const pair_change& one : c.list) {
        worse += one.is_worse();
        better += one.is_better();
        is_new += one.is_new();
        gone += one.is_gone();
        const std::string_view mark = one.is_worse() ? "WORSE" : one.is_better() ? "better" : "";
        lines += page.wrapped(fmt::format("{:<7}", mark),
                              fmt::format("{}  {}  [{}]", one.id, one.name, verdicts_of(one)));
        each("changed", one.causes);
        each("lost", one.lost);
        each("won", one.won);
        each("new", one.new_remarks);
        each("no more", one.old_remarks);
    }
    const auto other = c.pairs - worse - better - is_new;
    return lines + fmt::format("{} pair{}: {} worse, {} better, {} neither, {} new, {} gone\n", c.pairs,
                               c.pairs == 1 ? "" : "s", worse, better, other, is_new, gone);
}

} // namespace job_sheet
