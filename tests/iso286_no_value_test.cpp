#include "support/both.hpp"
#include "support/iso286_reference.hpp"
#include "support/short_names.hpp"

#include <doctest/doctest.h>

// What an error says where ISO 286-1 has no value: what was asked, and what is allowed.

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;
using enum fitwright::position;

namespace {

std::string message(const error& e) { return e.message(); }

bool contains(const error& e, std::string_view piece) { return message(e).find(piece) != std::string::npos; }

/// Passes if the message has all the pieces, in this order.
void expect_pieces(const error& e, std::initializer_list<std::string_view> pieces) {
    const std::string words = message(e);
    std::size_t from = 0;
    for (const std::string_view piece : pieces) {
        CAPTURE(words);
        CAPTURE(std::string(piece));
        const std::size_t found = words.find(piece, from);
        CHECK(found != std::string::npos);
        if (found != std::string::npos) from = found + piece.size();
    }
}

} // namespace

TEST_CASE("a class that the standard has at other sizes") {
    expect_pieces(limits(10_mm, hole(t, 7)).error(),
                  {"ISO 286-1 has no T7 at 10 mm", "T7", "above 24 mm up to 3150 mm"});
    expect_pieces(limits(14_mm, shaft(v, 6)).error(), {"no v6 at 14 mm", "v6", "above 14 mm up to 500 mm"});
    expect_pieces(limits(18_mm, shaft(y, 6)).error(), {"no y6 at 18 mm", "y6", "above 18 mm up to 500 mm"});
    expect_pieces(limits(60_mm, shaft(cd, 6)).error(), {"no cd6 at 60 mm", "cd6", "up to 50 mm"});
    expect_pieces(limits(50.000001_mm, hole(ef, 9)).error(),
                  {"no EF9 at 50.000001 mm", "EF9", "up to 50 mm"});
    expect_pieces(limits(501_mm, shaft(a, 11)).error(),
                  {"no a11 at 501 mm", "a11", "above 1 mm up to 500 mm"});
    expect_pieces(limits(800_mm, hole(zc, 8)).error(), {"no ZC8 at 800 mm", "ZC8", "up to 500 mm"});
    expect_pieces(limits(630_mm, hole(h, 0)).error(), {"no H0 at 630 mm", "H0", "up to 500 mm", "H1 to H18"});
    expect_pieces(limits(1000_mm, hole(j, 7)).error(), {"no J7 at 1000 mm", "J7", "up to 500 mm"});
    expect_pieces(
        limits(30_mm, hole(k, 9)).error(),
        {"no K9 at 30 mm", "K9", "up to 3 mm", "above 500 mm up to 3150 mm", "at this size", "K3 to K8"});
}

TEST_CASE("a class that the standard has at no size") {
    expect_pieces(limits(25_mm, hole(j, 9)).error(),
                  {"no J9 at 25 mm", "J9", "at no size", "at this size", "J6 to J8"});
    expect_pieces(limits(25_mm, shaft(j, 4)).error(),
                  {"no j4 at 25 mm", "j4", "at no size", "at this size", "j5 to j7"});
    expect_pieces(limits(25_mm, shaft(j, 8)).error(),
                  {"no j8 at 25 mm", "j8", "up to 3 mm", "at this size", "j5 to j7"});
}

TEST_CASE("the finest grades of holes with delta") {
    expect_pieces(limits(25_mm, hole(p, 2)).error(),
                  {"no P2 at 25 mm", "P2", "up to 3 mm", "above 500 mm", "at this size", "P3 to P18"});
    expect_pieces(limits(25_mm, hole(m, 1)).error(), {"no M1 at 25 mm", "M1", "at this size", "M3 to M18"});
    expect_pieces(limits(25_mm, hole(zc, 0)).error(), {"no ZC0 at 25 mm", "ZC0", "ZC3 to ZC18"});
}

