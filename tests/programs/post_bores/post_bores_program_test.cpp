#include "../run.hpp"

#include <doctest/doctest.h>

#include <cstddef>
#include <filesystem>
#include <string>

using namespace fitwright_tests;

namespace {

const std::string jobs = FITWRIGHT_JOBS;
const std::string our_jobs = FITWRIGHT_HERE "/jobs";
const std::string bench = " --machine '" FITWRIGHT_JOBS "/bench_machine.toml'";

constexpr const char* header = "tag,x,y,z_top,depth,through,callout,process,material\n";

/// Runs a list of holes given as text.
outcome run_list(const std::string& list, const std::string& arguments = bench) {
    std::ofstream(work + "/list.csv", std::ios::binary) << list;
    return run("list.csv" + arguments);
}

/// The sheet of a list whose wrong holes are left out.
std::string sheet_of(const std::string& list, const std::string& arguments = bench) {
    run_list(list, arguments + " --keep-going --sheet sheet.csv");
    return file(work + "/sheet.csv");
}

bool has(const std::string& text, const std::string& piece) { return text.find(piece) != std::string::npos; }

} // namespace

TEST_CASE("the sheet of the pump block") {
    const outcome o =
        run("pump_block_holes.csv" + bench + " --program '{}/a.nc' --sheet '{}/a.csv'", {}, jobs);
    CHECK(o.status == 0);
    CHECK(o.out == "");
    CHECK(has(o.err, "simulator"));
    CHECK(has(o.err, "Dry run above the work"));
    CHECK(difference(file(work + "/a.csv"), golden("pump_block_sheet.csv")) == "");
    CHECK(difference(file(work + "/a.nc"), golden("pump_block.nc")) == "");
    CHECK(!std::filesystem::exists(work + "/a.nc.part"));
}

TEST_CASE("a list with every kind of error") {
    const std::string machine = " --machine '" + jobs + "/bench_machine.toml'";
    std::filesystem::remove(work + "/b.nc");
    SUBCASE("stops, and writes nothing") {
        const outcome o =
            run("bad_holes.csv" + machine + " --program '{}/b.nc' --sheet '{}/b.csv'", {}, our_jobs);
        CHECK(o.status == 1);
        CHECK(o.out == "");
        CHECK(has(o.err, "bad_holes.csv:2:21: 'h7' is a shaft's class"));
        CHECK(difference(o.err, golden("bad_holes.err")) == "");
        CHECK(!std::filesystem::exists(work + "/b.nc"));
        CHECK(!std::filesystem::exists(work + "/b.nc.part"));
    }
    SUBCASE("goes on if it is told to, and says so in both") {
        const outcome o = run("bad_holes.csv" + machine + " --keep-going --sheet '{}/b.csv'", {}, our_jobs);
        CHECK(o.status == 1);
        CHECK(difference(o.out, golden("bad_holes.nc")) == "");
        CHECK(difference(file(work + "/b.csv"), golden("bad_holes_sheet.csv")) == "");
        CHECK(has(o.out, "(HOLE A IS LEFT OUT: LINE 2 OF THE LIST, SEE THE SHEET)"));
        CHECK(!has(o.out, "12 H7")); // in capitals the shaft's class would read as a hole's
    }
}

TEST_CASE("a machine file with most that can be wrong") {
    const outcome o = run("'" + jobs + "/pump_block_holes.csv' --machine bad_machine.toml", {}, our_jobs);
    CHECK(o.status == 1);
    CHECK(o.out == "");
    CHECK(difference(o.err, golden("bad_machine.err")) == "");
}

TEST_CASE("without a machine file it is the plain mill that can be printed") {
    const std::string list = std::string(header) + "A,0,0,0,10,no,14 H7,bore,brass CuZn39Pb3\n";
    const outcome silently = run_list(list, "");
    CHECK(silently.status == 0);
    CHECK(has(silently.err, "--print-machine"));
    const outcome printed = run("--print-machine");
    CHECK(printed.status == 0);
    std::ofstream(work + "/plain.toml", std::ios::binary) << printed.out;
    const outcome stated = run_list(list, " --machine plain.toml");
    CHECK(stated.status == 0);
    CHECK(difference(stated.out, silently.out) == "");
}

