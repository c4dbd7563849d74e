#ifndef FITWRIGHT_CHOOSE_PAIRING_HPP
#define FITWRIGHT_CHOOSE_PAIRING_HPP

#include <fitwright/choose/mate.hpp>
#include <fitwright/rows.hpp>

#include <cstddef>

// Two trays of measured parts, and a window: which goes with which, so that the most pairs are good.

namespace fitwright {

/// One hole and one shaft that go together, by their places in the lists.
struct matched_pair {
    std::size_t hole;
    std::size_t shaft;
    clearance_window clearance; ///< from least to most, by both uncertainties
};

/// The pairs, in the order of the holes. Holds up to `Capacity` parts of either kind; no allocation.
template <std::size_t Capacity> class pairing {
public:
    [[nodiscard]] constexpr std::size_t size() const noexcept { return size_; }
    [[nodiscard]] constexpr bool empty() const noexcept { return size_ == 0; }
    [[nodiscard]] constexpr const matched_pair* begin() const noexcept { return pairs_; }
    [[nodiscard]] constexpr const matched_pair* end() const noexcept { return pairs_ + size_; }
    constexpr const matched_pair& operator[](std::size_t i) const noexcept { return pairs_[i]; }

    /// For `pair_up` itself.
    constexpr void add(matched_pair p) noexcept { pairs_[size_++] = p; }

private:
    matched_pair pairs_[Capacity] = {};
    std::size_t size_ = 0;
};

namespace detail {

[[nodiscard]] constexpr clearance_window clearance_of(measured_hole h, measured_shaft s) noexcept {
    const length middle = h.size() - s.size();
    const length either_way = h.uncertainty() + s.uncertainty();
    return {middle - either_way, middle + either_way};
}

/// What a pair costs: a pair that is not surely good more than all others together; a good one how far
/// its clearance lies from the middle of the window, so that of equal numbers the truest pairs win.
[[nodiscard]] constexpr std::int64_t cost_of(clearance_window c, clearance_window wanted) noexcept {
    constexpr std::int64_t not_good = std::int64_t{1} << 50;
    if (c.least < wanted.least || c.most > wanted.most) return not_good;
    const std::int64_t off = ((c.least + c.most) - (wanted.least + wanted.most)).nanometres();
    const std::int64_t away = off < 0 ? -off : off;
    constexpr std::int64_t worst_good = std::int64_t{1} << 40; // 1 km: beyond any window
    return away < worst_good ? away : worst_good;
}

} // namespace detail

/// Pairs two lists of measured parts: the most pairs that are good whatever the uncertainties, and of
/// those the ones nearest to the middle of the window. What finds no good mate is left out.
///
/// The assignment problem, by the Hungarian method with potentials (Kuhn 1955, Munkres 1957; in the
/// form with shortest augmenting paths, O(rows^2 * columns)).
/// Error: more parts than `Capacity`; a window the wrong way round.
template <std::size_t Capacity = 256>
[[nodiscard]] constexpr result<pairing<Capacity>>
pair_up(rows<measured_hole> holes, rows<measured_shaft> shafts, clearance_window wanted) noexcept {
    static_assert(Capacity <= 1000, "beyond it one bad pair could cost less than many good ones");
    if (wanted.least > wanted.most) return detail::window_crossed(wanted);
    wanted = {detail::kept_near(wanted.least), detail::kept_near(wanted.most)};
    if (holes.size() > Capacity || shafts.size() > Capacity)
        return error::composer(error_code::too_many_parts)
               << static_cast<std::int64_t>(holes.size()) << " holes and "
               << static_cast<std::int64_t>(shafts.size())
               << " shafts; allowed: " << static_cast<std::int64_t>(Capacity)
               << " of either, or pair_up<N> for more";

    // The shorter list makes the rows. Row and column 0 stand for "none".
    const bool holes_are_rows = holes.size() <= shafts.size();
    const std::size_t row_count = holes_are_rows ? holes.size() : shafts.size();
    const std::size_t column_count = holes_are_rows ? shafts.size() : holes.size();
    const auto clearance_at = [&](std::size_t row, std::size_t column) {
        const std::size_t hole = holes_are_rows ? row - 1 : column - 1;
        const std::size_t shaft = holes_are_rows ? column - 1 : row - 1;
        return detail::clearance_of(holes[hole], shafts[shaft]);
    };

    std::int64_t row_potential[Capacity + 1] = {};
    std::int64_t column_potential[Capacity + 1] = {};
    std::size_t row_of[Capacity + 1] = {}; // of a column; 0: free
    std::size_t came_from[Capacity + 1] = {};
    for (std::size_t row = 1; row <= row_count; ++row) {
        std::int64_t slack[Capacity + 1] = {};
        bool done[Capacity + 1] = {};
        for (std::size_t c = 0; c <= column_count; ++c) slack[c] = INT64_MAX;
        row_of[0] = row;
        std::size_t column = 0;
        do { // grow the tree of shortest paths until it reaches a free column
            done[column] = true;
            const std::size_t from_row = row_of[column];
            std::int64_t step = INT64_MAX;
            std::size_t next = 0;
            for (std::size_t c = 1; c <= column_count; ++c) {
                if (done[c]) continue;
                const std::int64_t reduced = detail::cost_of(clearance_at(from_row, c), wanted) -
                                             row_potential[from_row] - column_potential[c];
                if (reduced < slack[c]) {
                    slack[c] = reduced;
                    came_from[c] = column;
                }
                if (slack[c] < step) {
                    step = slack[c];
                    next = c;
                }
            }
            for (std::size_t c = 0; c <= column_count; ++c) {
                if (done[c]) {
                    row_potential[row_of[c]] += step;
                    column_potential[c] -= step;
                } else {
                    slack[c] -= step;
                }
            }
            column = next;
        } while (row_of[column] != 0);
        while (column != 0) { // turn the path round: each row takes the column it was reached by
            row_of[column] = row_of[came_from[column]];
            column = came_from[column];
        }
    }

    std::size_t mate_of_hole[Capacity] = {};
    for (std::size_t c = 1; c <= column_count; ++c) {
        if (row_of[c] == 0) continue;
        if (holes_are_rows) mate_of_hole[row_of[c] - 1] = c;
        else mate_of_hole[c - 1] = row_of[c];
    }
    pairing<Capacity> found;
    for (std::size_t h = 0; h < holes.size(); ++h) {
        if (mate_of_hole[h] == 0) continue;
        const std::size_t s = mate_of_hole[h] - 1;
        const clearance_window c = detail::clearance_of(holes[h], shafts[s]);
        if (c.least >= wanted.least && c.most <= wanted.most) found.add({h, s, c});
    }
    return found;
}

} // namespace fitwright

#endif
