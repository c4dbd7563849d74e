// The library behind fitwright_c.h. Every function looks at what it was given, asks fitwright, and copies
// the answer into the caller's struct; nothing is written before everything that can go wrong has.

#include "fitwright_c.h"

#include "answers.hpp"
#include <fitwright/grid.hpp>
#include <fitwright/tool/reamer.hpp>
#include <fitwright/version.hpp>

#include <cstddef>

using namespace fitwright;
using namespace fitwright::c_shim;

// The layout is the same on every machine: any of these fails where a compiler leaves a gap.
static_assert(sizeof(fitwright_error) == 272 && offsetof(fitwright_error, message) == 32);
static_assert(sizeof(fitwright_limits) == 176 && offsetof(fitwright_limits, source) == 40);
static_assert(sizeof(fitwright_clearance) == 40 && offsetof(fitwright_clearance, kind) == 32);
static_assert(sizeof(fitwright_callout) == 64 && offsetof(fitwright_callout, hole_class) == 40);
static_assert(sizeof(fitwright_drill) == 192 && offsetof(fitwright_drill, name) == 24);
static_assert(sizeof(fitwright_gauge) == 192 && offsetof(fitwright_gauge, source) == 56);
static_assert(sizeof(fitwright_measured) == 24 && sizeof(fitwright_offset) == 32);
static_assert(sizeof(fitwright_step) == 32 && offsetof(fitwright_step, take_care) == 28);
static_assert(error::capacity < sizeof fitwright_error::message);

namespace {

/// One more decimal than this is no whole number of nanometres.
constexpr std::int32_t decimals_inwards[] = {6, 3, 0, 5, 2};

/// Both limits on the grid of so many decimals, then the one that is wanted.
template <class Which>
std::int32_t write_inwards(const fitwright_limits* l, std::int32_t unit, std::int32_t decimals, char* buffer,
                           std::size_t capacity, fitwright_error* e, Which wanted) noexcept {
    if (const fault f = first_of(
            {check_error(e), check_limits(l, "limits"), check_unit(unit), check_buffer(buffer, capacity)}))
        return fail(e, f);
    const std::int32_t most = decimals_inwards[unit - 1];
    if (const fault f = check_number(decimals, -1, most, "decimals",
                                     "-1 to 6 of mm, 3 of um, 0 of nm, 5 of in, 2 of thou"))
        return fail(e, f);

    length step = one(meant_by<written_unit>(unit));
    for (std::int32_t i = 0; i < (decimals < 0 ? most : decimals); ++i) step = step / 10;
    return as_its_part(*l, [&](const auto& limits) {
        const auto rounded = rounded_inwards(limits, step);
        if (!rounded) return fail(e, rounded.error());
        const number_format format{.unit = meant_by<written_unit>(unit), .decimals = decimals};
        return end_well(e, copy(written(wanted(*rounded), format).view(), buffer, capacity));
    });
}

/// Both ways to reckon an offset differ in one call.
template <class Reckon>
std::int32_t find_step(const fitwright_limits* wanted, const fitwright_measured* part, std::int64_t aim_nm,
                       const fitwright_offset* offset, fitwright_step* step, fitwright_error* e,
                       Reckon reckon) noexcept {
    if (const fault f =
            first_of({check_error(e), check_limits(wanted, "wanted"), check_measured(part, "part measured"),
                      check_length(aim_nm, "aim_nm"), check_offset(offset), check_struct(step, "step")}))
        return fail(e, f);

    const auto answer = [&]<side Side, across Across>(const size_limits<Side>& limits, travel<Across>) {
        const measured<Side> measured_part(from(part->reading_nm), from(part->uncertainty_nm));
        const offset_register<Across> control{.increment = travel<Across>(from(offset->increment_nm)),
                                              .largest_change =
                                                  travel<Across>(from(offset->largest_change_nm)),
                                              .sense = static_cast<offset_sense>(offset->sense)};
        const auto found = reckon(measured_part, limits, from(aim_nm), control);
        if (!found) return fail(e, found.error());
        make_ready(*step);
        step->change_nm = found->change.value.nanometres();
        step->expected_nm = found->expected.size().nanometres();
        step->is_clamped = found->is_clamped ? 1 : 0;
        step->take_care = bits_of(found->take_care);
        return end_well(e);
    };
    return as_its_part(*wanted, [&](const auto& limits) {
        return offset->across == FITWRIGHT_RADIUS ? answer(limits, travel<across::radius>())
                                                  : answer(limits, travel<across::diameter>());
    });
}

} // namespace

