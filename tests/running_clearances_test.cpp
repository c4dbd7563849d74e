#include "support/both.hpp"
#include "support/running_checks.hpp"
#include <fitwright/callout.hpp>
#include <fitwright/io/running.hpp>
#include <fitwright/running.hpp>

#include <doctest/doctest.h>

#include <random>
#include <sstream>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

const std::string data = FITWRIGHT_TEST_DATA;

length nm(std::int64_t n) { return length::from_nanometres(n); }
length mm(int n) { return nm(n * std::int64_t{1'000'000}); }

/// Where `name` stands in a list of the enumerators.
template <std::size_t Size> int place_of(const std::string& name, const char* const (&names)[Size]) {
    for (std::size_t i = 0; i < Size; ++i)
        if (name == names[i]) return static_cast<int>(i);
    return -1;
}

} // namespace

TEST_CASE("every rule by use") {
    constexpr const char* uses[] = {"oil_lubricated_journal",   "self_lubricating_bush",
                                    "oscillating_without_play", "precision_spindle",
                                    "grease_lubricated_pin",    "plastic_bush"};
    csv_table table = read_csv(data + "/running_clearances.csv");
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        CAPTURE(table.cell(i, "use"));
        const int place = place_of(table.cell(i, "use"), uses);
        REQUIRE(place == static_cast<int>(i));
        for (const length diameter : {1_mm, 8_mm, 12.7_mm, 25.4_mm, 100_mm, 500_mm}) {
            const auto advice = recommended_clearance(static_cast<running_use>(place), diameter);
            REQUIRE(advice);
            const double inches = diameter.in<inch>();
            const auto wanted = [&](const char* fixed, const char* share) {
                const double in = std::stod(table.cell(i, fixed)) + std::stod(table.cell(i, share)) * inches;
                const double floor = std::stod(table.cell(i, "least_mm"));
                return floor > 0 ? std::fmax(in * 25.4, floor) : in * 25.4;
            };
            CHECK(std::fabs(advice->window.least.in<millimetre>() - wanted("least_in", "least_in_per_in")) <
                  1.1e-6);
            CHECK(std::fabs(advice->window.most.in<millimetre>() - wanted("most_in", "most_in_per_in")) <
                  1.1e-6);
            const bool is_practice = table.cell(i, "source") == "practice";
            CHECK((advice->from.how_sure == confidence::practice) == is_practice);
            CHECK((advice->from.how_sure == confidence::published) == !is_practice);
            CHECK(advice->take_care == caution::rotating);
            CHECK(!advice->remark.empty());
        }
    }
    CHECK(table.fault == "");
    CHECK(table.rows.size() == 6);
    FITWRIGHT_CHECK_BOTH(
        recommended_clearance(running_use::oil_lubricated_journal, given(25.4_mm))->window.least == 25.4_um);
    FITWRIGHT_CHECK_BOTH(recommended_clearance(running_use::plastic_bush, given(6_mm))->window.most == 50_um);
    FITWRIGHT_CHECK_BOTH(
        recommended_clearance(running_use::oscillating_without_play, given(6_mm))->window.least == -12.7_um);
    for (const length wrong : {0_mm, nm(-1), 500_mm + nm(1)})
        CHECK(says(recommended_clearance(running_use::plastic_bush, wrong), error_code::size_without_advice,
                   "up to 500 mm"));
    CHECK(recommended_clearance(running_use::plastic_bush, 500_mm));
    CHECK(says(recommended_clearance(static_cast<running_use>(77), 5_mm), error_code::size_without_advice,
               "running_use"));
}

