#ifndef FITWRIGHT_CALLOUT_READER_HPP
#define FITWRIGHT_CALLOUT_READER_HPP

#include <fitwright/callout/callout.hpp>
#include <fitwright/callout/fault.hpp>
#include <fitwright/callout/number.hpp>
#include <fitwright/callout/scan.hpp>
#include <fitwright/callout/tolerance_class.hpp>
#include <fitwright/iso286/limits.hpp>

namespace fitwright {

/// What the caller allows beyond the strict rule.
struct reading_options {
    bool decimal_comma = false; ///< `12,5` is 12.5; the point stays allowed, separators never are
};

namespace detail {

/// Reads one call-out, from left to right:
///
///     [count x] [diameter] size [unit] ( class [(E)] [/ class [(E)]] | deviations | / size | - size ) [notes]
///
/// Every step returns a fault or none, and leaves the scanner behind what it took.
class callout_reader {
public:
    constexpr callout_reader(text whole, reading_options options) noexcept
        : whole_(whole), options_(options), s_(whole.begin(), whole.end()) {}

    constexpr result<callout> read() noexcept {
        if (const fault f = read_all()) return in_words(f, whole_);
        if (no_value_ != no_value::none) return value_error();
        return made_;
    }

    /// For a call-out that was read, but speaks of another part than is wanted: the error that says so.
    [[nodiscard]] constexpr error other_part(error_code wanted) const noexcept {
        const text hole = hole_token_.piece;
        const text shaft = shaft_token_.piece;
        if (made_.has_inch_fit) return in_words({wanted, inch_token_, inch_token_}, whole_);
        if (made_.part == callout_part::fit) {
            const text both(hole.begin(), static_cast<std::size_t>(shaft.end() - hole.begin()));
            return in_words({wanted, both, shaft}, whole_);
        }
        if (made_.part == callout_part::either)
            return in_words({wanted, without_blanks_around(whole_), {}}, whole_);
        return in_words({wanted, made_.part == callout_part::hole ? hole : shaft, {}}, whole_);
    }

private:
    enum class no_value : std::uint8_t { none, for_hole, for_shaft, for_inch_class, for_inch_fit };

    struct written_number {
        number value;
        bool has_unit = false;
        written_unit unit = written_unit::mm;
        text unit_piece;
        bool below_zero = false;
    };

    constexpr fault read_all() noexcept {
        if (whole_.size() > longest_callout) {
            const char* cut = whole_.begin() + longest_callout;
            while (cut != whole_.begin() && (*cut & 0xC0) == 0x80) --cut;
            return {error_code::text_is_too_long, text(cut, 0), {}};
        }
        const char* const broken = first_not_utf8(whole_.begin(), whole_.end());
        if (broken != whole_.end()) return {error_code::text_is_not_utf8, text(broken, 1), {}};
        s_.skip_blanks();
        if (s_.at_end()) return {error_code::text_is_empty, text(whole_.begin(), 0), {}};

        if (const fault f = read_count()) return f;
        skip_diameter_sign();
        if (const fault f = read_size()) return f;
        if (const fault f = read_limits()) return f;
        return read_notes();
    }

    // ---- what stands before the size

    /// `2x`, `4X`, `2 x`; not `12 x6`, whose x6 is a class.
    constexpr fault read_count() noexcept {
        scanner ahead = s_;
        const text digits = ahead.take_digits();
        if (digits.empty()) return {};
        ahead.skip_blanks();
        const char32_t times = ahead.peek();
        if (times != U'x' && times != U'X' && times != 0x00D7) return {};
        ahead.next();
        ahead.skip_blanks();
        if (times != 0x00D7 && !a_size_to_be_counted_follows(ahead)) return count_or_class();
        if (digits[0] == '0' || digits.size() > 4) return {error_code::number_malformed, digits, {}};
        made_.notes.count = small_number(digits);
        s_ = ahead;
        return {};
    }

    /// `12x6` may be the shaft x6, or twelve of 6: only the blank in `12 x6` tells. `12x6/…` and whatever
    /// else is no count is left to be read as a class.
    [[nodiscard]] constexpr fault count_or_class() const noexcept {
        scanner ahead = s_;
        ahead.take_digits();
        ahead.next(); // a blank, or the x itself
        if (!is_digit(ahead.peek())) return {};
        ahead.take_digits();
        const text piece = ahead.since(s_.place());
        ahead.skip_blanks();
        const bool second_class = ahead.peek() == U'/' || is_minus(ahead.peek());
        if (second_class) return {};
        return {error_code::count_or_class, piece, {}};
    }

