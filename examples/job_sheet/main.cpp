// job_sheet: reads a job of mating pairs (see examples/jobs/) and writes the sheet for the shop.
//
// Exit status: 0 all of the job could be read; 1 something in it is wrong, and the rest is answered;
// 2 misuse, no such file, no TOML, or an output that could not be written.

#include "answer.hpp"
#include "read_job.hpp"
#include "shared/files.hpp"
#include "shared/write_file.hpp"
#include "writers.hpp"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <cstdio>
#include <exception>
#include <filesystem>
#include <optional>

namespace {

namespace js = job_sheet;

constexpr int all_read = 0;
constexpr int something_wrong = 1;
constexpr int broke_off = 2;

struct options {
    std::string job;
    std::string html;
    std::string csv;
    std::string json;
};

void complain(const std::string& file, const js::fault& f) {
    fmt::print(stderr, "{}:{}:{}: {}\n", file, f.where.line, f.where.column, f.message);
}

/// Writes one of the files that are asked for; true if that went well or none is asked for.
bool write(const std::string& name, const options& o, std::string (*make)(const js::sheet&),
           const js::sheet& s) {
    if (name.empty()) return true;
    std::error_code ignored;
    std::string failed;
    if (std::filesystem::equivalent(name, o.job, ignored))
        failed = name + ": is the job file itself; it is left as it is";
    else failed = shared::write_file(name, make(s));
    if (!failed.empty()) fmt::print(stderr, "job_sheet: {}\n", failed);
    return failed.empty();
}

int run(const options& o) {
    auto text = shared::contents_of(o.job);
    if (!text) {
        fmt::print(stderr, "job_sheet: {} can't be read\n", o.job);
        return broke_off;
    }
    auto read = js::read_job(*std::move(text));
    if (const auto* const no_toml = std::get_if<js::fault>(&read)) {
        complain(o.job, *no_toml);
        return broke_off;
    }
    const js::sheet sheet = js::answer(std::get<js::job>(std::move(read)));
    for (const js::fault& f : sheet.asked.faults) complain(o.job, f);

    bool written = write(o.html, o, js::html_sheet, sheet);
    written = write(o.csv, o, js::csv_sheet, sheet) && written;
    written = write(o.json, o, js::json_sheet, sheet) && written;
    written = shared::write_to_stdout(js::text_sheet(sheet), "job_sheet") && written;
    if (!written) return broke_off;
    return sheet.asked.faults.empty() ? all_read : something_wrong;
}

} // namespace

int main(int argc, char** argv) {
    CLI::App app(
        "Reads a job of mating pairs and writes its sheet for the shop to standard output.\n"
        "Exit status: 0 all of the job could be read; 1 something in it is wrong, and the rest is answered;\n"
        "2 misuse, no such file, no TOML, or an output that could not be written.",
        "job_sheet");
    options o;
    app.add_option("JOB.toml", o.job, "the job")->required();
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
