#include "measures.hpp"

#include <fitwright/callout.hpp>

#include <algorithm>
#include <charconv>
#include <cstdint>
#include <span>
#include <string>

namespace job_sheet {

namespace {

using fitwright::error;
using fitwright::error_code;
using fitwright::length;
using fitwright::result;

/// A unit, and what one of it is in the unit that is answered in.
template <class Factor> struct unit {
    std::string_view name;
    Factor factor;
};

/// Walks through one text; knows its column.
class cursor {
public:
    explicit cursor(std::string_view text) : text_(text) { skip_blanks(); }

    [[nodiscard]] std::string_view rest() const { return text_.substr(at_); }
    [[nodiscard]] bool at_end() const { return at_ == text_.size(); }
    void skip_blanks() {
        while (!at_end() && text_[at_] == ' ') ++at_;
    }
    bool skip(std::string_view wanted) {
        if (!rest().starts_with(wanted)) return false;
        at_ += wanted.size();
        return true;
    }
    std::string_view take_digits() {
        const std::size_t from = at_;
        while (!at_end() && text_[at_] >= '0' && text_[at_] <= '9') ++at_;
        return text_.substr(from, at_ - from);
    }

    /// `words` is the error's message, said of the place here.
    [[nodiscard]] error wrong(const std::string& words) const {
        const auto continues = [](char c) { return (static_cast<unsigned char>(c) & 0xC0) == 0x80; };
        const auto bytes = static_cast<std::ptrdiff_t>(at_);
        const auto more = std::count_if(text_.begin(), text_.begin() + bytes, continues);
        const error unplaced = error::composer(error_code::not_a_length) << words.c_str();
        return unplaced.placed(static_cast<std::uint32_t>(bytes - more + 1),
                               static_cast<std::uint32_t>(bytes + 1));
    }

private:
    std::string_view text_;
    std::size_t at_ = 0;
};

/// Of the spellings of one unit, which stand together, only the first.
template <class Factor> std::string names_of(std::span<const unit<Factor>> units) {
    std::string all;
    for (std::size_t i = 0; i < units.size(); ++i) {
        if (i > 0 && units[i].factor == units[i - 1].factor) continue;
        all += (all.empty() ? "" : ", ") + std::string(units[i].name);
    }
    return all;
}

/// The unit that stands here; it ends with the text, or where a blank or a sign follows.
template <class Factor> result<Factor> take_unit(cursor& c, std::span<const unit<Factor>> units) {
    c.skip_blanks();
    for (const auto& u : units) {
        cursor ahead = c;
        if (!ahead.skip(u.name)) continue;
        const std::string_view behind = ahead.rest();
        if (!behind.empty() && behind[0] != ' ' && behind[0] != '+') continue;
        c = ahead;
        c.skip_blanks();
        return u.factor;
    }
    if (c.at_end()) return c.wrong("the unit is missing: write one of " + names_of(units));
    return c.wrong("no such unit here: write one of " + names_of(units));
}

// ---- lengths

constexpr unit<std::int64_t> length_units[] = {
    {"mm", 1'000'000},  {"um", 1'000},        {"\u00B5m", 1'000}, {"\u03BCm", 1'000}, {"nm", 1},
    {"in", 25'400'000}, {"inch", 25'400'000}, {"\"", 25'400'000}, {"thou", 25'400},
};

/// numerator / denominator, or digits with their decimals as a fraction.
struct fraction {
    std::int64_t numerator = 0;
    std::int64_t denominator = 1;
    bool in_decimals = true;
};

std::int64_t whole(std::string_view digits) {
    std::int64_t n = 0;
    for (const char c : digits) n = n * 10 + (c - '0');
    return n;
}

result<fraction> take_number(cursor& c) {
    constexpr std::size_t most_digits = 9; // 9 digits of inches still fit into 64 bits of nanometres
    const cursor start = c;
    const std::string_view first = c.take_digits();
    if (first.size() > most_digits) return start.wrong("too long a number: 9 digits at the most");
    if (c.skip(".")) {
        const std::string_view decimals = c.take_digits();
        if (decimals.empty()) return c.wrong("digits are missing behind the point");
        if (first.size() + decimals.size() > most_digits)
            return start.wrong("too long a number: 9 digits at the most");
        fraction f{.numerator = whole(first)};
        for (const char d : decimals) {
            f.numerator = f.numerator * 10 + (d - '0');
            f.denominator *= 10;
        }
        return f;
    }
    if (first.empty())
        return start.wrong("a number is missing: write a length such as 14 mm, 1/4 in or 20 um");

    std::int64_t wholes = 0;
    std::string_view numerator = first;
    cursor ahead = c;
    if (ahead.skip(" ") || ahead.skip("-")) { // 1 1/4, 1-1/4
        const std::string_view second = ahead.take_digits();
        if (!second.empty() && ahead.rest().starts_with("/")) {
            wholes = whole(first);
            numerator = second;
            c = ahead;
        }
    }
    if (!c.skip("/")) return fraction{.numerator = whole(first)};
    const std::string_view denominator = c.take_digits();
    if (numerator.size() > 4 || denominator.empty() || denominator.size() > 4 || wholes > 9999 ||
        whole(denominator) == 0)
        return start.wrong("not a fraction of an inch: write it such as 1/4 in or 1 1/4 in");
    const std::int64_t parts = whole(denominator);
    return fraction{wholes * parts + whole(numerator), parts, false};
}

result<length> take_length(cursor& c) {
    const cursor start = c;
    const auto number = take_number(c);
    if (!number) return number.error();
    const auto unit = take_unit<std::int64_t>(c, length_units);
    if (!unit) return unit.error();
    const bool inches = *unit == 25'400'000;
    if (!number->in_decimals && !inches)
        return start.wrong("a fraction is of an inch: write its unit as in 1/4 in");
    const std::int64_t scaled = number->numerator * *unit;
    const bool metric = !inches && *unit != 25'400;
    if (metric && scaled % number->denominator != 0) return start.wrong("finer than a nanometre");
    return length::from_nanometres(scaled) / number->denominator;
}

// ---- everything else

constexpr unit<double> pressure_units[] = {{"MPa", 1e6}, {"kPa", 1e3}, {"Pa", 1}, {"bar", 1e5}};
constexpr unit<double> viscosity_units[] = {{"mPa s", 1e-3}, {"Pa s", 1}};
constexpr unit<double> time_units[] = {{"s", 1}, {"min", 60}};
constexpr unit<double> force_units[] = {{"kN", 1e3}, {"N", 1}};
constexpr unit<double> speed_units[] = {{"rpm", 1}};
constexpr unit<double> share_units[] = {{"%", 0.01}};
constexpr unit<double> celsius_unit[] = {{"degC", 1}};
constexpr unit<double> fahrenheit_unit[] = {{"degF", 1}};

result<double> take_decimal(cursor& c) {
    const std::string_view rest = c.rest();
    const bool starts_well = !rest.empty() && (rest[0] == '-' || (rest[0] >= '0' && rest[0] <= '9'));
    double value = 0;
    const auto [end, fault] =
        std::from_chars(rest.data(), rest.data() + rest.size(), value, std::chars_format::fixed);
    if (!starts_well || fault != std::errc() || !(value > -1e9 && value < 1e9))
        return c.wrong("a number with its unit is wanted here");
    c.skip(rest.substr(0, static_cast<std::size_t>(end - rest.data())));
    return value;
}

result<double> read_scaled(std::string_view text, std::span<const unit<double>> units) {
    cursor c(text);
    const cursor start = c;
    const auto number = take_decimal(c);
    if (!number) return number.error();
    if (*number < 0) return start.wrong("below zero");
    const auto unit = take_unit(c, units);
    if (!unit) return unit.error();
    if (!c.at_end()) return c.wrong("nothing may stand behind the unit");
    return *number * *unit;
}

} // namespace

result<length> read_length(std::string_view text) {
    cursor c(text);
    const auto read = take_length(c);
    if (read && !c.at_end()) return c.wrong("nothing may stand behind the unit");
    return read;
}

result<fitwright::measured_shaft> read_reading(std::string_view text) {
    cursor c(text);
    const auto size = take_length(c);
    if (!size) return size.error();
    if (!c.skip("+/-") && !c.skip("\u00B1"))
        return c.wrong("the uncertainty is missing: write it as in 7.970 mm +/- 0.002 mm");
    c.skip_blanks();
    const auto uncertainty = take_length(c);
    if (!uncertainty) return uncertainty.error();
    if (!c.at_end()) return c.wrong("nothing may stand behind the uncertainty");
    return fitwright::measured_shaft(*size, *uncertainty);
}

result<fitwright::clearance_window> read_window(std::string_view text) {
    cursor c(text);
    const cursor start = c;
    const auto take_signed = [&c]() -> result<length> {
        const bool below_zero = c.skip("-");
        const auto size = take_length(c);
        if (!size || !below_zero) return size;
        return -*size;
    };
    const auto least = take_signed();
    if (!least) return least.error();
    if (!c.skip("to ")) return c.wrong("the most is missing: write it as in 8 um to 20 um");
    c.skip_blanks();
    const auto most = take_signed();
    if (!most) return most.error();
    if (!c.at_end()) return c.wrong("nothing may stand behind the most");
    if (*least > *most) return start.wrong("the least comes first");
    return fitwright::clearance_window{*least, *most};
}

result<double> read_temperature(std::string_view text) {
    cursor c(text);
    const cursor start = c;
    const auto number = take_decimal(c);
    if (!number) return number.error();
    cursor ahead = c;
    const bool fahrenheit = take_unit<double>(ahead, fahrenheit_unit).has_value();
    if (!fahrenheit) {
        ahead = c;
        const auto unit = take_unit<double>(ahead, celsius_unit);
        if (!unit) return c.wrong("no temperature: write it as in 95 degC or 203 degF");
    }
    if (!ahead.at_end()) return ahead.wrong("nothing may stand behind the unit");
    const double celsius = fahrenheit ? (*number - 32) / 1.8 : *number;
    if (celsius < -273.15) return start.wrong("colder than anything can be");
    return celsius;
}

result<double> read_pressure(std::string_view text) { return read_scaled(text, pressure_units); }
result<double> read_viscosity(std::string_view text) { return read_scaled(text, viscosity_units); }
result<double> read_time(std::string_view text) { return read_scaled(text, time_units); }
result<double> read_force(std::string_view text) { return read_scaled(text, force_units); }
result<double> read_speed(std::string_view text) { return read_scaled(text, speed_units); }

result<fitwright::iso_vg> read_oil(std::string_view text) {
    cursor c(text);
    const cursor start = c;
    if (!c.skip("ISO VG ")) return start.wrong("no oil: write its grade as in ISO VG 32");
    const std::string_view digits = c.take_digits();
    if (digits.empty() || digits.size() > 4 || !c.at_end())
        return start.wrong("no oil: write its grade as in ISO VG 32");
    const auto grade = fitwright::iso_vg_of(static_cast<int>(whole(digits)));
    if (!grade) return start.wrong(std::string(grade.error().message()));
    return grade;
}

result<fitwright::grade> read_grade(std::string_view text) {
    cursor c(text);
    const cursor start = c;
    if (!c.skip("IT")) return start.wrong("no grade: write it as in IT6, from IT01 to IT18");
    std::string hole("H"); // a grade stands in a class: IT6 is that of H6
    hole += c.rest();
    const auto of_class = fitwright::read_hole_class(hole);
    if (!of_class) return start.wrong("no grade: write it as in IT6, from IT01 to IT18");
    return of_class->grade;
}

result<double> read_share(std::string_view text) { return read_scaled(text, share_units); }

} // namespace job_sheet