    /// Behind `12x`: is it a size, `12x 6 H7`, or a grade, `12 x6`? A grade is the last thing but for
    /// a second class and notes.
    static constexpr bool a_size_to_be_counted_follows(scanner ahead) noexcept {
        if (!is_digit(ahead.peek())) return !ahead.at_end();
        ahead.take_digits();
        if (ahead.peek() == U'.') return true;
        ahead.skip_blanks();
        const char32_t next = ahead.peek();
        if (next == no_more || next == 0x24BA || next == 0x21A7) return false;
        scanner word = ahead;
        if (word.skip_word("THRU") || word.skip_word("DEPTH")) return false;
        if (next != U'/' && next != U'(' && !is_minus(next)) return true;
        ahead.next();
        ahead.skip_blanks();
        return !is_letter(ahead.peek());
    }

    constexpr void skip_diameter_sign() noexcept {
        bool found = false;
        if (is_diameter_sign(s_.peek())) {
            s_.next();
            found = true;
        } else {
            found = s_.skip_word("DIA") || s_.skip_word("Dia") || s_.skip_word("dia");
            if (!found && s_.peek() == U'D') { // but D10 alone is a class that lacks its size
                scanner ahead = s_;
                ahead.next();
                const bool blank = ahead.skip_blanks();
                ahead.take_digits();
                const bool class_alone = !blank && (ahead.skip_blanks(), ahead.at_end());
                found = !class_alone && s_.skip_word("D");
            }
        }
        made_.notes.diameter_sign = found;
        if (found) s_.skip_blanks();
    }

    // ---- the size

    constexpr fault read_size() noexcept {
        const char* const from = s_.place();
        const char32_t c = s_.peek();
        if (s_.at_end()) return {error_code::size_missing, text(from, 0), {}};
        if (is_minus(c) || c == U'+') {
            s_.next();
            if (!is_digit(s_.peek()) && !is_letter(s_.peek()) && s_.peek() != U'.')
                return {error_code::size_missing, s_.since(from), {}};
            while (is_digit(s_.peek()) || is_letter(s_.peek()) || s_.peek() == U'.') s_.next();
            const auto code = c == U'+' ? error_code::number_malformed : error_code::size_not_above_zero;
            return {code, s_.since(from), {}};
        }
        if (is_letter(c)) return read_word_for_size();
        if (!is_digit(c) && c != U'.') {
            number n;
            scanner ahead = s_;
            if (!skip_built_up_fraction(ahead, n)) return unexpected();
        }
        if (const fault f = read_number(s_, size_.value, options_.decimal_comma, true)) return f;
        if (size_.value.is_zero()) return {error_code::size_not_above_zero, size_.value.piece, {}};
        return read_unit(size_);
    }

    /// A letter where the size should be: a thread, a word for no number, or a class without size.
    constexpr fault read_word_for_size() noexcept {
        const char* const from = s_.place();
        const text word = s_.take_letters();
        scanner behind = s_;
        behind.skip_blanks();
        number pipe;
        const bool thread = ((word == "M" || word == "MJ" || word == "Tr") && is_digit(behind.peek())) ||
                            (word == "G" && skip_fraction(behind, pipe));
        if (thread) {
            s_.skip_blanks();
            while (!s_.at_end() && !is_blank(s_.peek())) s_.next();
            return {error_code::thread_is_not_a_fit, s_.since(from), {}};
        }
        char lowered[9] = {};
        for (std::size_t i = 0; i < word.size() && i < 8; ++i) lowered[i] = static_cast<char>(word[i] | 0x20);
        const text lower(lowered);
        if (lower == "nan" || lower == "inf" || lower == "infinity")
            return {error_code::size_not_a_number, word, {}};
        s_.take_digits();
        return {error_code::size_missing, s_.since(from), {}};
    }

