#include "checker.hpp"

#include "blocks.hpp"
#include "made.hpp"

#include <cmath>

namespace checker {

namespace {

constexpr double equal = 1e-6; // mm: far below any control's step, far above what a double loses

/// A control in miniature: where the tool is, and what holds.
class control {
public:
    control(const std::vector<hole>& holes, const rules& r) : rules_(r), made_(holes, r) {}

    std::vector<std::string> run(std::string_view program) {
        for (const block& b : blocks_of(program)) {
            line_ = b.line;
            if (!b.fault.empty()) wrong(b.fault);
            if (b.has_comment && b.comment.size() > rules_.comment_length)
                wrong("a comment that is too long");
            if (ended_ && !b.words.empty()) wrong("something behind the end");
            if (!b.words.empty()) obey(b);
        }
        if (!ended_) wrong("no end of the program");
        for (const std::string& fault : made_.faults_at_the_end()) wrong(fault);
        return std::move(faults_);
    }

private:
    void wrong(const std::string& what) { faults_.push_back("line " + std::to_string(line_) + ": " + what); }

    void note(const std::string& fault) {
        if (!fault.empty()) wrong(fault);
    }

    // ---- what a block switches

    void obey(const block& b) {
        start(b);
        for (const word& w : b.words) check_digits(w);
        if (b.find('F')) feed_ = *b.value('F');
        if (b.find('S')) speed_ = *b.value('S');
        if (b.has("M3") || b.has("M4")) {
            spindle_ = true;
            if (!(speed_ > 0)) wrong("the spindle is started without a speed");
        }
        if (b.has("M5")) spindle_ = false;
        if (b.has("M6")) change_tool(b);
        if (b.has("G80")) in_cycle_ = false;
        for (const char* const code : {"G0", "G1", "G2", "G3", "G81", "G83", "G85"})
            if (b.has(code)) motion_ = code;
        if (b.has(rules_.probe_word)) motion_ = "probe";
        if (b.has(rules_.length_offset)) length_is_set_ = true;
        if (b.find('X') || b.find('Y') || b.find('Z') || b.find('I') || b.find('J') || b.find('R')) move(b);
        if (b.has("M30")) end();
    }

    /// The first block has the unit alone, the second the plane, and it switches off what might be on.
    void start(const block& b) {
        ++blocks_;
        if (blocks_ == 1) {
            const bool inches = b.has("G20") || b.has("G70");
            if (b.words.size() != 1 || !(inches || b.has("G21") || b.has("G71")))
                wrong("the first block is not the unit alone");
            scale_ = inches ? 25.4 : 1;
        }
        if (blocks_ == 2 && !(b.has("G17") && b.has("G40"))) wrong("the second block is no safe line");
        if (b.has("G91")) wrong("distances that are not absolute");
        if (b.has("G90")) is_absolute_ = true;
    }

    void check_digits(const word& w) {
        if (std::string_view("XYZIJRQ").find(w.letter) == std::string_view::npos) return;
        const std::size_t point = w.number.find('.');
        if (point == std::string::npos && rules_.always_a_point) wrong("a coordinate without a point");
        if (point != std::string::npos &&
            w.number.size() - point - 1 > static_cast<std::size_t>(rules_.decimals))
            wrong("more decimals than the control has");
    }

    void change_tool(const block& b) {
        if (spindle_) wrong("a tool is changed while the spindle turns");
        if (compensates_) wrong("a tool is changed under compensation");
        if (in_cycle_) wrong("a tool is changed inside a cycle");
        if (!b.find('T')) return wrong("no tool to change to");
        tool_ = static_cast<int>(*b.value('T'));
        length_is_set_ = rules_.length_offset.empty();
        motion_.clear();
        is_placed_ = false;
        at_.z = 1e9; // the tool changer is far above
    }

    void end() {
        ended_ = true;
        if (spindle_) wrong("the spindle turns at the end");
        if (compensates_) wrong("compensation at the end");
    }

    // ---- what a block moves

    void move(const block& b) {
        if (!is_absolute_) wrong("a move before G90");
        if (tool_ == 0) wrong("a move without a tool");
        if (!length_is_set_) wrong("a move without the tool's length");
        point to = at_;
        if (b.find('X')) to.x = *b.value('X') * scale_;
        if (b.find('Y')) to.y = *b.value('Y') * scale_;
        if (b.find('Z')) to.z = *b.value('Z') * scale_;
        if (!is_placed_ && (b.find('X') || b.find('Y'))) is_placed_ = true;
        if (motion_.empty()) return wrong("a move of no kind");
        if (motion_ == "G0") return rapid(to, b);
        if (motion_ == "G1") return straight(to, b);
        if (motion_ == "probe") return needs_feed_and_speed(); // it stops where it touches
        if (motion_ == "G2" || motion_ == "G3") return arc(to, b);
        cycle(to, b);
    }

