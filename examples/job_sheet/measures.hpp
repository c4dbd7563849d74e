#ifndef JOB_SHEET_MEASURES_HPP
#define JOB_SHEET_MEASURES_HPP

#include <fitwright/choose/mate.hpp>
#include <fitwright/error.hpp>
#include <fitwright/iso286/tolerance_class.hpp>
#include <fitwright/limits.hpp>
#include <fitwright/running/oil_grade.hpp>

#include <string_view>

// Numbers with their units, as a person writes them. The unit is never left out.
// Errors have the column in the text.

namespace job_sheet {

/// "14 mm", "1/4 in", "1 1/4 in", "20 um", "2.5 thou": exact, to the nearest nanometre for inches.
[[nodiscard]] fitwright::result<fitwright::length> read_length(std::string_view text);

/// "7.970 mm +/- 0.002 mm": a reading and its uncertainty.
[[nodiscard]] fitwright::result<fitwright::measured_shaft> read_reading(std::string_view text);

/// "8 um to 20 um": the least clearance and the most; below 0 is interference.
[[nodiscard]] fitwright::result<fitwright::clearance_window> read_window(std::string_view text);

/// "95 degC", "203 degF": in degrees Celsius.
[[nodiscard]] fitwright::result<double> read_temperature(std::string_view text);
/// "0.3 MPa", "3 bar", "300 kPa": in pascal.
[[nodiscard]] fitwright::result<double> read_pressure(std::string_view text);
/// "15 mPa s", "0.015 Pa s": in pascal seconds.
[[nodiscard]] fitwright::result<double> read_viscosity(std::string_view text);
/// "10 s", "2 min": in seconds.
[[nodiscard]] fitwright::result<double> read_time(std::string_view text);
/// "60 N", "0.5 kN": in newtons.
[[nodiscard]] fitwright::result<double> read_force(std::string_view text);
/// "30 rpm": in revolutions a minute.
[[nodiscard]] fitwright::result<double> read_speed(std::string_view text);
/// "ISO VG 32".
[[nodiscard]] fitwright::result<fitwright::iso_vg> read_oil(std::string_view text);
/// "IT6".
[[nodiscard]] fitwright::result<fitwright::grade> read_grade(std::string_view text);
/// "5 %": as 0.05.
[[nodiscard]] fitwright::result<double> read_share(std::string_view text);

} // namespace job_sheet

#endif
