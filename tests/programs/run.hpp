#ifndef FITWRIGHT_TESTS_PROGRAMS_RUN_HPP
#define FITWRIGHT_TESTS_PROGRAMS_RUN_HPP

#include <sys/wait.h>

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <string>
#include <string_view>

// Runs the program under test through the shell, in the folder of the build made for it.

namespace fitwright_tests {

inline const std::string work = FITWRIGHT_WORK;

inline std::string file(const std::string& name) {
    std::ifstream in(name, std::ios::binary);
    return std::string(std::istreambuf_iterator<char>(in), {});
}

struct outcome {
    int status; ///< the exit status, or 128 and more if a signal ended it
    std::string out;
    std::string err;
};

/// Runs `FITWRIGHT_PROGRAM arguments` in `folder` with `input` on standard input. In `arguments`, {} is
/// the folder to write to.
inline outcome run(std::string arguments, std::string_view input = {}, const std::string& folder = work) {
    std::ofstream(work + "/in", std::ios::binary) << input;
    for (std::size_t at = 0; (at = arguments.find("{}")) != std::string::npos;)
        arguments.replace(at, 2, work);
    const std::string files = " < '" + work + "/in' > '" + work + "/out' 2> '" + work + "/err'";
    const std::string command = "cd '" + folder + "' && '" FITWRIGHT_PROGRAM "' " + arguments + files;
    const int ended = std::system(command.c_str());
    const int status = WIFEXITED(ended) ? WEXITSTATUS(ended) : 128 + WTERMSIG(ended);
    return {status, file(work + "/out"), file(work + "/err")};
}

/// The first line in which two texts differ: "line 3: 'got', not 'wanted'"; empty if they are the same.
inline std::string difference(std::string_view got, std::string_view wanted) {
    for (int line = 1; got != wanted; ++line) {
        const std::string_view g = got.substr(0, got.find('\n'));
        const std::string_view w = wanted.substr(0, wanted.find('\n'));
        if (g != w || g.size() == got.size() || w.size() == wanted.size())
            return "line " + std::to_string(line) + ": '" + std::string(g) + "', not '" + std::string(w) +
                   "'";
        got.remove_prefix(g.size() + 1);
        wanted.remove_prefix(w.size() + 1);
    }
    return {};
}

inline std::string golden(const std::string& name) { return file(FITWRIGHT_HERE "/golden/" + name); }

} // namespace fitwright_tests

#endif
