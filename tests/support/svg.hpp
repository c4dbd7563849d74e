#ifndef FITWRIGHT_TESTS_SUPPORT_SVG_HPP
#define FITWRIGHT_TESTS_SUPPORT_SVG_HPP

#include <fitwright/picture/draw.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

// Reads a picture back: a small parser of XML that takes no nonsense, the words on the picture with the room
// they take, the boxes of its paths.

namespace fitwright_tests {

struct element {
    std::string name;
    std::map<std::string, std::string> attributes;
    std::string words;               ///< between its tags, unescaped
    std::vector<std::string> inside; ///< names of the elements around it, the outermost first

    [[nodiscard]] std::string get(const std::string& key, const std::string& otherwise = "") const {
        const auto found = attributes.find(key);
        return found == attributes.end() ? otherwise : found->second;
    }
    [[nodiscard]] double number(const std::string& key, double otherwise) const {
        const auto found = attributes.find(key);
        return found == attributes.end() ? otherwise : std::stod(found->second);
    }
};

/// The elements in the order they begin; empty, and the reason in `fault`, if it is not well formed.
class svg_reader {
public:
    explicit svg_reader(std::string_view text) : rest_(text) { read(); }

    std::vector<element> elements;
    std::string fault;

private:
    void fail(const std::string& why) {
        if (fault.empty()) fault = why + " before: " + std::string(rest_.substr(0, 60));
        elements.clear();
    }
    bool take(std::string_view wanted) {
        if (rest_.substr(0, wanted.size()) != wanted) return false;
        rest_.remove_prefix(wanted.size());
        return true;
    }
    void blanks() {
        while (!rest_.empty() && (rest_[0] == ' ' || rest_[0] == '\n')) rest_.remove_prefix(1);
    }
    std::string name() {
        std::size_t n = 0;
        while (n < rest_.size() && (std::isalnum(static_cast<unsigned char>(rest_[n])) || rest_[n] == '-'))
            ++n;
        std::string made(rest_.substr(0, n));
        rest_.remove_prefix(n);
        return made;
    }
    std::string unescaped(std::string_view t) {
        std::string plain;
        for (std::size_t i = 0; i < t.size();) {
            const auto code = static_cast<unsigned char>(t[i]);
            if (t[i] == '<' || t[i] == '>' || t[i] == '"' || t[i] == '\'') fail("a bare character of markup");
            if ((code < 0x20 && t[i] != '\n') || code == 0x7F) fail("a control character");
            if (t[i] != '&') {
                plain += t[i++];
                continue;
            }
            bool is_known = false;
            for (const auto& [entity, character] : std::map<std::string, char>{
                     {"&amp;", '&'}, {"&lt;", '<'}, {"&gt;", '>'}, {"&quot;", '"'}, {"&#39;", '\''}})
                if (t.substr(i, entity.size()) == entity) {
                    plain += character;
                    i += entity.size();
                    is_known = true;
                    break;
                }
            if (!is_known) {
                fail("an entity that is not known");
                return plain;
            }
        }
        return plain;
    }
    void read() {
        std::vector<std::size_t> open;
        bool had_root = false;
        while (fault.empty()) {
            const std::size_t tag = rest_.find('<');
            const std::string words = unescaped(rest_.substr(0, tag));
            if (!open.empty()) elements[open.back()].words += words;
            else if (words.find_first_not_of(" \n") != std::string::npos) return fail("words outside");
            if (tag == std::string_view::npos) break;
            rest_.remove_prefix(tag + 1);
            if (take("/")) {
                const std::string closed = name();
                if (open.empty() || elements[open.back()].name != closed || !take(">"))
                    return fail("a tag not opened");
                open.pop_back();
                continue;
            }
            element e;
            e.name = name();
            if (e.name.empty()) return fail("no name");
            if (open.empty() && had_root) return fail("a second root");
            had_root = true;
            for (const std::size_t o : open) e.inside.push_back(elements[o].name);
            for (blanks(); !rest_.empty() && rest_[0] != '>' && rest_[0] != '/'; blanks()) {
                const std::string key = name();
                if (key.empty() || !take("=\"")) return fail("no attribute");
                const std::size_t end = rest_.find('"');
                if (end == std::string_view::npos) return fail("no end of an attribute");
                if (!e.attributes.emplace(key, unescaped(rest_.substr(0, end))).second)
                    return fail("an attribute twice");
                rest_.remove_prefix(end + 1);
            }
            const bool is_empty = take("/");
            if (!take(">")) return fail("no end of a tag");
            elements.push_back(e);
            if (!is_empty) open.push_back(elements.size() - 1);
        }
        if (fault.empty() && !open.empty()) fail("a tag not closed");
    }

    std::string_view rest_;
};

struct rectangle {
    double left;
    double top;
    double right;
    double bottom;