TEST_CASE("every bush") {
    constexpr const char* kinds[] = {"wrapped_ptfe", "wrapped_pom", "plain_metal", "solid_bronze",
                                     "sintered_bronze"};
    csv_table table = read_csv(data + "/running_bush_fits.csv");
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        CAPTURE(table.cell(i, "bush"));
        const auto kind = static_cast<bush_kind>(place_of(table.cell(i, "bush"), kinds));
        const length from = mm(std::stoi(table.cell(i, "from_mm")));
        const length below = mm(std::stoi(table.cell(i, "below_mm")));
        for (const length diameter : {from == length() ? nm(1) : from, below - nm(1)}) {
            const auto b = recommended_bush_fit(kind, diameter);
            REQUIRE(b);
            CHECK(written(b->housing).view() == text(table.cell(i, "housing")));
            CHECK(written(b->shaft).view() == text(table.cell(i, "shaft")));
            CHECK(written(b->close_shaft).view() == text(table.cell(i, "close_shaft")));
            const std::string& outside = table.cell(i, "outside");
            CHECK(b->bush.are_known == !outside.empty());
            if (!outside.empty()) {
                CHECK(written(b->bush.outside).view() == text(outside));
                CHECK(written(b->bush.bore_before).view() == text(table.cell(i, "bore_before")));
                CHECK(written(b->bush.bore_after).view() == text(table.cell(i, "bore_after")));
            }
            CHECK((b->from.how_sure == confidence::memory) == (table.cell(i, "source") == "memory"));
        }
    }
    CHECK(table.fault == "");
    CHECK(table.rows.size() == 7);
    // The shaft of a plain metal bush as its maker prints it: -0.016/-0.043, -0.025/-0.064, -0.036/-0.090 mm.
    const auto shaft = [](length diameter) {
        const auto b = recommended_bush_fit(bush_kind::plain_metal, diameter);
        REQUIRE(b);
        const auto l = limits(diameter, b->shaft);
        REQUIRE(l);
        return *l;
    };
    CHECK(shaft(12_mm).upper_deviation() == -16_um);
    CHECK(shaft(12_mm).lower_deviation() == -43_um);
    CHECK(shaft(40_mm).upper_deviation() == -25_um);
    CHECK(shaft(40_mm).lower_deviation() == -64_um);
    CHECK(shaft(100_mm).upper_deviation() == -36_um);
    CHECK(shaft(100_mm).lower_deviation() == -90_um);
    CHECK(says(recommended_bush_fit(bush_kind::plain_metal, 9.9_mm), error_code::size_without_advice,
               "from 10 below 180"));
    CHECK(says(recommended_bush_fit(bush_kind::wrapped_ptfe, 0_mm), error_code::size_without_advice,
               "shaft of 0 mm"));
    CHECK(says(recommended_bush_fit(bush_kind::wrapped_pom, 1000_mm), error_code::size_without_advice,
               "below 1000"));
}

TEST_CASE("how loose for a speed") {
    csv_table table = read_csv(data + "/running_speed_clearances.csv");
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        CAPTURE(i);
        const double wanted = std::stod(table.cell(i, "per_mille"));
        const int over = std::stoi(table.cell(i, "over_mm"));
        const std::string& upto = table.cell(i, "upto_mm");
        const length smallest = mm(over) + nm(1);
        const length largest = upto.empty() ? 900_mm : mm(std::stoi(upto));
        for (const length diameter : {smallest, largest})
            for (const double speed :
                 {std::stod(table.cell(i, "over_m_s")) + 0.001, std::stod(table.cell(i, "upto_m_s"))}) {
                const double omega = speed * 0.9999999 * 2 / diameter.in<metre>();
                if (over == 0 && diameter == smallest) continue; // a nanometre doesn't turn
                const auto s = clearance_for_speed(diameter, rotational_speed::from_value(omega));
                REQUIRE(s);
                CHECK(s->by_iso_7902.per_mille == doctest::Approx(wanted));
                CHECK(s->iso_7902 == s->by_iso_7902.of(diameter));
                CHECK(s->by_vogelpohl.per_mille ==
                      doctest::Approx(0.8 * std::pow(speed, 0.25)).epsilon(1e-5));
                CHECK(s->vogelpohl == s->by_vogelpohl.of(diameter));
                CHECK(s->from_iso_7902.how_sure == confidence::memory);
            }
    }
    CHECK(table.fault == "");
    CHECK(table.rows.size() == 12);
    const auto at = [](length d, double omega) {
        return clearance_for_speed(d, rotational_speed::from_value(omega));
    };
    CHECK(says(at(0_mm, 10), error_code::bearing_value_not_possible, "diameter"));
    CHECK(says(at(10_mm, 0), error_code::bearing_value_not_possible, "speed"));
    CHECK(says(at(100_mm, 1000.1), error_code::bearing_value_not_possible, "more than 50 m/s"));
    CHECK(at(100_mm, 999.9));
}