// --- reading call-outs ---------------------------------------------------------------------------------

std::int32_t fitwright_read_hole(const char* written, std::size_t size, std::uint32_t how,
                                 fitwright_limits* hole, fitwright_error* e) {
    if (const fault f =
            first_of({check_error(e), check_text(written, size), check_how(how), check_struct(hole, "hole")}))
        return fail(e, f);
    const auto read = read_hole(given(written, size), options(how));
    if (!read) return fail(e, read.error());
    put(*read, *hole);
    return end_well(e);
}

std::int32_t fitwright_read_shaft(const char* written, std::size_t size, std::uint32_t how,
                                  fitwright_limits* shaft, fitwright_error* e) {
    if (const fault f = first_of(
            {check_error(e), check_text(written, size), check_how(how), check_struct(shaft, "shaft")}))
        return fail(e, f);
    const auto read = read_shaft(given(written, size), options(how));
    if (!read) return fail(e, read.error());
    put(*read, *shaft);
    return end_well(e);
}

std::int32_t fitwright_read_fit(const char* written, std::size_t size, std::uint32_t how,
                                fitwright_limits* hole, fitwright_limits* shaft, fitwright_error* e) {
    if (const fault f = first_of({check_error(e), check_text(written, size), check_how(how),
                                  check_struct(hole, "hole"), check_struct(shaft, "shaft")}))
        return fail(e, f);
    const auto read = read_fit(given(written, size), options(how));
    if (!read) return fail(e, read.error());
    put(read->hole(), *hole);
    put(read->shaft(), *shaft);
    return end_well(e);
}

std::int32_t fitwright_read_callout(const char* written, std::size_t size, std::uint32_t how,
                                    fitwright_callout* callout, fitwright_limits* hole,
                                    fitwright_limits* shaft, fitwright_error* e) {
    if (const fault f = first_of({check_error(e), check_text(written, size), check_how(how),
                                  check_struct(callout, "callout"), check_struct(hole, "hole"),
                                  check_struct(shaft, "shaft")}))
        return fail(e, f);
    const auto read = read_callout(given(written, size), options(how));
    if (!read) return fail(e, read.error());
    put(*read, *callout);
    make_ready(*hole);
    make_ready(*shaft);
    if (read->part != callout_part::shaft) put(read->hole, *hole);
    if (read->part != callout_part::hole) put(read->shaft, *shaft);
    return end_well(e);
}

// --- limits ----------------------------------------------------------------------------------------------

std::int32_t fitwright_class_limits(std::int64_t nominal_nm, const char* tolerance_class, std::size_t size,
                                    fitwright_limits* out, fitwright_error* e) {
    if (const fault f = first_of({check_error(e), check_length(nominal_nm, "nominal_nm"),
                                  check_text(tolerance_class, size), check_struct(out, "limits")}))
        return fail(e, f);
    const auto answer = [&](const auto& read) {
        if (!read) return fail(e, read.error());
        const auto found = limits(from(nominal_nm), *read);
        if (!found) return fail(e, found.error());
        put(*found, *out);
        return end_well(e);
    };
    const text symbol = given(tolerance_class, size);
    const auto hole = read_hole_class(symbol);
    const bool is_shaft = !hole && hole.error().code() == error_code::hole_wanted;
    return is_shaft ? answer(read_shaft_class(symbol)) : answer(hole);
}

std::int32_t fitwright_find_clearance(const fitwright_limits* hole, const fitwright_limits* shaft,
                                      fitwright_clearance* clearance, fitwright_error* e) {
    if (const fault f = first_of({check_error(e), check_hole(hole, "hole"), check_shaft(shaft, "shaft"),
                                  check_struct(clearance, "clearance")}))
        return fail(e, f);
    const fit pair(from<side::hole>(*hole), from<side::shaft>(*shaft));
    make_ready(*clearance);
    clearance->least_nm = pair.min_clearance().nanometres();
    clearance->mean_nm = pair.mean_clearance().nanometres();
    clearance->greatest_nm = pair.max_clearance().nanometres();
    clearance->kind = number_of(pair.kind());
    return end_well(e);
}

