#include "nearest.hpp"

#include <algorithm>
#include <numeric>
#include <utility>

namespace job_sheet {

namespace {

/// How many letters to change, add or drop to make one word of the other.
std::size_t distance(std::string_view a, std::string_view b) {
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t diagonal = std::exchange(row[0], i);
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t changed = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
            diagonal = row[j];
            row[j] = (std::min)({changed, row[j] + 1, row[j - 1] + 1});
        }
    }
    return row.back();
}

constexpr std::size_t longest_word = 40; // no key of ours is longer

} // namespace

std::string hint(std::string_view word, const std::vector<std::string>& known) {
    if (word.size() <= longest_word && !known.empty()) {
        const auto nearer = [&](const std::string& a, const std::string& b) {
            return distance(word, a) < distance(word, b);
        };
        const std::string& nearest = *std::min_element(known.begin(), known.end(), nearer);
        if (distance(word, nearest) <= (std::max)(std::size_t{1}, nearest.size() / 3))
            return "; did you mean '" + nearest + "'?";
    }
    std::string all;
    for (const std::string& one : known) all += (all.empty() ? "; known here: " : ", ") + one;
    return all;
}

} // namespace job_sheet
