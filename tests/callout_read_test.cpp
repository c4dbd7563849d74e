// What the reader takes and what it refuses. The limits expected are those of ISO 286-1:2010 and of the
// class tables of ISO 286-2:2010 (tests/data/class_limits.csv); the rest of a row is plain arithmetic.

#include <fitwright/callout.hpp>
#include <fitwright/io.hpp>

#include <doctest/doctest.h>

#include <string>
#include <string_view>

using namespace fitwright;
using namespace fitwright::literals;

namespace {

struct taken {
    std::string_view written;
    callout_part part;
    length lower; ///< of the hole; of the shaft where that is the part
    length upper;
    std::string_view again; ///< as the library writes it
};

constexpr taken taken_cases[] = {
    // a class, and blanks of every width around the parts
    {"12 H7", callout_part::hole, 12_mm, 12.018_mm, "12 H7"},
    {"12H7", callout_part::hole, 12_mm, 12.018_mm, "12 H7"},
    {"  12\tH7  ", callout_part::hole, 12_mm, 12.018_mm, "12 H7"},
    {"\u00A012\u2009H7\u3000", callout_part::hole, 12_mm, 12.018_mm, "12 H7"},
    {"12\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008H7", callout_part::hole, 12_mm, 12.018_mm,
     "12 H7"},
    {"\uFEFF12\u200A\u200B\u202F\u205F\u2060H7", callout_part::hole, 12_mm, 12.018_mm, "12 H7"},
    {"12 mm H7", callout_part::hole, 12_mm, 12.018_mm, "12 H7"},
    {"12mm H7", callout_part::hole, 12_mm, 12.018_mm, "12 H7"},
    {"12000 um H7", callout_part::hole, 12_mm, 12.018_mm, "12000 um H7"},
    {"12.0 H7", callout_part::hole, 12_mm, 12.018_mm, "12 H7"},
    {"12.500 H7", callout_part::hole, 12.5_mm, 12.518_mm, "12.5 H7"},
    {"0.5 js5", callout_part::shaft, 0.498_mm, 0.502_mm, "0.5 js5"},
    {".5 js5", callout_part::shaft, 0.498_mm, 0.502_mm, "0.5 js5"},
    {"25 g6", callout_part::shaft, 24.980_mm, 24.993_mm, "25 g6"},
    {"3150 h6", callout_part::shaft, 3149.865_mm, 3150_mm, "3150 h6"},
    {"12 H01", callout_part::hole, 12_mm, 12.0005_mm, "12 H01"},
    {"12 H0", callout_part::hole, 12_mm, 12.0008_mm, "12 H0"},
    {"12 JS7", callout_part::hole, 11.991_mm, 12.009_mm, "12 JS7"},
    {"12 zc11", callout_part::shaft, 12.130_mm, 12.240_mm, "12 zc11"},
    // the diameter sign and what is typed for it
    {"\u230012 H7", callout_part::hole, 12_mm, 12.018_mm, "\u230012 H7"},
    {"\u2300 12 H7", callout_part::hole, 12_mm, 12.018_mm, "\u230012 H7"},
    {"\u00D812 H7", callout_part::hole, 12_mm, 12.018_mm, "\u230012 H7"},
    {"\u00F812 H7", callout_part::hole, 12_mm, 12.018_mm, "\u230012 H7"},
    {"\u03A612 H7", callout_part::hole, 12_mm, 12.018_mm, "\u230012 H7"},
    {"\u03C612 H7", callout_part::hole, 12_mm, 12.018_mm, "\u230012 H7"},
    {"\u220512 H7", callout_part::hole, 12_mm, 12.018_mm, "\u230012 H7"},
    {"DIA 12 H7", callout_part::hole, 12_mm, 12.018_mm, "\u230012 H7"},
    {"DIA12 H7", callout_part::hole, 12_mm, 12.018_mm, "\u230012 H7"},
    {"D 12 H7", callout_part::hole, 12_mm, 12.018_mm, "\u230012 H7"},
    {"D12 H7", callout_part::hole, 12_mm, 12.018_mm, "\u230012 H7"},
    // fits
    {"12 H7/g6", callout_part::fit, 12_mm, 12.018_mm, "12 H7/g6"},
    {"12 H7 / g6", callout_part::fit, 12_mm, 12.018_mm, "12 H7/g6"},
    {"12H7/g6", callout_part::fit, 12_mm, 12.018_mm, "12 H7/g6"},
    {"12 H7-g6", callout_part::fit, 12_mm, 12.018_mm, "12 H7/g6"},
    {"12 H7 - g6", callout_part::fit, 12_mm, 12.018_mm, "12 H7/g6"},
    {"12 H7 \u2212 g6", callout_part::fit, 12_mm, 12.018_mm, "12 H7/g6"},
    {"12 F7/h6", callout_part::fit, 12.016_mm, 12.034_mm, "12 F7/h6"},
    // inches
    {"1/4 in H7", callout_part::hole, 6.35_mm, 6.365_mm, "0.25 in H7"},
    {"0.25in H7", callout_part::hole, 6.35_mm, 6.365_mm, "0.25 in H7"},
    {".25 inch H7", callout_part::hole, 6.35_mm, 6.365_mm, "0.25 in H7"},
    {"1/4\" H7", callout_part::hole, 6.35_mm, 6.365_mm, "0.25 in H7"},
    {"1/4\u2033 H7", callout_part::hole, 6.35_mm, 6.365_mm, "0.25 in H7"},
    {"1\u20444 in H7", callout_part::hole, 6.35_mm, 6.365_mm, "0.25 in H7"},
    {"1 1/4 in H7", callout_part::hole, 31.75_mm, 31.775_mm, "1.25 in H7"},
    {"1-1/4\" H7", callout_part::hole, 31.75_mm, 31.775_mm, "1.25 in H7"},
    {"\u00BC in H7", callout_part::hole, 6.35_mm, 6.365_mm, "0.25 in H7"},
    {"1 \u00BC in H7", callout_part::hole, 31.75_mm, 31.775_mm, "1.25 in H7"},
    {"1\u00BC in H7", callout_part::hole, 31.75_mm, 31.775_mm, "1.25 in H7"},
    {"\u215E\" H7", callout_part::hole, 22.225_mm, 22.246_mm, "0.875 in H7"},
    {"250 thou H7", callout_part::hole, 6.35_mm, 6.365_mm, "250 thou H7"},
    {"1/64 in H7", callout_part::hole, 396'875_nm, 406'875_nm, "0.015625 in H7"},
    // limits without a class
    {"14 +0.018 0", callout_part::either, 14_mm, 14.018_mm, "14 +0.018/0"},
    {"14 +0.018/0", callout_part::either, 14_mm, 14.018_mm, "14 +0.018/0"},
    {"14 +0.018 / 0", callout_part::either, 14_mm, 14.018_mm, "14 +0.018/0"},
    {"14 (+0.018 / 0)", callout_part::either, 14_mm, 14.018_mm, "14 +0.018/0"},
    {"14 +.018/-0", callout_part::either, 14_mm, 14.018_mm, "14 +0.018/0"},
    {"14 \u00B10.009", callout_part::either, 13.991_mm, 14.009_mm, "14 +/-0.009"},
    {"14\u00B10.009", callout_part::either, 13.991_mm, 14.009_mm, "14 +/-0.009"},
    {"14 +/-0.009", callout_part::either, 13.991_mm, 14.009_mm, "14 +/-0.009"},
    {"14 +/\u22120.009", callout_part::either, 13.991_mm, 14.009_mm, "14 +/-0.009"},
    {"14 0/-0.011", callout_part::either, 13.989_mm, 14_mm, "14 0/-0.011"},
    {"14 0 -0.011", callout_part::either, 13.989_mm, 14_mm, "14 0/-0.011"},
    {"14 -0.020/-0.041", callout_part::either, 13.959_mm, 13.98_mm, "14 -0.020/-0.041"},
    {"14 \u22120.020/\u22120.041", callout_part::either, 13.959_mm, 13.98_mm, "14 -0.020/-0.041"},
    {"14-0.020/-0.041 mm", callout_part::either, 13.959_mm, 13.98_mm, ""}, // see below: refused
    {"14.000-14.018", callout_part::either, 14_mm, 14.018_mm, "14.000/14.018"},
    {"14.000 - 14.018", callout_part::either, 14_mm, 14.018_mm, "14.000/14.018"},
    {"14.000\u201314.018", callout_part::either, 14_mm, 14.018_mm, "14.000/14.018"},
    {"7.978/7.986", callout_part::either, 7.978_mm, 7.986_mm, "7.978/7.986"},
    {"7.986/7.978", callout_part::either, 7.978_mm, 7.986_mm, "7.978/7.986"},
    {"14 mm +18 \u00B5m/0", callout_part::either, 14_mm, 14.018_mm, "14 +0.018/0"},
    {"14 mm +18/-5 \u03BCm", callout_part::either, 13.995_mm, 14.018_mm, "14 +0.018/-0.005"},
    {"14 mm \u00B19 um", callout_part::either, 13.991_mm, 14.009_mm, "14 +/-0.009"},
    {"14 +0.018/0 mm", callout_part::either, 14_mm, 14.018_mm, "14 +0.018/0"},
    {"0.5 in +0.001/0", callout_part::either, 12.7_mm, 12.7254_mm, "0.5 in +0.001/0"},
    {"1/2 in +1 thou/0", callout_part::either, 12.7_mm, 12.7254_mm, "0.5 in +0.001/0"},
    {"0.5 \u00B10.001 in", callout_part::either, 12.6746_mm, 12.7254_mm, "0.5 in +/-0.001"},
    {"0.500-0.501 in", callout_part::either, 12.7_mm, 12.7254_mm, "0.500 in/0.501"},
    // count, depth, through, envelope
    {"2x \u23006 H7", callout_part::hole, 6_mm, 6.012_mm, "2x \u23006 H7"},
    {"4X 6 H7 THRU", callout_part::hole, 6_mm, 6.012_mm, "4x 6 H7 THRU"},
    {"2 \u00D7 6 H7", callout_part::hole, 6_mm, 6.012_mm, "2x 6 H7"},
    {"2x6 H7", callout_part::hole, 6_mm, 6.012_mm, "2x 6 H7"},
    {"6 H7 \u21A712", callout_part::hole, 6_mm, 6.012_mm, "6 H7 DEPTH 12"},
    {"6 H7 \u21A7 12 mm", callout_part::hole, 6_mm, 6.012_mm, "6 H7 DEPTH 12"},
    {"2x 6 +0.012/0 THRU", callout_part::either, 6_mm, 6.012_mm, "2x 6 +0.012/0 THRU"},
    {"12 H7 \u24BA", callout_part::hole, 12_mm, 12.018_mm, "12 H7 (E)"},
    {"12 H7 (E)", callout_part::hole, 12_mm, 12.018_mm, "12 H7 (E)"},
    {"12 H7(E)/g6(E)", callout_part::fit, 12_mm, 12.018_mm, "12 H7 (E)/g6 (E)"},
    {"12 H7/g6 \u24BA", callout_part::fit, 12_mm, 12.018_mm, "12 H7 (E)/g6 (E)"},
    {"12 H7 (E)/g6", callout_part::fit, 12_mm, 12.018_mm, "12 H7 (E)/g6"},
    {"14 \u00B10.009 (E)", callout_part::either, 13.991_mm, 14.009_mm, "14 +/-0.009 (E)"},
    // x and X are letters of ISO 286 too
    {"12 x6", callout_part::shaft, 12.040_mm, 12.051_mm, "12 x6"},
    {"12 X7/h6", callout_part::fit, 11.949_mm, 11.967_mm, "12 X7/h6"},
    {"12 X7-h6", callout_part::fit, 11.949_mm, 11.967_mm, "12 X7/h6"},
    {"2x 12 x6", callout_part::shaft, 12.040_mm, 12.051_mm, "2x 12 x6"},
    // standard inch fits: limits of ANSI B4.1-1967, Machinery's Handbook 31, Tables 8a to 9b
    {"1/2 in RC4", callout_part::fit, 0.5_in, 0.501_in, "0.5 in RC4"},
    {"1/2in RC4", callout_part::fit, 0.5_in, 0.501_in, "0.5 in RC4"},
    {"1/2\" RC4 (E)", callout_part::fit, 0.5_in, 0.501_in, "0.5 in RC4 (E)"},
    {".500 RC4", callout_part::fit, 0.5_in, 0.501_in, "0.5 in RC4"},
    {".5 RC4", callout_part::fit, 0.5_in, 0.501_in, "0.5 in RC4"},
    {"0.500 RC4", callout_part::fit, 0.5_in, 0.501_in, "0.5 in RC4"},
    {"1/2 RC4", callout_part::fit, 0.5_in, 0.501_in, "0.5 in RC4"},
    {"1 1/4 LC2", callout_part::fit, 1.25_in, 1.251_in, "1.25 in LC2"},
    {"2x 1/4 in RC4 THRU", callout_part::fit, 0.25_in, 0.2509_in, "2x 0.25 in RC4 THRU"},
    {"12.7 mm RC4", callout_part::fit, 0.5_in, 0.501_in, "12.7 mm RC4"},
    {"500 thou RC4", callout_part::fit, 0.5_in, 0.501_in, "500 thou RC4"},
};

constexpr bool is_taken(const taken& t) {
    const auto read = read_callout(t.written);
    if (t.again.empty()) return !read;
    if (!read || read->part != t.part || !(written(*read) == text(t.again.data(), t.again.size())))
        return false;
    const bool lower = t.part == callout_part::shaft ? read->shaft.lower_limit() == t.lower
                                                     : read->hole.lower_limit() == t.lower;
    const bool upper = t.part == callout_part::shaft ? read->shaft.upper_limit() == t.upper
                                                     : read->hole.upper_limit() == t.upper;
    const auto again = read_callout(t.again);
    return lower && upper && again && *again == *read;
}

struct refused {
    std::string_view written;
    error_code code;
    std::uint32_t column;
    std::uint32_t byte_column;
    std::string_view piece;
    std::string_view suggestion;
};

using enum error_code;

constexpr refused refused_cases[] = {
    {"", text_is_empty, 1, 1, "", ""},
    {" \u3000", text_is_empty, 1, 1, "", ""},
    // letters
    {"12 I7", letter_not_used, 4, 4, "I", ""},
    {"12 L7", letter_not_used, 4, 4, "L", ""},
    {"12 O7", letter_not_used, 4, 4, "O", ""},
    {"12 Q7", letter_not_used, 4, 4, "Q", ""},
    {"12 W7", letter_not_used, 4, 4, "W", ""},
    {"12 i7", letter_not_used, 4, 4, "i", ""},
    {"12 l7", letter_not_used, 4, 4, "l", ""},
    {"12 o7", letter_not_used, 4, 4, "o", ""},
    {"12 q7", letter_not_used, 4, 4, "q", ""},
    {"12 w7", letter_not_used, 4, 4, "w", ""},
    {"12 HH7", letter_not_used, 4, 4, "HH", ""},
    {"12 AB7", letter_not_used, 4, 4, "AB", ""},
    {"12 Js7", letter_case_mixed, 4, 4, "Js", ""},
    {"12 zC7", letter_case_mixed, 4, 4, "zC", ""},
    // grades
    {"12 H", grade_missing, 4, 4, "H", ""},
    {"12 H7/g", grade_missing, 7, 7, "g", ""},
    {"12 H19", grade_not_known, 5, 5, "19", ""},
    {"12 H07", grade_not_known, 5, 5, "07", "12 H7"},
    {"12 H007", grade_not_known, 5, 5, "007", ""},
    {"12 H00", grade_not_known, 5, 5, "00", "12 H0"},
    {"12 H7.5", something_left_over, 6, 6, ".5", ""},
    {"12 H 7", blank_inside_a_class, 4, 4, "H 7", "12 H7"},
    {"12 H\u20097", blank_inside_a_class, 4, 4, "H\u20097", "12 H7"},
    // sizes
    {"H7", size_missing, 1, 1, "H7", ""},
    {"g6/H7", size_missing, 1, 1, "g6", ""},
    {"D10", size_missing, 1, 1, "D10", ""},
    {"\u2300 H7", size_missing, 3, 5, "H7", ""},
    {"0 H7", size_not_above_zero, 1, 1, "0", ""},
    {"0.000 H7", size_not_above_zero, 1, 1, "0.000", ""},
    {"-12 H7", size_not_above_zero, 1, 1, "-12", ""},
    {"\u221212 H7", size_not_above_zero, 1, 1, "\u221212", ""},
    {"12.3.4 H7", number_malformed, 1, 1, "12.3.4", ""},
    {"1e3 H7", number_malformed, 1, 1, "1e3", ""},
    {"1E3 H7", number_malformed, 1, 1, "1E3", ""},
    {"012 H7", number_malformed, 1, 1, "012", ""},
    {"12. H7", number_malformed, 1, 1, "12.", ""},
    {"123456789012 H7", number_malformed, 1, 1, "123456789012", ""},
    {"1/0 in H7", number_malformed, 1, 1, "1/0", ""},
    {"1 5/4 in H7", number_malformed, 1, 1, "1 5/4", ""},
    {"1,250 H7", decimal_comma_not_allowed, 1, 1, "1,250", ""},
    {"4000 H7", size_out_of_range, 1, 1, "4000", ""},
    {"3150.000001 H7", size_out_of_range, 1, 1, "3150.000001", ""},
    {"nan H7", size_not_a_number, 1, 1, "nan", ""},
    {"NaN H7", size_not_a_number, 1, 1, "NaN", ""},
    {"inf H7", size_not_a_number, 1, 1, "inf", ""},
    {"Infinity H7", size_not_a_number, 1, 1, "Infinity", ""},
    {"-inf H7", size_not_above_zero, 1, 1, "-inf", ""},
    {"12.0000001 H7", more_decimals_than_a_nanometre, 10, 10, "1", ""},
    {"12.0000000 H7", more_decimals_than_a_nanometre, 10, 10, "0", ""},
    {"12000.0001 um H7", more_decimals_than_a_nanometre, 10, 10, "1", ""},
    {"14 +0.0000001/0", more_decimals_than_a_nanometre, 13, 13, "1", ""},
    // units
    {"1/4 H7", fraction_without_inches, 1, 1, "1/4", "1/4 in H7"},
    {"1/4 mm H7", fraction_without_inches, 1, 1, "1/4", ""},
    {"7/8", fraction_without_inches, 1, 1, "7/8", "7/8 in"},
    {"\u00BC H7", fraction_without_inches, 1, 1, "\u00BC", "\u00BC in H7"},
    {"12 mm in H7", unit_given_twice, 7, 7, "in", ""},
    {"12 mm mm H7", unit_given_twice, 7, 7, "mm", ""},
    {"0.5 in/13 mm", unit_given_twice, 11, 11, "mm", ""},
    {"12 cm H7", unit_not_known, 4, 4, "cm", ""},
    {"12 mil H7", unit_not_known, 4, 4, "mil", ""},
    {"12 MM H7", unit_not_known, 4, 4, "MM", "12 mm H7"},
    {"12 IN H7", unit_not_known, 4, 4, "IN", "12 in H7"},
    {"14 \u00B19 \u00B5m", unit_ambiguous, 7, 8, "\u00B5m", ""},
    {"14 mm +18 um/-5", unit_ambiguous, 11, 11, "um", ""},
    // which part
    {"12 g6/H7", hole_and_shaft_swapped, 4, 4, "g6", "12 H7/g6"},
    {" 12 g6 / H7", hole_and_shaft_swapped, 5, 5, "g6", "12 H7/g6"},
    {"12 H7/H6", two_holes, 7, 7, "H6", "12 H7/h6"},
    {"12 g6/h6", two_shafts, 4, 4, "g6", "12 G6/h6"},
    {"M8x1.25-6H", thread_is_not_a_fit, 1, 1, "M8x1.25-6H", ""},
    {"M8 H7", thread_is_not_a_fit, 1, 1, "M8", ""},
    {"\u2300M8 H7", thread_is_not_a_fit, 2, 4, "M8", ""},
    {"MJ6x1 H7", thread_is_not_a_fit, 1, 1, "MJ6x1", ""},
    {"Tr12x3 H7", thread_is_not_a_fit, 1, 1, "Tr12x3", ""},
    // limits without a class
    {"12", class_missing, 3, 3, "", ""},
    {"12 mm", class_missing, 6, 6, "", ""},
    {"12 THRU", class_missing, 4, 4, "", ""},
    {"14 +0.018", deviation_missing, 4, 4, "+0.018", ""},
    {"14 0.018/0", deviation_without_sign, 4, 4, "0.018", ""},
    {"14 +0.018/0.005", deviation_without_sign, 11, 11, "0.005", ""},
    {"14 0/+0.018", deviations_swapped, 4, 4, "0", "14 +0.018/0"},
    {"14 -0.041/-0.020", deviations_swapped, 4, 4, "-0.041", "14 -0.020/-0.041"},
    {"14 +-0.009", two_signs, 4, 4, "+-", "14 +/-0.009"},
    {"14 +0.018/+0.018", limits_crossed, 11, 11, "+0.018", ""},
    {"14 \u00B10", limits_crossed, 5, 6, "0", ""},
    {"14.018-14.000", limits_crossed, 8, 8, "14.000", ""},
    {"14 - 0.018", limits_crossed, 6, 6, "0.018", ""},
    {"14-0.020/-0.041", limits_crossed, 4, 4, "0.020", ""},
    {"14.000/14.000", limits_crossed, 8, 8, "14.000", ""},
    {"14 / 0.018", limits_too_far_apart, 1, 1, "14", ""},
    {"14 -0.02/-20", size_not_above_zero, 10, 10, "-20", ""},
    {"14 (+0.018/0", ends_too_soon, 13, 13, "", ""},
    // the rest
    {"12 H7/", ends_too_soon, 7, 7, "", ""},
    {"12 H7 extra", something_left_over, 7, 7, "extra", ""},
    {"12 H7 THRU THRU", something_left_over, 12, 12, "THRU", ""},
    {"12 H7g6", something_left_over, 6, 6, "g6", ""},
    {"12 H7/g6/h6", something_left_over, 9, 9, "/h6", ""},
    {"12 H7;", character_not_allowed, 6, 6, ";", ""},
    {"12 H7\n", character_not_allowed, 6, 6, "?", ""},
    {"\uFF11\uFF12 H7", character_not_allowed, 1, 1, "\uFF11\uFF12", "12 H7"},
    {"12 H\uFF17", character_not_allowed, 5, 5, "\uFF17", "12 H7"},
    {"\u0661\u0662 H7", character_not_allowed, 1, 1, "\u0661\u0662 H7", ""},
    {"12 \xFF H7", text_is_not_utf8, 4, 4, "\xFF", ""},
    {"12 \xC0\x80 H7", text_is_not_utf8, 4, 4, "\xC0", ""},
    {"\u2300\xE2\x8C", text_is_not_utf8, 2, 4, "\xE2", ""},
    {"12 \xED\xA0\x80 H7", text_is_not_utf8, 4, 4, "\xED", ""},
    // a count, or the letter x
    {"12x6", count_or_class, 1, 1, "12x6", ""},
    {"4X6 THRU", count_or_class, 1, 1, "4X6", ""},
    {"4X 6 THRU", blank_inside_a_class, 2, 2, "X 6", ""},
    // what an offer has to look like to be read
    {"1/4H7", fraction_without_inches, 1, 1, "1/4", "1/4 in H7"},
    {"12LN2", unit_missing, 1, 1, "12", "12 in LN2"},
    {"1/2-20", fraction_without_inches, 1, 1, "1/2", ""},
    // signs, units grown onto classes, threads
    {"+12 H7", number_malformed, 1, 1, "+12", ""},
    {"+ H7", size_missing, 1, 1, "+", ""},
    {"14 0/0", limits_crossed, 6, 6, "0", ""},
    {"12mmH7", unit_not_known, 3, 3, "mmH", ""},
    {"M 8 H7", thread_is_not_a_fit, 1, 1, "M 8", ""},
    {"1/4-20 UNC-2B", thread_is_not_a_fit, 8, 8, "UNC", ""},
    {"G1/2", thread_is_not_a_fit, 1, 1, "G1/2", ""},
    // inch fits
    {"12 RC4", unit_missing, 1, 1, "12", "12 in RC4"},
    {"12.700 RC4", unit_missing, 1, 1, "12.700", "12.700 in RC4"},
    {"0.5 RC4", unit_missing, 1, 1, "0.5", "0.5 in RC4"},
    {"1/2 in rc4", letter_case_mixed, 8, 8, "rc4", "RC4"},
    {"1/2 in RC04", inch_fit_not_known, 8, 8, "RC04", "RC4"},
    {"1/2 in RC10", inch_fit_not_known, 8, 8, "RC10", ""},
    {"1/2 in RC", inch_fit_not_known, 8, 8, "RC", ""},
    {"30 in RC4", size_out_of_range, 1, 1, "30", ""},
    {"0.1 in LT3", no_value_in_standard, 8, 8, "0.1", ""},
    {"12 H7/RC4", letter_not_used, 7, 7, "RC", ""},
    {"1/2 in RC4/g6", something_left_over, 11, 11, "/g6", ""},
    // where the standard has no value
    {"12 T7", no_value_in_standard, 4, 4, "T7", ""},
    {"12 K9", no_value_in_standard, 4, 4, "K9", ""},
    {"12 H7/j8", no_value_in_standard, 7, 7, "j8", ""},
    {"600 H0", no_value_in_standard, 5, 5, "H0", ""},
    {"1 A11", no_value_in_standard, 3, 3, "A11", ""},
};

/// The piece is shown, not copied: what is not UTF-8 or not printable is left out of it.
constexpr bool shows(text shown, std::string_view piece) {
    if (shown == text(piece.data(), piece.size())) return true;
    return piece.size() == 1 && static_cast<unsigned char>(piece[0]) >= 0x80;
}

constexpr bool is_refused(const refused& r) {
    const auto read = read_callout(r.written);
    if (read) return false;
    const error& e = read.error();
    return e.code() == r.code && e.column() == r.column && e.byte_column() == r.byte_column &&
           shows(e.piece(), r.piece) && e.suggestion() == text(r.suggestion.data(), r.suggestion.size()) &&
           e.message().size() > 20 && e.message().size() < error::capacity;
}

template <class Case, std::size_t Size>
constexpr bool all(const Case (&cases)[Size], bool (*holds)(const Case&)) {
    for (const Case& c : cases)
        if (!holds(c)) return false;
    return true;
}

static_assert(all(taken_cases, is_taken));
static_assert(all(refused_cases, is_refused));

} // namespace

