#ifndef FITWRIGHT_IO_CHANCE_HPP
#define FITWRIGHT_IO_CHANCE_HPP

#include <fitwright/chance.hpp>
#include <fitwright/io/put.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

namespace detail {

/// "12.3 %"; shares that are not quite nothing or all say so: "less than 0.1 %", "more than 99.9 %".
[[nodiscard]] constexpr fixed_text<31> written_share(double share) noexcept {
    fixed_text<31> t;
    if (share > 0 && share < 0.0005) return t << text("less than 0.1 %");
    if (share < 1 && share > 0.9995) return t << text("more than 99.9 %");
    const auto tenths = static_cast<std::int64_t>(share * 1000 + 0.5);
    return t << tenths / 10 << text(".") << tenths % 10 << text(" %");
}

/// "; mind: …; …".
[[nodiscard]] constexpr fixed_text<399> written_doubts(flags<chance_doubt> doubts) noexcept {
    fixed_text<399> t;
    doubts.for_each(
        [&](chance_doubt d) { t << (t.size() == 0 ? text("; mind: ") : text("; ")) << in_words(d); });
    return t;
}

} // namespace detail

/// "87.3 % inside, 12.7 % tighter, 0.0 % looser", the doubts, and a line for each caution.
[[nodiscard]] constexpr fixed_text<999> written(const share_of_pairs& p) noexcept {
    fixed_text<999> t;
    t << detail::written_share(p.inside).view() << text(" inside, ")
      << detail::written_share(p.tighter).view() << text(" tighter, ")
      << detail::written_share(p.looser).view() << text(" looser");
    t << detail::written_doubts(p.doubts).view();
    detail::put_each(t, "\n", p.take_care);
    return t;
}

/// "clearance 0.0133 mm in the mean, standard deviation 0.0027 mm, 0.0 % interfering", then the doubts.
[[nodiscard]] inline fixed_text<999> written(const clearance_distribution& c) noexcept {
    fixed_text<999> t;
    t << text("clearance ") << written(c.mean(), {.decimals = 4}).view()
      << text(" mm in the mean, standard deviation ") << written(c.sigma(), {.decimals = 4}).view()
      << text(" mm, ") << detail::written_share(c.share_interfering()).view() << text(" interfering");
    return t << detail::written_doubts(c.doubts()).view();
}

inline std::ostream& operator<<(std::ostream& out, const share_of_pairs& p) {
    return detail::put(out, written(p));
}

inline std::ostream& operator<<(std::ostream& out, const clearance_distribution& c) {
    return detail::put(out, written(c));
}

} // namespace fitwright

#endif
