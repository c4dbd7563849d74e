#include "progress.hpp"

#include <fmt/format.h>

#include <cstdio>

#ifdef _WIN32
#include <io.h>
#else
#include <unistd.h>
#endif

namespace job_sheet {

namespace {

constexpr std::size_t long_job = 100; // fewer are done before anybody looks
constexpr std::chrono::milliseconds between(100);

bool is_a_terminal(std::FILE* f) {
#ifdef _WIN32
    return _isatty(_fileno(f)) != 0;
#else
    return isatty(fileno(f)) != 0;
#endif
}

} // namespace

progress::progress(std::string_view what, std::size_t of)
    : what_(what), of_(of), is_seen_(of >= long_job && is_a_terminal(stderr)), next_(clock::now()) {}

progress::~progress() {
    if (is_shown_) std::fputs("\r\033[K", stderr);
}

void progress::show(std::size_t done) {
    if (!is_seen_ || clock::now() < next_) return;
    next_ = clock::now() + between;
    is_shown_ = true;
    std::fputs(fmt::format("\r{}: {} of {}\033[K", what_, done, of_).c_str(), stderr);
    std::fflush(stderr);
}

} // namespace job_sheet