std::int32_t fitwright_round_inwards(const fitwright_limits* wanted, std::int64_t step_nm,
                                     fitwright_limits* rounded, fitwright_error* e) {
    if (const fault f = first_of({check_error(e), check_limits(wanted, "limits"),
                                  check_length(step_nm, "step_nm"), check_struct(rounded, "rounded")}))
        return fail(e, f);
    return as_its_part(*wanted, [&](const auto& limits) {
        const auto found = rounded_inwards(limits, from(step_nm));
        if (!found) return fail(e, found.error());
        put_rounded(*found, *wanted, *rounded);
        return end_well(e);
    });
}

std::int32_t fitwright_find_target(const fitwright_limits* wanted, std::int64_t step_nm,
                                   std::int64_t* target_nm, fitwright_error* e) {
    if (const fault f = first_of({check_error(e), check_limits(wanted, "limits"),
                                  check_length(step_nm, "step_nm"), check_there(target_nm, "target_nm")}))
        return fail(e, f);
    return as_its_part(*wanted, [&](const auto& limits) {
        const auto found = target_on_grid(limits, from(step_nm));
        if (!found) return fail(e, found.error());
        *target_nm = found->nanometres();
        return end_well(e);
    });
}

// --- lengths as digits -----------------------------------------------------------------------------------

std::int32_t fitwright_write_nearest(std::int64_t length_nm, std::int32_t unit, std::int32_t decimals,
                                     char* buffer, std::size_t capacity, fitwright_error* e) {
    if (const fault f =
            first_of({check_error(e), check_length(length_nm, "length_nm"), check_unit(unit),
                      check_number(decimals, -1, 9, "decimals", "-1 to 9"), check_buffer(buffer, capacity)}))
        return fail(e, f);
    const number_format format{.unit = meant_by<written_unit>(unit), .decimals = decimals};
    return end_well(e, copy(written(from(length_nm), format).view(), buffer, capacity));
}

std::int32_t fitwright_write_lower_inwards(const fitwright_limits* wanted, std::int32_t unit,
                                           std::int32_t decimals, char* buffer, std::size_t capacity,
                                           fitwright_error* e) {
    return write_inwards(wanted, unit, decimals, buffer, capacity, e,
                         [](const auto& limits) { return limits.lower_limit(); });
}

std::int32_t fitwright_write_upper_inwards(const fitwright_limits* wanted, std::int32_t unit,
                                           std::int32_t decimals, char* buffer, std::size_t capacity,
                                           fitwright_error* e) {
    return write_inwards(wanted, unit, decimals, buffer, capacity, e,
                         [](const auto& limits) { return limits.upper_limit(); });
}

// --- tools -----------------------------------------------------------------------------------------------

std::int32_t fitwright_find_reamer(const fitwright_limits* hole, fitwright_limits* reamer,
                                   fitwright_error* e) {
    if (const fault f = first_of({check_error(e), check_hole(hole, "hole"), check_struct(reamer, "reamer")}))
        return fail(e, f);
    const hole_limits wanted = from<side::hole>(*hole);
    const tool_limits made = reamer_for(wanted);
    if (!made.exist())
        return fail(e, error::composer(error_code::tool_not_known)
                           << "no reamer is made for " << written(wanted).view()
                           << ": DIN 1420 leaves nothing of its tolerance; allowed: 3 um or more");
    const std::int64_t nominal_nm = hole->nominal_nm; // both may be the same struct
    make_ready(*reamer);
    reamer->part = FITWRIGHT_TOOL;
    reamer->nominal_nm = nominal_nm;
    reamer->lower_limit_nm = made.lower_limit().nanometres();
    reamer->upper_limit_nm = made.upper_limit().nanometres();
    put_source(made.origin(), *reamer);
    return end_well(e);
}

