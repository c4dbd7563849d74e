// The gallery: every kind of picture.
//
//     gallery > slide.svg    the picture of the README
//     gallery FOLDER         all of them, into a folder that is there

#include <fitwright/fitwright.hpp>
#include <fitwright/io/error.hpp>
#include <fitwright/io/picture.hpp>

#include <fstream>
#include <iostream>
#include <string>

using namespace fitwright;
using namespace fitwright::literals;

namespace {

constexpr fit slide_fit = "12 H7/g6"_fit;
const material body = materials::aluminium_6082_t6;
const material plunger = materials::stainless_303;

zone_picture slide() {
    return {.of = slide_fit,
            .title = "12 H7/g6: the plunger in the valve body",
            .hole = {.name = "valve body", .target = 12.009_mm},
            .shaft = {.name = "plunger", .reading = measured_shaft{11.988_mm, 2_um}}};
}

const thermal_state states[] = {{"bench", 20_degC, 20_degC},
                                {"warm-up", 95_degC, 60_degC},
                                {"working", 90_degC, 85_degC},
                                {"cool-down", 40_degC, 70_degC}};

constexpr drawer_tool drawer[] = {
    twist_drills({.from = 1_mm, .upto = 13_mm, .step = 0.1_mm}),
    hand_reamer(10_mm, "H7"_hole_class),
    boring_head({.from = 8_mm, .upto = 50_mm, .step = 0.01_mm}),
};

/// Into a file of the folder, or not at all: then it says why.
class gallery {
public:
    explicit gallery(std::string folder) : folder_(std::move(folder)) {}

    template <class Picture> void hang(const std::string& name, const Picture& p) {
        std::ofstream file(folder_ + "/" + name + ".svg", std::ios::binary);
        const auto drawn = draw(p, file);
        if (!drawn) complain(name, drawn.error().message());
        else if (!file.flush()) complain(name, "can't be written");
    }

    [[nodiscard]] bool is_whole() const { return is_whole_; }

private:
    void complain(const std::string& name, text why) {
        std::cerr << name << ": " << std::string_view(why) << '\n';
        is_whole_ = false;
    }

    std::string folder_;
    bool is_whole_ = true;
};

void hang_fits(gallery& walls) {
    walls.hang("slide", slide());

    zone_picture warm = slide();
    if (const auto hot = at_temperature(slide_fit, {body, 95_degC}, {plunger, 60_degC})) {
        warm.hot = *hot;
        warm.hot_state = "warm-up";
    }
    walls.hang("slide_when_warm", warm);

    const measured_shaft rod{7.968_mm, 2_um};
    walls.hang("rod_that_leads", zone_picture{.of = fit(between(7.978_mm, 7.986_mm), rod.limits()),
                                              .title = "A rod of 7.968, and the bore for it",
                                              .shaft = {.name = "rod from the drawer", .is_measured = true}});
    walls.hang("press_fit", zone_picture{.of = "14 H7/s6"_fit, .title = "14 H7/s6: the liner in its block"});
    walls.hang("far_apart",
               zone_picture{.of = "40 H5/a6"_fit, .title = "40 H5/a6: far apart, the gap cut short"});
}

void hang_charts(gallery& walls) {
    walls.hang("clearance_when_warm", heat_picture{.of = slide_fit,
                                                   .hole = body,
                                                   .shaft = plunger,
                                                   .states = states,
                                                   .title = "12 H7/g6: from cold to warm and back"});
    walls.hang("how_often", chance_picture{.of = slide_fit,
                                           .spread = spread::both(size_distribution::triangular()),
                                           .window = {10_um, 25_um},
                                           .title = "12 H7/g6: how often 10 to 25 um"});
    if (const auto plan = plan_hole("10 H7"_hole, drawer, materials::brass_cuzn39pb3))
        walls.hang("hole_plan", plan_picture{.of = *plan, .title = "10 H7 in brass, from the drawer"});
    const joint liner{.seat = "14 H7/s6"_fit,
                      .hub = {.made_of = body, .outside = 40_mm, .at = 95_degC},
                      .shaft = {.made_of = materials::bronze_cusn7zn4pb7, .bore = 8_mm, .at = 95_degC},
                      .joint_length = 28_mm,
                      .roughness = {.hub = 4_um, .shaft = 3_um},
                      .between = frictions::any_pair};
    walls.hang("liner", press_picture{.of = liner, .title = "14 H7/s6: how far the liner closes"});
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 2) return draw(slide(), std::cout) ? 0 : 1;
    gallery walls(argv[1]);
    hang_fits(walls);
    hang_charts(walls);
    return walls.is_whole() ? 0 : 1;
}
