#ifndef FITWRIGHT_TESTS_POST_BORES_BLOCKS_HPP
#define FITWRIGHT_TESTS_POST_BORES_BLOCKS_HPP

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace checker {

/// One word: a letter, and its number as it is written.
struct word {
    char letter;
    std::string number;

    [[nodiscard]] double value() const { return std::stod(number); }
    [[nodiscard]] std::string text() const { return letter + number; }
};

/// One line of a program, taken apart.
struct block {
    int line = 0;
    std::vector<word> words;
    std::string comment;
    bool has_comment = false;
    bool is_assignment = false; ///< #101=#5061
    std::string fault;          ///< what makes it unreadable

    [[nodiscard]] bool has(std::string_view text) const; ///< "G41"
    [[nodiscard]] const word* find(char letter) const;
    [[nodiscard]] std::optional<double> value(char letter) const;
};

/// The lines of a program without its percent signs and its number.
[[nodiscard]] std::vector<block> blocks_of(std::string_view program);

} // namespace checker

#endif
