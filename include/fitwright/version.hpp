#ifndef FITWRIGHT_VERSION_HPP
#define FITWRIGHT_VERSION_HPP

// The one place where the version stands; CMakeLists.txt reads it from here.
#define FITWRIGHT_VERSION_MAJOR 0
#define FITWRIGHT_VERSION_MINOR 1
#define FITWRIGHT_VERSION_PATCH 0

#endif
