#include "../support/csv.hpp"
#include "run.hpp"

#include <doctest/doctest.h>

using namespace fitwright_tests;

namespace {

const std::string header =
    "callout,part,nominal_mm,lower_deviation_um,upper_deviation_um,lower_limit_mm,upper_limit_mm,error,column\n";
const std::string one_hole = "12 H7,hole,12,0,18,12.000,12.018,,\n";

} // namespace

TEST_CASE("good and bad call-outs, every line answered") {
    const outcome o = run("", golden("callouts.txt"));
    CHECK(o.status == 1);
    CHECK(o.err == "");
    CHECK(difference(o.out, golden("callouts.csv")) == "");
}

TEST_CASE("the deviations of the published tables") {
    csv_table table = read_csv(FITWRIGHT_TEST_DATA "/class_limits.csv");
    REQUIRE(table.fault == "");
    std::string asked;
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        const std::string tolerance_class = table.cell(row, "class");
        const std::string size = table.cell(row, "upto_mm");
        asked += size + ' ' + tolerance_class + '\n';
    }
    const outcome o = run("", asked);
    CHECK(o.status == 0);

    std::size_t row = 0;
    std::size_t wrong = 0;
    std::string_view rest = o.out;
    rest.remove_prefix(header.size());
    for (; !rest.empty() && row < table.rows.size(); ++row) {
        const std::string_view line = rest.substr(0, rest.find('\n'));
        rest.remove_prefix(line.size() + 1);
        const auto cells = csv_cells(line);
        REQUIRE(cells.size() == 9);
        const bool same = scaled(cells[3], 3) == scaled(table.cell(row, "lower_um"), 3) &&
                          scaled(cells[4], 3) == scaled(table.cell(row, "upper_um"), 3);
        if (!same) ++wrong;
        if (!same) CHECK_MESSAGE(same, std::string(line));
    }
    CHECK(row == table.rows.size());
    CHECK(rest.empty());
    CHECK(wrong == 0);
}

TEST_CASE("all good is 0, misuse is 2") {
    CHECK(run("", "12 H7\n").status == 0);
    CHECK(run("").out == header);
    CHECK(run("").status == 0);
    CHECK(run("--help").status == 0);
    CHECK(run("--decimal-coma").status == 2);
    CHECK(run("12H7").status == 2);
}

TEST_CASE("line ends") {
    CHECK(run("", "12 H7").out == header + one_hole);
    CHECK(run("", "12 H7\r\n12 H7\r\n").out == header + one_hole + one_hole);
    CHECK(run("", "12 H7\r").out == header + one_hole);

    const outcome empty_line = run("", "12 H7\n\n12 H7\n");
    CHECK(empty_line.status == 1);
    CHECK(empty_line.out.starts_with(header + one_hole + ",,,,,,,"));
    CHECK(empty_line.out.ends_with(one_hole));
}

TEST_CASE("a decimal comma where it is asked for") {
    CHECK(run("", "12,5 H7\n").status == 1);
    const outcome o = run("--decimal-comma", "12,5 H7\n12.5 H7\n");
    CHECK(o.status == 0);
    CHECK(o.out ==
          header + "\"12,5 H7\",hole,12.5,0,18,12.500,12.518,,\n12.5 H7,hole,12.5,0,18,12.500,12.518,,\n");
}

TEST_CASE("a line longer than any buffer") {
    const std::string endless(3'000'000, '7');
    const outcome o = run("", "12 H7\n" + endless + "\n12 H7\n");
    CHECK(o.status == 1);
    CHECK(o.out.starts_with(header + one_hole + endless + ",,,,,,,"));
    CHECK(o.out.ends_with(one_hole));
}

TEST_CASE("bytes that no CSV should have") {
    using namespace std::string_view_literals;
    const outcome o = run("", "12\0H7\n\xFF\xC3\xA9\x80\n\x1B[2J\n12\rH7\n"sv);
    const std::string replaced = "\xEF\xBF\xBD";
    CHECK(o.status == 1);
    CHECK(o.out.starts_with(header + "\"12" + replaced + "H7\",,"));
    CHECK(o.out.find("\n\"" + replaced + "\xC3\xA9" + replaced + "\",,") != std::string::npos);
    CHECK(o.out.find("\n\"" + replaced + "[2J\",,") != std::string::npos);
    CHECK(o.out.find("\n\"12\rH7\",,") != std::string::npos);
    CHECK(o.out.find('\0') == std::string::npos);
}

TEST_CASE("output that can't be written") {
    if (!std::ifstream("/dev/full")) return; // no such device here
    CHECK(std::system("echo 12 H7 | '" FITWRIGHT_PROGRAM "' > /dev/full 2> /dev/null") != 0);
}
