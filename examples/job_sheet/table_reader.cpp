#include "table_reader.hpp"

#include "measures.hpp"
#include "nearest.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace job_sheet {

namespace {

std::string_view type_in_words(const toml::node& node) {
    switch (node.type()) {
    case toml::node_type::string: return "text";
    case toml::node_type::integer:
    case toml::node_type::floating_point: return "a bare number";
    case toml::node_type::boolean: return "true or false";
    case toml::node_type::array: return "a list";
    case toml::node_type::table: return "a table";
    default: return "a date or time";
    }
}

template <class Value, class Read>
std::optional<stated<Value>> read_stated(table_reader& reader, const std::optional<placed_text>& written,
                                         Read read) {
    if (!written) return std::nullopt;
    const auto value = read(written->text);
    if (value) return stated<Value>{Value(*value), written->text};
    reader.report(*written, value.error());
    return std::nullopt;
}

template <class Quantity, class Read>
std::optional<stated<Quantity>> read_quantity(table_reader& reader, const std::optional<placed_text>& written,
                                              Read read) {
    const auto number = read_stated<double>(reader, written, read);
    if (!number) return std::nullopt;
    return stated<Quantity>{Quantity::from_value(number->value), number->written};
}

} // namespace

place place_of(const toml::node& node) { return {node.source().begin.line, node.source().begin.column}; }

place table_reader::where(std::string_view key) const {
    const toml::node* const node = table_.get(key);
    return node ? place_of(*node) : where();
}

const toml::node* table_reader::find(std::string_view key) {
    if (std::find(known_.begin(), known_.end(), key) == known_.end()) known_.emplace_back(key);
    return table_.get(key);
}

std::string table_reader::describe(std::string_view key) const {
    return fmt::format("'{}' of {}", key, what_);
}

// ---- text

std::optional<placed_text> table_reader::text_of(const toml::node& node, std::string_view key,
                                                 std::string_view example) {
    if (const auto* const text = node.as_string()) return placed_text{text->get(), place_of(node)};
    std::string how = "write it in quotation marks";
    if (!example.empty()) how = fmt::format("write its unit too, in quotation marks, as in \"{}\"", example);
    doc_.report(place_of(node), fmt::format("{} is {}: {}", describe(key), type_in_words(node), how));
    return std::nullopt;
}

std::optional<placed_text> table_reader::placed(std::string_view key, std::string_view example) {
    const toml::node* const node = find(key);
    return node ? text_of(*node, key, example) : std::nullopt;
}

std::string table_reader::text(std::string_view key) {
    const auto read = placed(key);
    return read ? read->text : std::string();
}

std::string table_reader::required_text(std::string_view key) {
    if (!find(key)) report_missing(key);
    const auto read = placed(key);
    if (read && read->text.empty()) doc_.report(read->where, describe(key) + " is empty");
    return read ? read->text : std::string();
}

std::vector<placed_text> table_reader::texts(std::string_view key, std::string_view example) {
    const toml::node* const node = find(key);
    std::vector<placed_text> all;
    if (!node) return all;
    if (const auto* const list = node->as_array()) {
        for (const toml::node& one : *list)
            if (auto text = text_of(one, key, example)) all.push_back(*std::move(text));
    } else {
        doc_.report(place_of(*node), fmt::format("{} is {}: write a list, as in {} = [\"...\"]",
                                                 describe(key), type_in_words(*node), key));
    }
    return all;
}

bool table_reader::flag(std::string_view key) {
    const toml::node* const node = find(key);
    if (!node) return false;
    if (const auto* const flag = node->as_boolean()) return flag->get();
    doc_.report(place_of(*node),
                fmt::format("{} is {}: write true or false", describe(key), type_in_words(*node)));
    return false;
}

std::optional<std::int64_t> table_reader::whole(std::string_view key) {
    const toml::node* const node = find(key);
    if (!node) return std::nullopt;
    if (const auto* const number = node->as_integer()) return number->get();
    doc_.report(place_of(*node),
                fmt::format("{} is {}: write a whole number", describe(key), type_in_words(*node)));
    return std::nullopt;
}

std::optional<double> table_reader::factor(std::string_view key) {
    const toml::node* const node = find(key);
    if (!node) return std::nullopt;
    const auto number = node->value<double>();
    if (number && node->is_number() && *number >= 1 && *number < 1e6) return number;
    doc_.report(place_of(*node),
                fmt::format("{}: write a number from 1 (no reserve) on, such as 2", describe(key)));
    return std::nullopt;
}