std::int32_t fitwright_find_drill_under_reamer(std::int64_t reamer_nm, std::int32_t series,
                                               std::int32_t reaming, std::int32_t material,
                                               fitwright_drill* drill, fitwright_error* e) {
    if (const fault f = first_of({check_error(e), check_length(reamer_nm, "reamer_nm"), check_series(series),
                                  check_number(reaming, FITWRIGHT_BY_HAND, FITWRIGHT_BY_MACHINE, "reaming",
                                               "FITWRIGHT_BY_HAND and FITWRIGHT_BY_MACHINE"),
                                  check_number(material, FITWRIGHT_STEEL, FITWRIGHT_OTHER_MATERIAL,
                                               "material", "FITWRIGHT_STEEL to FITWRIGHT_OTHER_MATERIAL"),
                                  check_struct(drill, "drill")}))
        return fail(e, f);
    const auto by = meant_by<finishing>(reaming);
    const work_material work = meant_by<material_family>(material);
    const auto found = drill_under_reamer(from(reamer_nm), meant_by<drill_series>(series), by, work);
    if (!found) return fail(e, found.error());
    put(*found, stock_to_leave(by, from(reamer_nm), work)->origin(), *drill);
    return end_well(e);
}

std::int32_t fitwright_find_largest_drill_under(std::int64_t size_nm, std::int32_t series,
                                                fitwright_drill* drill, fitwright_error* e) {
    if (const fault f = first_of({check_error(e), check_length(size_nm, "size_nm"), check_series(series),
                                  check_struct(drill, "drill")}))
        return fail(e, f);
    const auto found = largest_drill_under(from(size_nm), meant_by<drill_series>(series));
    if (!found) return fail(e, found.error());
    put(*found, found->origin(), *drill);
    return end_well(e);
}

// --- gauges and readings ----------------------------------------------------------------------------------

std::int32_t fitwright_find_plug_gauge(const fitwright_limits* hole, fitwright_gauge* gauge,
                                       fitwright_error* e) {
    if (const fault f = first_of({check_error(e), check_hole(hole, "hole"), check_struct(gauge, "gauge")}))
        return fail(e, f);
    const auto found = plug_gauge(from<side::hole>(*hole));
    if (!found) return fail(e, found.error());
    put(*found, *gauge);
    return end_well(e);
}

std::int32_t fitwright_find_ring_gauge(const fitwright_limits* shaft, fitwright_gauge* gauge,
                                       fitwright_error* e) {
    if (const fault f = first_of({check_error(e), check_shaft(shaft, "shaft"), check_struct(gauge, "gauge")}))
        return fail(e, f);
    const auto found = ring_gauge(from<side::shaft>(*shaft));
    if (!found) return fail(e, found.error());
    put(*found, *gauge);
    return end_well(e);
}

std::int32_t fitwright_judge(const fitwright_limits* wanted, const fitwright_measured* part,
                             std::int32_t* verdict, fitwright_error* e) {
    if (const fault f = first_of({check_error(e), check_limits(wanted, "limits"),
                                  check_measured(part, "part"), check_there(verdict, "verdict")}))
        return fail(e, f);
    return as_its_part(*wanted, [&]<side Side>(const size_limits<Side>& limits) {
        const measured<Side> measured_part(from(part->reading_nm), from(part->uncertainty_nm));
        *verdict = number_of(judge(measured_part, limits));
        return end_well(e);
    });
}

std::int32_t fitwright_find_acceptance(const fitwright_limits* wanted, std::int64_t uncertainty_nm,
                                       fitwright_limits* readings, fitwright_error* e) {
    if (const fault f = first_of({check_error(e), check_limits(wanted, "limits"),
                                  check_uncertainty(uncertainty_nm), check_struct(readings, "readings")}))
        return fail(e, f);
    return as_its_part(*wanted, [&](const auto& limits) {
        const auto found = acceptance_band(limits, from(uncertainty_nm));
        if (!found) return fail(e, found.error());
        put(*found, *readings);
        return end_well(e);
    });
}

// --- offsets -----------------------------------------------------------------------------------------------

