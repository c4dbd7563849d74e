#ifndef JOB_SHEET_TABLE_READER_HPP
#define JOB_SHEET_TABLE_READER_HPP

#include "document.hpp"
#include "job.hpp"
#include "toml.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace job_sheet {

[[nodiscard]] place place_of(const toml::node& node);

/// A piece of text in the job file and the place of its opening quotation mark.
struct placed_text {
    std::string text;
    place where;
};

/// Reads one table of the job file. Whatever is wrong (a key missing, of another type, not known) is
/// reported to the document and reading goes on with nothing in its place. A key is known if it has
/// been asked for; `finish` reports the others.
class table_reader {
public:
    /// `what` names the table in messages: "a pair".
    table_reader(const toml::table& table, std::string what, document& doc)
        : table_(table), what_(std::move(what)), doc_(doc) {}

    [[nodiscard]] bool has(std::string_view key) const { return table_.contains(key); }
    [[nodiscard]] place where() const { return place_of(table_); }
    [[nodiscard]] place where(std::string_view key) const;

    std::string required_text(std::string_view key);
    std::string text(std::string_view key);
    /// `example` shows how to write it, for what has a unit: "28 mm".
    std::optional<placed_text> placed(std::string_view key, std::string_view example = {});
    std::vector<placed_text> texts(std::string_view key, std::string_view example = {});
    bool flag(std::string_view key);
    /// A whole number of things: nothing that has a unit.
    std::optional<std::int64_t> whole(std::string_view key);

    std::optional<stated<fitwright::length>> length(std::string_view key);
    std::vector<stated<fitwright::length>> lengths(std::string_view key);
    std::optional<stated<fitwright::clearance_window>> window(std::string_view key);
    std::optional<stated<fitwright::temperature>> temperature(std::string_view key);
    std::optional<stated<fitwright::pressure>> pressure(std::string_view key);
    std::optional<stated<fitwright::dynamic_viscosity>> viscosity(std::string_view key);
    std::optional<stated<double>> time(std::string_view key);
    std::optional<stated<double>> share(std::string_view key);
    /// A bare number, 1 or more: how many times over something is to hold.
    std::optional<double> factor(std::string_view key);
    std::optional<stated<double>> force(std::string_view key);
    std::optional<stated<double>> speed(std::string_view key);
    std::optional<stated<fitwright::grade>> grade(std::string_view key);
    std::optional<stated<fitwright::iso_vg>> oil(std::string_view key);

    const toml::table* table(std::string_view key);
    const toml::table* required_table(std::string_view key);
    std::vector<const toml::table*> tables(std::string_view key);

    /// Reports that a key is missing: for keys that are wanted only beside others.
    void report_missing(std::string_view key, std::string_view why = {});
    /// Reports what the library says of a piece of text, at its place in the file.
    void report(const placed_text& text, const fitwright::error& e);
    void report(place where, std::string message) { doc_.report(where, std::move(message)); }

    /// Reports every key that nobody has asked for.
    void finish();

private:
    const toml::node* find(std::string_view key);
    std::optional<placed_text> text_of(const toml::node& node, std::string_view key,
                                       std::string_view example);
    std::string describe(std::string_view key) const;

    const toml::table& table_;
    std::string what_;
    document& doc_;
    std::vector<std::string> known_;
};

} // namespace job_sheet

#endif
