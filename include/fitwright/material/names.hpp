#ifndef FITWRIGHT_MATERIAL_NAMES_HPP
#define FITWRIGHT_MATERIAL_NAMES_HPP

#include <fitwright/error.hpp>
#include <fitwright/material/material.hpp>
#include <fitwright/rows.hpp>

#include <cstddef>
#include <cstdint>

// Names of materials: whether two are the same, how unlike they are, and what to say if none is.

namespace fitwright::detail {

/// A name without what makes no difference: letter case, blanks, hyphens, underscores.
struct bare_name {
    static constexpr std::size_t capacity = 48;

    char characters[capacity] = {};
    std::size_t size = 0;
    bool is_cut = false;

    constexpr explicit bare_name(text name) noexcept {
        for (const char c : name) {
            if (c == ' ' || c == '\t' || c == '-' || c == '_') continue;
            if (size == capacity) {
                is_cut = true;
                break;
            }
            characters[size++] = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        }
    }

    [[nodiscard]] constexpr text view() const noexcept { return {characters, size}; }
};

/// The names of a material, one after another.
class names_of {
public:
    constexpr explicit names_of(const material& m) noexcept : current_(m.name), rest_(m.other_names) {}

    [[nodiscard]] constexpr bool is_done() const noexcept { return is_done_; }
    [[nodiscard]] constexpr text current() const noexcept { return current_; }

    constexpr void advance() noexcept {
        is_done_ = rest_.empty();
        std::size_t size = 0;
        while (size < rest_.size() && rest_[size] != ';') ++size;
        current_ = text(rest_.data(), size);
        if (size < rest_.size()) ++size;
        rest_ = text(rest_.data() + size, rest_.size() - size);
    }

private:
    text current_;
    text rest_;
    bool is_done_ = false;
};

[[nodiscard]] constexpr bool has_name(const material& m, const bare_name& wanted) noexcept {
    if (wanted.size == 0 || wanted.is_cut) return false;
    for (names_of names(m); !names.is_done(); names.advance())
        if (bare_name(names.current()).view() == wanted.view()) return true;
    return false;
}

/// The least number of characters to put in, leave out, change, or swap with the next, that makes one
/// name of the other; more than `most` counts as `most` + 1.
[[nodiscard]] constexpr std::size_t slips_between(text a, text b, std::size_t most) noexcept {
    const std::size_t longer = a.size() > b.size() ? a.size() - b.size() : b.size() - a.size();
    if (longer > most) return most + 1;
    std::size_t before[bare_name::capacity + 1] = {};
    std::size_t above[bare_name::capacity + 1] = {};
    std::size_t here[bare_name::capacity + 1] = {};
    for (std::size_t j = 0; j <= b.size(); ++j) here[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        for (std::size_t j = 0; j <= b.size(); ++j) {
            before[j] = above[j];
            above[j] = here[j];
        }
        here[0] = i;
        std::size_t least = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            std::size_t slips = above[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
            if (above[j] + 1 < slips) slips = above[j] + 1;
            if (here[j - 1] + 1 < slips) slips = here[j - 1] + 1;
            const bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
            if (swapped && before[j - 2] + 1 < slips) slips = before[j - 2] + 1;
            here[j] = slips;
            if (slips < least) least = slips;
        }
        if (least > most) return most + 1;
    }
    return here[b.size()] > most ? most + 1 : here[b.size()];
}

/// Not as near as three slips of the pen, but what was wanted is a part of a name: brass, 6082.
inline constexpr std::size_t only_a_part = 4;
/// Not worth a suggestion.
inline constexpr std::size_t too_far_off = 5;

/// How far a material's nearest name is from the one that was wanted, in slips of the pen.
[[nodiscard]] constexpr std::size_t distance(const material& m, const bare_name& wanted) noexcept {
    std::size_t nearest = too_far_off;
    const std::size_t slips_allowed = wanted.size < 3 ? 0 : wanted.size < 6 ? 1 : wanted.size < 10 ? 2 : 3;
    for (names_of names(m); !names.is_done(); names.advance()) {
        const bare_name bare(names.current());
        const std::size_t slips = slips_between(bare.view(), wanted.view(), slips_allowed);
        if (slips <= slips_allowed && slips < nearest) nearest = slips;
        const bool is_part = wanted.size > 2 && bare.view().find(wanted.view()) != text::npos;
        if (is_part && only_a_part < nearest) nearest = only_a_part;
    }
    return nearest;
}

[[nodiscard]] constexpr error no_such_material(text name, rows<const material*> among) noexcept {
    const bare_name wanted(name);
    if (wanted.size == 0)
        return error::composer(error_code::text_is_empty)
               << "the material is missing; allowed: a standard designation or a common name";
    std::int64_t sharing = 0;
    const material* nearest[3] = {};
    std::size_t distances[3] = {too_far_off, too_far_off, too_far_off};
    if (!wanted.is_cut) {
        for (const material* m : among) {
            const std::size_t far_off = distance(*m, wanted);
            if (far_off == only_a_part) ++sharing;
            std::size_t place = 3;
            while (place > 0 && far_off < distances[place - 1]) --place;
            for (std::size_t i = 2; i > place; --i) {
                nearest[i] = nearest[i - 1];
                distances[i] = distances[i - 1];
            }
            if (place < 3) {
                nearest[place] = m;
                distances[place] = far_off;
            }
        }
    }
    const bool is_shared = sharing > 1 && distances[0] == only_a_part;
    error::composer say(is_shared ? error_code::material_ambiguous : error_code::material_not_known);
    say.quote((fixed_text<40>() << name).view());
    if (is_shared)
        say << " may be one of " << sharing << " materials; allowed: one by its full name, such as ";
    else say << " is not a material known here; allowed: a standard designation or a common name";
    if (distances[0] == too_far_off) return say << ", or a material of your own";
    if (!is_shared) say << "; near to it: ";
    say.begin_suggestion() << nearest[0]->name;
    say.end_suggestion();
    for (std::size_t i = 1; i < 3; ++i)
        if (distances[i] < too_far_off) say << ", '" << nearest[i]->name << "'";
    return say;
}

} // namespace fitwright::detail

#endif
