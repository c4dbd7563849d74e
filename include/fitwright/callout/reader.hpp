#ifndef FITWRIGHT_CALLOUT_READER_HPP
#define FITWRIGHT_CALLOUT_READER_HPP

#include <fitwright/callout/after_limits.hpp>
#include <fitwright/callout/bare_limits.hpp>
#include <fitwright/callout/before_size.hpp>
#include <fitwright/callout/callout.hpp>
#include <fitwright/callout/quantity.hpp>
#include <fitwright/iso286/limits.hpp>

namespace fitwright {

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

        if (const fault f = read_count(s_, made_.notes)) return f;
        skip_diameter_sign(s_, made_.notes);
        if (const fault f = read_size()) return f;
        if (const fault f = read_limits()) return f;
        return read_notes(s_, made_, options_);
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
            if (!skip_built_up_fraction(ahead, n)) return unexpected(s_);
        }
        if (const fault f = read_number(s_, size_.value, options_.decimal_comma, true)) return f;
        if (size_.value.is_zero()) return {error_code::size_not_above_zero, size_.value.piece, {}};
        return read_unit(s_, size_);
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
        if (c == U'/' || c == 0x2013) return read_second_limit(s_, size_, made_, options_);
        if (is_minus(c)) {
            scanner ahead = s_;
            ahead.next();
            const bool blank_behind = ahead.skip_blanks();
            return blank_before && !blank_behind ? read_deviations(s_, size_, made_, options_)
                                                 : read_second_limit(s_, size_, made_, options_);
        }
        if (c == U'+' || c == 0x00B1 || c == U'(' || is_digit(c) || c == U'.')
            return read_deviations(s_, size_, made_, options_);
        return unexpected(s_);
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
        const bool envelope = skip_envelope(s_);
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
        const bool first_envelope = skip_envelope(s_);

        scanner ahead = s_;
        ahead.skip_blanks();
        const bool second_follows = ahead.skip(U'/') || (is_minus(ahead.peek()) && (ahead.next(), true));
        if (!second_follows) {
            if (const fault f = number_with_exponent(first)) return f;
            return take_one_class(first, first_envelope);
        }
        ahead.skip_blanks();
        s_ = ahead;
        if (!is_letter(s_.peek())) return unexpected(s_);
        class_token second;
        if (const fault f = read_class(s_, second)) return f;
        if (first.side == side::shaft && second.side == side::hole)
            return {error_code::hole_and_shaft_swapped, first.piece, second.piece};
        if (first.side == second.side) {
            if (first.side == side::hole) return {error_code::two_holes, second.piece, {}};
            return {error_code::two_shafts, first.piece, {}};
        }
        const bool last_envelope = skip_envelope(s_);
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