    /// A unit behind a number, if there is one. A word that is no unit is left for a class to be read,
    /// unless it can't be one.
    constexpr fault read_unit(written_number& n) noexcept {
        scanner ahead = s_;
        ahead.skip_blanks();
        const char* const from = ahead.place();
        if (ahead.skip(U'"') || ahead.skip(0x2033)) {
            n.unit = written_unit::in;
        } else {
            const text word = ahead.take_letters();
            if (word.empty()) return {};
            if (is_digit(ahead.peek())) { // a class, unless a unit has grown onto it: `12mmH7`
                const bool grown =
                    word.size() > 2 && (text(word.data(), 2) == "mm" || text(word.data(), 2) == "in");
                return grown ? fault{error_code::unit_not_known, word, {}} : fault{};
            }
            if (word == "UNC" || word == "UNF" || word == "UNEF" || word == "UN")
                return {error_code::thread_is_not_a_fit, word, {}};
            if (word == "mm") n.unit = written_unit::mm;
            else if (word == "in" || word == "inch") n.unit = written_unit::in;
            else if (word == "thou") n.unit = written_unit::thousandth;
            else if (word == "nm") n.unit = written_unit::nm;
            else if (word == "um" || word == "\u00B5m" || word == "\u03BCm") n.unit = written_unit::um;
            else {
                const bool note = word == "THRU" || word == "THROUGH" || word == "DEPTH" || word == "E";
                if (is_inch_family(word)) return {};
                class_token letters;
                if (note || word.size() == 1 || !read_letters(word, letters)) return {};
                return {error_code::unit_not_known, word, {}};
            }
        }
        if (n.has_unit) return {error_code::unit_given_twice, ahead.since(from), {}};
        n.has_unit = true;
        n.unit_piece = ahead.since(from);
        s_ = ahead;
        return read_unit(n); // a second one is a fault
    }

    // ---- the limits

    constexpr fault read_limits() noexcept {
        const bool blank_before = s_.skip_blanks();
        const char32_t c = s_.peek();
        if (is_letter(c)) {
            scanner ahead = s_;
            if (ahead.skip_word("THRU") || ahead.skip_word("THROUGH") || ahead.skip_word("DEPTH"))
                return {error_code::class_missing, text(s_.place(), 0), {}};
            return inch_fit_follows() ? read_inch_fit() : read_classes();
        }
        if (s_.at_end() || c == 0x24BA || c == 0x21A7) {
            if (size_.value.is_fraction() && !size_.has_unit)
                return {error_code::fraction_without_inches, size_.value.piece, {}};
            return {error_code::class_missing, text(s_.place(), 0), {}};
        }
        if (c == U'/' || c == 0x2013) return read_second_limit();
        if (is_minus(c)) {
            scanner ahead = s_;
            ahead.next();
            const bool blank_behind = ahead.skip_blanks();
            return blank_before && !blank_behind ? read_deviations() : read_second_limit();
        }
        if (c == U'+' || c == 0x00B1 || c == U'(' || is_digit(c) || c == U'.') return read_deviations();
        return unexpected();
    }

    /// RC, LC, LT, LN, FN: no letters of ISO 286. In small letters too, to be refused by name.
    [[nodiscard]] static constexpr bool is_inch_family(text word) noexcept {
        if (word.size() != 2) return false;
        const auto family = letters_in_case(word, side::hole);
        return family == "RC" || family == "LC" || family == "LT" || family == "LN" || family == "FN";
    }

    [[nodiscard]] constexpr bool inch_fit_follows() const noexcept {
        scanner ahead = s_;
        return is_inch_family(ahead.take_letters());
    }

    /// A size without unit that is written as sizes in inches are: `.500`, `1.250`, `1/2`. ASME Y14.5
    /// leaves the zero off in inches only; `12` and `12.5` may as well be millimetres.
    [[nodiscard]] static constexpr bool is_written_as_inches(const number& n) noexcept {
        const bool one_digit_before = n.piece.size() <= static_cast<std::size_t>(n.decimals) + 2;
        return n.is_fraction() || n.piece[0] == '.' || (n.decimals >= 3 && one_digit_before);
    }

    /// `1/2 in RC4`, `.500 RC4`: the fit is one of an inch standard.
    constexpr fault read_inch_fit() noexcept {
        const char* const from = s_.place();
        s_.take_letters();
        s_.take_digits();
        inch_token_ = s_.since(from);
        const auto read = read_inch_fit_class(inch_token_);
        if (!read) {
            no_value_ = no_value::for_inch_class;
            s_ = scanner(whole_.end(), whole_.end()); // there is nothing to say about the rest
            return {};
        }
        if (!size_.has_unit && !is_written_as_inches(size_.value))
            return {error_code::unit_missing, size_.value.piece, inch_token_};
        made_.unit = size_.has_unit ? size_.unit : written_unit::in;
        if (const fault f = to_length(size_.value, made_.unit, nominal_)) return f;
        made_.part = callout_part::fit;
        made_.has_inch_fit = true;
        made_.inch_class = *read;
        const bool envelope = skip_envelope();
        made_.notes.hole_envelope = made_.notes.shaft_envelope = envelope;
        if (const auto found = inch_fit(*read, nominal_)) {
            made_.hole = found->hole();
            made_.shaft = found->shaft();
        } else {
            no_value_ = no_value::for_inch_fit;
        }
        return {};
    }

