#ifndef JOB_SHEET_STUFF_HPP
#define JOB_SHEET_STUFF_HPP

#include "job.hpp"

// What a part is made of, as far as cutting and warming it is concerned.

namespace job_sheet {

/// "copper alloy": the family with these words; nothing if there is none.
[[nodiscard]] std::optional<fitwright::material_family> family_called(std::string_view words);
[[nodiscard]] std::vector<std::string> family_names();

/// The family of a part's material, and who says so.
struct stuff {
    std::optional<fitwright::material_family> family;
    std::string words; ///< "bearing bronze CuSn7Zn4Pb7"; "aluminium, as stated"; or why nothing is known
};

/// By the material's name, else by the one it is taken as, else by the family that the job states, else
/// by the family of that name.
[[nodiscard]] stuff stuff_of(const part& p);

/// The material whose figures are reckoned with: the part's own, or the one it is taken as; or why there
/// is none.
struct reckoned {
    std::optional<fitwright::material> material;
    std::string words;
};
[[nodiscard]] reckoned material_of(const part& p);

} // namespace job_sheet

#endif