    void rapid(const point& to, const block& b) {
        if (in_cycle_) wrong("a rapid move inside a cycle");
        if (compensates_ || b.has("G41") || b.has("G42")) wrong("a rapid move under compensation");
        const bool goes_sideways = to.x != at_.x || to.y != at_.y;
        const bool goes_up = to.z >= at_.z && !goes_sideways;
        if (goes_sideways && (std::fmin)(at_.z, to.z) < made_.highest_clearance() - equal)
            wrong("a rapid move sideways below the clearance");
        if (!goes_up && is_placed_ && to.z < made_.clearance_at(to.x, to.y) - equal)
            wrong("a rapid move below the clearance");
        at_ = to;
    }

    void needs_feed_and_speed() {
        if (!(feed_ > 0)) wrong("a cut without a feed");
        if (!spindle_ && tool_ != rules_.probe_tool) wrong("a cut while the spindle stands");
        if (spindle_ && tool_ == rules_.probe_tool) wrong("a probe that turns");
    }

    void straight(const point& to, const block& b) {
        if (in_cycle_) wrong("a straight cut inside a cycle");
        needs_feed_and_speed();
        const double along = std::hypot(to.x - at_.x, to.y - at_.y);
        if (b.has("G41") || b.has("G42")) {
            compensates_ = true;
            radius_ = radius_of_tool();
            if (!b.find('D')) wrong("compensation without a register");
            if (along <= radius_) wrong("compensation starts on a line no longer than the tool's radius");
            if (at_.z < made_.clearance_at(at_.x, at_.y) - equal)
                wrong("compensation starts inside the work");
        } else if (b.has("G40")) {
            if (!compensates_) wrong("no compensation to end");
            if (along <= radius_) wrong("compensation ends on a line no longer than the tool's radius");
            compensates_ = false;
        } else if (to.z < at_.z) note(made_.sunk(to, along > 0 ? 0 : tool_));
        at_ = to;
    }

    double radius_of_tool() {
        const auto found = rules_.mill_radius.find(tool_);
        if (found != rules_.mill_radius.end()) return found->second;
        wrong("compensation for a tool that does not mill");
        return 0;
    }

    void arc(const point& to, const block& b) {
        needs_feed_and_speed();
        point centre = at_;
        if (b.find('R')) {
            const double radius = *b.value('R') * scale_;
            const double half = std::hypot(to.x - at_.x, to.y - at_.y) / 2;
            if (half < equal) return wrong("a full circle by its radius");
            if (half > radius + equal) return wrong("an arc whose radius does not reach");
            // Counter-clockwise and no more than half a turn: the centre lies to the left of the chord.
            const double up = std::sqrt((std::fmax)(0.0, radius * radius - half * half)) / (2 * half);
            centre.x = (at_.x + to.x) / 2 - (to.y - at_.y) * up;
            centre.y = (at_.y + to.y) / 2 + (to.x - at_.x) * up;
        } else {
            centre.x += b.value('I').value_or(0) * scale_;
            centre.y += b.value('J').value_or(0) * scale_;
        }
        const double from_start = std::hypot(at_.x - centre.x, at_.y - centre.y);
        const double from_end = std::hypot(to.x - centre.x, to.y - centre.y);
        if (std::fabs(from_start - from_end) > equal) wrong("an arc whose radii differ");
        if (motion_ != "G3") wrong("a bore that is not climb milled");
        if (!compensates_) wrong("an arc without compensation");
        else if (from_end <= radius_) wrong("an arc no larger than the tool under compensation");
        if (to.z > at_.z + equal) wrong("a helix that goes up");
        note(made_.milled(at_, to, centre));
        at_ = to;
    }

    void cycle(const point& to, const block& b) {
        needs_feed_and_speed();
        in_cycle_ = true;
        if (compensates_) wrong("a cycle under compensation");
        if (!b.find('F')) wrong("a cycle without its feed");
        if (motion_ == "G83" && !(b.value('Q').value_or(0) > 0)) wrong("pecks without a depth");
        const double clear = b.value('R').value_or(-1e9) * scale_;
        if (clear < made_.clearance_at(to.x, to.y) - equal) wrong("a rapid move below the clearance");
        if (at_.z < made_.highest_clearance() - equal) wrong("a cycle that starts below the clearance");
        note(made_.sunk(to, tool_));
        at_ = {to.x, to.y, at_.z}; // G98: back to where it came from
    }

    const rules& rules_;
    made_holes made_;
    std::vector<std::string> faults_;
    int line_ = 0;
    int blocks_ = 0;
    int tool_ = 0;
    double scale_ = 1;
    double feed_ = 0;
    double speed_ = 0;
    double radius_ = 0;
    point at_;
    std::string motion_;
    bool is_absolute_ = false;
    bool is_placed_ = false;
    bool spindle_ = false;
    bool compensates_ = false;
    bool in_cycle_ = false;
    bool length_is_set_ = false;
    bool ended_ = false;
};

} // namespace

std::vector<std::string> faults_of(std::string_view program, const std::vector<hole>& holes, const rules& r) {
    return control(holes, r).run(program);
}

} // namespace checker
