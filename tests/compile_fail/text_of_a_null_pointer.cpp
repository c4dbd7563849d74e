// expect: deleted|use of deleted
#include <fitwright/stack/chain.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr chain_link housing = opens("", 40_mm, plus_minus(50_um));
#else
constexpr chain_link housing = opens(nullptr, 40_mm, plus_minus(50_um));
#endif

int main() { return housing.nominal == 40_mm ? 0 : 1; }
