#ifndef FITWRIGHT_INCH_READ_FIT_CLASS_HPP
#define FITWRIGHT_INCH_READ_FIT_CLASS_HPP

#include <fitwright/error.hpp>
#include <fitwright/inch/fit_class.hpp>

namespace fitwright {

namespace detail {

/// What was probably meant: in capitals, without blanks and without a zero before the number.
[[nodiscard]] constexpr fixed_text<8> as_inch_name(text piece) noexcept {
    fixed_text<8> likely;
    char before = ' ';
    for (const char c : piece) {
        if (c == ' ' || c == '\t') continue;
        const bool after_letter = before >= 'A' && before <= 'Z';
        if (c == '0' && after_letter) continue;
        before = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
        likely << text(&before, 1);
    }
    return likely;
}

/// The fit of exactly that name, or one that does not exist.
[[nodiscard]] constexpr inch_fit_class inch_fit_named(text exactly) noexcept {
    for (const inch_fit_class c : inch_fit_classes())
        if (name(c) == exactly) return c;
    return static_cast<inch_fit_class>(inch_fit_class_count);
}

/// "RC1 to RC9" for whatever begins with the letters of a family; all families otherwise.
constexpr void say_inch_fits(error::composer& say, text likely) noexcept {
    constexpr const char* families[][2] = {
        {"RC1", "RC9"}, {"LC1", "LC11"}, {"LT1", "LT6"}, {"LN1", "LN3"}, {"FN1", "FN5"}};
    for (const auto& [first, last] : families) {
        if (likely.size() < 2 || text(first, 2) != text(likely.data(), 2)) continue;
        say << first << " to " << last;
        return;
    }
    say << "RC1 to RC9, LC1 to LC11, LT1 to LT6, LN1 to LN3, FN1 to FN5";
}

/// A piece fit to be shown: short, and nothing in it but what a keyboard of plain letters has.
[[nodiscard]] constexpr fixed_text<23> shown_inch_name(text piece) noexcept {
    fixed_text<20> plain;
    for (const char c : piece) plain << (c >= ' ' && c <= '~' ? text(&c, 1) : text("?"));
    return fixed_text<23>() << plain.view() << (plain.is_cut() ? text("...") : text());
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_inch_fit_named(text piece,
                                                                          std::uint32_t column) noexcept {
    if (piece.empty()) {
        error::composer say(error_code::text_is_empty);
        say << "nothing to read; allowed: a fit of ANSI B4.1 in capitals, ";
        say_inch_fits(say, "");
        return static_cast<error>(say).placed(column, column);
    }
    const auto likely = as_inch_name(piece);
    const bool offer = exists(inch_fit_named(likely.view()));
    bool has_blank = false;
    bool has_small_letter = false;
    for (const char c : piece) {
        has_blank |= c == ' ' || c == '\t';
        has_small_letter |= c >= 'a' && c <= 'z';
    }
    const error_code code = offer && has_small_letter ? error_code::letter_case_mixed
                            : offer && has_blank      ? error_code::blank_inside_a_class
                                                      : error_code::inch_fit_not_known;
    error::composer say(code);
    say.quote(shown_inch_name(piece).view());
    if (code == error_code::letter_case_mixed) say << " has small letters; allowed: capitals, ";
    else if (code == error_code::blank_inside_a_class) say << " has a blank inside; allowed: none, ";
    else say << " is not a fit of ANSI B4.1; allowed: ";
    say_inch_fits(say, likely.view());
    if (offer) {
        say << "; write ";
        say.begin_suggestion() << likely.view();
        say.end_suggestion();
    }
    return static_cast<error>(say).placed(column, column);
}

} // namespace detail

/// Reads the name of a standard inch fit, `RC4`, and nothing else but blanks around it. Strict: `rc4`,
/// `RC 4` and `RC04` are errors that offer `RC4`; a number or a family that there is not is an error
/// that says which there are.
[[nodiscard]] constexpr result<inch_fit_class> read_inch_fit_class(text written) noexcept {
    const auto is_blank = [](char c) { return c == ' ' || c == '\t'; };
    const char* first = written.begin();
    const char* last = written.end();
    while (first != last && is_blank(*first)) ++first;
    while (first != last && is_blank(last[-1])) --last;
    const text piece(first, static_cast<std::size_t>(last - first));
    const inch_fit_class named = detail::inch_fit_named(piece);
    if (detail::exists(named)) return named;
    return detail::no_inch_fit_named(piece, static_cast<std::uint32_t>(first - written.begin()) + 1);
}

/// The same from a std::string_view, a std::string and the like.
template <detail::made_from_characters Characters>
[[nodiscard]] constexpr result<inch_fit_class> read_inch_fit_class(const Characters& written) noexcept {
    return read_inch_fit_class(text(written.data(), written.size()));
}

} // namespace fitwright

#endif
