#ifndef POST_BORES_READ_DIALECT_HPP
#define POST_BORES_READ_DIALECT_HPP

#include "job_sheet/table_reader.hpp"
#include "machine.hpp"

namespace post_bores {

using job_sheet::table_reader;

/// The words of the control, and its offsets.
[[nodiscard]] dialect read_dialect(const toml::table& table, job_sheet::document& doc);
[[nodiscard]] offsets read_offsets(const toml::table& table, job_sheet::document& doc);

// Keys that have to be there. What is missing or wrong is reported, and reading
// goes on.

/// Above 0.
[[nodiscard]] length required_length(table_reader& r, std::string_view key);
/// From `least` to `most`.
[[nodiscard]] int required_whole(table_reader& r, std::string_view key, int least, int most);
/// A G or M word.
[[nodiscard]] std::string required_word(table_reader& r, std::string_view key, std::string_view such_as);

struct speed_unit {
    std::string_view unit;
};
/// "60 m/min": the number, above 0.
[[nodiscard]] double required_speed(table_reader& r, std::string_view key, speed_unit in);

} // namespace post_bores

#endif
