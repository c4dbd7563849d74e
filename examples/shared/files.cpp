#include "files.hpp"

#include <fmt/format.h>

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace shared {

std::optional<std::string> contents_of(const std::string& name) {
    std::error_code ignored;
    if (std::filesystem::is_directory(name, ignored)) return std::nullopt;
    std::ifstream file(name, std::ios::binary);
    if (!file) return std::nullopt;
    std::string all(std::istreambuf_iterator<char>(file), {});
    if (file.bad()) return std::nullopt;
    return all;
}

bool write_to_stdout(const std::string& text, const char* program) {
    const bool written =
        std::fwrite(text.data(), 1, text.size(), stdout) == text.size() && std::fflush(stdout) == 0;
    if (!written) fmt::print(stderr, "{}: standard output could not be written\n", program);
    return written;
}

} // namespace shared
