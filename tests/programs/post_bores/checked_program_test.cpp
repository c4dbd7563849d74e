#include "../run.hpp"
#include "checker.hpp"
#include "pump_block.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

// Every program is read again by the checker; and the checker by programs that are spoilt.

using namespace fitwright_tests;

namespace {

const std::string jobs = FITWRIGHT_JOBS;

std::string joined(const std::vector<std::string>& lines) {
    std::string all;
    for (const std::string& line : lines) all += line + '\n';
    return all;
}

std::string program_for(const std::string& machine) {
    const outcome o = run("pump_block_holes.csv --machine '" + machine + "'", {}, jobs);
    REQUIRE(o.status == 0);
    return o.out;
}

/// The machine file with some of its lines changed.
std::string machine_with(const std::vector<std::pair<std::string, std::string>>& changes) {
    std::string text = file(jobs + "/bench_machine.toml");
    for (const auto& [from, to] : changes) {
        const std::size_t at = text.find(from);
        REQUIRE(at != std::string::npos);
        text.replace(at, from.size(), to);
    }
    std::ofstream(work + "/machine.toml", std::ios::binary) << text;
    return work + "/machine.toml";
}

std::string replaced(std::string text, const std::string& from, const std::string& to, bool everywhere) {
    std::size_t at = text.find(from);
    REQUIRE(at != std::string::npos);
    do {
        text.replace(at, from.size(), to);
        at = text.find(from, at + to.size());
    } while (everywhere && at != std::string::npos);
    return text;
}

} // namespace

TEST_CASE("the program for the bench mill") {
    const std::string program = program_for("bench_machine.toml");
    CHECK(joined(checker::faults_of(program, checker::pump_block, checker::bench_machine)) == "");
    CHECK(difference(program, golden("pump_block.nc")) == "");
}

TEST_CASE("the program for the old mill in inches") {
    const std::string program = program_for("old_inch_machine.toml");
    CHECK(joined(checker::faults_of(program, checker::pump_block, checker::old_inch_machine)) == "");
    CHECK(difference(program, golden("pump_block_inch.nc")) == "");
}

TEST_CASE("every way to say it that a control may want") {
    using changes = std::vector<std::pair<std::string, std::string>>;
    for (const std::string circles : {"full", "half", "quarter"})
        for (const std::string centres : {"IJ", "R"})
            for (const std::string cycles : {R"(["G81", "G83", "G85"])", R"(["G81"])", "[]"})
                for (const std::string repeat : {"true", "false"})
                    for (const std::string decimals : {"3", "2", "5"}) {
                        if (centres == "R" && circles == "full") continue;
                        CAPTURE(circles);
                        CAPTURE(centres);
                        CAPTURE(cycles);
                        CAPTURE(decimals);
                        const changes c = {{R"(circles = "full")", "circles = \"" + circles + '"'},
                                           {R"(arc_centres = "IJ")", "arc_centres = \"" + centres + '"'},
                                           {R"(["G81", "G83", "G85"])", cycles},
                                           {"repeat_modal_words = false", "repeat_modal_words = " + repeat},
                                           {"decimals = 3", "decimals = " + decimals}};
                        const std::string machine = machine_with(c);
                        const outcome o = run("pump_block_holes.csv --machine '" + machine + "'", {}, jobs);
                        if (decimals == "2") { // steps of 0.02 mm on diameter hold no tolerance of 18 um
                            CHECK(o.status == 1);
                            CHECK(o.out == "");
                            continue;
                        }
                        REQUIRE(o.status == 0);
                        checker::rules r = checker::bench_machine;
                        r.decimals = std::stoi(decimals);
                        CHECK(joined(checker::faults_of(o.out, checker::pump_block, r)) == "");
                    }
}

