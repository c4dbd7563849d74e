#ifndef FITWRIGHT_IO_LENGTH_HPP
#define FITWRIGHT_IO_LENGTH_HPP

#include <fitwright/io/put.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

/// In millimetres, with the unit: "12.018 mm". Other units: `out << written(l, {.unit = written_unit::in})`.
inline std::ostream& operator<<(std::ostream& out, length l) {
    return detail::put(out, fixed_text<55>() << written(l).view() << text(" mm"));
}

} // namespace fitwright

#endif
