#include "support/both.hpp"
#include <fitwright/callout.hpp>

#include <doctest/doctest.h>

#include <random>
#include <string>

// read_callout reads the plainest call-outs by a way of their own. It has to say of any text just what the
// reader of the whole rule says.

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

constexpr bool says_the_same(text whole, reading_options options = {}) {
    const auto got = read_callout(whole, options);
    const auto wanted = detail::callout_reader(whole, options).read();
    if (got.has_value() != wanted.has_value()) return false;
    if (!got)
        return got.error().code() == wanted.error().code() &&
               got.error().column() == wanted.error().column() &&
               got.error().message() == wanted.error().message();
    const bool same_sources =
        got->part == callout_part::shaft || &got->hole.origin() == &wanted->hole.origin();
    return *got == *wanted && same_sources;
}

constexpr bool is_plain(text whole) {
    callout made;
    return detail::read_plain(whole, made);
}

} // namespace

TEST_CASE("what is plain") {
    FITWRIGHT_CHECK_BOTH(is_plain(given(text("12 H7"))));
    FITWRIGHT_CHECK_BOTH(is_plain(given(text("12.345678 js6"))));
    FITWRIGHT_CHECK_BOTH(is_plain(given(text("3150 H7/g6"))));
    FITWRIGHT_CHECK_BOTH(is_plain(given(text("12 ZC11"))));
    for (const char* other : {"",         "12",       "12 ",       "12H7",          "12  H7",    " 12 H7",
                              "12 H7 ",   "12 mm H7", "12 q7",     "12 H",          "12 H19",    "12 H007",
                              "12 g6/H7", "12 H7/H6", "12 H7/",    "12 H7 /g6",     "12 H7-g6",  "012 H7",
                              "0.5 H7",   "12. H7",   "12,5 H7",   "12.3456789 H7", "99999 H7",  "3151 H7",
                              "12 K9",    "1 RC4",    "12 H7 (E)", "2x 12 H7",      "12 +0.1/0", "x"})
        CHECK_FALSE_MESSAGE(is_plain(other), other);
}

TEST_CASE("each of these is read as the whole rule has it") {
    FITWRIGHT_CHECK_BOTH(says_the_same(given(text("12 x6")))); // a class, not a count
    FITWRIGHT_CHECK_BOTH(says_the_same(given(text("12 X6"))));
    FITWRIGHT_CHECK_BOTH(says_the_same(given(text("1 E7"))));  // not 1e7
    FITWRIGHT_CHECK_BOTH(says_the_same(given(text("12 M6")))); // a class, not a thread
    FITWRIGHT_CHECK_BOTH(says_the_same(given(text("12 D10"))));
    FITWRIGHT_CHECK_BOTH(says_the_same(given(text("2 x6/H7"))));
    FITWRIGHT_CHECK_BOTH(says_the_same(given(text("12 in6"))));
    FITWRIGHT_CHECK_BOTH(says_the_same(given(text("12 \u00B56"))));
    FITWRIGHT_CHECK_BOTH(read_callout(given(text("12 H7/g6")))->part == callout_part::fit);
    FITWRIGHT_CHECK_BOTH(read_callout(given(text("12.5 g6")))->shaft == "12.5 g6"_shaft);
}

TEST_CASE("every letter, grade and some sizes, and what they look like when mistyped") {
    int plain = 0;
    for (const std::string size : {"1", "3", "12", "12.5", "480", "1000.25", "3150", "3151", "0", ".5"})
        for (char first = '@'; first <= 'z'; ++first)
            for (const std::string second : {"", "S", "s", "A", "c", "D", "x", "/"})
                for (const std::string grade :
                     {"", "0", "01", "1", "5", "6", "7", "8", "11", "18", "19", "007"})
                    for (const std::string rest : {"", "/g6", "/H7", "/", " "}) {
                        const std::string whole = size + ' ' + first + second + grade + rest;
                        if (!says_the_same(whole)) FAIL_CHECK(whole);
                        plain += is_plain(whole);
                    }
    CHECK(plain > 3'000);
}

TEST_CASE("any text at all") {
    std::mt19937 random(2047);
    const std::string characters[] = {"0", "1", "2",  "5",      "9",      "12",     ".",    ",",  " ",  " ",
                                      "/", "-", "+",  "H",      "h",      "G",      "g",    "J",  "S",  "js",
                                      "x", "X", "E",  "e",      "D",      "M",      "mm",   "in", "7",  "6",
                                      "(", ")", "\t", "\u2300", "\u00B5", "\u00D7", "\x80", "\"", "RC4"};
    for (int i = 0; i < 200'000; ++i) {
        std::string whole = i % 2 == 0 ? "1" : "";
        for (std::size_t n = random() % 9; n > 0; --n) whole += characters[random() % std::size(characters)];
        if (!says_the_same(whole)) FAIL_CHECK(whole);
        if (!says_the_same(whole, {.decimal_comma = true})) FAIL_CHECK(whole);
    }
}
