// callouts: call-outs on standard input, one a line; their limits as CSV on standard output.
//
// The CSV follows RFC 4180 but for its line ends, which are a plain LF. A fit gives two rows, hole
// then shaft; limits without a class one row, `size`, whose nominal size is the one written or, of
// two limits, the smaller. A line that is no call-out (an empty one too) gives a row with the error
// and its column, counted in characters from 1. Every number is written from whole nanometres.
//
// Exit status: 0 all good; 1 some line was bad; 2 misuse, or input or output failed.

#include "shared/utf8.hpp"
#include <fitwright/callout.hpp>

#include <CLI/CLI.hpp>

#include <array>
#include <charconv>
#include <cstdint>
#include <cstdio>
#include <cstring>
#include <new>
#include <optional>
#include <string_view>
#include <vector>

namespace {

using shared::utf8_size;

using fitwright::callout_part;
using fitwright::length;

/// The lines of a file, read in big blocks. A line is good until the next is asked for.
class line_source {
public:
    explicit line_source(std::FILE* file) : file_(file), buffer_(1 << 18) {}

    /// The next line without its LF or CRLF; nothing behind the last one.
    std::optional<std::string_view> next() {
        std::size_t searched = begin_;
        for (;;) {
            const char* const from = buffer_.data() + searched;
            if (const void* const found = std::memchr(from, '\n', end_ - searched)) {
                const auto size =
                    static_cast<std::size_t>(static_cast<const char*>(found) - buffer_.data()) - begin_;
                return take(size, 1);
            }
            searched = end_ - begin_; // where to go on once the rest of the line has moved to the front
            if (!read_more()) break;
        }
        if (begin_ == end_) return std::nullopt;
        return take(end_ - begin_, 0);
    }

    [[nodiscard]] bool failed() const { return std::ferror(file_) != 0; }

private:
    std::string_view take(std::size_t size, std::size_t line_end) {
        std::string_view line(buffer_.data() + begin_, size);
        begin_ += size + line_end;
        if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
        return line;
    }

    bool read_more() {
        std::memmove(buffer_.data(), buffer_.data() + begin_, end_ - begin_);
        end_ -= begin_;
        begin_ = 0;
        if (end_ == buffer_.size()) buffer_.resize(2 * buffer_.size()); // one line fills it
        const std::size_t got = std::fread(buffer_.data() + end_, 1, buffer_.size() - end_, file_);
        end_ += got;
        return got > 0;
    }

    std::FILE* file_;
    std::vector<char> buffer_;
    std::size_t begin_ = 0;
    std::size_t end_ = 0;
};

/// CSV, gathered in one buffer. A write that fails is remembered and ends all writing.
class csv_writer {
public:
    explicit csv_writer(std::FILE* file) : file_(file), buffer_(1 << 16) {}

    void put(char c) {
        if (used_ == buffer_.size()) flush();
        buffer_[used_++] = c;
    }

    void put(std::string_view characters) {
        if (characters.size() > buffer_.size() - used_) flush();
        if (characters.size() > buffer_.size()) return write(characters);
        std::memcpy(buffer_.data() + used_, characters.data(), characters.size());
        used_ += characters.size();
    }

    /// A cell of any text, in quotation marks where it needs them. What CSV or UTF-8 has no room
    /// for is replaced by U+FFFD: each byte that is not UTF-8, and each control character but
    /// the tabulator and the carriage return.
    void put_cell(std::string_view cell) {
        bool plain = true;
        for (const char c : cell) plain = plain && c >= ' ' && c <= '~' && c != ',' && c != '"';
        if (plain) return put(cell);
        put('"');
        while (!cell.empty()) {
            const std::size_t size = utf8_size(cell);
            const auto c = static_cast<unsigned char>(cell[0]);
            const bool control = (c < 0x20 && c != '\t' && c != '\r') || c == 0x7F;
            if (c == '"') put("\"\"");
            else if (size == 0 || control) put("\xEF\xBF\xBD");
            else put(cell.substr(0, size));
            cell.remove_prefix(size == 0 ? 1 : size);
        }
        put('"');
    }

    /// `n` / 10^`Decimals`, exactly, three digits at a time: no zeros at the end beyond `least_decimals`,
    /// 3 at the most.
    template <int Decimals> void put_number(std::int64_t n, int least_decimals) {
        static_assert(Decimals == 3 || Decimals == 6);
        constexpr std::uint64_t one = Decimals == 3 ? 1'000 : 1'000'000;
        char* at = room_for_a_number();
        auto magnitude = static_cast<std::uint64_t>(n);
        if (n < 0) {
            magnitude = 0 - magnitude;
            *at++ = '-';
        }
        at = put_whole(at, magnitude / one);
        const std::uint64_t fraction = magnitude % one;
        if (fraction != 0 || least_decimals > 0) {
            *at++ = '.';
            const char* const least = at + least_decimals;
            at = put_three(at, Decimals == 3 ? fraction : fraction / 1000);
            if (Decimals == 6 && fraction % 1000 != 0) at = put_three(at, fraction % 1000);
            while (at > least && at[-1] == '0') --at;
        }
        used_ = static_cast<std::size_t>(at - buffer_.data());
    }

