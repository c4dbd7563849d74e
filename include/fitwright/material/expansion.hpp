#ifndef FITWRIGHT_MATERIAL_EXPANSION_HPP
#define FITWRIGHT_MATERIAL_EXPANSION_HPP

#include <fitwright/error.hpp>
#include <fitwright/material/material.hpp>

#include <cstddef>
#include <cstdint>

namespace fitwright {

/// How a value came out of a table.
enum class table_reading : std::uint8_t {
    tabulated,    ///< printed for this temperature, or for a range that holds it
    interpolated, ///< on the straight line between two printed values
    extrapolated, ///< beyond the last printed value, which is used as it is
};

[[nodiscard]] constexpr text in_words(table_reading r) noexcept {
    switch (r) {
    case table_reading::tabulated: return "tabulated";
    case table_reading::interpolated: return "interpolated";
    case table_reading::extrapolated: return "beyond the table";
    }
    return "";
}

/// A mean coefficient of expansion between 20 °C and some temperature, with its spread, and where the
/// value comes from.
class mean_coefficient {
public:
    constexpr mean_coefficient(double value, double lowest, double highest, table_reading how,
                               const source& from) noexcept
        : from_(from), value_(value), lowest_(lowest), highest_(highest), how_(how) {}

    [[nodiscard]] constexpr expansion_coefficient value() const noexcept {
        return expansion_coefficient::from_value(value_);
    }
    [[nodiscard]] constexpr expansion_coefficient lowest() const noexcept {
        return expansion_coefficient::from_value(lowest_);
    }
    [[nodiscard]] constexpr expansion_coefficient highest() const noexcept {
        return expansion_coefficient::from_value(highest_);
    }
    [[nodiscard]] constexpr table_reading how() const noexcept { return how_; }
    [[nodiscard]] constexpr const source& from() const noexcept { return from_; }

private:
    source from_;
    double value_;
    double lowest_;
    double highest_;
    table_reading how_;
};

namespace detail {

/// A printed mean, and the temperature from 20 °C to which it holds.
struct mean_to {
    double celsius = 0;
    double mean = 0;
    confidence how_sure = confidence::stated;
};

/// The means above 20 °C that are known, from the coolest on.
struct hot_means {
    mean_to row[4] = {};
    std::size_t size = 0;

    constexpr explicit hot_means(const expansion_means& e) noexcept {
        add(100, e.to_100_degC);
        add(200, e.to_200_degC);
        add(300, e.to_300_degC);
        add(500, e.to_500_degC);
    }