TEST_CASE("call-outs that are taken") {
    for (const taken& t : taken_cases) {
        INFO(std::string(t.written), " -> ", std::string(t.again));
        CHECK(is_taken(t));
    }
}

TEST_CASE("call-outs that are refused, each with its place and what is allowed") {
    for (const refused& r : refused_cases) {
        const auto read = read_callout(r.written);
        INFO(std::string(r.written), " -> ",
             read ? std::string(written(*read)) : std::string(written(read.error())));
        CHECK(is_refused(r));
        if (!read) {
            const bool says = read.error().message().find("allowed") != text::npos;
            CHECK(says);
            if (!r.suggestion.empty() && r.suggestion != "RC4") {
                const auto again = read_callout(r.suggestion);
                const bool offered_reads = again.has_value() || again.error().code() == class_missing;
                CHECK(offered_reads); // what is offered is right, or is missing only what was missing before
            }
        }
    }
}

TEST_CASE("a decimal comma only where the caller allows it") {
    constexpr reading_options comma{.decimal_comma = true};
    static_assert(read_hole("12,5 H7", comma)->lower_limit() == 12.5_mm);
    CHECK(read_hole("12,5 H7", comma)->lower_limit() == 12.5_mm);
    CHECK(read_hole("14 +0,018/0", comma)->upper_limit() == 14.018_mm);
    CHECK(read_hole("12.5 H7", comma)->lower_limit() == 12.5_mm);
    CHECK(!read_hole("12,5 H7"));
    CHECK(!read_hole("1.250,5 H7", comma));
    CHECK(!read_hole("1,250,5 H7", comma));
    CHECK(!read_hole("12, H7", comma));
}

