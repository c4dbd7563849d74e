#include "read_dialect.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

namespace post_bores {

namespace {

bool has_digits_only(std::string_view text) {
    return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

/// "G54", "G38.2", "M8".
bool is_word(std::string_view text) {
    if (text.empty() || (text[0] != 'G' && text[0] != 'M')) return false;
    text.remove_prefix(1);
    const std::size_t point = text.find('.');
    return has_digits_only(text.substr(0, point)) &&
           (point == std::string_view::npos || has_digits_only(text.substr(point + 1)));
}

std::string one_of_these(const std::vector<std::string>& words) {
    return fmt::format(": one of {}", fmt::join(words, ", "));
}

/// Which of the words it is; the first where it is none.
std::size_t one_of(table_reader& r, std::string_view key, const std::vector<std::string>& words) {
    if (!r.has(key)) r.report_missing(key, one_of_these(words));
    const auto written = r.placed(key);
    if (!written) return 0;
    const auto found = std::find(words.begin(), words.end(), written->text);
    if (found != words.end()) return static_cast<std::size_t>(found - words.begin());
    r.report(written->where, fmt::format("'{}' is no '{}'{}", written->text, key, one_of_these(words)));
    return 0;
}

bool required_flag(table_reader& r, std::string_view key) {
    if (!r.has(key)) r.report_missing(key, ": true or false");
    return r.flag(key);
}

/// A word, or "" for a control that has none.
std::string word_or_none(table_reader& r, std::string_view key, std::string_view such_as) {
    if (!r.has(key)) r.report_missing(key, fmt::format(": {}, or \"\" for none", such_as));
    const auto written = r.placed(key);
    if (!written) return {};
    if (!written->text.empty() && !is_word(written->text))
        r.report(written->where,
                 fmt::format("'{}' is no word of a program: {}, or \"\" for none", written->text, such_as));
    return written->text;
}

first_register required_register(table_reader& r, std::string_view key, std::string_view letter) {
    if (!r.has(key)) r.report_missing(key, fmt::format(": the register of tool 1, such as {}1", letter));
    const auto written = r.placed(key);
    if (!written) return {};
    const std::string_view text = written->text;
    if (text.starts_with(letter) && has_digits_only(text.substr(1)) && text.size() <= 5)
        return {std::string(letter), std::stoi(written->text.substr(1))};
    r.report(written->where, fmt::format("'{}' is no register: {}1 is the first", text, letter));
    return {};
}

} // namespace

length required_length(table_reader& r, std::string_view key) {
    if (!r.has(key)) r.report_missing(key, ", a length such as \"2 mm\"");
    const auto read = r.length(key);
    if (!read) return {};
    if (read->value <= length()) r.report(r.where(key), fmt::format("'{}' is above 0", key));
    return read->value;
}

int required_whole(table_reader& r, std::string_view key, int least, int most) {
    if (!r.has(key)) r.report_missing(key, fmt::format(": {} to {}", least, most));
    const auto read = r.whole(key);
    if (read && least <= *read && *read <= most) return static_cast<int>(*read);
    if (read)
        r.report(r.where(key), fmt::format("'{}' is {}: allowed are {} to {}", key, *read, least, most));
    return least;
}

std::string required_word(table_reader& r, std::string_view key, std::string_view such_as) {
    const std::string word = r.required_text(key);
    if (!word.empty() && !is_word(word))
        r.report(r.where(key), fmt::format("'{}' is no word of a program: {}", word, such_as));
    return word;
}

double required_speed(table_reader& r, std::string_view key, speed_unit in) {
    if (!r.has(key)) r.report_missing(key, fmt::format(", such as \"100 {}\"", in.unit));
    const auto written = r.placed(key, fmt::format("100 {}", in.unit));
    if (!written) return 0;
    double number = 0;
    const std::string& text = written->text;
    const auto [end, wrong] = std::from_chars(text.data(), text.data() + text.size(), number);
    const std::string_view unit(end, static_cast<std::size_t>(text.data() + text.size() - end));
    if (wrong == std::errc() && number > 0 && number < 1e6 && unit == fmt::format(" {}", in.unit))
        return number;
    r.report(written->where, fmt::format("'{}': write it as in 100 {}, above 0", text, in.unit));
    return 0;
}

dialect read_dialect(const toml::table& table, job_sheet::document& doc) {
    table_reader r(table, "[dialect]", doc);
    dialect d;
    const std::vector<std::string> units = {"G21", "G71", "G20", "G70"};
    const std::size_t unit = one_of(r, "units_word", units);
    d.units_word = units[unit];
    d.inches = unit >= 2;
    d.decimals = required_whole(r, "decimals", 2, 5);
    d.always_a_point = required_flag(r, "always_a_point");
    d.repeat_modal_words = required_flag(r, "repeat_modal_words");
    d.comments = static_cast<comment_style>(one_of(r, "comments", {"parentheses", "semicolon", "none"}));
    d.comment_length = static_cast<std::size_t>(required_whole(r, "comment_length", 20, 200));
    d.upper_case = required_flag(r, "upper_case");
    d.arcs_by_radius = one_of(r, "arc_centres", {"IJ", "R"}) == 1;
    constexpr int arcs_a_turn[] = {1, 2, 4};
    d.arcs_a_turn = arcs_a_turn[one_of(r, "circles", {"full", "half", "quarter"})];
    if (d.arcs_by_radius && d.arcs_a_turn == 1)
        r.report(r.where("circles"), "R says nothing of a full circle: with R circles are half or quarter");
    if (!r.has("cycles")) r.report_missing("cycles", ": those of G81, G83, G85 that the control has, or []");
    for (const auto& cycle : r.texts("cycles", "G81")) {
        const std::vector<std::string> known = {"G81", "G83", "G85"};
        if (std::find(known.begin(), known.end(), cycle.text) != known.end()) d.cycles.push_back(cycle.text);
        else
            r.report(cycle.where,
                     fmt::format("'{}' is no cycle that is used here{}", cycle.text, one_of_these(known)));
    }
    d.percent_signs = required_flag(r, "percent_signs");
    if (!r.has("program_number")) r.report_missing("program_number", ": \"O0006\", or \"\" for none");
    d.program_number = r.text("program_number");
    if (!d.program_number.empty() &&
        (d.program_number[0] != 'O' || !has_digits_only(std::string_view(d.program_number).substr(1))))
        r.report(r.where("program_number"), "a program's number is an O and digits");
    d.tool_change = word_or_none(r, "tool_change", "M6");
    d.coolant = word_or_none(r, "coolant", "M8");
    r.finish();
    return d;
}

offsets read_offsets(const toml::table& table, job_sheet::document& doc) {
    table_reader r(table, "[offsets]", doc);
    offsets o;
    o.work = required_word(r, "work", "G54");
    o.length = word_or_none(r, "length", "G43");
    o.length_register = required_register(r, "length_register", "H");
    o.radius_register = required_register(r, "radius_register", "D");
    o.holds = static_cast<register_holds>(one_of(r, "radius_register_holds", {"radius", "diameter"}));
    r.finish();
    return o;
}

} // namespace post_bores
