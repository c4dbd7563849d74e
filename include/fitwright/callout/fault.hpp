#ifndef FITWRIGHT_CALLOUT_FAULT_HPP
#define FITWRIGHT_CALLOUT_FAULT_HPP

#include <fitwright/callout/scan.hpp>
#include <fitwright/error.hpp>
#include <fitwright/iso286/tolerance_class.hpp>

// What the reader found wrong, and all that it says about it. The reader itself only notes a code
// and the pieces; the words are put together once, here, when there is something to say.

namespace fitwright::detail {

/// A broken rule and where: the offending piece, and a second piece where the rule is about two.
struct fault {
    error_code code = error_code::text_is_empty;
    text piece;
    text other;
    bool found = true;

    constexpr fault() noexcept : found(false) {}
    constexpr fault(error_code c, text p, text o) noexcept : code(c), piece(p), other(o) {}
    constexpr explicit operator bool() const noexcept { return found; }
};

/// Longest call-out that is read, in bytes.
inline constexpr std::size_t longest_callout = 200;

/// A piece fit to be shown: not too long, no control characters, UTF-8.
[[nodiscard]] constexpr fixed_text<36> shown(text piece) noexcept {
    fixed_text<36> shown;
    fixed_text<33> start;
    start << piece;
    const text kept = start.view();
    const char* const broken = first_not_utf8(kept.begin(), kept.end());
    for (const char* c = kept.begin(); c != broken; ++c) {
        const bool control = static_cast<unsigned char>(*c) < 0x20 || *c == 0x7F;
        shown << (control ? text("?") : text(c, 1));
    }
    if (start.is_cut() || broken != kept.end()) shown << text("...");
    return shown;
}

/// Letters with the other case, digits as they are: h7 from H7.
[[nodiscard]] constexpr fixed_text<8> other_case(text piece) noexcept {
    fixed_text<8> swapped;
    for (const char c : piece) {
        const char changed = is_letter(static_cast<unsigned char>(c)) ? static_cast<char>(c ^ 0x20) : c;
        swapped << text(&changed, 1);
    }
    return swapped;
}

/// Letters in the case of a hole's class or of a shaft's.
[[nodiscard]] constexpr fixed_text<8> letters_in_case(text piece, side s) noexcept {
    fixed_text<8> same;
    for (const char c : piece) {
        const char changed = static_cast<char>(s == side::hole ? c & ~0x20 : c | 0x20);
        same << text(&changed, 1);
    }
    return same;
}

/// The whole text without the blanks around it.
[[nodiscard]] constexpr text without_blanks_around(text whole) noexcept {
    scanner s(whole.begin(), whole.end());
    s.skip_blanks();
    const char* const first = s.place();
    const char* last = first;
    while (!s.at_end()) {
        const bool blank = is_blank(s.peek());
        s.next();
        if (!blank) last = s.place();
    }
    return {first, static_cast<std::size_t>(last - first)};
}

/// Offers the text with one part of it replaced; offers nothing if that would be long.
constexpr void offer(error::composer& say, text whole, text replaced, text by) noexcept {
    whole = without_blanks_around(whole);
    if (whole.size() + by.size() > 60) return;
    say << "; write ";
    say.begin_suggestion() << text(whole.begin(), static_cast<std::size_t>(replaced.begin() - whole.begin()))
                           << by
                           << text(replaced.end(), static_cast<std::size_t>(whole.end() - replaced.end()));
    say.end_suggestion();
}

/// Offers the piece in inches, with a blank behind it where something else follows at once.
constexpr void offer_inches(error::composer& say, text whole, text piece) noexcept {
    if (piece.size() > 40) return;
    if (piece.end() != whole.end() && is_minus(scanner(piece.end(), whole.end()).peek()))
        return; // a thread, or two sizes
    fixed_text<48> inches;
    inches << piece << text(" in");
    if (piece.end() != whole.end() && !is_blank(scanner(piece.end(), whole.end()).peek()))
        inches << text(" ");
    offer(say, whole, piece, inches.view());
}

/// `H7` for `H07`: the piece without the zero, if that makes a grade.
[[nodiscard]] constexpr text without_leading_zero(text digits) noexcept {
    if (digits.size() < 2 || digits[0] != '0') return {};
    const text rest(digits.begin() + 1, digits.size() - 1);
    for (int step = 1; step < grade::count; ++step)
        if (grade::from_step(step).name() == rest) return rest;
    return {};
}

/// The columns of a place in the text, counted from 1.
[[nodiscard]] constexpr error placed_at(const error& e, text whole, const char* place) noexcept {
    std::uint32_t column = 1;
    for (const char* c = whole.begin(); c != place; ++c)
        if ((static_cast<unsigned char>(*c) & 0xC0) != 0x80) ++column;
    return e.placed(column, static_cast<std::uint32_t>(place - whole.begin()) + 1);
}

constexpr void say_allowed_letters(error::composer& say) noexcept {
    say << "; allowed: A B C CD D E EF F FG G H JS J K M N P R S T U V X Y Z ZA ZB ZC for holes, small letters for shafts";
}

/// The words for a fault.
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error in_words(const fault& f, text whole) noexcept {
    error::composer say(f.code);
    const auto quoted = shown(f.piece);
    const text piece = quoted.view();
    switch (f.code) {
    case error_code::text_is_empty:
        say << "nothing to read; allowed: a size with its class or deviations, such as 12 H7";
        break;
    case error_code::text_is_too_long:
        say << "the call-out is longer than " << std::int64_t{longest_callout}
            << " bytes; allowed: one call-out a line";
        break;
    case error_code::text_is_not_utf8: say << "this byte is not UTF-8; allowed: UTF-8 text"; break;
    case error_code::character_not_allowed: {
        scanner s(f.piece.begin(), f.piece.end());
        if (!is_full_width_digit(s.peek())) {
            say.quote(piece)
                << " is not part of a call-out here; allowed: a size, its unit, a class such as H7 or deviations such as +0.018/0";
            break;
        }
        fixed_text<24> narrow;
        while (is_full_width_digit(s.peek())) {
            narrow << static_cast<std::int64_t>(s.peek() - 0xFF10);
            s.next();
        }
        const text wide = s.since(f.piece.begin());
        say.quote(shown(wide).view()) << " has full-width digits; allowed: 0 to 9";
        offer(say, whole, wide, narrow.view());
        break;
    }
    case error_code::something_left_over:
        say.quote(piece)
            << " is left over behind the call-out; allowed there: / and a second class, (E), THRU, a depth";
        break;
    case error_code::ends_too_soon:
        say << "the call-out ends too soon; allowed: something behind the last sign, as in 12 H7/g6 or 14 +0.018/0";
        break;
    case error_code::size_missing:
        say << "the size is missing";
        if (!f.piece.empty()) (say << " before ").quote(piece);
        say << "; allowed: a number above 0, such as 12 or 12.5 or 1/4 in";
        break;
    case error_code::size_not_a_number:
        say.quote(piece) << " is not a size; allowed: a number above 0 in digits";
        break;
    case error_code::size_not_above_zero:
        say.quote(piece) << " is not above 0; allowed: sizes above 0";
        break;
    case error_code::number_malformed:
        say.quote(piece)
            << " is not a number as it is written here; allowed: digits with one point, no exponent, no zero "
               "in front, 11 digits at the most, or a fraction of an inch";
        break;
    case error_code::decimal_comma_not_allowed:
        say.quote(piece)
            << " has a comma; allowed: a decimal point (a decimal comma only where the caller says so)";
        break;
    case error_code::more_decimals_than_a_nanometre:
        say.quote(piece) << " in " << f.other
                         << " is less than a nanometre; allowed: 6 decimals of mm, 3 of um, none of nm, "
                            "8 of in, 5 of thou";
        break;
    case error_code::fraction_without_inches: {
        say.quote(piece)
            << " is a fraction without inches; allowed: fractions of an inch only, and two limits with their decimals";
        scanner behind(f.piece.end(), whole.end());
        behind.skip_blanks();
        const char32_t next = behind.take_letters().empty() ? no_more : behind.peek();
        const bool has_unit = next != no_more && !is_digit(next); // a class has its grade there
        if (!has_unit) offer_inches(say, whole, f.piece);
        break;
    }
    case error_code::unit_not_known: {
        say.quote(piece) << " is not a unit; allowed: mm, um, nm, in, thou (and \" or inch)";
        if (f.piece.size() == 3 && is_capital(static_cast<unsigned char>(f.piece[2])))
            say << " with a blank behind";
        const auto swapped = other_case(f.piece);
        if (swapped == "mm" || swapped == "in") offer(say, whole, f.piece, swapped.view());
        break;
    }
    case error_code::unit_given_twice:
        say.quote(piece) << " is a second unit; allowed: one unit for a size, the same for both limits";
        break;
    case error_code::unit_ambiguous:
        say << "it can't be told what ";
        say.quote(piece)
            << " is the unit of; allowed: the unit behind every number it belongs to, as in 14 mm +18 um/0";
        break;
    case error_code::unit_missing: {
        say.quote(piece)
            << " has no unit, and may be inches or millimetres; allowed: a unit, or a size below 10 "
               "written as inches are, such as .500 or 1.250 or 1/2";
        offer_inches(say, whole, f.piece);
        break;
    }
    case error_code::count_or_class: {
        say.quote(piece)
            << " may be a count or a class; allowed: a blank that tells, '12 x6' for the class, '12x 6 H7' for a count";
        break;
    }
    case error_code::class_missing:
        say << "a size alone has no limits; allowed: a class such as H7, deviations such as +0.018/0, or two limits";
        break;
    case error_code::class_alone_wanted:
        say.quote(piece) << " is not part of a class; allowed here: a class alone, such as H7";
        break;
    case error_code::letter_not_used:
        say.quote(piece) << " is not a letter of ISO 286";
        say_allowed_letters(say);
        break;
    case error_code::letter_case_mixed: {
        const auto hole = letters_in_case(f.piece, side::hole);
        const auto shaft = letters_in_case(f.piece, side::shaft);
        say.quote(piece) << " mixes capitals and small letters; allowed: " << hole.view() << " for a hole, "
                         << shaft.view() << " for a shaft";
        break;
    }
    case error_code::grade_missing:
        say.quote(piece) << " has no grade; allowed: 01, 0, 1 to 18 straight behind the letter, as in H7";
        break;
    case error_code::grade_not_known:
        say.quote(piece) << " is not a grade; allowed: 01, 0, 1 to 18";
        if (const text rest = without_leading_zero(f.piece); !rest.empty()) offer(say, whole, f.piece, rest);
        break;
    case error_code::blank_inside_a_class: {
        say.quote(piece) << " has a blank between letter and grade; allowed: none there";
        fixed_text<16> joined;
        for (const char c : f.piece)
            if (is_letter(static_cast<unsigned char>(c)) || is_digit(static_cast<unsigned char>(c)))
                joined << text(&c, 1);
        if ((f.piece[0] | 0x20) != 'x') offer(say, whole, f.piece, joined.view()); // or it was a count
        break;
    }
    case error_code::thread_is_not_a_fit:
        say.quote(piece)
            << " is a thread; its tolerance is not in ISO 286 but in ISO 965; allowed: plain diameters and widths";
        break;
    case error_code::hole_wanted:
    case error_code::shaft_wanted: {
        const bool hole = f.code == error_code::hole_wanted;
        if (!f.other.empty()) {
            say.quote(piece) << " is a fit; allowed here: a " << (hole ? "hole" : "shaft") << " alone";
            break;
        }
        say.quote(piece) << (hole ? " is a shaft's class; allowed here: a hole's, in capitals"
                                  : " is a hole's class; allowed here: a shaft's, in small letters");
        offer(say, whole, f.piece, other_case(f.piece).view());
        break;
    }
    case error_code::fit_wanted:
        say.quote(piece) << " is one part only; allowed here: a fit, hole first, such as 12 H7/g6";
        break;
    case error_code::hole_and_shaft_swapped: {
        say.quote(piece) << " stands where the hole's class goes; allowed: the hole first, then the shaft";
        const text both(f.piece.begin(), static_cast<std::size_t>(f.other.end() - f.piece.begin()));
        fixed_text<16> swapped;
        offer(say, whole, both, (swapped << f.other << text("/") << f.piece).view());
        break;
    }
    case error_code::two_holes:
        say.quote(piece) << " is a second hole; allowed: one hole and one shaft, such as H7/g6";
        offer(say, whole, f.piece, other_case(f.piece).view());
        break;
    case error_code::two_shafts:
        say.quote(piece)
            << " is a shaft where the hole's class goes; allowed: one hole and one shaft, such as H7/g6";
        offer(say, whole, f.piece, other_case(f.piece).view());
        break;
    case error_code::deviation_missing:
        say << "a second deviation is missing behind ";
        say.quote(piece) << "; allowed: upper and lower, such as +0.018/0, or one with +/-";
        break;
    case error_code::deviation_without_sign:
        say.quote(piece) << " has no sign; allowed: a deviation with + or -, or 0";
        break;
    case error_code::two_signs:
        say.quote(piece) << " is two signs; allowed: one sign, or +/- for a deviation to either side";
        offer(say, whole, f.piece, "+/-");
        break;
    case error_code::deviations_swapped: {
        say.quote(piece) << " is the lower deviation; allowed: the upper first, then the lower";
        const text both(f.piece.begin(), static_cast<std::size_t>(f.other.end() - f.piece.begin()));
        fixed_text<48> swapped;
        if (both.size() < 40) offer(say, whole, both, (swapped << f.other << text("/") << f.piece).view());
        break;
    }
    case error_code::limits_crossed:
        say.quote(piece)
            << " leaves no tolerance; allowed: an upper limit above the lower, the smaller first where a dash stands between";
        break;
    case error_code::limits_too_far_apart:
        say.quote(piece)
            << " is more than twice the other limit; allowed: two limits of one size (a deviation has a sign)";
        break;
    default: say.quote(piece) << " is not allowed here"; break;
    }
    return placed_at(say, whole, f.piece.begin());
}

} // namespace fitwright::detail

#endif