TEST_CASE("the part that is asked for") {
    static_assert(read_hole("14 h7").error().suggestion() == "14 H7");
    CHECK(read_hole("14 h7").error().code() == hole_wanted);
    CHECK(read_hole("14 h7").error().column() == 4);
    CHECK(read_hole("14 js7").error().suggestion() == "14 JS7");
    CHECK(read_hole("14 js7 THRU").error().suggestion() == "14 JS7 THRU");
    CHECK(read_shaft("14 H7").error().code() == shaft_wanted);
    CHECK(read_shaft("14 H7").error().suggestion() == "14 h7");
    CHECK(read_hole("14 H7/g6").error().code() == hole_wanted);
    CHECK(read_hole("14 H7/g6").error().column() == 4);
    CHECK(read_fit("14 H7").error().code() == fit_wanted);
    CHECK(read_fit("14 +0.018/0").error().code() == fit_wanted);
    CHECK(read_hole("14 +0.018/0")->nominal() == 14_mm);
    CHECK(read_shaft("14.000-14.018")->nominal() == 14.018_mm); // a shaft's nominal is its largest size there
    CHECK(read_fit("14 H7/g6")->min_clearance() == 6_um);
}

TEST_CASE("an inch fit by its name") {
    static_assert(inch_fit("RC4", 0.5_in)->min_clearance() == 0.0006_in); // ANSI B4.1: 0.6 to 2.3 thou
    static_assert(inch_fit("RC4", 0.5_in)->max_clearance() == 0.0023_in);
    CHECK(inch_fit("rc4", 0.5_in).error().suggestion() == "RC4");
    CHECK(read_fit("1/2 in RC4")->min_clearance() == 0.0006_in);
    CHECK(read_hole("1/2 in RC4").error().code() == hole_wanted);
    CHECK(read_hole("1/2 in RC4").error().column() == 8);
    CHECK("1/4 in RC4"_fit.min_clearance() == 0.0005_in);
}

