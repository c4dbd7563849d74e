#ifndef JOB_SHEET_ASCII_HPP
#define JOB_SHEET_ASCII_HPP

#include <string>
#include <string_view>

namespace job_sheet {

/// The text in ASCII without line breaks: the signs of drawings get their usual stand-ins, each other
/// character a question mark.
[[nodiscard]] std::string ascii(std::string_view utf8);

} // namespace job_sheet

#endif