TEST_CASE("lists as other programs write them") {
    const std::string plain = run_list(std::string(header) + "A,1.5,2,0,10,no,9 H7,ream,aluminium\n").out;
    CHECK(has(plain, "X1.5 Y2."));
    // a byte order mark, CRLF, quotation marks, names written otherwise, another order, more columns
    CHECK(run_list("\xEF\xBB\xBFTag,Call-Out,who,x,y,Z top,depth,through,process,material\r\n"
                   "A,\"9 H7\",me,1.5,2,0,10,no,ream,aluminium\r\n")
              .out == plain);
    // blanks, a sign, inches
    CHECK(has(run_list(std::string(header) + "A,-1 in, +2 mm,0,10,no,9 H7,ream,aluminium\n").out,
              "X-25.4 Y2."));
    // columns of one's own come back in the sheet, as they are
    const std::string sheet = sheet_of("tag,x,y,z_top,depth,through,callout,process,material,note,who\n"
                                       "A,1,2,0,10,no,9 H7,ream,aluminium,\"a \"\"b\"\", c\",\"me, him\"\n");
    CHECK(has(sheet, "remarks,note,who\n"));
    CHECK(has(sheet, ",\"a \"\"b\"\", c\",\"me, him\"\n"));
}

TEST_CASE("what is no list at all") {
    struct wrong {
        std::string list;
        std::string said;
    };
    const wrong all[] = {
        {"", "list.csv:1:1: the list is empty"},
        {header, "list.csv:1:1: the list has a header but no holes"},
        {"tag,x,y,z_top,depth,through,callout,process\nA\n",
         "list.csv:1:1: the header lacks the column 'material'"},
        {"tag,x,y,z_top,dept,through,callout,process,material\nA\n",
         "lacks the column 'depth'; is that the column 'dept'?"},
        {"tag,x,x,y\nA\n", "list.csv:1:7: there is a column 'x' already"},
        {"tag;x;y;z_top\nA\n", "list.csv:1:1: the columns are separated by commas in CSV"},
        {std::string(header) + "A,\"1\nB,2", "list.csv:2:3: this quotation mark is never closed"},
        {std::string(header) + "A,\"1\"2", "list.csv:2:6: a cell ends at its closing quotation mark"},
        {std::string(header) + "A,1\"", "list.csv:2:4: a quotation mark inside a cell"},
        {std::string(header) + "A,\xC3(", "list.csv:2:3: not UTF-8 from here on"},
    };
    for (const wrong& w : all) {
        CAPTURE(w.said);
        const outcome o = run_list(w.list);
        CHECK(o.status == 2);
        CHECK(o.out == "");
        CHECK_MESSAGE(has(o.err, w.said), o.err);
    }
}

TEST_CASE("what is wrong with a cell, and where") {
    struct wrong {
        std::string row;
        std::string said;
    };
    const wrong all[] = {
        {",1,2,0,10,no,9 H7,ream,aluminium", "list.csv:2:1: a hole has a tag"},
        {"A,,2,0,10,no,9 H7,ream,aluminium", "list.csv:2:3: x '' is no number"},
        {"A,1.2.3,2,0,10,no,9 H7,ream,aluminium", "list.csv:2:3: x '1.2.3' is no number"},
        {"A,1e3,2,0,10,no,9 H7,ream,aluminium", "list.csv:2:3: x '1e3' is no number"},
        {"A,1,99999999999,0,10,no,9 H7,ream,aluminium", "list.csv:2:5: y '99999999999' has too many digits"},
        {"A,1,2000000,0,10,no,9 H7,ream,aluminium",
         "list.csv:2:5: y '2000000' is further than any machine goes"},
        {"A,1,2,0,0,no,9 H7,ream,aluminium", "list.csv:2:9: a depth is above 0"},
        {"A,1,2,0,10,,9 H7,ream,aluminium", "list.csv:2:12: through '': write yes or no"},
        {"A,1,2,0,10,no,9 h7,ream,aluminium", "list.csv:2:17: 'h7' is a shaft's class"},
        {"A,1,2,0,10,no,\"9 h7\",ream,aluminium", "list.csv:2:18: 'h7' is a shaft's class"},
        {"A,1,2,0,10,no,9 H7/g6,ream,aluminium", "list.csv:2:17: "},
        {"A,1,2,0,10,no,,ream,aluminium", "list.csv:2:15: "},
        {"A,1,2,0,10,no,9 H7,ream bore,aluminium", "list.csv:2:20: 'ream bore': one of"},
        {"A,1,2,0,10,no,9 H7,probe,wood", "list.csv:2:26: 'wood' is not a material"},
        {"A,1,2,0,10,no,9 H7,ream,granite",
         "list.csv:2:15: drills, reamers, boring heads and bits don't cut ceramic"},
        {"A,1,2,0,10,no,7 H7,ream,aluminium", "list.csv:2:15: nothing in the drawer holds 7 +0.015/0 mm"},
        {"A,1,2,0,10,no,600 H7,bore,aluminium", "list.csv:2:15: nothing in the drawer holds 600 +0.07/0 mm"},
        {"A,1,2,0,10,no,14.0001 +0.0005/0,bore,aluminium",
         "list.csv:2:15: nothing in the drawer holds 14.0001"},
        {"A,1,2,0,10,no,14 H7,ream,aluminium", "list.csv:2:21: no reamer in the drawer holds these limits"},
        {"A,1,2,0,10,no,\"9 H7\",ream", "list.csv:2:1: 8 cells, and the header has 9"},
    };
    for (const wrong& w : all) {
        CAPTURE(w.row);
        const outcome o = run_list(header + w.row + '\n');
        CHECK(o.status == 1);
        CHECK(o.out == "");
        CHECK_MESSAGE(has(o.err, w.said), o.err);
    }
}

