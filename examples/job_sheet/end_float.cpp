#include "end_float.hpp"

#include "figures.hpp"
#include <fitwright/io/source.hpp>

#include <fmt/format.h>

#include <algorithm>

namespace job_sheet {

namespace {

constexpr fitwright::length one_um = fitwright::length::from_nanometres(1'000);

using fitwright::length;
using fitwright::range;

template <class Make>
bool add_links(const std::vector<link>& from, Make make, std::vector<fitwright::chain_link>& to) {
    for (const link& l : from) {
        if (!l.limits) return false;
        to.push_back(make(fitwright::text(l.name.data(), l.name.size()), *l.limits));
    }
    return true;
}

/// All that the shims in hand can fill up: none, one, two of them.
std::vector<shim_row> by_measure(const stack& s, range<length> wanted) {
    std::vector<shim_row> all{{"none", wanted}};
    const auto add = [&](std::string words, length thickness) {
        all.push_back({std::move(words), {wanted.least + thickness, wanted.most + thickness}});
    };
    for (std::size_t i = 0; i < s.shims.size(); ++i) {
        add(s.shims[i].written, s.shims[i].value);
        for (std::size_t k = i + 1; k < s.shims.size(); ++k)
            add(s.shims[i].written + " and " + s.shims[k].written, s.shims[i].value + s.shims[k].value);
    }
    // Of as thick ones the fewer shims, which come first.
    std::stable_sort(all.begin(), all.end(), [](const shim_row& a, const shim_row& b) {
        return a.measured.least != b.measured.least ? a.measured.least < b.measured.least
                                                    : a.shims.size() < b.shims.size();
    });
    const auto same = [](const shim_row& a, const shim_row& b) { return a.measured == b.measured; };
    all.erase(std::unique(all.begin(), all.end(), same), all.end());
    return all;
}

} // namespace

std::optional<float_answer> float_of(const pair& p) {
    if (!p.stack) return std::nullopt;
    float_answer a;
    std::vector<fitwright::chain_link> links;
    const bool all_known =
        add_links(
            p.stack->opens, [](auto name, const auto& l) { return fitwright::opens(name, l); }, links) &&
        add_links(
            p.stack->closes, [](auto name, const auto& l) { return fitwright::closes(name, l); }, links);
    if (!all_known || links.empty() || p.stack->gap.size() != 2) {
        a.cannot_tell = "a size of the chain, or the gap that is wanted, could not be read";
        return a;
    }
    const auto chain = fitwright::stack({links.data(), links.size()});
    if (!chain) {
        a.cannot_tell = chain.error().message();
        return a;
    }
    a.chain = *chain;
    a.wanted = {p.stack->gap[0].value, p.stack->gap[1].value};
    std::vector<fitwright::shim> in_hand;
    for (const auto& one : p.stack->shims) in_hand.push_back({one.value});
    const auto choice = fitwright::choose_shim(*chain, a.wanted, {in_hand.data(), in_hand.size()});
    a.does_for_all = choice.has_value();
    if (!choice) a.for_all = choice.error().message();
    else if (choice->how_many == 0) a.for_all = "right without a shim";
    else
        a.for_all = fmt::format("shim {}{}: leaves {} to {} mm", p.stack->shims[choice->first].written,
                                choice->how_many == 2 ? " and " + p.stack->shims[choice->second].written : "",
                                mm(choice->left.least), mm(choice->left.most));
    if (!a.does_for_all)
        for (shim_row& r : by_measure(*p.stack, a.wanted))
            if (r.measured.most >= chain->worst_case.least && r.measured.least <= chain->worst_case.most)
                a.by_measure.push_back(std::move(r));
    chain->doubts.for_each([&](fitwright::stack_doubt d) { a.doubts.emplace_back(in_words(d)); });
    a.source = std::string(written(chain->from));
    return a;
}

std::vector<fact> facts_of(const float_answer& a) {
    std::vector<fact> all;
    const auto say = [&](std::string words) { all.push_back({"float", std::move(words)}); };
    if (!a.cannot_tell.empty()) {
        say("can't tell: " + a.cannot_tell);
        return all;
    }
    say(fmt::format("{} to {} mm before any shim, whatever comes out; {} to {} mm is wanted",
                    mm(a.chain.worst_case.least), mm(a.chain.worst_case.most), mm(a.wanted.least),
                    mm(a.wanted.most)));
    say(fmt::format("{} to {} mm in 99.73 % of all, by the root of squares",
                    mm(one_um * multiples_below(a.chain.root_sum_square.least, one_um)),
                    mm(one_um * multiples_above(a.chain.root_sum_square.most, one_um))));
    all.push_back({"shims", a.for_all});
    for (const shim_row& r : a.by_measure)
        all.push_back({"shims", fmt::format("float measured {} to {} mm: {}", mm(r.measured.least),
                                            mm(r.measured.most), r.shims)});
    if (!a.by_measure.empty())
        all.push_back(
            {"shims",
             "where two rows overlap either does; how well the float is measured comes off both ends"});
    for (const std::string& d : a.doubts) all.push_back({"mind", d});
    all.push_back({"figures", a.source});
    return all;
}

} // namespace job_sheet
