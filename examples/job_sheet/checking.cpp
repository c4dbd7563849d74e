#include "checking.hpp"

#include "figures.hpp"
#include "making.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace job_sheet {

namespace {

using fitwright::length;
using fitwright::side;

template <side Side>
auto gauge_for(const fitwright::size_limits<Side>& work, const fitwright::gauge_options& options) {
    if constexpr (Side == side::hole) return fitwright::plug_gauge(work, options);
    else return fitwright::ring_gauge(work, options);
}

/// A tolerance that is no standard one gets the gauge of the next finer grade, which takes no more of it.
template <side Side> void add_gauge(const std::optional<role<Side>>& r, std::vector<gauge_answer>& all) {
    if (!is_made_here(r)) return;
    gauge_answer a{.role = Side == side::hole ? "hole" : "shaft", .sizes = {}, .remark = {}};
    auto gauge = gauge_for(*r->limits, {});
    if (!gauge) {
        a.remark = gauge.error().message();
        if (const auto finer = fitwright::finer_grade(*r->limits)) {
            gauge = gauge_for(*r->limits, {.constants_of = *finer});
            a.remark = fmt::format("the tolerance is no standard one: constants of IT{}, the next finer",
                                   std::string_view(finer->name()));
        }
    }
    if (gauge)
        a.sizes = gauge_sizes{gauge->go.lower_limit(),
                              gauge->go.upper_limit(),
                              gauge->not_go.lower_limit(),
                              gauge->not_go.upper_limit(),
                              gauge->worn,
                              in_short(gauge->go.origin())};
    all.push_back(std::move(a));
}

/// How well the size would have to be known for the same reading to be told: as far as the nearest limit.
template <side Side>
length uncertainty_that_tells(length reading, const fitwright::size_limits<Side>& limits) {
    const auto size_of = [](length l) { return l < length() ? -l : l; };
    return (std::min)(size_of(reading - limits.lower_limit()), size_of(limits.upper_limit() - reading));
}

/// Instruments that are sold, to show what a micrometre costs. Common practice, no source.
constexpr fitwright::instrument finer_ones[] = {
    {.resolution = length::from_nanometres(1'000), .error_limit = length::from_nanometres(2'000)},
    {.resolution = length::from_nanometres(1'000), .error_limit = length::from_nanometres(1'000)},
    {.resolution = length::from_nanometres(100), .error_limit = length::from_nanometres(500)},
};

std::string example_for(length uncertainty) {
    for (const fitwright::instrument& i : finer_ones) {
        const auto u = fitwright::expanded_uncertainty(i);
        if (!u || *u >= uncertainty) continue;
        return fmt::format("; one that reads {} mm with an error limit of {} mm would: +/-{} um",
                           mm(i.resolution), mm(i.error_limit), um(*u));
    }
    return {};
}

template <side Side>
std::string what_would_do(length reading, length uncertainty, const fitwright::size_limits<Side>& limits) {
    std::string words;
    if (const auto band = fitwright::acceptance_band(limits, uncertainty); !band)
        words = std::string(band.error().message()) + ". ";
    else
        words = fmt::format("Proven are readings from {} to {} mm. ", mm(band->lower_limit()),
                            mm(band->upper_limit()));
    const length enough = uncertainty_that_tells(reading, limits);
    if (enough == length()) return words + "On a limit itself no instrument can tell.";
    const char* const tells = limits.allow(reading) ? "+/-{} um or less tells" : "less than +/-{} um tells";
    return words + "If a finer one reads the same, " + fmt::format(fmt::runtime(tells), um(enough)) +
           example_for(enough) + ".";
}

template <side Side> void add_readings(const std::optional<role<Side>>& r, std::vector<reading_answer>& all) {
    if (!r || !r->limits || !r->with || !r->with->reads || !r->with->error_limit) return;
    const auto u = fitwright::expanded_uncertainty(
        {.resolution = r->with->reads->value, .error_limit = r->with->error_limit->value});
    if (!u) return;
    for (const stated<length>& reading : r->readings) {
        const auto verdict = fitwright::judge(fitwright::measured<Side>(reading.value, *u), *r->limits);
        all.push_back({.role = Side == side::hole ? "hole" : "shaft",
                       .written = reading.written,
                       .reading = reading.value,
                       .instrument = r->with->name,
                       .uncertainty = *u,
                       .verdict = verdict,
                       .would_do = verdict == fitwright::verdict::cannot_tell
                                       ? what_would_do(reading.value, *u, *r->limits)
                                       : std::string()});
    }
}

} // namespace

std::vector<gauge_answer> gauges_of(const pair& p) {
    std::vector<gauge_answer> all;
    add_gauge(p.hole, all);
    add_gauge(p.shaft, all);
    return all;
}

std::vector<reading_answer> readings_of(const pair& p) {
    std::vector<reading_answer> all;
    add_readings(p.hole, all);
    add_readings(p.shaft, all);
    return all;
}

} // namespace job_sheet