TEST_CASE("classes that are not to be used up to and including 1 mm") {
    expect_pieces(limits(1_mm, shaft(a, 9)).error(), {"no a9 at 1 mm", "a9", "above 1 mm up to 500 mm"});
    expect_pieces(limits(0.8_mm, hole(b, 11)).error(),
                  {"no B11 at 0.8 mm", "B11", "above 1 mm up to 500 mm"});
    expect_pieces(limits(1_mm, hole(n, 9)).error(),
                  {"no N9 at 1 mm", "N9", "above 1 mm up to 3150 mm", "at this size", "N8"});
    expect_pieces(limits(1_mm, hole(h, 14)).error(),
                  {"no H14 at 1 mm", "H14", "above 1 mm up to 3150 mm", "at this size", "H01 to H13"});
}

TEST_CASE("sizes outside the standard") {
    expect_pieces(limits(0_mm, hole(h, 7)).error(), {"0 mm", "above 0 mm"});
    expect_pieces(limits(-12.5_mm, hole(h, 7)).error(), {"-12.5 mm", "above 0 mm"});
    expect_pieces(limits(3150.000001_mm, shaft(g, 6)).error(),
                  {"3150.000001 mm", "up to and including 3150 mm"});
    expect_pieces(limits(4000_mm, shaft(g, 6)).error(), {"4000 mm", "up to and including 3150 mm"});
    expect_pieces(standard_tolerance(4000_mm, grade::it7).error(),
                  {"4000 mm", "up to and including 3150 mm"});
    expect_pieces(standard_tolerance(-1_mm, grade::it7).error(), {"-1 mm", "above 0 mm"});
}

TEST_CASE("standard tolerances that the standard hasn't") {
    expect_pieces(standard_tolerance(630_mm, grade::it01).error(),
                  {"no IT01 at 630 mm", "IT01", "up to 500 mm"});
    expect_pieces(standard_tolerance(500.1_mm, grade::it0).error(),
                  {"no IT0 at 500.1 mm", "IT0", "up to 500 mm"});
    expect_pieces(standard_tolerance(1_mm, grade::it14).error(), {"no IT14 at 1 mm", "IT14", "above 1 mm"});
    expect_pieces(standard_tolerance(0.5_mm, grade::it18).error(),
                  {"no IT18 at 0.5 mm", "IT18", "above 1 mm"});
    expect_pieces(standard_tolerance(12_mm, grade(19)).error(),
                  {"no such standard tolerance grade", "IT01", "IT18"});
    expect_pieces(limits(12_mm, hole(h, 19)).error(), {"no such standard tolerance grade", "IT01", "IT18"});
}

TEST_CASE("the same words while compiling") {
    FITWRIGHT_CHECK_BOTH(limits(given(10_mm), given(hole(t, 7))).error().code() ==
                         error_code::no_value_in_standard);
    FITWRIGHT_CHECK_BOTH(limits(given(10_mm), given(hole(t, 7))).error().message().find("no T7 at 10 mm") !=
                         text::npos);
    FITWRIGHT_CHECK_BOTH(
        limits(given(10_mm), given(hole(t, 7))).error().message().find("above 24 mm up to 3150 mm") !=
        text::npos);
    FITWRIGHT_CHECK_BOTH(limits(given(10_mm), given(hole(t, 7))).error().column() == 0);
    FITWRIGHT_CHECK_BOTH(limits(given(10_mm), given(hole(t, 7))).error().byte_column() == 0);
    FITWRIGHT_CHECK_BOTH(
        standard_tolerance(given(600_mm), given(grade::it0)).error().message().find("no IT0 at 600 mm") !=
        text::npos);
}

namespace {

/// The error of a class at a size; none where it has limits.
std::optional<error> error_of(length size, position letter, grade g, side part) {
    if (part == side::hole) {
        const auto hole = limits(size, hole_class{letter, g});
        return hole ? std::optional<error>() : hole.error();
    }
    const auto shaft = limits(size, shaft_class{letter, g});
    return shaft ? std::optional<error>() : shaft.error();
}

/// Does the list of sizes in a message hold a size? "T7 above 24 mm up to 3150 mm and above …; …".
bool lists(const std::string& sizes, std::int64_t mm) {
    std::size_t from = 0;
    while (from != std::string::npos) {
        const std::size_t end = sizes.find(" and", from);
        const std::string stretch = sizes.substr(from, end - from);
        const std::size_t above = stretch.find("above ");
        const std::size_t upto = stretch.find("up to ");
        const std::int64_t over = above == std::string::npos ? 0 : std::stoll(stretch.substr(above + 6));
        if (upto != std::string::npos && over < mm && mm <= std::stoll(stretch.substr(upto + 6))) return true;
        from = end == std::string::npos ? end : end + 4;
    }
    return false;
}

} // namespace