    void put_number(std::uint32_t n) {
        used_ = static_cast<std::size_t>(put_whole(room_for_a_number(), n) - buffer_.data());
    }

    void flush() {
        write({buffer_.data(), used_});
        used_ = 0;
    }

    [[nodiscard]] bool failed() const { return failed_; }

private:
    /// "000" to "999", one behind the other.
    static constexpr std::array<char, 3000> threes = [] {
        std::array<char, 3000> all{};
        for (std::size_t i = 0; i < 3000; ++i) {
            const std::size_t of_place[] = {i / 300, i / 30, i / 3};
            all[i] = static_cast<char>('0' + of_place[i % 3] % 10);
        }
        return all;
    }();

    static char* put_three(char* at, std::uint64_t n) {
        std::memcpy(at, threes.data() + 3 * n, 3);
        return at + 3;
    }

    char* put_whole(char* at, std::uint64_t n) {
        if (n > 999) return std::to_chars(at, buffer_.data() + buffer_.size(), n).ptr;
        const std::size_t zeros = n < 10 ? 2 : n < 100 ? 1 : 0;
        std::memcpy(at, threes.data() + 3 * n + zeros, 3 - zeros);
        return at + 3 - zeros;
    }

    char* room_for_a_number() {
        constexpr std::size_t longest_number = 32;
        if (buffer_.size() - used_ < longest_number) flush();
        return buffer_.data() + used_;
    }

    void write(std::string_view characters) {
        if (failed_) return;
        failed_ = std::fwrite(characters.data(), 1, characters.size(), file_) != characters.size();
    }

    std::FILE* file_;
    std::vector<char> buffer_;
    std::size_t used_ = 0;
    bool failed_ = false;
};

constexpr std::string_view header = "callout,part,nominal_mm,lower_deviation_um,upper_deviation_um,"
                                    "lower_limit_mm,upper_limit_mm,error,column\n";

template <fitwright::side Side>
void put_row(csv_writer& out, std::string_view line, std::string_view part,
             const fitwright::size_limits<Side>& l) {
    const auto mm = [&](length size, int least_decimals) {
        out.put(',');
        out.put_number<6>(size.nanometres(), least_decimals);
    };
    const auto um = [&](length deviation) {
        out.put(',');
        out.put_number<3>(deviation.nanometres(), 0);
    };
    out.put_cell(line);
    out.put(',');
    out.put(part);
    mm(l.nominal(), 0);
    um(l.lower_deviation());
    um(l.upper_deviation());
    mm(l.lower_limit(), 3);
    mm(l.upper_limit(), 3);
    out.put(",,\n");
}

void put_row(csv_writer& out, std::string_view line, const fitwright::error& e) {
    out.put_cell(line);
    out.put(",,,,,,,");
    out.put_cell(e.message());
    out.put(',');
    out.put_number(e.column());
    out.put('\n');
}

/// Answers one line; true if it is a call-out.
bool answer(csv_writer& out, std::string_view line, fitwright::reading_options options) {
    const auto read = fitwright::read_callout(line, options);
    if (!read) {
        put_row(out, line, read.error());
        return false;
    }
    const callout_part part = read->part;
    if (part == callout_part::either) put_row(out, line, "size", read->hole);
    if (part == callout_part::hole || part == callout_part::fit) put_row(out, line, "hole", read->hole);
    if (part == callout_part::shaft || part == callout_part::fit) put_row(out, line, "shaft", read->shaft);
    return true;
}

constexpr int all_good = 0;
constexpr int some_bad = 1;
constexpr int broke_off = 2;

int answer_all(std::FILE* from, std::FILE* to, fitwright::reading_options options) {
    line_source lines(from);
    csv_writer out(to);
    bool good = true;
    out.put(header);
    while (!out.failed()) {
        const auto line = lines.next();
        if (!line) break;
        good = answer(out, *line, options) && good;
    }
    out.flush();
    if (lines.failed()) {
        std::fputs("callouts: standard input could not be read to its end\n", stderr);
        return broke_off;
    }
    if (out.failed() || std::fflush(to) != 0) {
        std::fputs("callouts: standard output could not be written\n", stderr);
        return broke_off;
    }
    return good ? all_good : some_bad;
}

} // namespace

int main(int argc, char** argv) {
    CLI::App app(
        "Reads call-outs such as 12 H7/g6 from standard input, one a line; writes their limits as CSV.\n"
        "Exit status: 0 all good; 1 some line was bad; 2 misuse, or input or output failed.",
        "callouts");
    fitwright::reading_options options;
    app.add_flag("--decimal-comma", options.decimal_comma, "12,5 is read as 12.5; the point stays allowed");
    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& e) {
        return app.exit(e) == 0 ? all_good : broke_off;
    }
    try {
        return answer_all(stdin, stdout, options);
    } catch (const std::bad_alloc&) {
        std::fputs("callouts: a line is too long for the memory there is\n", stderr);
        return broke_off;
    }
}
