#include "machine.hpp"
#include <fitwright/written.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace post_bores {

bool dialect::has_cycle(std::string_view word) const {
    return std::find(cycles.begin(), cycles.end(), word) != cycles.end();
}

fitwright::written_unit dialect::unit() const {
    return inches ? fitwright::written_unit::in : fitwright::written_unit::mm;
}

length dialect::increment() const {
    std::int64_t parts = 1;
    for (int i = 0; i < decimals; ++i) parts *= 10;
    return fitwright::one(unit()) / parts;
}

length dialect::on_grid(length l) const {
    const std::int64_t step = increment().nanometres();
    return length::from_nanometres((l / step).nanometres() * step); // `/` goes to the nearest
}

std::string dialect::number(length l) const {
    std::string digits(written(l, {.unit = unit(), .decimals = decimals}).view());
    digits.erase(digits.find_last_not_of('0') + 1);
    if (!always_a_point && digits.ends_with('.')) digits.pop_back();
    return digits;
}

std::string dialect::feed(double mm_a_minute) const {
    // Rounded down: to whole millimetres, or tenths of an inch.
    const double inches_10 = std::floor(mm_a_minute / 2.54);
    const double whole = inches ? (std::max)(inches_10, 1.0) / 10 : (std::max)(std::floor(mm_a_minute), 1.0);
    std::string digits = fmt::format("{:.1f}", whole);
    if (digits.ends_with('0')) digits.pop_back();
    if (!always_a_point && digits.ends_with('.')) digits.pop_back();
    return digits;
}

} // namespace post_bores
