#include "picture.hpp"

#include "escape_html.hpp"
#include "figures.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace job_sheet {

namespace {

using fitwright::length;

// In user units of the SVG. The intervals stand side by side, each with its limits above and below.
constexpr double width = 360;
constexpr double height = 250;
constexpr double top = 64;
constexpr double bottom = 206;
constexpr double box_width = 84;
constexpr double first_box = 106;
constexpr double next_box = 132;
constexpr double thinnest = 2; // an interval is always seen

/// From sizes to heights on the paper; the zero line is the nominal size.
class scale {
public:
    explicit scale(const std::vector<const part_answer*>& parts)
        : zero_(parts.front()->size->nominal), low_(zero_), high_(zero_) {
        for (const part_answer* const p : parts) {
            low_ = (std::min)(low_, p->size->lower_limit);
            high_ = (std::max)(high_, p->size->upper_limit);
        }
        if (low_ == high_) high_ += length::from_nanometres(1);
    }

    [[nodiscard]] length zero() const { return zero_; }
    [[nodiscard]] double y(length size) const {
        const auto above = static_cast<double>((size - low_).nanometres());
        const auto all = static_cast<double>((high_ - low_).nanometres());
        return bottom - (bottom - top) * above / all;
    }

private:
    length zero_;
    length low_;
    length high_;
};

std::string limit_label(double x, double y, length limit, length deviation, bool show_deviation) {
    std::string text = mm(limit);
    if (show_deviation) text += fmt::format(" <tspan class=\"deviation\">({})</tspan>", signed_um(deviation));
    return fmt::format("<text class=\"limit\" x=\"{:.1f}\" y=\"{:.1f}\">{}</text>\n", x, y, text);
}

std::string interval(const part_answer& p, double x, const scale& to_scale) {
    const size_answer& s = *p.size;
    const double upper = to_scale.y(s.upper_limit);
    const double box_height = (std::max)(thinnest, to_scale.y(s.lower_limit) - upper);
    const double middle = x + box_width / 2;
    const bool from_zero = s.nominal == to_scale.zero();
    std::string svg =
        fmt::format("<rect class=\"{}\" x=\"{:.1f}\" y=\"{:.1f}\" width=\"{:.1f}\" height=\"{:.1f}\"/>\n",
                    p.role, x, upper, box_width, box_height);
    svg += limit_label(middle, upper - 6, s.upper_limit, s.upper_deviation, from_zero);
    svg += limit_label(middle, upper + box_height + 16, s.lower_limit, s.lower_deviation, from_zero);
    return svg + fmt::format("<text class=\"role\" x=\"{:.1f}\" y=\"18\">{}</text>\n", middle, p.role);
}

std::string described(const std::vector<const part_answer*>& parts) {
    std::string all;
    for (const part_answer* const p : parts)
        all += fmt::format("{} {} to {} mm. ", p->role, mm(p->size->lower_limit), mm(p->size->upper_limit));
    return all;
}

} // namespace

std::string picture(const pair_answer& a) {
    std::vector<const part_answer*> parts;
    for (const part_answer& p : a.parts)
        if (p.size) parts.push_back(&p);
    if (a.asked.stack || parts.empty()) return {};

    const scale to_scale(parts);
    const double zero = to_scale.y(to_scale.zero());
    std::string svg = fmt::format(
        "<svg viewBox=\"0 0 {} {}\" role=\"img\" aria-label=\"Tolerance intervals of pair {}: {}\">\n", width,
        height, escaped(a.asked.id), described(parts));
    svg += fmt::format("<line class=\"zero\" x1=\"8\" y1=\"{0:.1f}\" x2=\"{1}\" y2=\"{0:.1f}\"/>\n", zero,
                       width - 8);
    svg += fmt::format("<text class=\"nominal\" x=\"8\" y=\"{:.1f}\">{} mm</text>\n", zero - 6,
                       std::string(written(to_scale.zero())));
    double x = first_box;
    for (const part_answer* const p : parts) {
        svg += interval(*p, x, to_scale);
        x += next_box;
    }
    svg += fmt::format(
        "<text class=\"note\" x=\"8\" y=\"{}\">limits in mm (deviations in um); drawn to scale</text>\n</svg>\n",
        height - 8);
    return svg;
}

} // namespace job_sheet
