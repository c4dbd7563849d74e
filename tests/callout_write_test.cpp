// What is written reads back as the same, for every class that ISO 286 has a value for; and text that
// makes no sense at all is answered, whatever it is.

#include <fitwright/callout.hpp>

#include <doctest/doctest.h>

#include <cstdint>
#include <random>
#include <string>

using namespace fitwright;
using namespace fitwright::literals;

namespace {

constexpr length many_sizes[] = {
    0.3_mm,  1_mm,    1.000001_mm, 3_mm,     3.000001_mm, 6_mm,    7.968_mm, 10_mm,  0.25_in, 12.7_mm, 14_mm,     18_mm,
    24_mm,   30_mm,   31.75_mm,    50_mm,    65_mm,       99.99_mm, 100_mm,  120_mm, 180_mm,  250_mm,  299.7925_mm, 315_mm,
    355_mm,  400_mm,  500_mm,      500.5_mm, 630_mm,      999_mm,   1250_mm, 2000_mm, 2500_mm, 3149.999999_mm, 3150_mm,
};

template <side Side> constexpr bool comes_back(length size, tolerance_class<Side> c, callout_style style) {
    const auto known = limits(size, c);
    const auto text_out = written(size, c, style);
    const auto read = read_callout(text_out);
    if (!known) return !read && read.error().code() == error_code::no_value_in_standard;
    if (!read || !read->has_classes || read->notes.diameter_sign != style.diameter_sign) return false;
    if constexpr (Side == side::hole) return read->part == callout_part::hole && read->hole == *known && read->hole_class == c;
    else return read->part == callout_part::shaft && read->shaft == *known && read->shaft_class == c;
}

} // namespace

TEST_CASE("every class at many sizes, in every unit: write, then read") {
    int values = 0;
    for (const length size : many_sizes)
        for (int p = 0; p < position_count; ++p)
            for (int g = 0; g < grade::count; ++g)
                for (const written_unit u : {written_unit::mm, written_unit::um, written_unit::in, written_unit::thousandth}) {
                    const callout_style style{.unit = u, .diameter_sign = g % 2 == 0};
                    const hole_class hole{static_cast<position>(p), grade::from_step(g)};
                    const shaft_class shaft{static_cast<position>(p), grade::from_step(g)};
                    INFO(std::string(written(size, hole, style)), " ", std::string(written(size, shaft, style)));
                    CHECK(comes_back(size, hole, style));
                    CHECK(comes_back(size, shaft, style));
                    if (limits(size, hole)) ++values;
                    // limits without their class come back too
                    if (const auto l = limits(size, hole)) {
                        const auto again = read_hole(written(*l, u));
                        const bool same = again.has_value() && *again == *l;
                        const bool below_zero = l->lower_limit() <= length();
                        CHECK((same || below_zero));
                    }
                }
    CHECK(values > 30'000);
}

TEST_CASE("every pair of preferred classes: write, then read") {
    for (const basis b : {basis::hole, basis::shaft})
        for (const class_pair pair : preferred_fits(b))
            for (const length size : many_sizes) {
                const auto known = limits(size, pair);
                const auto read = read_fit(written(size, pair));
                CHECK(known.has_value() == read.has_value());
                if (known && read) CHECK(*known == *read);
            }
    static_assert(*read_fit(written(12_mm, class_pair{"H7"_hole_class, "g6"_shaft_class})) == "12 H7/g6"_fit);
}

TEST_CASE("the spelling of the standard") {
    CHECK(written(12_mm, "H7"_hole_class) == "12 H7");
    CHECK(written(12_mm, "js6"_shaft_class, {.diameter_sign = true}) == "\u230012 js6");
    CHECK(written(6.35_mm, "H7"_hole_class, {.unit = written_unit::in}) == "0.25 in H7");
    CHECK(written("14 H7"_hole) == "14 +0.018/0");
    CHECK(written("12 H7"_hole, written_unit::um) == "12000 um +18/0");
    CHECK(written("12 x6"_shaft) == "12 +0.051/+0.040");
    CHECK(written("14 js7"_shaft) == "14 +/-0.009");
    CHECK(written(class_pair{"H7"_hole_class, "g6"_shaft_class}) == "H7/g6");
}

TEST_CASE("a million random byte strings: each is answered, none crashes") {
    std::mt19937_64 random(20'10); // the standard fixes what it yields
    const std::string_view pieces[] = {"12",  " ",  "H7", "/",   "g6",  "+0.018", "0",  "-",    "\u2300", "in", "mm", "1/4",
                                       "(E)", "2x", "M8", "THRU", "\xFF", "\u2212", "js", "\u00BC", ".",  ",",  "\"", "\u21A7"};
    std::uint64_t read_ones = 0;
    std::uint64_t refused_ones = 0;
    for (int i = 0; i < 1'000'000; ++i) {
        std::string t;
        const auto kind = random() % 3;
        const auto n = kind == 2 ? 1 + random() % 5 : random() % 14;
        for (std::uint64_t j = 0; j < n; ++j) {
            if (kind == 0) t += static_cast<char>(random() & 0xFF);
            else if (kind == 1) t += static_cast<char>(0x20 + random() % 0x5F);
            else t += pieces[random() % std::size(pieces)];
        }
        const auto read = read_callout(t, {.decimal_comma = i % 5 == 0});
        if (read) {
            ++read_ones;
            const auto again = read_callout(written(*read));
            if (!again || again->nominal() != read->nominal() || again->part != read->part) FAIL("does not come back: ", t);
        } else {
            ++refused_ones;
            const error& e = read.error();
            const bool placed = e.column() >= 1 && e.byte_column() >= e.column() && e.byte_column() <= t.size() + 1;
            if (!placed || e.message().empty()) FAIL("no place or no message: ", t);
        }
        if (i % 16 == 0) {
            (void)read_hole_class(t);
            (void)read_shaft_class(t);
            (void)read_fit(t);
            (void)read_shaft(t);
            (void)read_hole(t);
        }
    }
    CHECK(read_ones > 500);
    CHECK(refused_ones > 900'000);
}