    [[nodiscard]] bool overlaps(const rectangle& o) const {
        return left < o.right && o.left < right && top < o.bottom && o.top < bottom;
    }
};

/// The numbers of a path's data, as they are written.
inline std::vector<double> numbers_of(const std::string& data) {
    std::vector<double> all;
    for (std::size_t i = 0; i < data.size();) {
        std::size_t used = 0;
        if (std::isdigit(static_cast<unsigned char>(data[i])) || data[i] == '-') {
            all.push_back(std::stod(data.substr(i), &used));
            i += used;
        } else ++i;
    }
    return all;
}

/// Where a path goes: every place its pen comes to, for the commands that the pictures use.
inline std::vector<std::pair<double, double>> places_of(const std::string& data) {
    std::vector<std::pair<double, double>> all;
    double x = 0;
    double y = 0;
    for (std::size_t i = 0; i < data.size();) {
        const char command = data[i];
        const std::size_t end = data.find_first_of("MLHVZlhvz", i + 1);
        const auto n = numbers_of(data.substr(i + 1, end == std::string::npos ? end : end - i - 1));
        const bool is_relative = std::islower(static_cast<unsigned char>(command)) != 0;
        switch (std::toupper(static_cast<unsigned char>(command))) {
        case 'M':
        case 'L':
            REQUIRE(n.size() == 2);
            x = is_relative ? x + n[0] : n[0];
            y = is_relative ? y + n[1] : n[1];
            break;
        case 'H':
            REQUIRE(n.size() == 1);
            x = is_relative ? x + n[0] : n[0];
            break;
        case 'V':
            REQUIRE(n.size() == 1);
            y = is_relative ? y + n[0] : n[0];
            break;
        case 'Z': REQUIRE(n.empty()); break;
        default: FAIL("a path command that is not known: " << command);
        }
        all.emplace_back(x, y);
        i = end == std::string::npos ? data.size() : end;
    }
    return all;
}

/// A box as `canvas::box` writes it: M left top H right V bottom H left Z.
inline rectangle box_of(const element& e) {
    const auto n = numbers_of(e.get("d"));
    REQUIRE(n.size() == 5);
    REQUIRE(n[4] == n[0]);
    return {n[0], n[1], n[2], n[3]};
}

/// One picture: well formed, or the test ends here.
class picture_read {
public:
    explicit picture_read(const std::string& svg) : reader_(svg) {
        INFO(svg);
        REQUIRE_MESSAGE(reader_.fault.empty(), reader_.fault);
        REQUIRE(!reader_.elements.empty());
    }

    [[nodiscard]] const std::vector<element>& all() const { return reader_.elements; }
    [[nodiscard]] const element& root() const { return reader_.elements.front(); }

    /// The words, line by line.
    [[nodiscard]] std::vector<element> texts() const {
        std::vector<element> found;
        for (const element& e : all())
            if (e.name == "text") found.push_back(e);
        return found;
    }
    [[nodiscard]] std::vector<element> of_class(const std::string& kind) const {
        std::vector<element> found;
        for (const element& e : all())
            if (e.get("class") == "fw-" + kind) found.push_back(e);
        return found;
    }
    [[nodiscard]] rectangle box(const std::string& kind, std::size_t which = 0) const {
        const auto found = of_class(kind);
        REQUIRE(found.size() > which);
        return box_of(found[which]);
    }
    /// All words, a line each.
    [[nodiscard]] std::string words() const {
        std::string made;
        for (const element& e : texts()) made += e.words + "\n";
        return made;
    }
    [[nodiscard]] bool says(const std::string& wanted) const {
        std::string joined = words();
        std::replace(joined.begin(), joined.end(), '\n', ' ');
        return joined.find(wanted) != std::string::npos;
    }
    [[nodiscard]] bool has_line(const std::string& wanted) const {
        for (const element& e : texts())
            if (e.words == wanted) return true;
        return false;
    }

    /// The room a line of words takes in a wide sans-serif: from its capitals to its descenders.
    [[nodiscard]] static rectangle room_of(const element& e) {
        using namespace fitwright::detail::svg;
        const double size = e.number("font-size", 13);
        const letters l{.size = px{static_cast<std::int64_t>(size * 100)},
                        .is_bold = e.get("font-weight") == "bold"};
        double width = static_cast<double>(width_of(fitwright::text(e.words), l).hundredths) / 100;
        width = (std::min)(width, e.number("textLength", width));
        const double x = e.number("x", 0);
        const double y = e.number("y", 0);
        const std::string at = e.get("text-anchor", "start");
        const double left = at == "end" ? x - width : at == "middle" ? x - width / 2 : x;
        return {left, y - 0.76 * size, left + width, y + 0.24 * size};
    }

