#ifndef FITWRIGHT_CALLOUT_READ_HPP
#define FITWRIGHT_CALLOUT_READ_HPP

#include <fitwright/callout/plain.hpp>
#include <fitwright/callout/reader.hpp>
#include <fitwright/iso286/preferred.hpp>

// From text to classes, limits and fits. The reader would rather fail than guess: an error names the
// rule, the column, the piece and what is allowed, and offers a spelling where there is one to offer.
// `text` takes a literal, a std::string_view or a std::string.

namespace fitwright {

namespace detail {

/// A class and nothing else but blanks around it.
template <side Side>
[[nodiscard]] constexpr result<tolerance_class<Side>> read_class_alone(text whole) noexcept {
    if (whole.size() > longest_callout)
        return in_words({error_code::text_is_too_long, text(whole.begin(), 0), {}}, whole);
    const char* const broken = first_not_utf8(whole.begin(), whole.end());
    if (broken != whole.end()) return in_words({error_code::text_is_not_utf8, text(broken, 1), {}}, whole);

    scanner s(whole.begin(), whole.end());
    s.skip_blanks();
    const auto rest = [&] { return text(s.place(), static_cast<std::size_t>(whole.end() - s.place())); };
    if (s.at_end()) return in_words({error_code::text_is_empty, rest(), {}}, whole);
    if (!is_letter(s.peek())) return in_words({error_code::class_alone_wanted, rest(), {}}, whole);
    class_token c;
    if (const fault f = read_class(s, c)) return in_words(f, whole);
    if (c.side != Side) {
        const auto wanted = Side == side::hole ? error_code::hole_wanted : error_code::shaft_wanted;
        return in_words({wanted, c.piece, {}}, whole);
    }
    s.skip_blanks();
    if (!s.at_end()) return in_words({error_code::class_alone_wanted, rest(), {}}, whole);
    return tolerance_class<Side>{c.position, c.grade};
}

} // namespace detail

/// Reads any call-out: `12 H7`, `⌀12 H7/g6 (E)`, `1/4 in H7`, `14 +0.018/0`, `7.978/7.986`, `2x 6 H7 THRU`,
/// `1/2 in RC4`.
/// Without a unit it is in millimetres (ISO 129-1), but in inches where the fit is an inch fit. Errors are about the text (with its column) or
/// those of `limits`.
[[nodiscard]] constexpr result<callout> read_callout(text written, reading_options options = {}) noexcept {
    callout plain;
    if (detail::read_plain(written, plain)) return plain;
    return detail::callout_reader(written, options).read();
}

/// Reads a hole: `12 H7`, or limits without a class. `12 h7` is an error that offers `12 H7`.
[[nodiscard]] constexpr result<hole_limits> read_hole(text written, reading_options options = {}) noexcept {
    detail::callout_reader reader(written, options);
    const auto read = reader.read();
    if (!read) return read.error();
    if (read->part == callout_part::hole || read->part == callout_part::either) return read->hole;
    return reader.other_part(error_code::hole_wanted);
}

/// Reads a shaft: `12 g6`, or limits without a class. `12 G6` is an error that offers `12 g6`.
[[nodiscard]] constexpr result<shaft_limits> read_shaft(text written, reading_options options = {}) noexcept {
    detail::callout_reader reader(written, options);
    const auto read = reader.read();
    if (!read) return read.error();
    if (read->part == callout_part::shaft || read->part == callout_part::either) return read->shaft;
    return reader.other_part(error_code::shaft_wanted);
}

/// Reads a fit: `12 H7/g6`.
[[nodiscard]] constexpr result<fit> read_fit(text written, reading_options options = {}) noexcept {
    detail::callout_reader reader(written, options);
    const auto read = reader.read();
    if (!read) return read.error();
    if (read->part == callout_part::fit) return fit(read->hole, read->shaft);
    return reader.other_part(error_code::fit_wanted);
}

/// The standard inch fit of that name at a nominal size: `inch_fit("RC4", 0.5_in)` (ANSI B4.1).
/// Error: a name that is none, `rc4` too; those of `inch_fit`.
[[nodiscard]] constexpr result<fit> inch_fit(text written, length nominal) noexcept {
    const auto read = read_inch_fit_class(written);
    if (!read) return read.error();
    return inch_fit(*read, nominal);
}

/// Reads a hole's class alone: `H7`.
[[nodiscard]] constexpr result<hole_class> read_hole_class(text written) noexcept {
    return detail::read_class_alone<side::hole>(written);
}

/// Reads a shaft's class alone: `g6`.
[[nodiscard]] constexpr result<shaft_class> read_shaft_class(text written) noexcept {
    return detail::read_class_alone<side::shaft>(written);
}

} // namespace fitwright

#endif
