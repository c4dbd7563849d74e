#ifndef FITWRIGHT_C_SHIM_NUMBERS_HPP
#define FITWRIGHT_C_SHIM_NUMBERS_HPP

#include "fitwright_c.h"
#include <fitwright/callout.hpp>
#include <fitwright/gauge.hpp>
#include <fitwright/tool/offset.hpp>
#include <fitwright/tool/stock.hpp>

// The numbers of fitwright_c.h and what they stand for in fitwright.

namespace fitwright::c_shim {

struct code_pair {
    std::int32_t number;
    error_code code;
};

// Looked up, so that neither list has to follow the order of the other.
// clang-format off
constexpr code_pair codes[] = {
    {FITWRIGHT_TEXT_IS_EMPTY, error_code::text_is_empty},
    {FITWRIGHT_TEXT_IS_TOO_LONG, error_code::text_is_too_long},
    {FITWRIGHT_TEXT_IS_NOT_UTF8, error_code::text_is_not_utf8},
    {FITWRIGHT_CHARACTER_NOT_ALLOWED, error_code::character_not_allowed},
    {FITWRIGHT_SOMETHING_LEFT_OVER, error_code::something_left_over},
    {FITWRIGHT_ENDS_TOO_SOON, error_code::ends_too_soon},
    {FITWRIGHT_SIZE_MISSING, error_code::size_missing},
    {FITWRIGHT_SIZE_NOT_A_NUMBER, error_code::size_not_a_number},
    {FITWRIGHT_SIZE_NOT_ABOVE_ZERO, error_code::size_not_above_zero},
    {FITWRIGHT_NUMBER_MALFORMED, error_code::number_malformed},
    {FITWRIGHT_DECIMAL_COMMA_NOT_ALLOWED, error_code::decimal_comma_not_allowed},
    {FITWRIGHT_MORE_DECIMALS_THAN_A_NANOMETRE, error_code::more_decimals_than_a_nanometre},
    {FITWRIGHT_FRACTION_WITHOUT_INCHES, error_code::fraction_without_inches},
    {FITWRIGHT_UNIT_NOT_KNOWN, error_code::unit_not_known},
    {FITWRIGHT_UNIT_GIVEN_TWICE, error_code::unit_given_twice},
    {FITWRIGHT_UNIT_AMBIGUOUS, error_code::unit_ambiguous},
    {FITWRIGHT_UNIT_MISSING, error_code::unit_missing},
    {FITWRIGHT_COUNT_OR_CLASS, error_code::count_or_class},
    {FITWRIGHT_CLASS_MISSING, error_code::class_missing},
    {FITWRIGHT_CLASS_ALONE_WANTED, error_code::class_alone_wanted},
    {FITWRIGHT_LETTER_NOT_USED, error_code::letter_not_used},
    {FITWRIGHT_LETTER_CASE_MIXED, error_code::letter_case_mixed},
    {FITWRIGHT_GRADE_MISSING, error_code::grade_missing},
    {FITWRIGHT_GRADE_NOT_KNOWN, error_code::grade_not_known},
    {FITWRIGHT_BLANK_INSIDE_A_CLASS, error_code::blank_inside_a_class},
    {FITWRIGHT_THREAD_IS_NOT_A_FIT, error_code::thread_is_not_a_fit},
    {FITWRIGHT_INCH_FIT_NOT_KNOWN, error_code::inch_fit_not_known},
    {FITWRIGHT_HOLE_WANTED, error_code::hole_wanted},
    {FITWRIGHT_SHAFT_WANTED, error_code::shaft_wanted},
    {FITWRIGHT_FIT_WANTED, error_code::fit_wanted},
    {FITWRIGHT_HOLE_AND_SHAFT_SWAPPED, error_code::hole_and_shaft_swapped},
    {FITWRIGHT_TWO_HOLES, error_code::two_holes},
    {FITWRIGHT_TWO_SHAFTS, error_code::two_shafts},
    {FITWRIGHT_DEVIATION_MISSING, error_code::deviation_missing},
    {FITWRIGHT_DEVIATION_WITHOUT_SIGN, error_code::deviation_without_sign},
    {FITWRIGHT_TWO_SIGNS, error_code::two_signs},
    {FITWRIGHT_DEVIATIONS_SWAPPED, error_code::deviations_swapped},
    {FITWRIGHT_LIMITS_CROSSED, error_code::limits_crossed},
    {FITWRIGHT_LIMITS_TOO_FAR_APART, error_code::limits_too_far_apart},
    {FITWRIGHT_SIZE_OUT_OF_RANGE, error_code::size_out_of_range},
    {FITWRIGHT_NO_VALUE_IN_STANDARD, error_code::no_value_in_standard},
    {FITWRIGHT_NO_STANDARD_TOLERANCE, error_code::no_standard_tolerance},
    {FITWRIGHT_STEP_NOT_ABOVE_ZERO, error_code::step_not_above_zero},
    {FITWRIGHT_NOTHING_ON_THE_GRID, error_code::nothing_on_the_grid},
    {FITWRIGHT_TOOL_MISSING, error_code::tool_missing},
    {FITWRIGHT_TOOL_NOT_KNOWN, error_code::tool_not_known},
    {FITWRIGHT_INSTRUMENT_TOO_COARSE, error_code::instrument_too_coarse},
    {FITWRIGHT_CUT_TOO_FAR_ALREADY, error_code::cut_too_far_already},
    {FITWRIGHT_CHANGE_BELOW_INCREMENT, error_code::change_below_increment},
    {FITWRIGHT_AIM_OUTSIDE_LIMITS, error_code::aim_outside_limits},
};
// clang-format on

inline std::int32_t number_of(error_code code) noexcept {
    for (const code_pair& pair : codes)
        if (pair.code == code) return pair.number;
    return FITWRIGHT_OTHER_ERROR;
}

/// The other enumerations count from 1 here and from 0 there, in the same order.
template <class Enum> constexpr std::int32_t number_of(Enum value) noexcept {
    return static_cast<std::int32_t>(value) + 1;
}
template <class Enum> constexpr Enum meant_by(std::int32_t number) noexcept {
    return static_cast<Enum>(number - 1);
}

static_assert(number_of(callout_part::hole) == FITWRIGHT_HOLE);
static_assert(number_of(callout_part::shaft) == FITWRIGHT_SHAFT);

static_assert(number_of(written_unit::mm) == FITWRIGHT_MM);
static_assert(number_of(written_unit::um) == FITWRIGHT_UM);
static_assert(number_of(written_unit::nm) == FITWRIGHT_NM);
static_assert(number_of(written_unit::in) == FITWRIGHT_IN);
static_assert(number_of(written_unit::thousandth) == FITWRIGHT_THOU);

static_assert(number_of(fit_kind::clearance) == FITWRIGHT_CLEARANCE);
static_assert(number_of(fit_kind::transition) == FITWRIGHT_TRANSITION);
static_assert(number_of(fit_kind::interference) == FITWRIGHT_INTERFERENCE);

static_assert(number_of(verdict::accept) == FITWRIGHT_ACCEPT);
static_assert(number_of(verdict::reject) == FITWRIGHT_REJECT);
static_assert(number_of(verdict::cannot_tell) == FITWRIGHT_CANNOT_TELL);

static_assert(number_of(confidence::published) == FITWRIGHT_PUBLISHED);
static_assert(number_of(confidence::practice) == FITWRIGHT_PRACTICE);
static_assert(number_of(confidence::memory) == FITWRIGHT_MEMORY);
static_assert(number_of(confidence::uncertain) == FITWRIGHT_UNCERTAIN);
static_assert(number_of(confidence::stated) == FITWRIGHT_STATED);

static_assert(number_of(drill_series::metric) == FITWRIGHT_METRIC);
static_assert(number_of(drill_series::fractional) == FITWRIGHT_FRACTIONAL);
static_assert(number_of(drill_series::number) == FITWRIGHT_NUMBER);
static_assert(number_of(drill_series::letter) == FITWRIGHT_LETTER);

static_assert(number_of(finishing::hand_reaming) == FITWRIGHT_BY_HAND);
static_assert(number_of(finishing::machine_reaming) == FITWRIGHT_BY_MACHINE);

static_assert(number_of(material_family::steel) == FITWRIGHT_STEEL);
static_assert(number_of(material_family::stainless_steel) == FITWRIGHT_STAINLESS_STEEL);
static_assert(number_of(material_family::tool_steel) == FITWRIGHT_TOOL_STEEL);
static_assert(number_of(material_family::cast_iron) == FITWRIGHT_CAST_IRON);
static_assert(number_of(material_family::aluminium) == FITWRIGHT_ALUMINIUM);
static_assert(number_of(material_family::copper_alloy) == FITWRIGHT_COPPER_ALLOY);
static_assert(number_of(material_family::zinc) == FITWRIGHT_ZINC);
static_assert(number_of(material_family::magnesium) == FITWRIGHT_MAGNESIUM);
static_assert(number_of(material_family::titanium) == FITWRIGHT_TITANIUM);
static_assert(number_of(material_family::nickel_alloy) == FITWRIGHT_NICKEL_ALLOY);
static_assert(number_of(material_family::plastic) == FITWRIGHT_PLASTIC);
static_assert(number_of(material_family::ceramic) == FITWRIGHT_CERAMIC);
static_assert(number_of(material_family::other) == FITWRIGHT_OTHER_MATERIAL);

static_assert(static_cast<int>(offset_sense::larger_makes_larger) == FITWRIGHT_LARGER_MAKES_LARGER);
static_assert(static_cast<int>(offset_sense::larger_makes_smaller) == FITWRIGHT_LARGER_MAKES_SMALLER);

} // namespace fitwright::c_shim

#endif
