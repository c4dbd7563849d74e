#include "support/both.hpp"
#include <fitwright/error.hpp>
#include <fitwright/limits.hpp>

#include <doctest/doctest.h>

#include <string>
#include <type_traits>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

constexpr error bad_letter() {
    error::composer say(error_code::letter_not_used);
    say << "the letter ";
    say.quote("Q") << " is not used; write ";
    say.begin_suggestion() << "P" << std::int64_t{7};
    say.end_suggestion();
    return say;
}

constexpr result<length> halved(length l) {
    if (l.nanometres() % 2 == 0) return l / 2;
    return bad_letter();
}

constexpr result<length> good = 12_mm;
constexpr result<length> bad = bad_letter();

} // namespace

TEST_CASE("an error is put together of pieces") {
    FITWRIGHT_CHECK_BOTH(bad_letter().code() == error_code::letter_not_used);
    FITWRIGHT_CHECK_BOTH(bad_letter().message() == "the letter 'Q' is not used; write 'P7'");
    FITWRIGHT_CHECK_BOTH(bad_letter().piece() == "Q");
    FITWRIGHT_CHECK_BOTH(bad_letter().suggestion() == "P7");
    FITWRIGHT_CHECK_BOTH(bad_letter().column() == 0);
    FITWRIGHT_CHECK_BOTH(bad_letter().byte_column() == 0);
    FITWRIGHT_CHECK_BOTH(error(error::composer(error_code::two_holes) << "two holes").piece().empty());
    FITWRIGHT_CHECK_BOTH(error(error::composer(error_code::two_holes) << "two holes").suggestion().empty());
}

TEST_CASE("an error may be placed in a text") {
    FITWRIGHT_CHECK_BOTH(bad_letter().placed(given(4u), given(5u)).column() == 4);
    FITWRIGHT_CHECK_BOTH(bad_letter().placed(given(4u), given(5u)).byte_column() == 5);
    FITWRIGHT_CHECK_BOTH(bad_letter().placed(given(4u), given(5u)).message() == bad_letter().message());
    FITWRIGHT_CHECK_BOTH(bad_letter().placed(given(4u), given(5u)).piece() == "Q");
}

TEST_CASE("an error owns its words") {
    std::string words = "words that are gone by the time they are read";
    const error e = error::composer(error_code::text_is_empty) << text(words.data(), words.size());
    const std::string before = words;
    words.assign(words.size(), 'x');
    CHECK(e.message() == before);
    const error copy = e;
    CHECK(copy.message() == before);
    CHECK(copy.message().data() != e.message().data());
    static_assert(std::is_trivially_copyable_v<error>);
}

TEST_CASE("a message that is too long is cut at the end of a character") {
    error::composer say(error_code::text_is_too_long);
    for (int i = 0; i < 100; ++i) say << "\xE2\x8C\x80"; // three bytes each
    const error e = say;
    CHECK(e.message().size() == error::capacity / 3 * 3);
    CHECK(e.message().size() <= error::capacity);

    error::composer piece(error_code::text_is_too_long);
    const std::string much(300, 'y');
    piece << "the piece ";
    piece.quote(text(much.data(), much.size())) << " is too long";
    const error cut = piece;
    CHECK(cut.message().size() == error::capacity);
    CHECK(cut.piece().size() == error::capacity - 11);
    CHECK(cut.message().data()[error::capacity] == '\0');
    CHECK(cut.suggestion().empty());
}

TEST_CASE("a result holds a value or an error") {
    FITWRIGHT_CHECK_BOTH(given(good).has_value());
    FITWRIGHT_CHECK_BOTH(static_cast<bool>(given(good)));
    FITWRIGHT_CHECK_BOTH(given(good).value() == 12_mm);
    FITWRIGHT_CHECK_BOTH(*given(good) == 12_mm);
    FITWRIGHT_CHECK_BOTH(given(good)->nanometres() == 12'000'000);
    FITWRIGHT_CHECK_BOTH(given(good).value_or(1_mm) == 12_mm);
    FITWRIGHT_CHECK_BOTH(!given(bad).has_value());
    FITWRIGHT_CHECK_BOTH(!given(bad));
    FITWRIGHT_CHECK_BOTH(given(bad).value_or(1_mm) == 1_mm);
    FITWRIGHT_CHECK_BOTH(given(bad).error().code() == error_code::letter_not_used);
    FITWRIGHT_CHECK_BOTH(given(bad).error().message().find("'Q'") != text::npos);
    static_assert(std::is_trivially_copyable_v<result<length>>);
    static_assert(std::is_trivially_copyable_v<result<hole_limits>>);
    static_assert(!std::is_convertible_v<result<length>, bool>);
    static_assert(std::is_same_v<result<length>::value_type, length> &&
                  std::is_same_v<result<length>::error_type, error>);
}

TEST_CASE("and_then goes on, or passes the error on") {
    FITWRIGHT_CHECK_BOTH(given(good).and_then(halved).value() == 6_mm);
    FITWRIGHT_CHECK_BOTH(given(good).and_then(halved).and_then(halved).value() == 3_mm);
    FITWRIGHT_CHECK_BOTH(given(bad).and_then(halved).error().code() == error_code::letter_not_used);
    FITWRIGHT_CHECK_BOTH(given(result<length>(1_nm)).and_then(halved).error().code() ==
                         error_code::letter_not_used);
    // Into another kind of result.
    FITWRIGHT_CHECK_BOTH(
        given(good).and_then([](length l) { return result<int>(l == 12_mm ? 12 : 0); }).value() == 12);
    // The next step isn't taken after an error.
    bool taken = false;
    (void)bad.and_then([&](length l) {
        taken = true;
        return result<length>(l);
    });
    CHECK(!taken);
}

TEST_CASE("transform makes another value, or passes the error on") {
    FITWRIGHT_CHECK_BOTH(given(good).transform([](length l) { return l * 2; }).value() == 24_mm);
    FITWRIGHT_CHECK_BOTH(given(good).transform([](length l) { return l.nanometres(); }).value() ==
                         12'000'000);
    FITWRIGHT_CHECK_BOTH(given(bad).transform([](length l) { return l * 2; }).error().code() ==
                         error_code::letter_not_used);
    static_assert(std::is_same_v<decltype(good.transform([](length) { return 1; })), result<int>>);
}

TEST_CASE("or_else goes on after an error") {
    FITWRIGHT_CHECK_BOTH(given(bad).or_else([](const error&) { return result<length>(1_mm); }).value() ==
                         1_mm);
    FITWRIGHT_CHECK_BOTH(given(good).or_else([](const error&) { return result<length>(1_mm); }).value() ==
                         12_mm);
    FITWRIGHT_CHECK_BOTH(
        given(bad).or_else([](const error& e) { return result<length>(e.placed(3, 3)); }).error().column() ==
        3);
    bool taken = false;
    (void)good.or_else([&](const error&) {
        taken = true;
        return result<length>(1_mm);
    });
    CHECK(!taken);
}

TEST_CASE("what a result that is about to go holds outlives it") {
    // A loop over `*f()` keeps what it loops over, not the result.
    static_assert(std::is_same_v<decltype(*result<length>(1_nm)), length>);
    static_assert(std::is_same_v<decltype(result<length>(1_nm).value()), length>);
    static_assert(std::is_same_v<decltype(result<length>(1_nm).error()), error>);
    const result<length> kept(1_nm);
    static_assert(std::is_same_v<decltype(*kept), const length&>);
    CHECK(*kept == 1_nm);
}