    constexpr fault read_classes() noexcept {
        class_token first;
        if (const fault f = read_class(s_, first)) return f;
        made_.has_classes = true;
        const bool first_envelope = skip_envelope();

        scanner ahead = s_;
        ahead.skip_blanks();
        const bool second_follows = ahead.skip(U'/') || (is_minus(ahead.peek()) && (ahead.next(), true));
        if (!second_follows) {
            if (const fault f = number_with_exponent(first)) return f;
            return take_one_class(first, first_envelope);
        }
        ahead.skip_blanks();
        s_ = ahead;
        if (!is_letter(s_.peek())) return unexpected();
        class_token second;
        if (const fault f = read_class(s_, second)) return f;
        if (first.side == side::shaft && second.side == side::hole)
            return {error_code::hole_and_shaft_swapped, first.piece, second.piece};
        if (first.side == second.side) {
            if (first.side == side::hole) return {error_code::two_holes, second.piece, {}};
            return {error_code::two_shafts, first.piece, {}};
        }
        const bool last_envelope = skip_envelope();
        made_.notes.hole_envelope = first_envelope || last_envelope;
        made_.notes.shaft_envelope = last_envelope;
        return take_two_classes(first, second);
    }

    /// `1e3 H7`: nobody means the shaft e3 there.
    constexpr fault number_with_exponent(const class_token& c) noexcept {
        const bool e = c.position == position::e && c.piece.begin() == size_.value.piece.end();
        scanner ahead = s_;
        ahead.skip_blanks();
        if (!e || !is_letter(ahead.peek())) return {};
        const char* const from = size_.value.piece.begin();
        return {error_code::number_malformed, text(from, static_cast<std::size_t>(c.piece.end() - from)), {}};
    }

    constexpr fault take_one_class(const class_token& c, bool envelope) noexcept {
        length nominal;
        if (const fault f = to_length(size_.value, size_.unit, nominal)) return f;
        made_.unit = size_.unit;
        if (c.side == side::hole) {
            made_.part = callout_part::hole;
            made_.notes.hole_envelope = envelope;
            take_hole(nominal, c);
        } else {
            made_.part = callout_part::shaft;
            made_.notes.shaft_envelope = envelope;
            take_shaft(nominal, c);
        }
        return {};
    }

    constexpr fault take_two_classes(const class_token& hole, const class_token& shaft) noexcept {
        length nominal;
        if (const fault f = to_length(size_.value, size_.unit, nominal)) return f;
        made_.unit = size_.unit;
        made_.part = callout_part::fit;
        take_hole(nominal, hole);
        take_shaft(nominal, shaft);
        return {};
    }

    constexpr void take_hole(length nominal, const class_token& c) noexcept {
        nominal_ = nominal;
        hole_token_ = c;
        made_.hole_class = {c.position, c.grade};
        if (const auto found = limits(nominal, made_.hole_class)) made_.hole = *found;
        else no_value_ = no_value::for_hole;
    }

    constexpr void take_shaft(length nominal, const class_token& c) noexcept {
        nominal_ = nominal;
        shaft_token_ = c;
        made_.shaft_class = {c.position, c.grade};
        if (const auto found = limits(nominal, made_.shaft_class)) made_.shaft = *found;
        else if (no_value_ == no_value::none) no_value_ = no_value::for_shaft;
    }

    /// The tables have no answer: said of the size if that is outside them, else of the class.
    [[nodiscard]] constexpr error value_error() const noexcept {
        if (no_value_ == no_value::for_inch_class)
            return placed_at(read_inch_fit_class(inch_token_).error(), whole_, inch_token_.begin());
        if (no_value_ == no_value::for_inch_fit) {
            const error e = inch_fit(made_.inch_class, nominal_).error();
            const bool of_the_size = e.code() == error_code::size_out_of_range;
            return placed_at(e, whole_, of_the_size ? size_.value.piece.begin() : inch_token_.begin());
        }
        const bool hole = no_value_ == no_value::for_hole;
        const error e =
            hole ? limits(nominal_, made_.hole_class).error() : limits(nominal_, made_.shaft_class).error();
        const bool of_the_size = e.code() == error_code::size_out_of_range;
        const text of_the_class = hole ? hole_token_.piece : shaft_token_.piece;
        return placed_at(e, whole_, of_the_size ? size_.value.piece.begin() : of_the_class.begin());
    }