TEST_CASE("classes alone") {
    static_assert(*read_hole_class("H7") == hole_class{position::h, grade::it7});
    static_assert(*read_shaft_class(" zc11 ") == shaft_class{position::zc, grade::it11});
    CHECK(read_hole_class("h7").error().suggestion() == "H7");
    CHECK(read_shaft_class("G6").error().suggestion() == "g6");
    CHECK(read_hole_class("12 H7").error().code() == class_alone_wanted);
    CHECK(read_hole_class("H7 g6").error().column() == 4);
    CHECK(read_hole_class("").error().code() == text_is_empty);
    CHECK(read_hole_class("H").error().code() == grade_missing);
    CHECK(read_hole_class("Q7").error().code() == letter_not_used);
    CHECK(read_hole_class("\xFF").error().code() == text_is_not_utf8);
}

TEST_CASE("over-long text is refused, whatever is in it") {
    const std::string blanks(1000, ' ');
    CHECK(read_callout(blanks + "12 H7").error().code() == text_is_too_long);
    const std::string digits(1'000'000, '9');
    CHECK(read_callout(digits).error().code() == text_is_too_long);
    CHECK(read_hole_class(digits).error().code() == text_is_too_long);
    const std::string just(195, ' ');
    CHECK(read_callout(just + "12 H7").has_value());
    const std::string signs = "12 H7" + std::string(190, 'x');
    CHECK(read_callout(signs).error().message().find("...") != text::npos); // the piece is shortened
}

TEST_CASE("what notes a call-out has are handed on") {
    const auto read = read_callout("4X \u23006 H7 (E) \u21A71/2 in");
    REQUIRE(read.has_value());
    CHECK(read->notes.count == 4);
    CHECK(read->notes.diameter_sign);
    CHECK(read->notes.has_depth);
    CHECK(read->notes.depth == 12.7_mm);
    CHECK(read->notes.hole_envelope);
    CHECK(!read->notes.through);
    CHECK(read_callout("0.25 in H7 DEPTH .5")->notes.depth == 12.7_mm); // in the unit of the size
    CHECK(read_callout("6 H7 DEPTH 0").error().code() == size_not_above_zero);
    CHECK(read_callout("6 H7 DEPTH").error().code() == size_missing);
    CHECK(read_callout("0x 6 H7").error().code() == number_malformed);
    CHECK(read_callout("12345x 6 H7").error().code() == number_malformed);
}
