#include "support/both.hpp"
#include "support/csv.hpp"
#include "support/iso286_reference.hpp"
#include "support/short_names.hpp"
#include <fitwright/iso286.hpp>

#include <doctest/doctest.h>

#include <set>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;
using enum fitwright::position;

namespace {

std::string words(const class_pair& pair) {
    return class_name(pair.hole.position, pair.hole.grade, side::hole) + "/" +
           class_name(pair.shaft.position, pair.shaft.grade, side::shaft);
}

} // namespace

// ISO 286-1:2010, figures of the preferred fits; the hole-basis half read in print, the other from memory.
TEST_CASE("preferred fits, every pair in the order of the figures") {
    csv_table table = read_csv(FITWRIGHT_TEST_DATA "/preferred_fits.csv");
    REQUIRE(table.fault == "");
    REQUIRE(table.rows.size() == 83);
    const auto hole_basis = preferred_fits(basis::hole);
    const auto shaft_basis = preferred_fits(basis::shaft);
    REQUIRE(hole_basis.size() == 45);
    REQUIRE(shaft_basis.size() == 38);
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const bool is_hole_basis = table.cell(i, "system") == "hole";
        CHECK(is_hole_basis == (i < 45));
        const class_pair pair = i < 45 ? hole_basis[i] : shaft_basis[i - 45];
        CHECK(words(pair) == table.cell(i, "fit"));
        CHECK((is_hole_basis ? pair.hole.position : pair.shaft.position) == h);

        // The figure puts each fit under clearance, transition or interference. At the smallest and at
        // the largest sizes some fits cross into the column beside theirs; at 50 mm none does.
        const auto at_50_mm = limits(50_mm, pair);
        REQUIRE(at_50_mm);
        CAPTURE(words(pair));
        CHECK(in_words(at_50_mm->kind()) == table.cell(i, "column_in_figure"));
    }
}

TEST_CASE("no pair is listed twice, and each has limits at ordinary sizes") {
    for (const basis b : {basis::hole, basis::shaft}) {
        std::set<std::string> seen;
        for (const class_pair& pair : preferred_fits(b)) {
            CHECK(seen.insert(words(pair)).second);
            for (const length size : {1.5_mm, 12_mm, 25_mm, 120_mm, 500_mm}) {
                const bool t_below_24_mm =
                    size <= 24_mm && (pair.hole.position == t || pair.shaft.position == t);
                CHECK(limits(size, pair).has_value() == !t_below_24_mm);
            }
        }
    }
}

// ISO 286-1:2010, figures of the preferred tolerance classes, from memory.
TEST_CASE("preferred classes") {
    std::set<std::string> holes;
    std::set<std::string> shafts;
    for (const hole_class& c : preferred_hole_classes())
        CHECK(holes.insert(class_name(c.position, c.grade, side::hole)).second);
    for (const shaft_class& c : preferred_shaft_classes())
        CHECK(shafts.insert(class_name(c.position, c.grade, side::shaft)).second);
    CHECK(holes.size() == preferred_hole_classes().size());
    CHECK(shafts.size() == preferred_shaft_classes().size());
    for (const char* framed : {"G7", "H7", "JS7", "K7", "N7", "P7", "R7", "S7", "F8", "H8", "E9", "H9", "D10",
                               "A11", "B11", "C11", "H11"})
        CHECK(holes.contains(framed));
    for (const char* framed : {"g6", "h6", "js6", "k6", "n6", "p6", "r6", "s6", "f7", "h7", "e8", "d9", "h9",
                               "a11", "b11", "c11", "h11"})
        CHECK(shafts.contains(framed));
    CHECK(!holes.contains("CD7"));
    CHECK(!shafts.contains("zc11"));
}

TEST_CASE("pairs compare, and say where they come from") {
    FITWRIGHT_CHECK_BOTH(given(class_pair{hole(h, 7), shaft(g, 6)}) == preferred_fits(basis::hole)[8]);
    FITWRIGHT_CHECK_BOTH(given(class_pair{hole(h, 7), shaft(g, 5)}) != preferred_fits(basis::hole)[8]);
    static_assert(sources::preferred_hole_basis.how_sure == confidence::published);
    static_assert(sources::preferred_shaft_basis.how_sure == confidence::memory);
    static_assert(std::is_trivially_copyable_v<class_pair>);
}
