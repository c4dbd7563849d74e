#include "facts.hpp"

#include <fmt/format.h>

namespace job_sheet {

namespace {

void append(std::string& list, std::string_view separator, std::string_view more) {
    if (!list.empty() && !more.empty()) list += separator;
    list += more;
}

template <class Value>
void append(std::string& list, std::string_view name, const std::optional<stated<Value>>& value) {
    if (value) append(list, ", ", std::string(name) + value->written);
}

template <class Value> std::string joined(const std::vector<stated<Value>>& all) {
    std::string list;
    for (const auto& one : all) append(list, ", ", one.written);
    return list;
}

void add(facts& to, std::string label, std::string text) {
    if (!text.empty()) to.lines.push_back({std::move(label), std::move(text)});
}

facts facts_of(const fluid& f) {
    std::string all;
    append(all, "", f.viscosity);
    if (f.viscosity && f.viscosity_at) all += " at " + f.viscosity_at->written;
    append(all, "delivery ", f.delivery);
    append(all, "relief valve ", f.relief_valve);
    append(all, "stroke ", f.stroke);
    append(all, "a shot each ", f.seconds_a_shot);
    append(all, "; ", f.note);
    return {"Fluid", {{f.name, all}}};
}

facts facts_of(const drawer& d) {
    facts all{"In the drawer", {}};
    add(all, "drills", joined(d.drills));
    add(all, "hand reamers", joined(d.reamers));
    if (d.boring_head) add(all, "boring head", d.boring_head->written + " on diameter a division");
    add(all, "bit stock", joined(d.bit_stock));
    add(all, "laps", joined(d.laps));
    return all;
}

facts facts_of(const std::vector<instrument>& instruments) {
    facts all{"Measured with", {}};
    for (const instrument& i : instruments) {
        std::string text;
        if (i.from && i.to) text = fmt::format("{} to {}", i.from->written, i.to->written);
        append(text, "reads ", i.reads);
        append(text, "error limit ", i.error_limit);
        append(text, "; ", i.note);
        all.lines.push_back({i.name, text});
    }
    return all;
}

} // namespace

std::vector<facts> facts_of(const job& j) {
    std::vector<facts> all;
    if (j.fluid) all.push_back(facts_of(*j.fluid));
    if (j.drawer) all.push_back(facts_of(*j.drawer));
    if (!j.instruments.empty()) all.push_back(facts_of(j.instruments));
    return all;
}

std::vector<fact> facts_of(const stack& s) {
    facts all;
    if (s.gap.size() == 2) add(all, "gap", fmt::format("{} to {}", s.gap[0].written, s.gap[1].written));
    add(all, "shims", joined(s.shims));
    return all.lines;
}

std::string given(const pair& p) {
    std::string all;
    append(all, "size ", p.size);
    append(all, "in contact over ", p.land);
    append(all, "pressure ", p.pressure);
    append(all, "leak at most ", p.leak_at_most);
    append(all, "shake at most ", p.shake_at_most);
    append(all, "left at least ", p.left_at_least);
    append(all, "holds ", p.holds);
    append(all, "pressed with at most ", p.press_at_most);
    append(all, "wanted clearance ", p.clearance);
    if (p.hole) append(all, "outside diameter ", p.hole->outside);
    if (p.hole) append(all, "wall ", p.hole->wall);
    if (p.shaft) append(all, "shaft bored ", p.shaft->bore);
    return all;
}

} // namespace job_sheet
