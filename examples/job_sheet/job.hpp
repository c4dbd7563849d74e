#ifndef JOB_SHEET_JOB_HPP
#define JOB_SHEET_JOB_HPP

#include "document.hpp"
#include <fitwright/fitwright.hpp>
#include <fitwright/gauge.hpp>
#include <fitwright/material.hpp>
#include <fitwright/tool.hpp>

#include <optional>
#include <string>
#include <vector>

// A job as its file states it, checked but not yet answered.

namespace job_sheet {

/// A value and how the file writes it.
template <class Value> struct stated {
    Value value;
    std::string written;
};

/// Made here, bought in, or found in the drawer: only what is made here has a size to aim at.
enum class supply { made, bought, found };

struct part {
    std::string id;
    std::string name;
    std::string material;
    std::optional<fitwright::material_family> family;    ///< as stated, where the material is no known one
    std::optional<stated<fitwright::material>> taken_as; ///< a known material whose figures stand in for it
    std::string group;                                   ///< as warm as this group, or
    std::optional<stated<fitwright::temperature>> of_its_own; ///< with a temperature of its own
    job_sheet::supply supply = supply::made;
    bool brittle = false;
    std::optional<stated<fitwright::length>> rz; ///< roughness of its seats
    std::vector<stated<fitwright::length>> envelope;
};

/// What a pair may be asked to do.
enum class want {
    stays_put,
    slides,
    turns,
    oil_film,
    no_shake,
    never_seizes,
    little_leak,
    pressure_tight,
    centred,
    comes_off,
    no_creep,
    passes_heat,
    never_rubs,
    end_float,
    comes_off_by_hand,
    goes_in, ///< by no more force than is stated; not written, it follows from `press_at_most`
};

/// What the part is measured with, and what that is known to be good for.
struct instrument {
    std::string name;
    std::optional<stated<fitwright::length>> from;
    std::optional<stated<fitwright::length>> to;
    std::optional<stated<fitwright::length>> reads;
    std::optional<stated<fitwright::length>> error_limit;
    std::string note;
};

/// One part's place in a pair.
template <fitwright::side Side> struct role {
    job_sheet::part part;
    std::string as_read; ///< its own half of the call-out: "14 H7"
    std::optional<fitwright::size_limits<Side>> limits;
    bool has_own_size = false; ///< it gives a call-out or a reading, readable or not
    bool measured = false;
    std::vector<stated<fitwright::length>> readings;  ///< of parts made or bought to the limits
    std::optional<instrument> with;                   ///< what the readings were taken with
    std::optional<stated<fitwright::length>> outside; ///< diameter around a hole
    std::optional<stated<fitwright::length>> wall;    ///< or the thinnest wall around it
    std::optional<stated<fitwright::length>> bore;    ///< through a shaft

    /// Of a measured part.
    [[nodiscard]] fitwright::measured<Side> reading() const {
        return {limits->nominal(), limits->upper_deviation()};
    }
};

/// Another call-out for the same pair, answered beside the drawn one.
struct alternative {
    std::string callout;
    fitwright::fit fit;
};

/// A size in a chain of dimensions.
struct link {
    std::string name;
    std::string callout;
    std::optional<fitwright::hole_limits> limits;
};

struct stack {
    std::vector<stated<fitwright::length>> gap;
    std::vector<stated<fitwright::length>> shims;
    std::vector<link> opens;
    std::vector<link> closes;
};

struct pair {
    std::string id;
    std::string name;
    std::string behaviour;
    std::string callout; ///< as written; empty if each part has its own
    std::optional<role<fitwright::side::hole>> hole;
    std::optional<role<fitwright::side::shaft>> shaft;
    std::optional<stated<fitwright::length>> size; ///< nominal, where no call-out says it
    bool shaft_leads = false;
    std::optional<stated<fitwright::clearance_window>> clearance; ///< wanted of a pair whose shaft leads
    std::vector<want> wants;
    std::vector<std::string> states; ///< the states it must hold in; empty: all
    std::vector<alternative> instead;
    std::optional<stated<fitwright::length>> land;
    std::optional<stated<fitwright::pressure>> pressure;
    std::optional<double> safety; ///< how many times over it is to hold
    std::optional<stated<double>> leak_at_most;
    std::optional<stated<fitwright::length>> shake_at_most; ///< clearance in the loosest state
    std::optional<stated<fitwright::length>> left_at_least; ///< clearance in the tightest state
    std::optional<stated<double>> holds;                    ///< without slipping along the axis, in newtons
    std::optional<stated<double>> press_at_most;            ///< to press it together with, in newtons
    std::optional<stated<double>> load;                     ///< on a journal, in newtons
    std::optional<stated<double>> speed;                    ///< of a journal, in revolutions a minute
    std::optional<stated<fitwright::iso_vg>> oil;           ///< that it is oiled with
    std::optional<job_sheet::stack> stack;
    std::vector<std::string> cautions;
    std::vector<fault> faults; ///< those of the file's faults that are about this pair

    /// Whether a part is left to choose by the wants: there is no call-out, and no clearance to work it out by.
    [[nodiscard]] bool is_open() const {
        return hole && shaft && callout.empty() && !(shaft_leads && clearance) &&
               !(hole->has_own_size && shaft->has_own_size);
    }
    [[nodiscard]] bool wants_to(want w) const {
        for (const want mine : wants)
            if (mine == w) return true;
        return false;
    }
};

struct group {
    std::string id;
    std::string name;
};

struct state {
    std::string id;
    std::vector<std::optional<stated<fitwright::temperature>>> temperatures; ///< one a group, in order
    std::string note;
};

struct fluid {
    std::string name;
    std::optional<stated<fitwright::dynamic_viscosity>> viscosity;
    std::optional<stated<fitwright::temperature>> viscosity_at;
    std::optional<stated<fitwright::pressure>> delivery;
    std::optional<stated<fitwright::pressure>> relief_valve;
    std::optional<stated<fitwright::length>> stroke;
    std::optional<stated<double>> seconds_a_shot;
    std::optional<stated<double>> seconds_under_pressure; ///< of each shot
    std::string note;
};

/// What the job can cut with.
struct drawer {
    std::vector<stated<fitwright::drawer_tool>> drills;
    std::vector<stated<fitwright::drawer_tool>> reamers;
    std::vector<stated<fitwright::drawer_tool>> bit_stock;
    std::vector<stated<fitwright::drawer_tool>> laps;
    std::optional<stated<fitwright::drawer_tool>> boring_head;

    /// All of them together, as `plan_hole` takes them.
    [[nodiscard]] std::vector<fitwright::drawer_tool> tools() const {
        std::vector<fitwright::drawer_tool> all;
        for (const auto* const kind : {&drills, &reamers, &bit_stock, &laps})
            for (const auto& one : *kind) all.push_back(one.value);
        if (boring_head) all.push_back(boring_head->value);
        return all;
    }
};

struct job {
    std::string title;
    std::string about;
    std::optional<stated<fitwright::temperature>> sizes_at;
    std::optional<stated<fitwright::grade>> finest; ///< that the shop holds
    std::vector<std::string> cautions;
    std::vector<group> groups;
    std::vector<state> states;
    std::optional<job_sheet::fluid> fluid;
    std::optional<job_sheet::drawer> drawer;
    std::vector<instrument> instruments;
    std::vector<part> parts;
    std::vector<pair> pairs;
    std::vector<fault> faults;               ///< all of them, in the order of the file
    std::vector<fault> faults_outside_pairs; ///< those that are about no pair
};

} // namespace job_sheet

#endif
