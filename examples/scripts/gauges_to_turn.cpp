// The GO and the NOT GO plug for a bore, and when the GO end is worn out.
#include <fitwright/callout.hpp>
#include <fitwright/gauge.hpp>
#include <fitwright/io/limits.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    constexpr limit_plug plug = *plug_gauge("14 H7"_hole);
    std::cout << "GO      " << plug.go.lower_limit() << " to " << plug.go.upper_limit() << ", worn out below "
              << plug.worn << '\n'
              << "NOT GO  " << plug.not_go.lower_limit() << " to " << plug.not_go.upper_limit() << '\n'
              << "from    " << plug.go.origin() << '\n';
    constexpr hole_limits odd = between(7.978_mm, 7.986_mm); // no standard tolerance: no standard gauge
    if (const auto none = plug_gauge(odd); !none) std::cout << none.error() << '\n';
}
