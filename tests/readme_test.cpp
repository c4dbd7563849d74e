// Every block of code in README.md is cut from a file that is compiled or run; this fails when they differ.

#include <doctest/doctest.h>

#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace {

const std::string root = std::string(FITWRIGHT_TEST_DATA) + "/../../";

std::string contents(const std::string& path) {
    std::ifstream file(root + path, std::ios::binary);
    std::ostringstream all;
    all << file.rdbuf();
    return all.str();
}

struct block {
    int line = 0;
    std::string language;
    std::string from; ///< the file named above it
    std::string text;
};

std::vector<block> blocks_of(const std::string& readme) {
    std::vector<block> blocks;
    std::istringstream lines(readme);
    std::string line;
    std::string from;
    bool inside = false;
    for (int number = 1; std::getline(lines, line); ++number) {
        if (line.starts_with("```")) {
            inside = !inside;
            if (inside) blocks.push_back({number, line.substr(3), from, ""});
            from.clear();
        } else if (inside) {
            blocks.back().text += line + "\n";
        } else if (line.starts_with("<!-- from ")) {
            from = line.substr(10, line.find(" -->") - 10);
        }
    }
    return blocks;
}

} // namespace

TEST_CASE("the README's code is cut from files that are compiled and run") {
    const auto blocks = blocks_of(contents("README.md"));
    REQUIRE(blocks.size() >= 6);
    for (const block& b : blocks) {
        CAPTURE(b.line);
        if (b.language == "sh") continue; // commands; run by .ci/run and by hand
        REQUIRE(!b.from.empty());
        const std::string file = contents(b.from);
        CAPTURE(b.from);
        REQUIRE(!file.empty());
        CHECK(file.find(b.text) != std::string::npos);
        if (b.from.ends_with(".out")) CHECK(file == b.text);
    }
}

TEST_CASE("the calls under \"Pick a header\" are compiled as they stand") {
    const std::string compiled = contents("tests/pick_a_header_test.cpp");
    REQUIRE(!compiled.empty());
    std::istringstream lines(contents("README.md"));
    std::string line;
    int calls = 0;
    bool in_table = false;
    while (std::getline(lines, line)) {
        if (line.starts_with("## ")) in_table = line == "## Pick a header";
        if (!in_table || !line.starts_with("| ") || line.starts_with("| you want") ||
            line.starts_with("| ---"))
            continue;
        const std::string call_cell = line.substr(line.rfind(" | ", line.size() - 3) + 3);
        for (std::size_t from = call_cell.find('`'); from != std::string::npos;
             from = call_cell.find('`', from + 1)) {
            const std::size_t to = call_cell.find('`', from + 1);
            const std::string call = call_cell.substr(from + 1, to - from - 1);
            CAPTURE(call);
            CHECK(compiled.find(call) != std::string::npos);
            ++calls;
            from = to;
        }
    }
    CHECK(calls > 20);
}
