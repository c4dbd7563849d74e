#ifndef FITWRIGHT_TESTS_SUPPORT_BOTH_HPP
#define FITWRIGHT_TESTS_SUPPORT_BOTH_HPP

#include <fitwright/length.hpp>
#include <fitwright/text.hpp>
#include <fitwright/written.hpp>

#include <doctest/doctest.h>

#include <type_traits>

/// Runs a case both in constant evaluation and at run time. Put `given()` around what goes in, or a
/// compiler that knows the operands works the second half out while compiling as well.
#define FITWRIGHT_CHECK_BOTH(...)                                                                            \
    do {                                                                                                     \
        static_assert(__VA_ARGS__);                                                                          \
        CHECK(__VA_ARGS__);                                                                                  \
    } while (false)

namespace fitwright_tests {

/// The same value, fetched through a pointer the compiler can't look behind.
template <class Value> Value fetched(Value value) noexcept {
    Value* volatile hidden = &value;
    return *hidden;
}

/// The value itself; at run time the compiler doesn't know it.
template <class Value> constexpr Value given(Value value) noexcept {
    if (std::is_constant_evaluated()) return value;
    return fetched(value);
}

/// Tells which of its two halves `FITWRIGHT_CHECK_BOTH` is in.
constexpr bool while_compiling() noexcept { return std::is_constant_evaluated(); }

} // namespace fitwright_tests

/// What a failed check shows of our values.
template <> struct doctest::StringMaker<fitwright::length> {
    static String convert(fitwright::length l) {
        return fitwright::written(l, {.unit = fitwright::written_unit::um}).view().data() + String(" um");
    }
};
template <> struct doctest::StringMaker<fitwright::text> {
    static String convert(fitwright::text t) { return String(t.data(), static_cast<unsigned>(t.size())); }
};
template <std::size_t Capacity> struct doctest::StringMaker<fitwright::fixed_text<Capacity>> {
    static String convert(const fitwright::fixed_text<Capacity>& t) { return t.view().data(); }
};

#endif
