// Compiled with -O3 and warnings as errors: g++ 12 warns of more when it unrolls and vectorises.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>
#include <fitwright/io/picture.hpp>

#include <doctest/doctest.h>

#include <cstdlib>
#include <sstream>
#include <string>

using namespace fitwright;
using namespace fitwright::literals;

namespace {

/// Something that the compiler can't see through.
const char* run_time(const char* text) {
    const char* const known = std::getenv("FITWRIGHT_NO_SUCH_VARIABLE");
    return known == nullptr ? text : known;
}

template <class Result> std::string printed(const Result& r) {
    std::ostringstream out;
    if (r) out << *r;
    else out << r.error();
    return out.str();
}

} // namespace

TEST_CASE("messages and numbers are put together as without optimisation") {
    CHECK(printed(read_fit(run_time("14 H7/s6"))).find("14") != std::string::npos);
    CHECK(printed(read_hole(run_time("14 h7"))).find("'h7' is a shaft's class") != std::string::npos);
    CHECK(printed(read_callout(run_time("12 T7"))).find("ISO 286-1 has no T7") != std::string::npos);
    const auto nominal = read_hole(run_time("4000 H7"));
    CHECK(printed(nominal).find("3150") != std::string::npos);

    fixed_text<8> narrow;
    narrow << text("12345") << text(run_time("6789"));
    CHECK(narrow == text("12345678"));
    CHECK(narrow.is_cut());
}

TEST_CASE("a picture and a plan") {
    std::ostringstream out;
    const auto f = read_fit(run_time("12 H7/g6"));
    REQUIRE(f);
    CHECK(draw(zone_picture{.of = *f}, out));
    CHECK(out.str().find("<svg") != std::string::npos);
}
