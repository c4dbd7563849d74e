#ifndef JOB_SHEET_DOCUMENT_HPP
#define JOB_SHEET_DOCUMENT_HPP

#include <compare>
#include <cstddef>
#include <string>
#include <vector>

namespace job_sheet {

/// A place in the job file; both count from 1, columns in characters.
struct place {
    std::size_t line = 1;
    std::size_t column = 1;

    friend auto operator<=>(place, place) = default;
};

/// Something wrong with the job file, and where.
struct fault {
    place where;
    std::string message;
};

/// The job file's text, and what was found wrong with it so far.
class document {
public:
    explicit document(std::string text);

    [[nodiscard]] const std::string& text() const { return text_; }

    void report(place where, std::string message) { faults_.push_back({where, std::move(message)}); }
    [[nodiscard]] const std::vector<fault>& faults() const { return faults_; }

    /// Where the `character`-th character (from 1) of a string stands whose opening quotation mark is
    /// at `opening`: escapes such as \u2300 are one character, and a string may span lines.
    [[nodiscard]] place inside_string(place opening, std::size_t character) const;

private:
    std::string text_;
    std::vector<fault> faults_;
};

} // namespace job_sheet

#endif
