// Call-outs that may be wrong: no exception; the fault, its column and what to write instead.
#include <fitwright/callout.hpp>
#include <fitwright/io/fit.hpp>

#include <iostream>
#include <string_view>

using namespace fitwright;

int main() {
    constexpr std::string_view lines[] = {"12 H7/g6", "1/4 in H8/f7", "12 H7",
                                          "12 h7/G6", "12 Q7/g6",     "12,5 H7/g6"};
    for (const std::string_view line : lines) {
        std::cout << line << '\n';
        if (const auto f = read_fit(line)) std::cout << "  " << *f << '\n';
        else std::cout << "  " << f.error() << '\n';
    }
}