    /// `14.000-14.018`, `7.978/7.986`, `7.986/7.978`.
    constexpr fault read_second_limit() noexcept {
        const bool dash = s_.peek() != U'/';
        s_.next();
        s_.skip_blanks();
        if (!is_digit(s_.peek()) && s_.peek() != U'.') return unexpected();
        written_number second;
        if (const fault f = read_number(s_, second.value, options_.decimal_comma, true)) return f;
        if (const fault f = read_unit(second)) return f;
        if (size_.has_unit && second.has_unit && size_.unit != second.unit)
            return {error_code::unit_given_twice, second.unit_piece, {}};
        const written_unit u = size_.has_unit ? size_.unit : second.unit;
        length a;
        length b;
        if (const fault f = to_length(size_.value, u, a)) return f;
        if (const fault f = to_length(second.value, u, b)) return f;
        if (b == a || (dash && b < a)) return {error_code::limits_crossed, second.value.piece, {}};
        if (b > a * 2 || a > b * 2)
            return {error_code::limits_too_far_apart, b > a ? second.value.piece : size_.value.piece, {}};
        made_.unit = u;
        const stated_limits both = a < b ? between(a, b) : between(b, a);
        return take_limits(both, both);
    }

    constexpr fault take_limits(const hole_limits& hole, const shaft_limits& shaft) noexcept {
        made_.part = callout_part::either;
        made_.hole = hole;
        made_.shaft = shaft;
        return {};
    }

    /// `+0.018 0`, `+0.018/0`, `(+0.018 / 0)`, a single one behind a plus-or-minus.
    constexpr fault read_deviations() noexcept {
        const bool bracket = s_.skip(U'(');
        if (bracket) s_.skip_blanks();
        written_number upper;
        written_number lower;
        if (skip_plus_or_minus()) {
            s_.skip_blanks();
            if (!is_digit(s_.peek()) && s_.peek() != U'.') return unexpected();
            if (const fault f = read_number(s_, upper.value, options_.decimal_comma, false)) return f;
            if (const fault f = read_unit(upper)) return f;
            lower = upper;
            lower.below_zero = true;
        } else {
            if (const fault f = read_deviation(upper)) return f;
            s_.skip_blanks();
            s_.skip(U'/');
            s_.skip_blanks();
            const char32_t c = s_.peek();
            const bool second = is_digit(c) || c == U'.' || c == U'+' || is_minus(c);
            if (!second) return {error_code::deviation_missing, upper.value.piece, {}};
            if (const fault f = read_deviation(lower)) return f;
        }
        if (bracket) {
            s_.skip_blanks();
            if (!s_.skip(U')')) return unexpected();
        }
        return take_deviations(upper, lower);
    }

    constexpr bool skip_plus_or_minus() noexcept {
        if (s_.skip(0x00B1)) return true;
        scanner ahead = s_;
        if (!ahead.skip(U'+') || !ahead.skip(U'/') || !is_minus(ahead.peek())) return false;
        ahead.next();
        s_ = ahead;
        return true;
    }

    /// A deviation with its sign, or 0. Its piece takes in the sign.
    constexpr fault read_deviation(written_number& d) noexcept {
        const char* const from = s_.place();
        const bool minus = is_minus(s_.peek());
        const bool has_sign = minus || s_.peek() == U'+';
        if (has_sign) s_.next();
        if (has_sign && (is_minus(s_.peek()) || s_.peek() == U'+')) {
            s_.next();
            return {error_code::two_signs, s_.since(from), {}};
        }
        if (!is_digit(s_.peek()) && s_.peek() != U'.') return unexpected();
        if (const fault f = read_number(s_, d.value, options_.decimal_comma, false)) return f;
        d.value.piece = s_.since(from);
        d.below_zero = minus;
        if (!has_sign && !d.value.is_zero()) return {error_code::deviation_without_sign, d.value.piece, {}};
        return read_unit(d);
    }