    constexpr void add(double celsius, const property<expansion_coefficient>& p) noexcept {
        if (p) row[size++] = {celsius, (*p).value(), p.how_sure()};
    }
};

[[nodiscard]] constexpr confidence less_sure(confidence a, confidence b) noexcept { return a < b ? b : a; }

/// Half the spread that handbooks have about a value that only one of them gives, as a part of it.
/// Common practice; a resin needs 0.5, and its own `lowest` and `highest`.
[[nodiscard]] constexpr double usual_spread(material_family f) noexcept {
    switch (f) {
    case material_family::plastic:
    case material_family::ceramic:
    case material_family::other: return 0.20;
    default: return 0.05;
    }
}

[[nodiscard]] constexpr mean_coefficient with_spread(const material& m, double mean, table_reading how,
                                                     confidence how_sure) noexcept {
    const double usual = usual_spread(m.family) * (mean < 0 ? -mean : mean);
    double below = usual;
    double above = usual;
    if (const auto& to_100 = m.expansion.to_100_degC) {
        const double printed = (*to_100).value();
        const double scale = printed > 0 ? mean / printed : 1;
        if (const auto& lowest = m.expansion.lowest) below = (printed - (*lowest).value()) * scale;
        if (const auto& highest = m.expansion.highest) above = ((*highest).value() - printed) * scale;
    }
    const double least = how == table_reading::extrapolated ? usual : 0;
    if (below < least) below = least;
    if (above < least) above = least;
    return {mean, mean - below, mean + above, how, {m.documents, m.name, how_sure}};
}

[[nodiscard]] constexpr mean_coefficient on_the_line(const material& m, const mean_to& a, const mean_to& b,
                                                     double celsius) noexcept {
    if (celsius == a.celsius) return with_spread(m, a.mean, table_reading::tabulated, a.how_sure);
    if (celsius == b.celsius) return with_spread(m, b.mean, table_reading::tabulated, b.how_sure);
    const double mean = a.mean + (b.mean - a.mean) * ((celsius - a.celsius) / (b.celsius - a.celsius));
    return with_spread(m, mean, table_reading::interpolated, less_sure(a.how_sure, b.how_sure));
}

inline constexpr double absolute_zero_celsius = -273.15;
/// Liquid nitrogen is at -196 °C, a little beyond the last printed value.
inline constexpr double coldest_with_cold_mean = -200;
/// Frost, where only the mean of a hot part is known: it overstates the shrinkage by 5 % or so.
inline constexpr double coldest_without_cold_mean = -40;

[[nodiscard]] constexpr error no_mean_at(const material& m, double celsius, double coldest,
                                         double hottest) noexcept {
    error::composer say(error_code::temperature_out_of_range);
    if (!(celsius > absolute_zero_celsius))
        return say << "this is not a temperature; allowed: above -273.15 C";
    say << "the expansion of " << m.name << " is not known " << (celsius < coldest ? "below " : "above ")
        << static_cast<std::int64_t>(celsius < coldest ? coldest : hottest)
        << " C; allowed: " << static_cast<std::int64_t>(coldest) << " to "
        << static_cast<std::int64_t>(hottest) << " C, or a material of your own that states more";
    return say;
}

} // namespace detail

/// The mean coefficient of expansion of a material between 20 °C and `at`.
///
/// From 20 °C to the first temperature of the table the mean printed for that one holds; from there on
/// the straight line between two means, no further than the last. Below 20 °C the line goes to the mean
/// of a cooled part if that is known, and on to -200 °C; if not, the first mean serves down to -40 °C.
/// The spread is the material's own as a part of its mean to 100 °C; where it has none, and at least
/// that much beyond the table, +/-5 % for metals and +/-20 % for others (common practice).
/// Error: no mean is known, or `at` is outside these ranges.
[[nodiscard]] constexpr result<mean_coefficient> mean_expansion(const material& m,
                                                                const temperature& at) noexcept {
    using namespace detail;
    const hot_means hot(m.expansion);
    if (hot.size == 0)
        return error::composer(error_code::property_not_known)
               << "the expansion of " << m.name
               << " is not known; allowed: a material that states its mean to 100 C";
    const property<expansion_coefficient>& cold = m.expansion.cooled_to_minus_190_degC;
    const double t = at.value();
    const double coldest = cold ? coldest_with_cold_mean : coldest_without_cold_mean;
    const mean_to& last = hot.row[hot.size - 1];
    if (!(t >= coldest && t <= last.celsius)) return no_mean_at(m, t, coldest, last.celsius);

    const mean_to& first = hot.row[0];
    if (t >= 20 && t <= first.celsius)
        return with_spread(m, first.mean, table_reading::tabulated, first.how_sure);
    if (t >= 20) {
        std::size_t i = 1;
        while (hot.row[i].celsius < t) ++i;
        return on_the_line(m, hot.row[i - 1], hot.row[i], t);
    }
    if (!cold) return with_spread(m, first.mean, table_reading::extrapolated, first.how_sure);
    const mean_to coolest{-190, (*cold).value(), cold.how_sure()};
    if (t < coolest.celsius)
        return with_spread(m, coolest.mean, table_reading::extrapolated, coolest.how_sure);
    return on_the_line(m, coolest, {20, first.mean, first.how_sure}, t);
}

} // namespace fitwright

#endif
