#include "write_file.hpp"

#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <system_error>

namespace shared {

namespace {

std::string why() { return std::error_code(errno, std::generic_category()).message(); }

std::string write_straight(const std::string& name, std::string_view contents) {
    errno = 0;
    std::FILE* const file = std::fopen(name.c_str(), "wb");
    if (!file) return name + ": can't be opened for writing: " + why();
    const bool written = std::fwrite(contents.data(), 1, contents.size(), file) == contents.size();
    const std::string first_cause = why();
    const bool closed = std::fclose(file) == 0;
    if (!written) return name + ": can't be written: " + first_cause;
    return closed ? std::string() : name + ": can't be written: " + why();
}

} // namespace

std::string write_file(const std::string& name, std::string_view contents) {
    namespace fs = std::filesystem;
    std::error_code ignored;
    const bool there = fs::exists(name, ignored);
    if (there && !fs::is_regular_file(name, ignored)) return write_straight(name, contents);

    const fs::path target = there ? fs::canonical(name, ignored) : fs::path(name); // behind a symbolic link
    const fs::path part = target.string() + ".part";
    std::string failed = write_straight(part.string(), contents);
    if (failed.empty()) {
        std::error_code cause;
        fs::rename(part, target, cause);
        if (cause) failed = name + ": can't be put in place of " + part.string() + ": " + cause.message();
    }
    if (!failed.empty()) fs::remove(part, ignored);
    return failed;
}

} // namespace shared
