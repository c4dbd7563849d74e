#include "block_writer.hpp"

#include "job_sheet/ascii.hpp"

namespace post_bores {

namespace {

/// No bracket may stand in a comment, nor what ends one or begins a variable
/// elsewhere.
std::string plain(std::string_view utf8, bool upper_case) {
    std::string text = job_sheet::ascii(utf8);
    for (char& c : text) {
        if (c == ';') c = ',';
        if (std::string_view("()[]{}%").find(c) != std::string_view::npos) c = ' ';
        if (upper_case && c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    }
    return text;
}

} // namespace

void block_writer::comment(std::string_view utf8) {
    if (words_.comments == comment_style::none) return;
    const std::string text = plain(utf8, words_.upper_case);
    const bool in_parentheses = words_.comments == comment_style::parentheses;
    for (std::size_t at = text.find_first_not_of(' '); at != std::string::npos;
         at = text.find_first_not_of(' ', at)) {
        std::size_t size = text.size() - at;
        if (size > words_.comment_length) {
            size = text.rfind(' ', at + words_.comment_length) - at;
            if (size == 0 || size > words_.comment_length) size = words_.comment_length; // one long word
        }
        const std::string line = text.substr(at, size);
        block(in_parentheses ? '(' + line + ')' : "; " + line);
        at += size;
    }
}

std::string block_writer::coordinates(const move& m, bool all) {
    std::string words;
    const auto put = [&](char letter, const std::optional<length>& to, std::optional<length>& known) {
        if (!to) return;
        const length on_grid = words_.on_grid(*to);
        if (all || words_.repeat_modal_words || known != on_grid) {
            words += ' ';
            words += letter + words_.number(on_grid);
        }
        known = on_grid;
    };
    put('X', m.x, x_);
    put('Y', m.y, y_);
    put('Z', m.z, z_);
    return words;
}

std::string block_writer::feed(double mm_a_minute, bool always) {
    if (!(mm_a_minute > 0)) return {};
    std::string word = words_.feed(mm_a_minute);
    if (!always && !words_.repeat_modal_words && word == feed_) return {};
    feed_ = std::move(word);
    return " F" + feed_;
}

void block_writer::go(const move& m) {
    const std::string where = coordinates(m, false);
    if (where.empty() && m.with.empty()) return;
    std::string words;
    if (m.code != code_ || words_.repeat_modal_words) words = m.code;
    code_ = m.code;
    if (!m.with.empty()) words += ' ' + m.with;
    words += where + feed(m.feed, false);
    block(std::string_view(words).substr(words.starts_with(' ') ? 1 : 0));
}

void block_writer::turn(const move& m, const centre& c) {
    std::string words(m.code); // an arc is written whole: controls differ in what
                               // they keep of it
    code_ = m.code;
    words += coordinates(m, true);
    if (words_.arcs_by_radius) words += " R" + words_.number(c.radius);
    else words += " I" + words_.number(c.i) + " J" + words_.number(c.j);
    block(words + feed(m.feed, false));
}

void block_writer::cycle(std::string_view code, const move& m, const std::string& own) {
    std::string words(code);
    words += coordinates(m, true) + own + feed(m.feed, true);
    block(words);
    code_.clear();
    z_.reset(); // where the cycle ends up is the control's to know
}

void block_writer::forget() {
    code_.clear();
    x_.reset();
    y_.reset();
    z_.reset();
    feed_.clear();
}

} // namespace post_bores
