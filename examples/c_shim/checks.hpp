#ifndef FITWRIGHT_C_SHIM_CHECKS_HPP
#define FITWRIGHT_C_SHIM_CHECKS_HPP

#include "fitwright_c.h"

#include <cstddef>
#include <cstdint>
#include <initializer_list>

// What the caller may have got wrong: looked at before anything is worked out.

namespace fitwright::c_shim {

/// What is wrong with an argument: its name, what it is, what is allowed. Put into words only if asked for.
struct fault {
    std::int32_t number = FITWRIGHT_OK;
    const char* argument = "";
    std::int64_t is = 0;
    const char* allowed = "";

    explicit operator bool() const noexcept { return number != FITWRIGHT_OK; }
};

inline fault first_of(std::initializer_list<fault> faults) noexcept {
    for (const fault& f : faults)
        if (f) return f;
    return {};
}

inline fault check_there(const void* pointer, const char* argument) noexcept {
    if (pointer != nullptr) return {};
    return {FITWRIGHT_NULL_POINTER, argument, 0, "a pointer to what the caller owns"};
}

template <class Struct> fault check_struct(const Struct* s, const char* argument) noexcept {
    if (const fault f = check_there(s, argument)) return f;
    if (s->version != FITWRIGHT_C_VERSION)
        return {FITWRIGHT_STRUCT_VERSION, argument, s->version, "a version of 1"};
    if (s->size != sizeof(Struct))
        return {FITWRIGHT_STRUCT_SIZE, argument, s->size, "the size that fitwright_sizeof_ gives for it"};
    return {};
}

/// The one pointer that may be null: whoever wants no words has no struct for them.
inline fault check_error(const fitwright_error* e) noexcept {
    return e == nullptr ? fault() : check_struct(e, "error");
}

inline fault check_text(const char* first, std::size_t length) noexcept {
    return length == 0 ? fault() : check_there(first, "text");
}

inline fault check_buffer(const char* buffer, std::size_t capacity) noexcept {
    return capacity == 0 ? fault() : check_there(buffer, "buffer");
}

inline fault check_number(std::int64_t number, std::int64_t first, std::int64_t last, const char* argument,
                          const char* allowed) noexcept {
    if (first <= number && number <= last) return {};
    return {FITWRIGHT_NUMBER_UNKNOWN, argument, number, allowed};
}

inline fault check_how(std::uint32_t how) noexcept {
    return check_number(how, 0, FITWRIGHT_DECIMAL_COMMA, "how", "0 and FITWRIGHT_DECIMAL_COMMA");
}

inline fault check_unit(std::int32_t unit) noexcept {
    return check_number(unit, FITWRIGHT_MM, FITWRIGHT_THOU, "unit", "FITWRIGHT_MM to FITWRIGHT_THOU");
}

inline fault check_series(std::int32_t series) noexcept {
    return check_number(series, FITWRIGHT_METRIC, FITWRIGHT_LETTER, "series",
                        "FITWRIGHT_METRIC to FITWRIGHT_LETTER");
}

/// Sums of a few lengths up to here are still lengths.
constexpr std::int64_t longest = 1'000'000'000'000'000;

inline fault check_length(std::int64_t nm, const char* argument) noexcept {
    if (-longest <= nm && nm <= longest) return {};
    return {FITWRIGHT_LENGTH_TOO_LONG, argument, nm, "-10^15 to 10^15 nm"};
}

inline fault check_uncertainty(std::int64_t nm) noexcept {
    return check_number(nm, 0, longest, "uncertainty_nm", "0 to 10^15 nm");
}

inline fault check_limits(const fitwright_limits* l, const char* argument) noexcept {
    if (const fault f = check_struct(l, argument)) return f;
    const fault f = first_of({check_number(l->part, FITWRIGHT_HOLE, FITWRIGHT_SHAFT, "part of the limits",
                                           "FITWRIGHT_HOLE and FITWRIGHT_SHAFT"),
                              check_length(l->nominal_nm, "nominal_nm"),
                              check_length(l->lower_limit_nm, "lower_limit_nm"),
                              check_length(l->upper_limit_nm, "upper_limit_nm")});
    if (f || l->lower_limit_nm <= l->upper_limit_nm) return f;
    return {FITWRIGHT_LIMITS_CROSSED, "upper_limit_nm", l->upper_limit_nm, "the lower limit and above"};
}

inline fault check_hole(const fitwright_limits* l, const char* argument) noexcept {
    const fault f = check_limits(l, argument);
    if (f || l->part == FITWRIGHT_HOLE) return f;
    return {FITWRIGHT_HOLE_WANTED, "part of the limits", l->part, "FITWRIGHT_HOLE here"};
}

inline fault check_shaft(const fitwright_limits* l, const char* argument) noexcept {
    const fault f = check_limits(l, argument);
    if (f || l->part == FITWRIGHT_SHAFT) return f;
    return {FITWRIGHT_SHAFT_WANTED, "part of the limits", l->part, "FITWRIGHT_SHAFT here"};
}

inline fault check_measured(const fitwright_measured* m, const char* argument) noexcept {
    if (const fault f = check_struct(m, argument)) return f;
    return first_of({check_length(m->reading_nm, "reading_nm"), check_uncertainty(m->uncertainty_nm)});
}

inline fault check_offset(const fitwright_offset* o) noexcept {
    if (const fault f = check_struct(o, "offset")) return f;
    return first_of(
        {check_number(o->across, FITWRIGHT_RADIUS, FITWRIGHT_DIAMETER, "across",
                      "FITWRIGHT_RADIUS and FITWRIGHT_DIAMETER"),
         check_number(o->sense, FITWRIGHT_LARGER_MAKES_LARGER, FITWRIGHT_LARGER_MAKES_SMALLER, "sense",
                      "FITWRIGHT_LARGER_MAKES_LARGER and FITWRIGHT_LARGER_MAKES_SMALLER"),
         check_length(o->increment_nm, "increment_nm"),
         check_length(o->largest_change_nm, "largest_change_nm")});
}

} // namespace fitwright::c_shim

#endif