TEST_CASE("the nearest running fit, against all preferred fits one by one") {
    std::mt19937 random(286);
    for (int i = 0; i < 300; ++i) {
        const length nominal = nm(static_cast<std::int64_t>(1'000'000 + random() % 400'000'000));
        const length wanted = nm(static_cast<std::int64_t>(5'000 + random() % 300'000));
        const basis b = i % 2 == 0 ? basis::hole : basis::shaft;
        const auto got = nearest_running_fit(nominal, diametral_clearance(wanted), b);
        REQUIRE(got);
        CHECK(got->sizes.min_clearance() > 0_mm);
        CHECK(got->off == (got->sizes.mean_clearance() > wanted ? got->sizes.mean_clearance() - wanted
                                                                : wanted - got->sizes.mean_clearance()));
        const clearance_window window{.least = wanted,
                                      .most = wanted + nm(static_cast<std::int64_t>(random() % 200'000))};
        const auto inside = nearest_running_fit(nominal, window, b);
        REQUIRE(inside);
        length widest;
        bool seen = false;
        for (const class_pair& classes : preferred_fits(b)) {
            const auto f = limits(nominal, classes);
            if (!f || f->min_clearance() <= 0_mm) continue;
            const length apart = f->mean_clearance() - wanted;
            CHECK((apart < 0_mm ? -apart : apart) >= got->off);
            seen = seen || classes == got->classes;
            const bool is_inside = f->min_clearance() >= window.least && f->max_clearance() <= window.most;
            if (is_inside && f->tolerance() > widest) widest = f->tolerance();
        }
        CHECK(seen);
        CHECK((widest > 0_mm) == (inside->off == 0_mm && inside->sizes.min_clearance() >= window.least &&
                                  inside->sizes.max_clearance() <= window.most));
        if (widest > 0_mm) CHECK(inside->sizes.tolerance() == widest);
        else
            CHECK(inside->classes ==
                  nearest_running_fit(nominal, diametral_clearance((window.least + window.most) / 2), b)
                      ->classes);
    }
    FITWRIGHT_CHECK_BOTH(
        nearest_running_fit(given(12_mm), clearance_window{15_um, 62_um}, basis::hole)->classes ==
        class_pair{"H8"_hole_class, "f7"_shaft_class});
    FITWRIGHT_CHECK_BOTH(
        nearest_running_fit(given(12_mm), diametral_clearance(20_um), basis::hole)->classes ==
        class_pair{"H7"_hole_class, "g6"_shaft_class});
    CHECK(says(nearest_running_fit(12_mm, clearance_window{20_um, 19_um}, basis::hole),
               error_code::window_crossed, "least first"));
    CHECK(!nearest_running_fit(0_mm, diametral_clearance(20_um), basis::hole));
    // Parts without play don't run.
    const auto no_play = recommended_clearance(running_use::oscillating_without_play, 12_mm);
    REQUIRE(no_play);
    CHECK(says(nearest_running_fit(12_mm, no_play->window, basis::hole), error_code::window_not_a_clearance,
               "transition fit"));
    for (const length none : {0_mm, -1_nm, -50_um}) {
        CHECK(says(nearest_running_fit(12_mm, diametral_clearance(none), basis::hole),
                   error_code::window_not_a_clearance, "allowed is a most above 0"));
        CHECK(says(nearest_running_fit(12_mm, clearance_window{none - 10_um, none}, basis::shaft),
                   error_code::window_not_a_clearance, "transition fit"));
    }
    // Of a window that reaches below 0 only what is above counts.
    CHECK(nearest_running_fit(12_mm, clearance_window{-100_um, 20_um}, basis::hole)->classes ==
          nearest_running_fit(12_mm, diametral_clearance(10_um), basis::hole)->classes);
    CHECK(nearest_running_fit(12_mm, clearance_window{-10_um, 40_um}, basis::hole)->off == 0_mm);
    CHECK(!nearest_running_fit(0_mm, clearance_window{10_um, 20_um}, basis::shaft));
}

TEST_CASE("in words") {
    const auto said = [](const auto& r) {
        std::ostringstream out;
        out << *r;
        return out.str();
    };
    CHECK(said(recommended_clearance(running_use::grease_lubricated_pin, 12_mm)) ==
          "0.024 to 0.048 mm on diameter: 0.002 to 0.004 in each inch (common practice, no source)");
    CHECK(
        said(recommended_bush_fit(bush_kind::solid_bronze, 12_mm)) ==
        "housing H7, shaft e7 or g7, bush s6 outside, bore E6, about H8 when pressed in (ISO 4379:1993, copper-alloy "
        "bushes (from memory of the document))");
    CHECK(said(nearest_running_fit(12_mm, clearance_window{15_um, 62_um}, basis::hole)) ==
          "H8/f7, clearance 0.016 to 0.061 mm");
    CHECK(said(clearance_for_speed(12_mm, revolutions_per_minute(2800)))
              .starts_with("0.921 per mille or 11.1 um by Vogelpohl"));
}
