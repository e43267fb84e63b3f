// Contrast of text against what is behind it, at rest and under the pointer. WCAG 2.2 SC 1.4.3.
#include <map>

#include "checks/ground.h"
#include "checks/phrases.h"
#include "checks/registry.h"
#include "units/contrast.h"

namespace tenter::checks {

namespace {

using units::Colour;

// "Large scale": 18 pt, or 14 pt bold; bold is 700 in CSS.
constexpr double largeSize = 24;
constexpr double largeBoldSize = 18.66;
constexpr double boldWeight = 700;
constexpr double usualRatio = 4.5;
constexpr double largeRatio = 3;

struct Inks {
    Colour ink, ground;
    bool hovered = false;
    friend auto operator<=>(const Inks& a, const Inks& b) {
        const auto key = [](const Inks& inks) { return inks.ink.css() + inks.ground.css(); };
        const int order = key(a).compare(key(b));
        return order != 0 ? order <=> 0 : a.hovered <=> b.hovered;
    }
};

/// How a role's text looks in a band: at rest, and under the pointer if it can be followed.
std::vector<Inks> inksOf(const Subject& subject, const RoleSeen& role, std::size_t band) {
    const project::TextStyle& style = *subject.row.settings(band).text.find(role.name);
    const Colour card = cardGround(subject, band);
    const Colour background = style.background.value_or(Colour{0, 0, 0, 0});
    const auto drawn = [&](const std::optional<Colour>& ink, const Colour& own, bool hovered) {
        const Colour ground = units::laidOn(own, card);
        return Inks{units::laidOn(ink.value_or(Colour{}), ground), ground, hovered};
    };
    std::vector<Inks> all{drawn(style.colour, background, false)};
    if (!role.wholeLink && !role.linkRuns) return all;
    // Only a button's background changes under the pointer.
    const Colour under = role.name == "button" ? style.hover.background.value_or(background) : background;
    const Inks hovered = drawn(style.hover.colour ? style.hover.colour : style.colour, under, true);
    if (hovered.ink != all[0].ink || hovered.ground != all[0].ground) all.push_back(hovered);
    return all;
}

std::string contrastSays(const RoleSeen& role, const Inks& inks, double needed) {
    const Colour mended = withContrast(inks.ink, inks.ground, needed);
    std::string says = typeOf(role.name) + (inks.hovered ? " under the pointer" : "") + " is " +
                       inks.ink.css() + " on " + inks.ground.css() + ", " +
                       figure(units::contrast(inks.ink, inks.ground), 2) + " to 1 where " + figure(needed) +
                       " is asked for: in sunlight or with weak sight it is hard to read.";
    if (mended == inks.ink) return sentence(says) + " Change what is behind it; no ink is enough.";
    return sentence(says) + " " + mended.css() + " is enough.";
}

/// Adds where a role's ink is too faint in one piece of widths.
void addFaint(const RoleSeen& role, const RolePiece& piece, const sweep::Interval& cut, bool bold,
              double ratio, Cause& cause, double& needed) {
    if (ratio >= usualRatio) return;
    const units::Linear size = piece.size.from(cut.from - piece.from);
    const double limit = bold ? largeBoldSize : largeSize;
    const std::optional<sweep::Interval> small = whereAbove(limit - size, cut.from, cut.to);
    if (small) needed = usualRatio;
    if (ratio < largeRatio)
        cause.add(role.card, role.part, cut, -ratio);
    else if (small)
        cause.add(role.card, role.part, *small, -ratio);
}

}  // namespace

void checkContrast(const Subject& subject, Findings& out) {
    for (const RoleSeen& role : subject.roles) {
        std::map<Inks, std::pair<Cause, double>> causes;
        for (const RolePiece& piece : role.pieces) {
            const auto cut = within(piece, subject.whole());
            if (!cut) continue;
            const double weight = subject.row.settings(piece.band).text.find(role.name)->weight.value_or(400);
            for (const Inks& inks : inksOf(subject, role, piece.band)) {
                auto& [cause, needed] = causes.try_emplace(inks, Cause{}, largeRatio).first->second;
                addFaint(role, piece, *cut, weight >= boldWeight, units::contrast(inks.ink, inks.ground),
                         cause, needed);
            }
        }
        for (const auto& [inks, found] : causes)
            if (found.first.any())
                tell(
                    out, found.first,
                    {"contrast", Severity::Error, "WCAG 2.2 SC 1.4.3", contrastSays(role, inks, found.second),
                     role.name + inks.ink.css() + inks.ground.css() + (inks.hovered ? "hover" : "")});
    }
}

}  // namespace tenter::checks
