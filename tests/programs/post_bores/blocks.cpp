#include "blocks.hpp"

namespace checker {

namespace {

bool is_number(std::string_view text) {
    if (text.starts_with('-')) text.remove_prefix(1);
    int points = 0;
    int digits = 0;
    for (const char c : text) {
        if (c == '.') ++points;
        else if (c >= '0' && c <= '9') ++digits;
        else return false;
    }
    return digits > 0 && points <= 1;
}

void read_words(std::string_view text, block& b) {
    std::size_t at = 0;
    while (at < text.size()) {
        if (text[at] == ' ') {
            ++at;
            continue;
        }
        const char letter = text[at++];
        std::size_t end = at;
        while (end < text.size() &&
               std::string_view("-.0123456789").find(text[end]) != std::string_view::npos)
            ++end;
        const std::string number(text.substr(at, end - at));
        if (letter < 'A' || letter > 'Z' || !is_number(number)) {
            b.fault = "no word of a program: '" + std::string(1, letter) + number + "'";
            return;
        }
        for (const word& other : b.words)
            if (other.letter == letter && letter != 'G' && letter != 'M') b.fault = "a word given twice";
        b.words.push_back({letter, number});
        at = end;
    }
}

/// Takes the comment away; what is left are words.
std::string without_comment(std::string_view line, block& b) {
    if (const std::size_t at = line.find(';'); at != std::string_view::npos) {
        b.has_comment = true;
        b.comment = line.substr(at + 1);
        if (b.comment.starts_with(' ')) b.comment.erase(0, 1);
        if (b.comment.find_first_of("()[]{};") != std::string::npos) b.fault = "a bracket inside a comment";
        return std::string(line.substr(0, at));
    }
    const std::size_t opening = line.find('(');
    if (opening == std::string_view::npos) return std::string(line);
    b.has_comment = true;
    const std::size_t closing = line.rfind(')');
    if (closing == std::string_view::npos) {
        b.fault = "a comment that does not end";
        return {};
    }
    b.comment = line.substr(opening + 1, closing - opening - 1);
    if (b.comment.find_first_of("()[]{};") != std::string::npos) b.fault = "a bracket inside a comment";
    return std::string(line.substr(0, opening)) + std::string(line.substr(closing + 1));
}

} // namespace

bool block::has(std::string_view text) const {
    for (const word& w : words)
        if (w.text() == text) return true;
    return false;
}

const word* block::find(char letter) const {
    for (const word& w : words)
        if (w.letter == letter) return &w;
    return nullptr;
}

std::optional<double> block::value(char letter) const {
    const word* const w = find(letter);
    return w ? std::optional(w->value()) : std::nullopt;
}

std::vector<block> blocks_of(std::string_view program) {
    std::vector<block> all;
    for (int line = 1; !program.empty(); ++line) {
        const std::size_t end = program.find('\n');
        const std::string_view text = program.substr(0, end);
        program.remove_prefix(end == std::string_view::npos ? program.size() : end + 1);
        if (text == "%" || text.starts_with('O')) continue;
        block b;
        b.line = line;
        for (const char c : text)
            if (c < ' ' || c > '~') b.fault = "a character that is not ASCII";
        b.is_assignment = text.starts_with('#');
        if (!b.is_assignment) {
            const std::string words = without_comment(text, b);
            if (b.fault.empty()) read_words(words, b);
        }
        all.push_back(std::move(b));
    }
    return all;
}

} // namespace checker
