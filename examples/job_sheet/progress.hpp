#ifndef JOB_SHEET_PROGRESS_HPP
#define JOB_SHEET_PROGRESS_HPP

#include <chrono>
#include <cstddef>
#include <string_view>

namespace job_sheet {

/// How far a job of a hundred pairs or more is, on one line of standard error that is wiped out at the end.
/// Nothing is shown where standard error is no terminal.
class progress {
public:
    progress(std::string_view what, std::size_t of);
    progress(const progress&) = delete;
    progress& operator=(const progress&) = delete;
    ~progress();

    void show(std::size_t done);

private:
    using clock = std::chrono::steady_clock;

    std::string_view what_;
    std::size_t of_;
    bool is_seen_;
    bool is_shown_ = false;
    clock::time_point next_;
};

} // namespace job_sheet

#endif