    /// Each number's unit: its own; for the first deviation else that of the second; for both else
    /// that of the size. A size without one takes mm or in from the deviations, but is never taken to
    /// be 14 um or 14 thou for their sake.
    constexpr fault take_deviations(const written_number& upper, const written_number& lower) noexcept {
        if (upper.has_unit && !lower.has_unit && !lower.value.is_zero())
            return {error_code::unit_ambiguous, upper.unit_piece, {}};
        const bool have_unit = upper.has_unit || lower.has_unit;
        const written_number& last = lower.has_unit ? lower : upper;
        written_unit of_size = size_.unit;
        if (!size_.has_unit && have_unit) {
            if (last.unit != written_unit::mm && last.unit != written_unit::in)
                return {error_code::unit_ambiguous, last.unit_piece, {}};
            if (upper.has_unit && upper.unit != last.unit)
                return {error_code::unit_ambiguous, last.unit_piece, {}};
            of_size = last.unit;
        }
        const written_unit of_lower = have_unit ? last.unit : of_size;
        const written_unit of_upper = upper.has_unit ? upper.unit : of_lower;

        length nominal;
        deviations d;
        if (const fault f = to_length(size_.value, of_size, nominal)) return f;
        if (const fault f = to_length(upper.value, of_upper, d.upper)) return f;
        if (const fault f = to_length(lower.value, of_lower, d.lower)) return f;
        if (upper.below_zero) d.upper = -d.upper;
        if (lower.below_zero) d.lower = -d.lower;
        if (d.upper < d.lower) return {error_code::deviations_swapped, upper.value.piece, lower.value.piece};
        if (d.upper == d.lower) return {error_code::limits_crossed, lower.value.piece, {}};
        if (nominal + d.lower <= length()) return {error_code::size_not_above_zero, lower.value.piece, {}};
        made_.unit = of_size;
        return take_limits(hole_limits(nominal, d), shaft_limits(nominal, d));
    }

    // ---- what stands behind

    /// The envelope requirement, ISO 14405-1: a circled E or (E).
    constexpr bool skip_envelope() noexcept {
        scanner ahead = s_;
        ahead.skip_blanks();
        const bool found = ahead.skip(0x24BA) || (ahead.skip(U'(') && ahead.skip(U'E') && ahead.skip(U')'));
        if (found) s_ = ahead;
        return found;
    }

    constexpr fault read_notes() noexcept {
        for (;;) {
            s_.skip_blanks();
            if (s_.at_end()) return {};
            callout_notes& notes = made_.notes;
            const bool envelope_known = notes.hole_envelope || notes.shaft_envelope;
            if (!envelope_known && made_.part == callout_part::either && skip_envelope()) {
                notes.hole_envelope = notes.shaft_envelope = true;
                continue;
            }
            if (!notes.through && (s_.skip_word("THRU") || s_.skip_word("THROUGH"))) {
                notes.through = true;
                continue;
            }
            if (!notes.has_depth && (s_.skip(0x21A7) || s_.skip_word("DEPTH"))) {
                if (const fault f = read_depth()) return f;
                continue;
            }
            return unexpected();
        }
    }

    constexpr fault read_depth() noexcept {
        s_.skip_blanks();
        written_number depth;
        if (!is_digit(s_.peek()) && s_.peek() != U'.')
            return {error_code::size_missing, text(s_.place(), 0), {}};
        if (const fault f = read_number(s_, depth.value, options_.decimal_comma, true)) return f;
        if (depth.value.is_zero()) return {error_code::size_not_above_zero, depth.value.piece, {}};
        if (const fault f = read_unit(depth)) return f;
        made_.notes.has_depth = true;
        return to_length(depth.value, depth.has_unit ? depth.unit : made_.unit, made_.notes.depth);
    }

    /// Something that has no place here: a character no call-out has, or a rest that is left over.
    [[nodiscard]] constexpr fault unexpected() const noexcept {
        const text rest(s_.place(), static_cast<std::size_t>(whole_.end() - s_.place()));
        const char32_t c = s_.peek();
        const bool known = is_letter(c) || is_digit(c) || c == U'/' || c == U'(' || c == U')' || c == U'.' ||
                           c == U'+' || is_minus(c);
        if (c == no_more) return {error_code::ends_too_soon, rest, {}};
        if (known) return {error_code::something_left_over, rest, {}};
        return {error_code::character_not_allowed, rest, {}};
    }

    text whole_;
    reading_options options_;
    scanner s_;
    written_number size_;
    class_token hole_token_;
    class_token shaft_token_;
    text inch_token_;
    callout made_;
    length nominal_;
    no_value no_value_ = no_value::none;
};

} // namespace detail

} // namespace fitwright

#endif
