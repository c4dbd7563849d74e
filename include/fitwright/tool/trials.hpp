#ifndef FITWRIGHT_TOOL_TRIALS_HPP
#define FITWRIGHT_TOOL_TRIALS_HPP

// Statistics of trial holes. Not part of <fitwright/tool.hpp>: Boost.Math is not cheap to compile.

#include <fitwright/error.hpp>
#include <fitwright/rows.hpp>
#include <fitwright/tool/half_round_bit.hpp>
#include <fitwright/written.hpp>

#include <boost/math/distributions/students_t.hpp>

#include <cmath>

namespace fitwright {

namespace sources {
inline constexpr source trial_holes{"trial holes", "interval for the next hole by Student's t",
                                    confidence::stated};
} // namespace sources

/// What trial holes tell of a tool: how much larger than itself it cuts, on the diameter.
struct trial_overcut {
    int holes = 0;             ///< how many were cut
    length mean;               ///< of the overcut, to the nearest nanometre
    length standard_deviation; ///< of the overcut, of a sample (n - 1)
    length least;              ///< from here …
    length most;               ///< … to here the next hole's overcut lies, with `confidence`
    double confidence = 0;     ///< 0.95 is 95 %
    length tool_uncertainty;   ///< half width of the tool's own size; not in `least` and `most`

    /// Fewer than five holes: the interval is honest, but so wide, and the scatter so poorly known, that
    /// more holes pay.
    [[nodiscard]] constexpr bool are_few() const noexcept { return holes < 5; }

    /// For `bit_hole`, `bit_blank_for` and `half_round_bit`.
    constexpr operator overcut() const noexcept { return {least, mean, most, &sources::trial_holes}; }
};

/// Student's t: the factor by which `degrees_of_freedom` and a two-sided confidence widen an interval;
/// 2.776 for 4 and 0.95. Both have to be sensible: at least 1, and above 0 below 1.
[[nodiscard]] inline double students_t(int degrees_of_freedom, double confidence) noexcept {
    using namespace boost::math::policies;
    using quiet = policy<domain_error<ignore_error>, pole_error<ignore_error>, overflow_error<ignore_error>,
                         underflow_error<ignore_error>, denorm_error<ignore_error>,
                         rounding_error<ignore_error>, evaluation_error<ignore_error>,
                         indeterminate_result_error<ignore_error>, promote_double<false>>;
    const boost::math::students_t_distribution<double, quiet> t(degrees_of_freedom);
    return boost::math::quantile(boost::math::complement(t, (1 - confidence) / 2));
}

/// The overcut of a tool from measured trial holes: mean, spread, and the interval in which the next hole
/// of the same kind lies with the stated confidence, 95 % if not said otherwise. That is Student's
/// prediction interval, mean +/- t s sqrt(1 + 1/n), for a scatter that is normal; it is widened by the
/// uncertainty of the worst reading, since like readings on a coarse instrument prove nothing finer than
/// the instrument. It is not widened by the uncertainty of the tool's size, which `bit_hole` counts; for
/// another piece than the one of the trials `bit_blank_for` counts it.
/// Error: fewer than two holes; a tool that is not one; a confidence not above 0 and below 1.
[[nodiscard]] inline result<trial_overcut>
overcut_from_trials(rows<measured_hole> holes, const tool_limits& tool, double confidence = 0.95) noexcept {
    if (holes.size() < 2)
        return error::composer(error_code::too_few_trials)
               << static_cast<std::int64_t>(holes.size())
               << " trial holes say nothing of the scatter: allowed are 2 or more, 5 or more are of use";
    if (!tool.exist())
        return error::composer(error_code::tool_not_known)
               << "a tool of " << written(tool.lower_limit()).view() << " to "
               << written(tool.upper_limit()).view() << " mm: allowed are sizes above 0, the smaller first";
    if (!(confidence > 0 && confidence < 1))
        return error::composer(error_code::not_a_confidence)
               << "a confidence is above 0 and below 1: 0.95 is 95 %";

    const auto count = static_cast<double>(holes.size());
    double sum = 0;
    length reading_uncertainty;
    for (const measured_hole& hole : holes) {
        sum += static_cast<double>((hole.size() - tool.middle()).nanometres());
        if (hole.uncertainty() > reading_uncertainty) reading_uncertainty = hole.uncertainty();
    }
    const double mean = sum / count;
    double squares = 0;
    for (const measured_hole& hole : holes) {
        const double off = static_cast<double>((hole.size() - tool.middle()).nanometres()) - mean;
        squares += off * off;
    }
    const double deviation = std::sqrt(squares / (count - 1));
    const double half_width =
        students_t(static_cast<int>(holes.size()) - 1, confidence) * deviation * std::sqrt(1 + 1 / count) +
        static_cast<double>(reading_uncertainty.nanometres());
    const auto whole = [](double nanometres) {
        return length::from_nanometres(static_cast<std::int64_t>(nanometres));
    };
    return trial_overcut{.holes = static_cast<int>(holes.size()),
                         .mean = whole(std::round(mean)),
                         .standard_deviation = whole(std::round(deviation)),
                         .least = whole(std::floor(mean - half_width)),
                         .most = whole(std::ceil(mean + half_width)),
                         .confidence = confidence,
                         .tool_uncertainty = tool.tolerance() / 2};
}

/// The sizes that another blank may have, by trials of the first: as of any overcut, and kept in by what
/// was not known of the first bit's own size.
[[nodiscard]] constexpr tool_limits bit_blank_for(const hole_limits& hole,
                                                  const trial_overcut& found) noexcept {
    const tool_limits at_best = bit_blank_for(hole, static_cast<overcut>(found));
    return {at_best.lower_limit() + found.tool_uncertainty, at_best.upper_limit() - found.tool_uncertainty,
            at_best.origin()};
}

/// The same for holes in any contiguous range: std::vector, std::array, std::span.
template <class Holes>
    requires requires(const Holes& holes) {
        rows<measured_hole>(holes.data(), static_cast<std::size_t>(holes.size()));
    }
[[nodiscard]] inline result<trial_overcut> overcut_from_trials(const Holes& holes, const tool_limits& tool,
                                                               double confidence = 0.95) noexcept {
    return overcut_from_trials(rows<measured_hole>(holes.data(), static_cast<std::size_t>(holes.size())),
                               tool, confidence);
}

} // namespace fitwright

#endif