TEST_CASE("readings to accept are guarded, and can be read on the instrument") {
    const std::string row = "A,0,0,0,10,no,14 H7,bore,aluminium\n";
    // By the GUM U = 2 sqrt((0.5^2 + 3^2) / 3) = 3.51 um: 14.0036 to 14.0144, in whole micrometres.
    CHECK(has(sheet_of(header + row), "three-point bore gauge 12-40,0.003512,14.004,14.014,"));
    // With an error limit of 20 um U is 23.1 um and nothing is left: said, and no limits given that prove nothing.
    std::string machine = file(jobs + "/bench_machine.toml");
    const std::string good = "error_limit = \"0.003 mm\"";
    machine.replace(machine.find(good), good.size(), "error_limit = \"0.020 mm\"");
    std::ofstream(work + "/coarse.toml", std::ios::binary) << machine;
    const std::string sheet = sheet_of(header + row, " --machine coarse.toml");
    CHECK(has(sheet, "12-40,0.023102,,,,,\"this instrument can't prove this tolerance"));
    // Nothing to measure with on the plain mill.
    CHECK(has(sheet_of(header + row, ""), "the machine file has no instrument for this size"));
}

TEST_CASE("the register holds what the machine says") {
    const std::string row = "A,0,0,0,10,no,14 H7,bore,aluminium\n";
    CHECK(has(run_list(header + row).out, "(T3 8 MM MILL, D3 HOLDS ITS RADIUS, 4. BEFORE THE FIRST CUT)"));
    std::string machine = file(jobs + "/bench_machine.toml");
    const std::string good = "radius_register_holds = \"radius\"";
    machine.replace(machine.find(good), good.size(), "radius_register_holds = \"diameter\"");
    std::ofstream(work + "/diameter.toml", std::ios::binary) << machine;
    const std::string program = run_list(header + row, " --machine diameter.toml").out;
    CHECK(has(program, "(T3 8 MM MILL, D3 HOLDS ITS DIAMETER, 8. BEFORE THE FIRST CUT)"));
    CHECK(has(program, "CORRECT D3 BY ALL"));
}

TEST_CASE("misuse, and files that can't be read or written") {
    CHECK(run("").status == 2);
    CHECK(run("--no-such-option").status == 2);
    const outcome missing = run("no_such.csv");
    CHECK(missing.status == 2);
    CHECK(has(missing.err, "no_such.csv can't be read"));
    CHECK(has(run("no_such.csv --machine no_such.toml").err, "no_such.toml can't be read"));
    CHECK(run(".").status == 2);
    const std::string list = std::string(header) + "A,0,0,0,10,no,14 H7,bore,aluminium\n";
    const outcome into_nothing = run_list(list, bench + " --program no/such/folder/a.nc");
    CHECK(into_nothing.status == 2);
    CHECK(has(into_nothing.err, "can't be opened for writing"));
    const outcome onto_itself = run_list(list, bench + " --program list.csv");
    CHECK(onto_itself.status == 2);
    CHECK(has(onto_itself.err, "is left as it is"));
    CHECK(file(work + "/list.csv") == list);
}