// Whatever a message says is allowed, is: this reads the message back.
TEST_CASE("every class without a value, at every size: a whole message that names it, and tells the truth") {
    const iso286_reference reference = read_iso286(FITWRIGHT_TEST_DATA);
    REQUIRE(reference.fault == "");
    int without_value = 0;
    std::size_t longest = 0;
    for (int letter = 0; letter < position_count; ++letter) {
        for (int step = 0; step < grade::count; ++step) {
            for (const side part : {side::hole, side::shaft}) {
                const auto p = static_cast<position>(letter);
                const grade g = grade::from_step(step);
                const std::string name = class_name(p, g, part);
                std::vector<bool> has_value;
                std::vector<std::pair<length, error>> errors;
                for (const deviation_row& row : reference.shafts) {
                    const length upper_end = length::from_nanometres(row.step.upto);
                    const length lower_end = length::from_nanometres(row.step.over + 1);
                    const auto at_upper_end = error_of(upper_end, p, g, part);
                    has_value.push_back(!at_upper_end);
                    if (at_upper_end) errors.push_back({upper_end, *at_upper_end});
                    if (const auto e = error_of(lower_end, p, g, part)) errors.push_back({lower_end, *e});
                }
                for (const auto& [size, e] : errors) {
                    ++without_value;
                    const std::string words = message(e);
                    longest = (std::max)(longest, words.size());
                    const std::string begin = "ISO 286-1 has no " + name + " at " +
                                              std::string(written(size)) + " mm; allowed: " + name + " ";
                    if (e.code() != error_code::no_value_in_standard || words.size() >= error::capacity ||
                        words.find(begin) != 0) {
                        FAIL_CHECK(words);
                        continue;
                    }
                    const std::string sizes =
                        words.substr(begin.size(), words.find(';', begin.size()) - begin.size());
                    for (std::size_t i = 0; i < has_value.size(); ++i) {
                        const std::int64_t mm = reference.shafts[i].step.upto / 1'000'000;
                        if (lists(sizes, mm) != has_value[i]) FAIL_CHECK("not true of ", mm, " mm: ", words);
                    }
                }
            }
        }
    }
    CHECK(without_value > 20'000);
    CHECK(longest < error::capacity);
    MESSAGE(without_value, " messages, the longest has ", longest, " of ", error::capacity, " characters");
}

TEST_CASE("the grades that the message lists at this size are those that have a value") {
    // List them again from the outside: "; at this size P3 to P18".
    for (const length size : {0.9_mm, 2_mm, 25_mm, 400_mm, 501_mm, 3150_mm}) {
        for (int letter = 0; letter < position_count; ++letter) {
            const auto p = static_cast<position>(letter);
            for (int g = 0; g < grade::count; ++g) {
                const auto asked = limits(size, hole_class{p, grade::from_step(g)});
                if (asked) continue;
                std::string wanted;
                for (int first = 0; first < grade::count; ++first) {
                    const auto has = [&](int i) {
                        return i < grade::count &&
                               limits(size, hole_class{p, grade::from_step(i)}).has_value();
                    };
                    if (!has(first)) continue;
                    int last = first;
                    while (has(last + 1)) ++last;
                    wanted += wanted.empty() ? "; at this size " : ", ";
                    wanted += class_name(p, grade::from_step(first), side::hole);
                    if (last > first) wanted += " to " + class_name(p, grade::from_step(last), side::hole);
                    first = last;
                }
                if (!wanted.empty() && !contains(asked.error(), wanted))
                    FAIL_CHECK(message(asked.error()), " lacks ", wanted);
                if (wanted.empty() && contains(asked.error(), "at this size"))
                    FAIL_CHECK(message(asked.error()));
            }
        }
    }
}