TEST_CASE("the checker finds what is spoilt") {
    struct spoilt {
        std::string from;  ///< in the good program
        std::string to;    ///< instead of it, wherever `and_from` is given, else at its first place
        std::string fault; ///< what it has to find
        std::string and_from = {};
        std::string and_to = {};
    };
    const spoilt all[] = {
        // the start and the end
        {"G21\nG17", "G17", "the unit alone"},
        {"G17 G40 G49 G80", "G17 G49 G80", "no safe line"},
        {"G90 G94", "G94", "before G90"},
        {"G90 G94", "G91 G94", "not absolute"},
        {"M5\nM9\nM30", "M9\nM30", "the spindle turns at the end", "(PROBE)\nT11 M6\n",
         "(PROBE)\nT11 M6\nM3\n"},
        {"M30", "M9", "no end of the program"},
        {"M30", "M30\nG0 X0.", "something behind the end"},
        // comments and words
        {"(M 6.5 H7", "(M (6.5) H7", "a bracket inside a comment"},
        {"6.515)", "6.515", "a comment that does not end"},
        {"(M 6.5 H7", "(M \xE2\x8C\x80 H7", "not ASCII"},
        {"(M 6.5 H7", "(M 6.5 H7 in a comment that goes on for longer than the control", "that is too long"},
        {"X44. Y34.5\n", "X44 Y34.5\n", "a coordinate without a point"},
        {"X44. Y34.5\n", "X44. Y34.5001\n", "more decimals"},
        {"X44. Y34.5\n", "X44. Y34.5 Y3.\n", "a word given twice"},
        {"X44. Y34.5\n", "X44,5\n", "no word of a program"},
        // tools, speeds and feeds
        {"T1 M6\n", "", "a move without a tool"},
        {"T9 M6", "M6", "no tool to change to"},
        {"M5\nM9\n(4.5 MM DRILL)", "M9\n(4.5 MM DRILL)", "changed while the spindle turns"},
        {"R2. F95.\nG80\n", "R2. F95.\n", "changed inside a cycle"},
        {"G0 G43 H8", "G0", "a move without the tool's length"},
        {"G0 G43 H8", "G43 H8", "a move of no kind"},
        {"S520 M3\n", "", "a cut while the spindle stands"},
        {"S6000 M3", "M3", "started without a speed"},
        {" F270.", "", "a cut without a feed"},
        {" F286.", "", "a cycle without its feed"},
        {"R2. Q5. F286.", "R2. F286.", "pecks without a depth"},
        {"(PROBE)\nT11 M6\n", "(PROBE)\nT11 M6\nM3\n", "a probe that turns"},
        // heights and places
        {"Z-1. R2. F270.", "Z-1. R1.5 F270.", "a rapid move below the clearance"},
        {"G0 X6. Y12.\nZ25.", "G0 X6. Y12.\nZ-0.5", "a rapid move below the clearance"},
        {"(BORE 14.008)\nZ2.", "(BORE 14.008)\nZ1.9", "a rapid move below the clearance"},
        {"(BORE 14.008)\nZ2.\n", "(BORE 14.008)\nG1 Z-1.\nG0 X26.\n", "sideways below the clearance"},
        {"X44. Y20.\nG98 G85", "X44. Y20.\nG1 Z1.\nG98 G85", "a cycle that starts below the clearance"},
        {"R2. F270.\nG80\n", "R2. F270.\n", "a rapid move inside a cycle"},
        {"R2. F270.\nG80\n", "R2. F270.\nG1 Z1.\n", "a straight cut inside a cycle"},
        {"Z-22.35", "Z-32.35", "deeper than any hole"},
        {"Z-22.35", "Z-12.35", "hole S1 is not made to its depth"},
        {"X3.5 Y3.5 Z-22.35", "X3.6 Y3.5 Z-22.35", "where there is no hole"},
        {"T10 M6", "T9 M6", "hole L1 is not finished by its tool"},
        // compensation
        {"G1 G41 D8 X26.452 Y14.548", "G1 G41 D8 X27. Y17.", "starts on a line no longer than"},
        {"X33.005 Y28.005 I-8.005 J0.\n", "X33.005 Y28.005 I-8.005 J0.\nG1 X27. Y20.\n",
         "ends on a line no longer"},
        {"G1 G41 D8", "G1 Z-1.\nG41 D8", "compensation starts inside the work"},
        {"G41 D8", "G41", "compensation without a register"},
        {"G41 D8 ", "", "an arc without compensation"},
        {"G41 D8 ", "", "no compensation to end"},
        {"G1 G40 X25. Y20.\n", "", "a rapid move under compensation"},
        {"G1 G40 X25. Y20.\nG0 Z25.\nM5\nM9\n(6.5", "M5\nM9\n(6.5", "a tool is changed under compensation"},
        {"T8 M6", "T6 M6", "compensation for a tool that does not mill"},
        // arcs
        {"X31.904 Y20. I0. J5.452", "X31.905 Y20. I0. J5.452", "radii differ"},
        {"X31.904 Y20. I0. J5.452", "X31.904 Y20. I0. J5.451", "radii differ"},
        {"X31.904 Y20. I0. J5.452", "X31.904 Y20. R1.", "whose radius does not reach"},
        {"I-6.904 J0.", "R6.904", "a full circle by its radius"},
        {"X26.452 Y14.548 F107.\nG3 X31.904 Y20. I0. J5.452", "X28.004 Y16.1 F107.\nG3 X31.904 Y20. I0. J3.9",
         "no larger than the tool"},
        {"G3 X31.904 Y20. Z1.", "G2 X31.904 Y20. Z1.", "not climb milled"},
        {"G3 X41.01 Y20. Z1. I-16.01 J0.\n", "", "a helix that is too steep"},
        {"Z-2. I-16.01", "Z0. I-16.01", "a helix that goes up"},
        // sizes
        {"G3 X32.004 Y20. Z-29. I-7.004 J0.\n", "", "hole A is not bored within its limits"},
        {"41.01", "41.03", "outside every bore's limits", "-16.01", "-16.03"},
        {"41.01", "40.99", "hole I is not bored within its limits", "-16.01", "-15.99"},
    };
    const std::string good = program_for("bench_machine.toml");
    for (const spoilt& s : all) {
        CAPTURE(s.from);
        CAPTURE(s.to);
        const bool everywhere = !s.and_from.empty();
        std::string program = replaced(good, s.from, s.to, everywhere);
        if (everywhere) program = replaced(program, s.and_from, s.and_to, true);
        const auto faults = checker::faults_of(program, checker::pump_block, checker::bench_machine);
        const bool found = std::any_of(faults.begin(), faults.end(), [&](const std::string& f) {
            return f.find(s.fault) != std::string::npos;
        });
        CHECK_MESSAGE(found, joined(faults));
    }
}
