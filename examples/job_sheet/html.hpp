#ifndef JOB_SHEET_HTML_HPP
#define JOB_SHEET_HTML_HPP

#include "answer.hpp"
#include "facts.hpp"
#include "shared_looks.hpp"
#include "units_shown.hpp"

#include <string>
#include <string_view>
#include <vector>

// Pieces of the page. What is called text is escaped here; what is called markup is put in as it is.

namespace job_sheet::html {

/// Nothing for an empty text.
[[nodiscard]] std::string paragraph(std::string_view kind, std::string_view text);
[[nodiscard]] std::string list(const std::vector<std::string>& texts);
/// Under a heading of the fourth order; nothing for none.
[[nodiscard]] std::string titled_list(std::string_view title, const std::vector<std::string>& texts);
/// Labels and texts; a label that repeats is written once.
[[nodiscard]] std::string facts_list(const std::vector<fact>& all);

/// A table in a frame of its own, which scrolls where the screen is narrower.
class table {
public:
    /// `heads` are texts, the first over the heads of the rows; "#" before one makes its column one of numbers.
    table(std::string_view caption, const std::vector<std::string>& heads);
    /// Markup, the first cell the head of the row.
    void row(const std::vector<std::string>& cells);
    [[nodiscard]] std::string markup() const;

private:
    std::string caption_;
    std::vector<bool> is_number_;
    std::string head_;
    std::string body_;
};

/// A sign and words: they tell the verdict without colour.
[[nodiscard]] std::string badge(verdict v);
/// The same sign without the words, for a line that has its own.
[[nodiscard]] std::string sign(verdict v);
/// What the signs are drawn from; once on the page, before any of them.
[[nodiscard]] std::string_view signs();

/// What the cards are written with.
struct card_style {
    units_shown units = units_shown::both;
    shared_looks& looks; ///< of the pictures
};

/// The pairs with what is to be made and their verdicts.
[[nodiscard]] std::string contents(const sheet& s, units_shown units);
/// One pair, the answer first; `number` counts from 1.
[[nodiscard]] std::string card(const pair_answer& a, const job& j, std::size_t number,
                               const card_style& style);
/// What is to be made of each part, and blanks for what comes out.
[[nodiscard]] std::string answer(const pair_answer& a, units_shown units);
/// States, fluid, drawer, instruments.
[[nodiscard]] std::string about_the_job(const sheet& s);

} // namespace job_sheet::html

#endif
