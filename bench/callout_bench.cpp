// Reading call-outs beside the least that anybody could do with the same bytes: std::from_chars on the
// number at the front of each; and line by line out of a stream, as a program has them.

#include <fitwright/callout.hpp>

#include <benchmark/benchmark.h>

#include <charconv>
#include <sstream>
#include <string>
#include <vector>

using namespace fitwright;

namespace {

std::vector<std::string> callouts(const std::vector<std::string>& tails) {
    std::vector<std::string> made;
    for (int i = 0; i < 1000; ++i) {
        const int nm = 3'000 + i * 277;
        made.push_back(std::to_string(nm / 1000) + "." + std::to_string(1000 + nm % 1000).substr(1) +
                       tails[made.size() % tails.size()]);
    }
    return made;
}

const std::vector<std::string> classes = callouts({" H7", " g6", " JS8", " f7", " K6"});
const std::vector<std::string> fits = callouts({" H7/g6", " H7/p6", " H8/f7", " G7/h6"});
const std::vector<std::string> wrong = callouts({" h 7", " Q7", " H", " H7/H6", "e H7"});

void numbers(benchmark::State& state, const std::vector<std::string>& lines) {
    for (auto _ : state)
        for (const auto& line : lines) {
            double size = 0;
            std::from_chars(line.data(), line.data() + line.size(), size);
            benchmark::DoNotOptimize(size);
        }
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(lines.size()));
}

void read(benchmark::State& state, const std::vector<std::string>& lines) {
    for (auto _ : state)
        for (const auto& line : lines) benchmark::DoNotOptimize(read_callout(line));
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(lines.size()));
}

/// Calls `use` with each line of a text, by std::getline.
template <class Use> void each_line(const std::vector<std::string>& lines, std::istringstream& in, Use use) {
    in.clear();
    in.seekg(0);
    std::string line;
    for (std::size_t i = 0; i < lines.size() && std::getline(in, line); ++i) use(line);
}

std::string joined(const std::vector<std::string>& lines) {
    std::string all;
    for (const auto& line : lines) all += line + '\n';
    return all;
}

void getline_and_from_chars(benchmark::State& state, const std::vector<std::string>& lines) {
    std::istringstream in(joined(lines));
    for (auto _ : state)
        each_line(lines, in, [](const std::string& line) {
            double size = 0;
            std::from_chars(line.data(), line.data() + line.size(), size);
            benchmark::DoNotOptimize(size);
        });
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(lines.size()));
}

void getline_and_read(benchmark::State& state, const std::vector<std::string>& lines) {
    std::istringstream in(joined(lines));
    for (auto _ : state)
        each_line(lines, in, [](const std::string& line) { benchmark::DoNotOptimize(read_callout(line)); });
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(lines.size()));
}

BENCHMARK_CAPTURE(numbers, from_chars_of_a_class, classes);
BENCHMARK_CAPTURE(read, class_fitwright, classes);
BENCHMARK_CAPTURE(numbers, from_chars_of_a_fit, fits);
BENCHMARK_CAPTURE(read, fit_fitwright, fits);
BENCHMARK_CAPTURE(getline_and_from_chars, a_line, fits);
BENCHMARK_CAPTURE(getline_and_read, fit_fitwright, fits);
BENCHMARK_CAPTURE(read, wrong_one_fitwright, wrong);

} // namespace

BENCHMARK_MAIN();
