#include "stuff.hpp"

#include <fmt/format.h>

namespace job_sheet {

namespace {

using fitwright::material_family;

constexpr auto family_count = static_cast<std::uint8_t>(material_family::other) + 1;

std::string name_of(material_family f) { return in_words(f); }

} // namespace

std::vector<std::string> family_names() {
    std::vector<std::string> all;
    for (std::uint8_t f = 0; f < family_count; ++f) all.push_back(name_of(static_cast<material_family>(f)));
    return all;
}

std::optional<material_family> family_called(std::string_view words) {
    for (std::uint8_t f = 0; f < family_count; ++f)
        if (name_of(static_cast<material_family>(f)) == words) return static_cast<material_family>(f);
    return std::nullopt;
}

stuff stuff_of(const part& p) {
    if (p.material.empty()) return {std::nullopt, "the part's material is not stated"};
    const auto known = fitwright::find_material(p.material);
    if (known) return {known->family, std::string(known->name)};
    if (p.taken_as)
        return {p.taken_as->value.family,
                fmt::format("{}, taken as {}", p.material, std::string_view(p.taken_as->value.name))};
    if (p.family)
        return {p.family, fmt::format("{}, taken for {} as the job states", p.material, name_of(*p.family))};
    if (const auto family = family_called(p.material)) return {family, p.material};
    return {std::nullopt, std::string(known.error().message()) +
                              "; or state the part's family, as in family = \"copper alloy\""};
}

reckoned material_of(const part& p) {
    if (p.material.empty())
        return {std::nullopt,
                fmt::format("the material of the {} is not stated", p.name.empty() ? "part" : p.name)};
    if (const auto known = fitwright::find_material(p.material)) return {*known, std::string(known->name)};
    if (p.taken_as)
        return {p.taken_as->value,
                fmt::format("{}, taken as {}", p.material, std::string_view(p.taken_as->value.name))};
    return {std::nullopt,
            fmt::format("{}: '{}' is no material with known figures; state one that stands in for it, as in "
                        "taken_as = \"steel C45\"",
                        p.name, p.material)};
}

} // namespace job_sheet
