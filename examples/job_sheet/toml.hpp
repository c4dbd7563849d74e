#ifndef JOB_SHEET_TOML_HPP
#define JOB_SHEET_TOML_HPP

// toml++ without its assertions: 3.3 asserts that a key follows `[` before it reports that none
// does, and in release builds assumes so. No job file may end the program.
#pragma push_macro("NDEBUG")
#undef NDEBUG
#ifndef TOML_ASSERT
#define TOML_ASSERT(condition) static_assert(true)
#endif
#include <toml++/toml.h>
#pragma pop_macro("NDEBUG")

#endif
