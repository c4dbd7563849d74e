#ifndef JOB_SHEET_SHARED_LOOKS_HPP
#define JOB_SHEET_SHARED_LOOKS_HPP

#include <string>
#include <string_view>
#include <vector>

// Dozens of pictures on a page say the same of colours and lines over and over. Said once it makes the page
// a third smaller.

namespace job_sheet {

/// Puts the looks of SVG elements into classes that all pictures of the page share.
class shared_looks {
public:
    /// The picture, its elements with a class where they had looks of their own. Its description goes: the page
    /// around it says the same.
    [[nodiscard]] std::string shorten(std::string_view svg);
    /// The classes, for the page's style sheet.
    [[nodiscard]] std::string style_sheet() const;

private:
    std::string class_of(const std::string& looks);

    std::vector<std::string> looks_; ///< as declarations: "fill:none;stroke:#14181c"
};

} // namespace job_sheet

#endif