// ---- quantities

std::optional<stated<fitwright::length>> table_reader::length(std::string_view key) {
    return read_stated<fitwright::length>(*this, placed(key, "28 mm"), read_length);
}

std::vector<stated<fitwright::length>> table_reader::lengths(std::string_view key) {
    std::vector<stated<fitwright::length>> all;
    for (const placed_text& written : texts(key, "28 mm"))
        if (const auto read = read_stated<fitwright::length>(*this, written, read_length))
            all.push_back(*read);
    return all;
}

std::optional<stated<fitwright::clearance_window>> table_reader::window(std::string_view key) {
    return read_stated<fitwright::clearance_window>(*this, placed(key, "8 um to 20 um"), read_window);
}

std::optional<stated<fitwright::temperature>> table_reader::temperature(std::string_view key) {
    return read_quantity<fitwright::temperature>(*this, placed(key, "95 degC"), read_temperature);
}

std::optional<stated<fitwright::pressure>> table_reader::pressure(std::string_view key) {
    return read_quantity<fitwright::pressure>(*this, placed(key, "0.3 MPa"), read_pressure);
}

std::optional<stated<fitwright::dynamic_viscosity>> table_reader::viscosity(std::string_view key) {
    return read_quantity<fitwright::dynamic_viscosity>(*this, placed(key, "15 mPa s"), read_viscosity);
}

std::optional<stated<double>> table_reader::time(std::string_view key) {
    return read_stated<double>(*this, placed(key, "10 s"), read_time);
}

std::optional<stated<double>> table_reader::force(std::string_view key) {
    return read_stated<double>(*this, placed(key, "60 N"), read_force);
}

std::optional<stated<double>> table_reader::speed(std::string_view key) {
    return read_stated<double>(*this, placed(key, "30 rpm"), read_speed);
}

std::optional<stated<fitwright::iso_vg>> table_reader::oil(std::string_view key) {
    return read_stated<fitwright::iso_vg>(*this, placed(key, "ISO VG 32"), read_oil);
}

std::optional<stated<fitwright::grade>> table_reader::grade(std::string_view key) {
    return read_stated<fitwright::grade>(*this, placed(key, "IT6"), read_grade);
}

std::optional<stated<double>> table_reader::share(std::string_view key) {
    return read_stated<double>(*this, placed(key, "5 %"), read_share);
}

// ---- tables

const toml::table* table_reader::table(std::string_view key) {
    const toml::node* const node = find(key);
    if (!node) return nullptr;
    if (const auto* const table = node->as_table()) return table;
    doc_.report(place_of(*node), fmt::format("{} is {}: write a table, as in {} = {{ ... }}", describe(key),
                                             type_in_words(*node), key));
    return nullptr;
}

const toml::table* table_reader::required_table(std::string_view key) {
    if (!find(key)) report_missing(key);
    return table(key);
}

std::vector<const toml::table*> table_reader::tables(std::string_view key) {
    const toml::node* const node = find(key);
    std::vector<const toml::table*> all;
    if (!node) return all;
    const auto wrong = [&](const toml::node& it) {
        doc_.report(place_of(it),
                    fmt::format("{} is {}: write it as [[{}]]", describe(key), type_in_words(it), key));
    };
    const auto* const list = node->as_array();
    if (!list) {
        wrong(*node);
        return all;
    }
    for (const toml::node& one : *list) {
        if (const auto* const table = one.as_table()) all.push_back(table);
        else wrong(one);
    }
    return all;
}

// ---- faults

void table_reader::report_missing(std::string_view key, std::string_view why) {
    doc_.report(where(), fmt::format("{} lacks the key '{}'{}", what_, key, why));
}

void table_reader::report(const placed_text& text, const fitwright::error& e) {
    const place at = e.column() > 0 ? doc_.inside_string(text.where, e.column()) : text.where;
    doc_.report(at, std::string(e.message()));
}

void table_reader::finish() {
    for (const auto& [key, node] : table_) {
        if (std::find(known_.begin(), known_.end(), key.str()) != known_.end()) continue;
        const place at{key.source().begin.line, key.source().begin.column};
        doc_.report(at, fmt::format("'{}' is not a key of {}{}", key.str(), what_, hint(key.str(), known_)));
    }
}

} // namespace job_sheet