std::int32_t fitwright_find_offset_to_recut(const fitwright_limits* wanted, const fitwright_measured* trial,
                                            std::int64_t aim_nm, const fitwright_offset* offset,
                                            fitwright_step* step, fitwright_error* e) {
    return find_step(wanted, trial, aim_nm, offset, step, e,
                     [](const auto&... arguments) { return offset_to_recut(arguments...); });
}

std::int32_t fitwright_find_offset_for_next_part(const fitwright_limits* wanted,
                                                 const fitwright_measured* last, std::int64_t aim_nm,
                                                 const fitwright_offset* offset, fitwright_step* step,
                                                 fitwright_error* e) {
    return find_step(wanted, last, aim_nm, offset, step, e,
                     [](const auto&... arguments) { return offset_for_next_part(arguments...); });
}

// --- words -------------------------------------------------------------------------------------------------

std::int32_t fitwright_write_message(const fitwright_error* e, char* buffer, std::size_t capacity) {
    if (const fault f = first_of({check_struct(e, "error"), check_buffer(buffer, capacity)})) return f.number;
    const bool is_ours = e->message_size < sizeof e->message;
    return copy(is_ours ? text(e->message, e->message_size) : text(), buffer, capacity);
}

std::int32_t fitwright_write_suggestion(const fitwright_error* e, char* buffer, std::size_t capacity) {
    if (const fault f = first_of({check_struct(e, "error"), check_buffer(buffer, capacity)})) return f.number;
    const bool is_ours = e->message_size < sizeof e->message && e->suggestion_at <= e->message_size &&
                         e->suggestion_size <= e->message_size - e->suggestion_at;
    return copy(is_ours ? text(e->message + e->suggestion_at, e->suggestion_size) : text(), buffer, capacity);
}

std::int32_t fitwright_write_caution(std::uint32_t take_care, char* buffer, std::size_t capacity,
                                     fitwright_error* e) {
    constexpr std::uint32_t last = static_cast<std::uint32_t>(caution::chemical);
    if (const fault f = first_of(
            {check_error(e), check_number(take_care, 0, 2 * last - 1, "take_care", "what a result carries"),
             check_buffer(buffer, capacity)}))
        return fail(e, f);
    fixed_text<1000> sentences;
    for (std::uint32_t bit = 1; bit <= last; bit *= 2)
        if ((take_care & bit) != 0)
            sentences << text(sentences.size() > 0 ? " " : "") << in_words(static_cast<caution>(bit));
    return end_well(e, copy(sentences.view(), buffer, capacity));
}

std::int32_t fitwright_write_confidence(std::int32_t how_sure, char* buffer, std::size_t capacity,
                                        fitwright_error* e) {
    if (const fault f = first_of({check_error(e),
                                  check_number(how_sure, FITWRIGHT_PUBLISHED, FITWRIGHT_STATED, "confidence",
                                               "FITWRIGHT_PUBLISHED to FITWRIGHT_STATED"),
                                  check_buffer(buffer, capacity)}))
        return fail(e, f);
    return end_well(e, copy(in_words(meant_by<confidence>(how_sure)), buffer, capacity));
}

// --- what it was built as ------------------------------------------------------------------------------------

std::uint32_t fitwright_c_version() { return FITWRIGHT_C_VERSION; }
std::uint32_t fitwright_library_version() {
    return FITWRIGHT_VERSION_MAJOR * 10000 + FITWRIGHT_VERSION_MINOR * 100 + FITWRIGHT_VERSION_PATCH;
}

std::uint32_t fitwright_sizeof_error() { return sizeof(fitwright_error); }
std::uint32_t fitwright_sizeof_limits() { return sizeof(fitwright_limits); }
std::uint32_t fitwright_sizeof_clearance() { return sizeof(fitwright_clearance); }
std::uint32_t fitwright_sizeof_callout() { return sizeof(fitwright_callout); }
std::uint32_t fitwright_sizeof_drill() { return sizeof(fitwright_drill); }
std::uint32_t fitwright_sizeof_gauge() { return sizeof(fitwright_gauge); }
std::uint32_t fitwright_sizeof_measured() { return sizeof(fitwright_measured); }
std::uint32_t fitwright_sizeof_offset() { return sizeof(fitwright_offset); }
std::uint32_t fitwright_sizeof_step() { return sizeof(fitwright_step); }
