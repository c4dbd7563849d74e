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

/// In words.
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
    /// The least that handbooks give.
    [[nodiscard]] constexpr expansion_coefficient lowest() const noexcept {
        return expansion_coefficient::from_value(lowest_);
    }
    /// The greatest that handbooks give.
    [[nodiscard]] constexpr expansion_coefficient highest() const noexcept {
        return expansion_coefficient::from_value(highest_);
    }
    /// Whether it stands in the table or was worked out of it.
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

/// A mean coefficient, its spread, and how it was found.
struct spread_mean {
    double lowest;
    double mean;
    double highest;
    table_reading how;
    confidence how_sure;
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

    /// Where the last is; there is one.
    [[nodiscard]] constexpr double hottest() const noexcept { return row[size - 1].celsius; }
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

/// And at least this much where handbooks agree to the digit: one has it from the other, and a heat of metal
/// is not the next one. Common practice.
inline constexpr double least_spread = 0.02;

/// What a spread has to be at least, as a part of the mean. The cold, and what lies beyond the table, is known
/// from one document at best, whatever the spread of the warm part is; a spread of the user's own is his.
[[nodiscard]] constexpr double least_spread_of(const material& m, table_reading how, bool is_cold) noexcept {
    if (is_cold || how == table_reading::extrapolated) return usual_spread(m.family);
    const bool is_stated = m.expansion.lowest && m.expansion.lowest.how_sure() == confidence::stated &&
                           m.expansion.highest && m.expansion.highest.how_sure() == confidence::stated;
    return is_stated ? 0 : least_spread;
}

[[nodiscard]] constexpr spread_mean with_spread(const material& m, double mean, table_reading how,
                                                confidence how_sure, bool is_cold = false) noexcept {
    const double size = mean < 0 ? -mean : mean;
    const double usual = usual_spread(m.family) * size;
    double below = usual;
    double above = usual;
    if (const auto& to_100 = m.expansion.to_100_degC) {
        const double printed = (*to_100).value();
        const double scale = printed > 0 && mean != printed ? mean / printed : 1;
        if (const auto& lowest = m.expansion.lowest) below = (printed - (*lowest).value()) * scale;
        if (const auto& highest = m.expansion.highest) above = ((*highest).value() - printed) * scale;
    }
    const double least = least_spread_of(m, how, is_cold) * size;
    if (below < least) below = least;
    if (above < least) above = least;
    return {mean - below, mean, mean + above, how, how_sure};
}

[[nodiscard]] constexpr spread_mean on_the_line(const material& m, const mean_to& a, const mean_to& b,
                                                double celsius) noexcept {
    const bool is_cold = celsius < 20;
    if (celsius == a.celsius) return with_spread(m, a.mean, table_reading::tabulated, a.how_sure, is_cold);
    if (celsius == b.celsius) return with_spread(m, b.mean, table_reading::tabulated, b.how_sure, is_cold);
    const double mean = a.mean + (b.mean - a.mean) * ((celsius - a.celsius) / (b.celsius - a.celsius));
    return with_spread(m, mean, table_reading::interpolated, less_sure(a.how_sure, b.how_sure), is_cold);
}

/// Nothing grows by more than a thousandth of its size for a kelvin; what is no number fails here too.
inline constexpr double greatest_expansion = 1e-3;

[[nodiscard]] constexpr bool is_possible_expansion(const property<expansion_coefficient>& p) noexcept {
    return !p || ((*p).value() >= -greatest_expansion && (*p).value() <= greatest_expansion);
}

/// The first figure of an expansion that can't be, by its name; nothing if all can.
[[nodiscard]] constexpr text impossible_figure(const expansion_means& e) noexcept {
    if (!is_possible_expansion(e.to_100_degC)) return "to_100_degC";
    if (!is_possible_expansion(e.lowest)) return "lowest";
    if (!is_possible_expansion(e.highest)) return "highest";
    if (!is_possible_expansion(e.to_200_degC)) return "to_200_degC";
    if (!is_possible_expansion(e.to_300_degC)) return "to_300_degC";
    if (!is_possible_expansion(e.to_500_degC)) return "to_500_degC";
    if (!is_possible_expansion(e.cooled_to_minus_190_degC)) return "cooled_to_minus_190_degC";
    return {};
}

/// A name as an error has room for it.
[[nodiscard]] constexpr fixed_text<40> short_name(const material& m) noexcept {
    fixed_text<40> name;
    name << m.name;
    return name;
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error figure_not_possible(const material& m,
                                                                            text figure) noexcept {
    return error::composer(error_code::figure_not_possible)
           << "the expansion of " << short_name(m).view() << " is not possible: " << figure
           << "; allowed: a number from -0.001 to 0.001 for each kelvin";
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
    say << "the expansion of " << short_name(m).view() << " is not known "
        << (celsius < coldest ? "below " : "above ")
        << static_cast<std::int64_t>(celsius < coldest ? coldest : hottest)
        << " C; allowed: " << static_cast<std::int64_t>(coldest) << " to "
        << static_cast<std::int64_t>(hottest) << " C, or a material of your own that states more";
    return say;
}

/// How far down the mean is known, with one of a cooled part or without.
[[nodiscard]] constexpr double coldest_with(const property<expansion_coefficient>& cold) noexcept {
    return cold ? coldest_with_cold_mean : coldest_without_cold_mean;
}

/// The mean below 20 °C, no further than `coldest_with(cold)`; `first` is the one to the first temperature
/// above.
[[nodiscard]] constexpr spread_mean mean_below_20(const material& m, const mean_to& first,
                                                  const property<expansion_coefficient>& cold,
                                                  double celsius) noexcept {
    const bool is_cold = true;
    if (!cold) return with_spread(m, first.mean, table_reading::extrapolated, first.how_sure, is_cold);
    const mean_to coolest{-190, (*cold).value(), cold.how_sure()};
    if (celsius < coolest.celsius)
        return with_spread(m, coolest.mean, table_reading::extrapolated, coolest.how_sure, is_cold);
    return on_the_line(m, coolest, {20, first.mean, first.how_sure}, celsius);
}

/// As `mean_expansion`.
[[nodiscard]] constexpr result<spread_mean> mean_at(const material& m, double t) noexcept {
    if (const text figure = impossible_figure(m.expansion); !figure.empty())
        return figure_not_possible(m, figure);
    const hot_means hot(m.expansion);
    if (hot.size == 0)
        return error::composer(error_code::property_not_known)
               << "the expansion of " << short_name(m).view()
               << " is not known; allowed: a material that states its mean to 100 C";
    const property<expansion_coefficient>& cold = m.expansion.cooled_to_minus_190_degC;
    const double coldest = coldest_with(cold);
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
    return mean_below_20(m, first, cold, t);
}

} // namespace detail

/// The mean coefficient of expansion of a material between 20 °C and `at`.
///
/// From 20 °C to the first temperature of the table the mean printed for that one holds; from there on
/// the straight line between two means, no further than the last. Below 20 °C the line goes to the mean
/// of a cooled part if that is known, and on to -200 °C; if not, the first mean serves down to -40 °C.
/// The spread is the material's own as a part of its mean to 100 °C, at least +/-2 % unless a user
/// states both its ends; where it has none, and at least that much below 20 °C and beyond the table, +/-5 % for
/// metals and +/-20 % for others (common practice).
/// Error: no mean is known; one of the figures is not possible; `at` is outside these ranges.
[[nodiscard]] constexpr result<mean_coefficient> mean_expansion(const material& m,
                                                                const temperature& at) noexcept {
    const auto a = detail::mean_at(m, at.value());
    if (!a) return a.error();
    return mean_coefficient(a->mean, a->lowest, a->highest, a->how, {m.documents, m.name, a->how_sure});
}

} // namespace fitwright

#endif
