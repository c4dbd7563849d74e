#ifndef POST_BORES_BLOCK_WRITER_HPP
#define POST_BORES_BLOCK_WRITER_HPP

#include "machine.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace post_bores {

/// The words of a straight or round move. Those that are not given stay as they
/// are.
struct move {
    std::string_view code; ///< "G0", "G1", "G3", or the word that probes
    std::string with = {}; ///< words in front of the coordinates: "G41 D3"
    std::optional<length> x = {};
    std::optional<length> y = {};
    std::optional<length> z = {};
    double feed = 0; ///< mm a minute; 0 as it is
};

/// Where a round move turns: both from its start, and how far away that is.
struct centre {
    length i;
    length j;
    length radius;
};

/// Writes a program block by block in the words of a control (RS-274, ISO
/// 6983), and leaves out modal words that hold already.
class block_writer {
public:
    explicit block_writer(const dialect& words) : words_(words) {}

    /// A block as it is.
    void block(std::string_view words) { text_.append(words) += '\n'; }
    /// A comment in ASCII without brackets, in as many blocks as it takes.
    void comment(std::string_view utf8);
    /// Nothing, if it changes nothing.
    void go(const move& m);
    void turn(const move& m, const centre& c);
    /// A canned cycle, with all its words; `own` has those in front of F.
    void cycle(std::string_view code, const move& m, const std::string& own);
    /// From here on nothing is known of what holds: behind a cycle, a tool
    /// change.
    void forget();

    [[nodiscard]] std::string take() { return std::move(text_); }

private:
    std::string coordinates(const move& m, bool all);
    std::string feed(double mm_a_minute, bool always);

    const dialect& words_;
    std::string text_;
    std::string code_;
    std::optional<length> x_;
    std::optional<length> y_;
    std::optional<length> z_;
    std::string feed_;
};

} // namespace post_bores

#endif
