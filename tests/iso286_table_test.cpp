#include "support/iso286_checks.hpp"

#include <doctest/doctest.h>

// Every published value the tests know of, exactly. Where they were published: data/SOURCES.md.

using namespace fitwright_tests;

namespace {

const iso286_reference& reference() {
    static const iso286_reference read = read_iso286(FITWRIGHT_TEST_DATA);
    return read;
}

/// Passes if all of the `expected_number` comparisons that there should be were made and were right.
void report(const verdict& v, std::size_t expected_number) {
    CHECK(v.first_wrong == "");
    CHECK(v.wrong == 0);
    CHECK(v.compared == expected_number);
}

} // namespace

TEST_CASE("the published tables are there and whole") {
    REQUIRE(reference().fault == "");
    CHECK(reference().tolerances.front().step == size_step{0, 3'000'000});
    CHECK(reference().tolerances.back().step == size_step{2'500'000'000, 3'150'000'000});
    for (std::size_t i = 0; i < reference().shafts.size(); ++i) {
        CHECK(reference().shafts[i].step == reference().holes[i].step);
        if (i > 0) CHECK(reference().shafts[i].step.over == reference().shafts[i - 1].step.upto);
    }
    for (std::size_t i = 1; i < reference().tolerances.size(); ++i)
        CHECK(reference().tolerances[i].step.over == reference().tolerances[i - 1].step.upto);
}

TEST_CASE("a file that isn't there is a fault") {
    CHECK(read_csv(FITWRIGHT_TEST_DATA "/no_such_file.csv").fault != "");
    CHECK(read_iso286(FITWRIGHT_TEST_DATA "/no_such_folder").fault != "");
}

TEST_CASE("limit deviations of the classes of ISO 286-2, every row, at three sizes each") {
    REQUIRE(reference().fault == "");
    report(check_classes(reference(), thoroughness::everything), 7182 * 3);
}

TEST_CASE("standard tolerances, every cell of ISO 286-1 Table 1") {
    REQUIRE(reference().fault == "");
    report(check_standard_tolerances(reference(), thoroughness::everything), 21 * 20 * 3);
}

TEST_CASE("fundamental deviations of shafts, every cell of ISO 286-1 Tables 4 and 5, in every grade") {
    REQUIRE(reference().fault == "");
    report(check_deviations(reference(), side::shaft, thoroughness::everything), 41 * 28 * 20 * 3);
}

TEST_CASE("fundamental deviations of holes, every cell of ISO 286-1 Tables 2 and 3, in every grade") {
    REQUIRE(reference().fault == "");
    report(check_deviations(reference(), side::hole, thoroughness::everything), 41 * 28 * 20 * 3);
}

TEST_CASE("delta, every cell of ISO 286-1 Table 3: what a hole has over the mirrored shaft") {
    REQUIRE(reference().fault == "");
    std::size_t compared = 0;
    for (const delta_row& row : reference().deltas) {
        for (const length size : sizes_of(row.step)) {
            for (int it = 3; it <= 8; ++it) {
                // N takes delta up to IT8; up to 3 mm there is none, and the column reads 0.
                const auto hole = fitwright::limits(size, fitwright::hole_class{position::n, grade(it)});
                const auto shaft = fitwright::limits(size, fitwright::shaft_class{position::n, grade(it)});
                REQUIRE(hole);
                REQUIRE(shaft);
                const length delta = hole->upper_deviation() + shaft->lower_deviation();
                CAPTURE(size.nanometres());
                CAPTURE(it);
                CHECK(delta.nanometres() == row.delta[static_cast<std::size_t>(grade(it).step())]);
                ++compared;
            }
        }
    }
    CHECK(compared == 13 * 3 * 6);
}

TEST_CASE("the steps of sizes that the tables are laid out in") {
    REQUIRE(reference().fault == "");
    report(check_steps(reference()), 21 + 41 + 41);
}

TEST_CASE("steps are above their lower end, up to and including their upper end") {
    using fitwright::limits;
    const fitwright::hole_class bore_class{position::h, grade::it7};
    // ISO 286-2: H7 above 6 up to 10 mm is +15, above 10 up to 18 mm is +18.
    CHECK(limits(length::from_nanometres(10'000'000), bore_class)->upper_deviation().nanometres() == 15'000);
    CHECK(limits(length::from_nanometres(10'000'001), bore_class)->upper_deviation().nanometres() == 18'000);
    for (std::size_t i = 0; i + 1 < reference().tolerances.size(); ++i) {
        const tolerance_row& below = reference().tolerances[i];
        const tolerance_row& above = reference().tolerances[i + 1];
        const auto it7 = static_cast<std::size_t>(grade::it7.step());
        CHECK(limits(length::from_nanometres(below.step.upto), bore_class)->tolerance().nanometres() ==
              below.tolerance[it7]);
        CHECK(limits(length::from_nanometres(below.step.upto + 1), bore_class)->tolerance().nanometres() ==
              above.tolerance[it7]);
    }
}
