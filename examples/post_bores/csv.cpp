#include "csv.hpp"

#include "shared/utf8.hpp"

namespace post_bores {

namespace {

using shared::utf8_size;

class csv_reader {
public:
    explicit csv_reader(std::string_view text) : rest_(text) {
        if (rest_.starts_with("\xEF\xBB\xBF")) rest_.remove_prefix(3);
    }

    std::variant<std::vector<csv_record>, fault> read() {
        std::vector<csv_record> all;
        while (!rest_.empty()) {
            if (skip_line_end()) continue;
            csv_record record;
            do {
                record.push_back(read_cell());
                if (!wrong_.empty()) return fault{here_, wrong_};
            } while (skip(","));
            if (!rest_.empty() && !skip_line_end())
                return fault{here_, "a cell ends at its closing quotation mark: a "
                                    "comma or the end of the line "
                                    "is wanted here"};
            all.push_back(std::move(record));
        }
        return all;
    }

private:
    csv_cell read_cell() {
        csv_cell cell;
        cell.quoted = skip("\"");
        cell.where = here_;
        if (cell.quoted) read_quoted(cell);
        else read_bare(cell);
        return cell;
    }

    void read_bare(csv_cell& cell) {
        while (wrong_.empty() && !rest_.empty() && rest_[0] != ',' && !at_line_end()) {
            if (rest_[0] == '"')
                wrong_ = "a quotation mark inside a cell: put the cell in quotation "
                         "marks, and "
                         "write the mark in it twice";
            else take(cell.text);
        }
    }

    void read_quoted(csv_cell& cell) {
        const place opening{cell.where.line, cell.where.column - 1};
        while (wrong_.empty()) {
            if (rest_.empty()) {
                here_ = opening;
                wrong_ = "this quotation mark is never closed";
            } else if (skip("\"\"")) {
                cell.text += '"';
            } else if (rest_[0] == '"') {
                skip("\"");
                return;
            } else {
                take(cell.text);
            }
        }
    }

    void take(std::string& text) {
        const std::size_t size = utf8_size(rest_);
        if (size == 0) {
            wrong_ = "not UTF-8 from here on: save the list as UTF-8";
            return;
        }
        text += rest_.substr(0, size);
        here_ = rest_[0] == '\n' ? place{here_.line + 1, 1} : place{here_.line, here_.column + 1};
        rest_.remove_prefix(size);
    }

    [[nodiscard]] bool at_line_end() const { return rest_.starts_with('\n') || rest_.starts_with("\r\n"); }

    bool skip_line_end() {
        if (!at_line_end()) return false;
        rest_.remove_prefix(rest_[0] == '\r' ? 2 : 1);
        here_ = {here_.line + 1, 1};
        return true;
    }

    bool skip(std::string_view wanted) {
        if (!rest_.starts_with(wanted)) return false;
        rest_.remove_prefix(wanted.size());
        here_.column += wanted.size();
        return true;
    }

    std::string_view rest_;
    place here_;
    std::string wrong_;
};

} // namespace

place csv_cell::inside(std::size_t character) const {
    place at = where;
    for (const char c : text) {
        if ((static_cast<unsigned char>(c) & 0xC0) == 0x80) continue;
        if (--character == 0) break;
        if (c == '\n') at = {at.line + 1, 1};
        else at.column += c == '"' ? 2 : 1; // written twice, since the cell is quoted then
    }
    return at;
}

std::variant<std::vector<csv_record>, fault> read_csv(std::string_view text) {
    return csv_reader(text).read();
}

std::string csv_line(const std::vector<std::string>& cells) {
    std::string line;
    for (bool is_first = true; const std::string& cell : cells) {
        if (!is_first) line += ',';
        is_first = false;
        if (cell.find_first_of(",\"\r\n") == std::string::npos) {
            line += cell;
            continue;
        }
        line += '"';
        for (const char c : cell) line += c == '"' ? std::string("\"\"") : std::string(1, c);
        line += '"';
    }
    return line + '\n';
}

} // namespace post_bores
