#ifndef FITWRIGHT_TESTS_TWO_FILES_HPP
#define FITWRIGHT_TESTS_TWO_FILES_HPP

#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <string>

/// What two.cpp makes of the library; one.cpp compares it with its own.
struct seen_from_the_other_file {
    fitwright::fit slide;
    fitwright::result<fitwright::fit> read;
    std::string printed;
};

seen_from_the_other_file other_file();

#endif
