#include "support/both.hpp"
#include <fitwright/text.hpp>

#include <doctest/doctest.h>

#include <cstdint>
#include <limits>
#include <sstream>
#include <string>
#include <string_view>
#include <type_traits>

using namespace fitwright;
using namespace fitwright_tests;

namespace {

template <std::size_t Capacity, class... Pieces> constexpr fixed_text<Capacity> composed(Pieces... pieces) {
    fixed_text<Capacity> t;
    (void)(t << ... << pieces);
    return t;
}

} // namespace

TEST_CASE("a look at characters") {
    FITWRIGHT_CHECK_BOTH(text("H7").size() == 2);
    FITWRIGHT_CHECK_BOTH(text().empty());
    FITWRIGHT_CHECK_BOTH(text("").empty());
    FITWRIGHT_CHECK_BOTH(!given(text("H7")).empty());
    FITWRIGHT_CHECK_BOTH(given(text("H7"))[1] == '7');
    FITWRIGHT_CHECK_BOTH(text("H7/g6", 2) == "H7");
    FITWRIGHT_CHECK_BOTH(given(text("H7")) == text("H7"));
    FITWRIGHT_CHECK_BOTH(given(text("H7")) != text("h7"));
    FITWRIGHT_CHECK_BOTH(given(text("H7")) != text("H70"));
    FITWRIGHT_CHECK_BOTH(given(text("H7")) == std::string_view("H7"));
    FITWRIGHT_CHECK_BOTH(std::string_view("H7") == given(text("H7")));
    FITWRIGHT_CHECK_BOTH(text("a\0b", 3).size() == 3);
    CHECK(text("H7") == std::string("H7"));
    static_assert(std::is_trivially_copyable_v<text>);
    int characters = 0;
    for (const char c : text("12 H7")) characters += c != '\0';
    CHECK(characters == 5);
}

TEST_CASE("it turns into the standard's strings") {
    constexpr std::string_view view = text("H7/g6");
    static_assert(view == "H7/g6");
    const std::string string = text("H7/g6");
    CHECK(string == "H7/g6");
    static_assert(std::is_convertible_v<text, std::string_view>);
    static_assert(!std::is_convertible_v<text, int>);
}

TEST_CASE("finding") {
    FITWRIGHT_CHECK_BOTH(given(text("12 H7/g6")).find("H7") == 3);
    FITWRIGHT_CHECK_BOTH(given(text("12 H7/g6")).find("12") == 0);
    FITWRIGHT_CHECK_BOTH(given(text("12 H7/g6")).find("6") == 7);
    FITWRIGHT_CHECK_BOTH(given(text("12 H7/g6")).find("P7") == text::npos);
    FITWRIGHT_CHECK_BOTH(given(text("12")).find("12 H7") == text::npos);
    FITWRIGHT_CHECK_BOTH(given(text("12")).find("") == 0);
    FITWRIGHT_CHECK_BOTH(given(text()).find("") == 0);
    FITWRIGHT_CHECK_BOTH(given(text("aab")).find("ab") == 1);
}

TEST_CASE("a stream takes it") {
    std::ostringstream out;
    out << text("12 ") << text("H7/g6", 2) << composed<10>(text("/g6"));
    CHECK(out.str() == "12 H7/g6");
}

TEST_CASE("text with characters of its own") {
    FITWRIGHT_CHECK_BOTH(composed<10>(text("12 "), text("H7")) == "12 H7");
    FITWRIGHT_CHECK_BOTH(composed<10>(text("12 "), text("H7")).size() == 5);
    FITWRIGHT_CHECK_BOTH(!composed<10>(text("12 "), text("H7")).is_cut());
    FITWRIGHT_CHECK_BOTH(composed<5>(text("12 "), text("H7")) == "12 H7");
    FITWRIGHT_CHECK_BOTH(!composed<5>(text("12 "), text("H7")).is_cut());
    FITWRIGHT_CHECK_BOTH(composed<4>(text("12 "), text("H7")) == "12 H");
    FITWRIGHT_CHECK_BOTH(composed<4>(text("12 "), text("H7")).is_cut());
    FITWRIGHT_CHECK_BOTH(composed<4>(text("12 "), text("")).size() == 3);
    FITWRIGHT_CHECK_BOTH(fixed_text<4>().size() == 0);
    FITWRIGHT_CHECK_BOTH(composed<3>(text("abc")).view().data()[3] == '\0'); // a zero follows, even when full
    static_assert(std::is_trivially_copyable_v<fixed_text<239>>);
    const std::string string = composed<10>(text("H7"));
    CHECK(string == "H7");
    constexpr auto kept = composed<10>(text("H7"));
    static_assert(std::string_view(kept) == "H7");
}

TEST_CASE("numbers") {
    FITWRIGHT_CHECK_BOTH(composed<30>(given(std::int64_t{0})) == "0");
    FITWRIGHT_CHECK_BOTH(composed<30>(given(std::int64_t{3150})) == "3150");
    FITWRIGHT_CHECK_BOTH(composed<30>(given(std::int64_t{-7})) == "-7");
    FITWRIGHT_CHECK_BOTH(composed<30>(given(std::numeric_limits<std::int64_t>::max())) ==
                         "9223372036854775807");
    FITWRIGHT_CHECK_BOTH(composed<30>(given(std::numeric_limits<std::int64_t>::lowest())) ==
                         "-9223372036854775808");
}

TEST_CASE("it is cut at the end of a character, never inside one") {
    // UTF-8: the micro sign has two bytes, the diameter sign three, a domino four.
    constexpr text micro = "\xC2\xB5", diameter = "\xE2\x8C\x80", domino = "\xF0\x9F\x81\xA1";
    FITWRIGHT_CHECK_BOTH(composed<3>(text("12"), given(micro)) == "12");
    FITWRIGHT_CHECK_BOTH(composed<3>(text("12"), given(micro)).is_cut());
    FITWRIGHT_CHECK_BOTH(composed<4>(text("12"), given(micro)) == "12\xC2\xB5");
    FITWRIGHT_CHECK_BOTH(composed<3>(text("1"), given(diameter)) == "1");
    FITWRIGHT_CHECK_BOTH(composed<3>(given(diameter)) == diameter);
    FITWRIGHT_CHECK_BOTH(composed<3>(given(domino)) == "");
    FITWRIGHT_CHECK_BOTH(composed<4>(given(domino)) == domino);

    // At every capacity: what is kept is a beginning of the whole, in whole characters.
    const std::string whole = "1\xC2\xB5m \xE2\x8C\x80\x31\x32 \xF0\x9F\x81\xA1\xC2\xB5";
    const auto check = [&]<std::size_t Capacity>(std::integral_constant<std::size_t, Capacity>) {
        const auto cut = composed<Capacity>(text(whole.data(), whole.size()));
        const std::string kept = cut;
        CHECK(kept.size() <= Capacity);
        CHECK(whole.compare(0, kept.size(), kept) == 0);
        CHECK(cut.is_cut() == (kept.size() < whole.size()));
        CHECK((kept.size() == whole.size() || (whole[kept.size()] & 0xC0) != 0x80));
        CHECK(kept.size() + 4 > (std::min)(Capacity, whole.size())); // and no more left out than a character
    };
    [&]<std::size_t... Capacities>(std::index_sequence<Capacities...>) {
        (check(std::integral_constant<std::size_t, Capacities + 1>()), ...);
    }
    (std::make_index_sequence<20>());
}
