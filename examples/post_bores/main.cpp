// post_bores: reads a list of holes (see examples/jobs/) and writes a program
// that makes them, in the words of one machine, and the sheet to inspect them
// by.
//
// Exit status: 0 all holes are made; 1 something in the list or the machine
// file is wrong: nothing is written, or with --keep-going the rest; 2 misuse, a
// file that can't be read or is no CSV or TOML at all, or an output that could
// not be written.

#include "answer.hpp"
#include "read_machine.hpp"
#include "shared/files.hpp"
#include "shared/write_file.hpp"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <cstdio>
#include <exception>
#include <filesystem>
#include <optional>

namespace {

namespace pb = post_bores;

constexpr int all_made = 0;
constexpr int something_wrong = 1;
constexpr int broke_off = 2;

struct options {
    std::string holes;
    std::string machine;
    std::string program;
    std::string sheet;
    bool keep_going = false;
    bool print_machine = false;
};

void complain(const std::string& file, const pb::fault& f) {
    fmt::print(stderr, "{}:{}:{}: {}\n", file, f.where.line, f.where.column, f.message);
}

bool put(const std::string& text) { return shared::write_to_stdout(text, "post_bores"); }

/// Writes a file if one is asked for, unless it is one of those that were read.
bool write(const std::string& name, const options& o, const std::string& text) {
    if (name.empty()) return true;
    std::error_code ignored;
    std::string failed;
    for (const std::string& read : {o.holes, o.machine})
        if (std::filesystem::equivalent(name, read, ignored))
            failed = name + ": was read; it is left as it is";
    if (failed.empty()) failed = shared::write_file(name, text);
    if (!failed.empty()) fmt::print(stderr, "post_bores: {}\n", failed);
    return failed.empty();
}

int run(const options& o) {
    if (o.print_machine) return put(std::string(pb::plain_machine())) ? all_made : broke_off;

    auto machine_text = o.machine.empty() ? std::string(pb::plain_machine()) : shared::contents_of(o.machine);
    auto holes_text = shared::contents_of(o.holes);
    for (const auto& [name, text] : {std::pair(o.machine, machine_text), std::pair(o.holes, holes_text)})
        if (!text) fmt::print(stderr, "post_bores: {} can't be read\n", name);
    if (!machine_text || !holes_text) return broke_off;

    auto on = pb::read_machine(*std::move(machine_text));
    if (const auto* const faults = std::get_if<std::vector<pb::fault>>(&on)) {
        for (const pb::fault& f : *faults) complain(o.machine, f);
        return something_wrong;
    }
    auto read = pb::read_hole_list(*holes_text);
    if (const auto* const no_list = std::get_if<pb::fault>(&read)) {
        complain(o.holes, *no_list);
        return broke_off;
    }
    auto& list = std::get<pb::hole_list>(read);
    pb::answer answer = pb::answer_of(list, std::get<pb::machine>(on));
    answer.list_name = std::filesystem::path(o.holes).filename().string();
    for (const pb::hole_row* row : answer.left_out)
        for (const pb::fault& f : row->faults) complain(o.holes, f);
    if (!answer.left_out.empty() && !o.keep_going) {
        fmt::print(stderr, "post_bores: nothing is written; --keep-going leaves "
                           "out the holes above\n");
        return something_wrong;
    }

    bool written = write(o.program, o, pb::program(answer));
    written = write(o.sheet, o, pb::sheet(answer)) && written;
    if (o.program.empty()) written = put(pb::program(answer)) && written;
    if (!written) return broke_off;
    if (o.machine.empty())
        fmt::print(stderr, "post_bores: no machine file, so for a plain mill: see "
                           "--print-machine\n");
    for (const std::string& c : pb::cautions()) fmt::print(stderr, "{}\n", c);
    return answer.left_out.empty() ? all_made : something_wrong;
}

} // namespace

int main(int argc, char** argv) {
    CLI::App app("Reads a list of holes (CSV) and writes the program that makes "
                 "them to standard output.\n"
                 "Exit status: 0 all holes are made; 1 something in the list or "
                 "the machine file is wrong;\n"
                 "2 misuse, a file that can't be read or is no CSV at all, or an "
                 "output that could not be\n"
                 "written.",
                 "post_bores");
    options o;
    auto* const holes = app.add_option("HOLES.csv", o.holes, "the list of holes");
    app.add_option("--machine", o.machine, "the machine, instead of a plain mill")->type_name("MACHINE.toml");
    app.add_option("--program", o.program, "writes the program there")->type_name("FILE");
    app.add_option("--sheet", o.sheet, "writes the inspection sheet, CSV, there")->type_name("FILE");
    app.add_flag("--keep-going", o.keep_going, "leaves out holes that are wrong, and says so");
    auto* const print =
        app.add_flag("--print-machine", o.print_machine, "prints a machine file to start from");
    try {
        app.parse(argc, argv);
        if (holes->count() == 0 && print->count() == 0) throw CLI::RequiredError("HOLES.csv");
        return run(o);
    } catch (const CLI::ParseError& e) {
        return app.exit(e) == 0 ? all_made : broke_off;
    } catch (const std::exception& e) {
        fmt::print(stderr, "post_bores: {}\n", e.what());
        return broke_off;
    }
}