    /// What every picture keeps: its words lie apart and on the paper, large enough and dark enough; it can be
    /// read out; nothing is fetched, run or named.
    void check_house_rules() const {
        const element& svg = root();
        CHECK(svg.name == "svg");
        CHECK(svg.get("role") == "img");
        CHECK(!svg.get("aria-label").empty());
        const auto frame = numbers_of(svg.get("viewBox"));
        REQUIRE(frame.size() == 4);
        CHECK(frame[2] == 360);
        CHECK(svg.number("width", 0) == frame[2]);
        CHECK(svg.number("height", 0) == frame[3]);
        CHECK(frame[3] * 25.4 / 96 < 260); // mm, on A4
        REQUIRE(all().size() > 2);
        CHECK(all()[1].name == "title");
        CHECK(all()[2].name == "desc");
        CHECK(!all()[1].words.empty());
        CHECK(!all()[2].words.empty());

        const std::set<std::string> known{"svg", "title", "desc", "g", "path", "text"};
        for (const element& e : all()) {
            CHECK_MESSAGE(known.count(e.name) == 1, e.name);
            for (const auto& [key, value] : e.attributes) {
                CHECK(key != "id");
                CHECK(key.substr(0, 2) != "on");
                CHECK(key.find("href") == std::string::npos);
                CHECK(value.find("url(") == std::string::npos);
            }
            for (const char* key : {"fill", "stroke"}) {
                const std::string colour = e.get(key, "none");
                CHECK_MESSAGE((colour == "none" || (colour.size() == 7 && colour[0] == '#')), colour);
            }
            const std::string font = e.get("font-family");
            CHECK((font.empty() || font == "sans-serif"));
        }

        for (const element& e : all()) // every line stays on the paper
            for (const auto& [x, y] : places_of(e.get("d")))
                if (!(x >= 0 && x <= frame[2] && y >= 0 && y <= frame[3]))
                    FAIL_CHECK(e.get("class") << " " << e.get("d"));

        const auto lines = texts();
        std::vector<rectangle> rooms;
        for (const element& e : lines) {
            CHECK(e.number("font-size", 13) >= 11);
            CHECK(contrast_with_white(e.get("fill", "#14181c")) >= 4.5);
            rooms.push_back(room_of(e));
            if (!e.get("textLength").empty()) { // squeezed, but not beyond reading
                element free = e;
                free.attributes.erase("textLength");
                const rectangle unsqueezed = room_of(free);
                CHECK(e.number("textLength", 0) >= 0.8 * (unsqueezed.right - unsqueezed.left));
            }
            INFO(e.words);
            CHECK(rooms.back().left >= 0);
            CHECK(rooms.back().right <= frame[2]);
            CHECK(rooms.back().top >= 0);
            CHECK(rooms.back().bottom <= frame[3]);
        }
        for (std::size_t i = 0; i < rooms.size(); ++i)
            for (std::size_t k = i + 1; k < rooms.size(); ++k) {
                INFO(lines[i].words << " | " << lines[k].words);
                CHECK_FALSE(rooms[i].overlaps(rooms[k]));
            }
    }

    /// WCAG 2.1: relative luminance, and the ratio to white.
    static double contrast_with_white(const std::string& colour) {
        REQUIRE(colour.size() == 7);
        double luminance = 0;
        const double weights[] = {0.2126, 0.7152, 0.0722};
        for (std::size_t i = 0; i < 3; ++i) {
            const double part = std::stoi(colour.substr(1 + 2 * i, 2), nullptr, 16) / 255.0;
            luminance +=
                weights[i] * (part <= 0.03928 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4));
        }
        return 1.05 / (luminance + 0.05);
    }

private:
    svg_reader reader_;
};

/// The picture as a string; it has to be drawn.
template <class Picture> std::string svg_of(const Picture& p) {
    std::string made;
    const auto drawn =
        fitwright::draw(p, [&](fitwright::text piece) { made.append(piece.data(), piece.size()); });
    if (!drawn) FAIL(std::string(drawn.error().message()));
    CHECK(drawn->bytes == made.size());
    return made;
}

/// Every number in words, with its sign: "+18", "-6", "11.994".
inline std::vector<std::string> numbers_in(const std::string& words) {
    std::vector<std::string> all;
    const auto is_digit = [](char c) { return c >= '0' && c <= '9'; };
    for (std::size_t i = 0; i < words.size(); ++i) {
        const bool has_sign =
            (words[i] == '+' || words[i] == '-') && i + 1 < words.size() && is_digit(words[i + 1]);
        if (!is_digit(words[i]) && !has_sign) continue;
        std::size_t end = i + 1;
        while (end < words.size() && (is_digit(words[end]) || (words[end] == '.' && end + 1 < words.size() &&
                                                               is_digit(words[end + 1]))))
            ++end;
        all.push_back(words.substr(i, end - i));
        i = end - 1;
    }
    return all;
}

} // namespace fitwright_tests

#endif
