#ifndef FITWRIGHT_CALLOUT_LITERALS_HPP
#define FITWRIGHT_CALLOUT_LITERALS_HPP

#include <fitwright/callout/read.hpp>

namespace fitwright {

/// What a compiler prints when a literal is wrong: each name is the rule that it breaks. Calling one
/// is what makes the literal not constant; none of them is ever run.
namespace callout_rule {

void the_text_is_one_callout_without_anything_else();
void the_size_is_a_number_above_zero_and_stands_first();
void a_number_has_digits_and_one_point_at_most();
void a_number_is_not_finer_than_a_nanometre();
void a_fraction_is_in_inches();
void the_unit_is_mm_um_nm_in_or_thou_and_given_once();
void the_size_is_followed_by_a_class_or_deviations();
void the_letter_is_one_of_iso_286_in_one_case();
void the_grade_is_01_0_or_1_to_18_behind_the_letter();
void a_thread_is_not_a_fit();
void a_hole_is_wanted_and_has_capital_letters();
void a_shaft_is_wanted_and_has_small_letters();
void a_fit_is_wanted_a_hole_then_a_shaft();
void deviations_have_signs_and_the_upper_stands_first();
void the_size_is_within_3150_mm();
void iso_286_has_no_value_for_this_class_at_this_size();

} // namespace callout_rule

namespace detail {

constexpr void refuse_literal(error_code code) {
    using enum error_code;
    using namespace callout_rule;
    switch (code) {
    case size_missing:
    case size_not_a_number:
    case size_not_above_zero: return the_size_is_a_number_above_zero_and_stands_first();
    case number_malformed:
    case decimal_comma_not_allowed: return a_number_has_digits_and_one_point_at_most();
    case more_decimals_than_a_nanometre: return a_number_is_not_finer_than_a_nanometre();
    case fraction_without_inches: return a_fraction_is_in_inches();
    case unit_not_known:
    case unit_given_twice:
    case unit_missing:
    case unit_ambiguous: return the_unit_is_mm_um_nm_in_or_thou_and_given_once();
    case count_or_class:
    case class_missing: return the_size_is_followed_by_a_class_or_deviations();
    case letter_not_used:
    case letter_case_mixed: return the_letter_is_one_of_iso_286_in_one_case();
    case grade_missing:
    case grade_not_known:
    case blank_inside_a_class: return the_grade_is_01_0_or_1_to_18_behind_the_letter();
    case thread_is_not_a_fit: return a_thread_is_not_a_fit();
    case hole_wanted: return a_hole_is_wanted_and_has_capital_letters();
    case shaft_wanted: return a_shaft_is_wanted_and_has_small_letters();
    case fit_wanted:
    case hole_and_shaft_swapped:
    case two_holes:
    case two_shafts: return a_fit_is_wanted_a_hole_then_a_shaft();
    case deviation_missing:
    case deviation_without_sign:
    case deviations_swapped:
    case limits_crossed:
    case limits_too_far_apart: return deviations_have_signs_and_the_upper_stands_first();
    case size_out_of_range: return the_size_is_within_3150_mm();
    case no_value_in_standard: return iso_286_has_no_value_for_this_class_at_this_size();
    default: return the_text_is_one_callout_without_anything_else();
    }
}

template <class Value> constexpr Value literal_value(const result<Value>& read) {
    if (!read) refuse_literal(read.error().code());
    return *read;
}

/// The characters of a literal as a template argument.
template <std::size_t Size> struct literal_text {
    constexpr literal_text(const char (&written)[Size]) noexcept {
        for (std::size_t i = 0; i < Size; ++i) characters[i] = written[i];
    }
    [[nodiscard]] constexpr text view() const noexcept { return {characters, Size - 1}; }

    char characters[Size] = {};
};

} // namespace detail

/// Call-outs checked while compiling: a wrong one does not compile, and the compiler names the rule.
namespace literals {

/// `"25 H7"_hole`: its limits.
template <detail::literal_text Written> [[nodiscard]] constexpr hole_limits operator""_hole() noexcept {
    constexpr hole_limits made = detail::literal_value(read_hole(Written.view()));
    return made;
}
/// `"25 g6"_shaft`: its limits.
template <detail::literal_text Written> [[nodiscard]] constexpr shaft_limits operator""_shaft() noexcept {
    constexpr shaft_limits made = detail::literal_value(read_shaft(Written.view()));
    return made;
}
/// `"25 H7/g6"_fit`: both parts' limits.
template <detail::literal_text Written> [[nodiscard]] constexpr fit operator""_fit() noexcept {
    constexpr fit made = detail::literal_value(read_fit(Written.view()));
    return made;
}
/// `"H7"_hole_class`: the class without a size.
template <detail::literal_text Written> [[nodiscard]] constexpr hole_class operator""_hole_class() noexcept {
    constexpr hole_class made = detail::literal_value(read_hole_class(Written.view()));
    return made;
}
/// `"g6"_shaft_class`: the class without a size.
template <detail::literal_text Written>
[[nodiscard]] constexpr shaft_class operator""_shaft_class() noexcept {
    constexpr shaft_class made = detail::literal_value(read_shaft_class(Written.view()));
    return made;
}

} // namespace literals

} // namespace fitwright

#endif
