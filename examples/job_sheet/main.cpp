// job_sheet: reads a job of mating pairs (see examples/jobs/) and writes the sheet for the shop.
//
// Exit status: 0 all of the job could be read; 1 something in it is wrong, and the rest is answered;
// 2 misuse, no such file, no TOML, or an output that could not be written; 3 with --against: a pair is worse
// than it was.

#include "answer.hpp"
#include "changes.hpp"
#include "progress.hpp"
#include "read_job.hpp"
#include "shared/files.hpp"
#include "shared/write_file.hpp"
#include "writers.hpp"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <cstdio>
#include <exception>
#include <filesystem>
#include <map>
#include <optional>

namespace {

namespace js = job_sheet;

constexpr int all_read = 0;
constexpr int something_wrong = 1;
constexpr int broke_off = 2;
constexpr int got_worse = 3;

struct options {
    std::string job;
    std::string against;
    bool plain = false;
    js::units_shown units = js::units_shown::both;
    std::string html;
    std::string csv;
    std::string json;
};

void complain(const std::string& file, const js::fault& f) {
    fmt::print(stderr, "{}:{}:{}: {}\n", file, f.where.line, f.where.column, f.message);
}

bool is_an_input(const std::string& name, const options& o) {
    std::error_code ignored;
    return std::filesystem::equivalent(name, o.job, ignored) ||
           (!o.against.empty() && std::filesystem::equivalent(name, o.against, ignored));
}

/// Writes one of the files that are asked for; true if that went well or none is asked for.
template <class Make> bool write(const std::string& name, const options& o, Make make) {
    if (name.empty()) return true;
    std::string failed;
    if (is_an_input(name, o)) failed = name + ": is a job file itself; it is left as it is";
    else failed = shared::write_file(name, make());
    if (!failed.empty()) fmt::print(stderr, "job_sheet: {}\n", failed);
    return failed.empty();
}

/// Reads and answers a job, and complains of what is wrong with it; nothing if it can't be read.
std::optional<js::sheet> answered(const std::string& file) {
    auto text = shared::contents_of(file);
    if (!text) {
        fmt::print(stderr, "job_sheet: {} can't be read\n", file);
        return std::nullopt;
    }
    auto read = js::read_job(*std::move(text));
    if (const auto* const no_toml = std::get_if<js::fault>(&read)) {
        complain(file, *no_toml);
        return std::nullopt;
    }
    js::job job = std::get<js::job>(std::move(read));
    js::progress line("job_sheet", job.pairs.size());
    js::sheet sheet = js::answer(std::move(job), [&](std::size_t done) { line.show(done); });
    for (const js::fault& f : sheet.asked.faults) complain(file, f);
    return sheet;
}

int run(const options& o) {
    const auto sheet = answered(o.job);
    if (!sheet) return broke_off;
    std::optional<js::sheet> before;
    if (!o.against.empty() && !(before = answered(o.against))) return broke_off;
    const js::lettering letters = o.plain ? js::lettering::plain : js::lettering::as_written;

    bool written = write(o.html, o, [&] { return js::html_sheet(*sheet, o.units); });
    written = write(o.csv, o, [&] { return js::csv_sheet(*sheet); }) && written;
    written = write(o.json, o, [&] { return js::json_sheet(*sheet); }) && written;
    std::optional<js::changes> changes;
    if (before) changes = js::changes_between(*before, *sheet);
    const std::string text =
        changes ? js::in_lines(*changes, letters) : js::text_sheet(*sheet, letters, o.units);
    written = shared::write_to_stdout(text, "job_sheet") && written;
    if (!written) return broke_off;
    if (!sheet->asked.faults.empty() || (before && !before->asked.faults.empty())) return something_wrong;
    return changes && changes->any_worse() ? got_worse : all_read;
}

} // namespace

int main(int argc, char** argv) {
    CLI::App app(
        "Reads a job of mating pairs and writes its sheet for the shop to standard output.\n"
        "Exit status: 0 all of the job could be read; 1 something in it is wrong, and the rest is answered;\n"
        "2 misuse, no such file, no TOML, or an output that could not be written; 3 with --against: a pair is\n"
        "worse than it was.",
        "job_sheet");
    options o;
    app.add_option("JOB.toml", o.job, "the job")->required();
    app.add_option("--against", o.against, "says instead what is different from this job, pair by pair")
        ->type_name("OLD.toml");
    app.add_flag("--plain", o.plain, "writes to standard output in ASCII alone");
    const std::map<std::string, js::units_shown> units = {
        {"mm", js::units_shown::mm}, {"inch", js::units_shown::inch}, {"both", js::units_shown::both}};
    app.add_option("--units", o.units, "mm, inch or both, which is the default")
        ->transform(CLI::CheckedTransformer(units).description(""))
        ->type_name("UNITS");
    app.add_option("--html", o.html, "writes the sheet as one HTML page too")->type_name("FILE");
    app.add_option("--csv", o.csv, "writes a row for each part of each pair too")->type_name("FILE");
    app.add_option("--json", o.json, "writes everything for other programs too")->type_name("FILE");
    try {
        app.parse(argc, argv);
        return run(o);
    } catch (const CLI::ParseError& e) {
        return app.exit(e) == 0 ? all_read : broke_off;
    } catch (const std::exception& e) {
        fmt::print(stderr, "job_sheet: {}\n", e.what());
        return broke_off;
    }
}
