#ifndef FITWRIGHT_PICTURE_CHANCE_PICTURE_HPP
#define FITWRIGHT_PICTURE_CHANCE_PICTURE_HPP

#include <fitwright/chance/probability.hpp>

namespace fitwright {

namespace detail::svg {
struct chance_chart;
}

/// How often which clearance comes out: the distribution of `clearances(of, spread)` as a hill, the pairs that
/// keep the window hatched, with their share and the shares that are tighter and looser.
///
///     const chance_picture often{.of = "8 H7/g6"_fit,
///                                .spread = spread::both(size_distribution::triangular()),
///                                .window = {8_um, 20_um}};
///
/// Shares are written to a tenth of a percent, as they print. Where the window reaches far beyond the hill, its
/// end is not shown.
/// Error: as of `probability`: a window the wrong way round, a spread that is none, limits the wrong way round.
struct chance_picture {
    fit of;
    fitwright::spread spread;             ///< how hole and shaft are spread
    clearance_window window;              ///< the clearances wanted
    text title = {};                      ///< over the picture; may be empty
    written_unit unit = written_unit::mm; ///< of clearances; the scale is in um, or in thou
    bool names_doubts = true;             ///< false for a page that says them beside the picture

    /// What `draw` makes of it; in draw_chance.hpp.
    friend result<detail::svg::chance_chart> prepared(const chance_picture& p) noexcept;
};

} // namespace fitwright

#endif
