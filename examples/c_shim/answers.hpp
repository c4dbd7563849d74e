#ifndef FITWRIGHT_C_SHIM_ANSWERS_HPP
#define FITWRIGHT_C_SHIM_ANSWERS_HPP

#include "checks.hpp"
#include "numbers.hpp"

// How a function ends: words into buffers and errors, results into the structs of the caller.

namespace fitwright::c_shim {

/// Everything zero but size and version.
template <class Struct> void make_ready(Struct& s) noexcept {
    s = Struct();
    s.size = sizeof s;
    s.version = FITWRIGHT_C_VERSION;
}

/// Copies what fits, up to the end of a character, and a zero. Returns the length of all of it.
inline std::int32_t copy(text from, char* buffer, std::size_t capacity) noexcept {
    if (capacity > 0) {
        std::size_t n = from.size() < capacity ? from.size() : capacity - 1;
        while (n < from.size() && n > 0 && (from[n] & 0xC0) == 0x80) --n;
        for (std::size_t i = 0; i < n; ++i) buffer[i] = from[i];
        buffer[n] = '\0';
    }
    return static_cast<std::int32_t>(from.size());
}

template <std::size_t Capacity> void copy(text from, char (&room)[Capacity]) noexcept {
    copy(from, room, Capacity);
}

/// "ISO 286-1:2010, Tables 1 to 5".
inline fixed_text<240> in_words(const source& s) noexcept {
    fixed_text<240> words;
    words << s.document;
    if (!s.place.empty()) words << text(", ") << s.place;
    return words;
}

inline std::int32_t end_well(fitwright_error* e, std::int32_t length = 0) noexcept {
    if (e != nullptr) make_ready(*e);
    return length;
}

inline std::int32_t tell(fitwright_error* e, std::int32_t number, const error& why) noexcept {
    if (e == nullptr) return number;
    make_ready(*e);
    e->code = number;
    e->column = why.column();
    e->byte_column = why.byte_column();
    e->message_size = static_cast<std::uint32_t>(why.message().size());
    if (const text offer = why.suggestion(); !offer.empty()) {
        e->suggestion_at = static_cast<std::uint32_t>(offer.data() - why.message().data());
        e->suggestion_size = static_cast<std::uint32_t>(offer.size());
    }
    copy(why.message(), e->message);
    return number;
}

inline std::int32_t fail(fitwright_error* e, const error& why) noexcept {
    return tell(e, number_of(why.code()), why);
}

inline std::int32_t fail(fitwright_error* e, const fault& f) noexcept {
    if (check_error(e)) return f.number;
    error::composer say(error_code::text_is_empty); // its code is not looked at
    say << "'" << f.argument << "' is ";
    switch (f.number) {
    case FITWRIGHT_NULL_POINTER: say << "a null pointer"; break;
    case FITWRIGHT_STRUCT_SIZE: say << "a struct whose size is given as " << f.is; break;
    case FITWRIGHT_STRUCT_VERSION: say << "a struct whose version is given as " << f.is; break;
    default: say << f.is; break;
    }
    return tell(e, f.number, say << "; allowed: " << f.allowed);
}

constexpr length from(std::int64_t nm) noexcept { return length::from_nanometres(nm); }

inline text given(const char* first, std::size_t length) noexcept {
    return length == 0 ? text() : text(first, length);
}

inline reading_options options(std::uint32_t how) noexcept {
    return {.decimal_comma = (how & FITWRIGHT_DECIMAL_COMMA) != 0};
}

template <side Side> size_limits<Side> from(const fitwright_limits& l) noexcept {
    const length nominal = from(l.nominal_nm);
    return {nominal, {.upper = from(l.upper_limit_nm) - nominal, .lower = from(l.lower_limit_nm) - nominal}};
}

/// Calls `use` with the limits as those of the part they belong to.
template <class Use> auto as_its_part(const fitwright_limits& l, Use use) noexcept {
    return l.part == FITWRIGHT_HOLE ? use(from<side::hole>(l)) : use(from<side::shaft>(l));
}

inline void put_source(const source& from, fitwright_limits& to) noexcept {
    to.confidence = number_of(from.how_sure);
    copy(in_words(from).view(), to.source);
}

template <side Side> void put_sizes(const size_limits<Side>& from, fitwright_limits& to) noexcept {
    to.part = number_of(Side == side::hole ? callout_part::hole : callout_part::shaft);
    to.nominal_nm = from.nominal().nanometres();
    to.lower_limit_nm = from.lower_limit().nanometres();
    to.upper_limit_nm = from.upper_limit().nanometres();
}

template <side Side> void put(const size_limits<Side>& from, fitwright_limits& to) noexcept {
    make_ready(to);
    put_sizes(from, to);
    put_source(from.origin(), to);
}

/// The same limits on another grid: from the source they came from.
template <side Side>
inline void put_rounded(const size_limits<Side>& rounded, const fitwright_limits& from,
                        fitwright_limits& to) noexcept {
    to = from;
    put_sizes(rounded, to);
    to.source[sizeof to.source - 1] = '\0'; // the caller may have filled it in
}

inline void put(const drill_size& from, const source& origin, fitwright_drill& to) noexcept {
    make_ready(to);
    to.series = number_of(from.series);
    to.confidence = number_of(origin.how_sure);
    to.diameter_nm = from.diameter.nanometres();
    copy(from.name().view(), to.name);
    copy(in_words(origin).view(), to.source);
}

template <class Flag> std::uint32_t bits_of(flags<Flag> set) noexcept {
    std::uint32_t bits = 0;
    set.for_each([&](Flag flag) { bits |= static_cast<std::uint32_t>(flag); });
    return bits;
}

template <side Side> void put(const limit_gauge<Side>& from, fitwright_gauge& to) noexcept {
    make_ready(to);
    to.go_lower_nm = from.go.lower_limit().nanometres();
    to.go_upper_nm = from.go.upper_limit().nanometres();
    to.not_go_lower_nm = from.not_go.lower_limit().nanometres();
    to.not_go_upper_nm = from.not_go.upper_limit().nanometres();
    to.worn_nm = from.worn.nanometres();
    to.take_care = bits_of(from.take_care);
    to.confidence = number_of(from.go.origin().how_sure);
    copy(in_words(from.go.origin()).view(), to.source);
}

inline void put(const callout& from, fitwright_callout& to) noexcept {
    make_ready(to);
    const auto part_number = [](callout_part part) -> std::int32_t {
        switch (part) {
        case callout_part::hole: return FITWRIGHT_HOLE;
        case callout_part::shaft: return FITWRIGHT_SHAFT;
        case callout_part::fit: return FITWRIGHT_FIT;
        case callout_part::either: return FITWRIGHT_EITHER;
        }
        return 0;
    };
    to.part = part_number(from.part);
    to.unit = number_of(from.unit);
    to.count = from.notes.count;
    to.notes = (from.notes.diameter_sign ? FITWRIGHT_DIAMETER_SIGN : 0) |
               (from.notes.through ? FITWRIGHT_THROUGH : 0) |
               (from.notes.has_depth ? FITWRIGHT_HAS_DEPTH : 0) |
               (from.notes.hole_envelope ? FITWRIGHT_HOLE_ENVELOPE : 0) |
               (from.notes.shaft_envelope ? FITWRIGHT_SHAFT_ENVELOPE : 0);
    to.nominal_nm = from.nominal().nanometres();
    to.depth_nm = from.notes.depth.nanometres();
    const bool has_shaft = from.part != callout_part::hole;
    const bool has_hole = from.part != callout_part::shaft;
    if (from.has_classes && has_hole) copy(written(from.hole_class).view(), to.hole_class);
    if (from.has_classes && has_shaft) copy(written(from.shaft_class).view(), to.shaft_class);
    if (from.has_inch_fit) copy(name(from.inch_class), to.inch_fit);
}

} // namespace fitwright::c_shim

#endif
