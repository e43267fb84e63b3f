// Whether the element with keyboard focus has a ring, and whether the ring has enough contrast. WCAG 2.2 SC
// 2.4.7, SC 1.4.11.
#include <algorithm>
#include <map>

#include "checks/background.h"
#include "checks/check.h"
#include "checks/phrases.h"
#include "units/contrast.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

using units::Colour;

constexpr double ringRatio = 3;

struct Ring {
    Colour colour, background;
    bool there = true;
};

Ring ringOf(const layout::IntervalPlan& interval, const CheckedRole& role) {
    const project::TextStyle& style = *interval.band->settings.text.find(role.name);
    const project::FocusRing& focus = style.focus;
    Ring ring;
    ring.background = cardBackground(interval);
    const units::Length width = focus.width.value_or(units::Length());
    const units::Length offset = focus.offset.value_or(units::Length());
    // A ring inside its part is on the background of the part.
    const bool inside =
        offset.unit() == width.unit() && offset.value() <= -width.value() && offset.value() < 0;
    if (inside && role.name == "button")
        ring.background =
            units::compositeOver(style.background.value_or(Colour{0, 0, 0, 0}), ring.background);
    const Colour colour = focus.colour.value_or(Colour{0, 0, 0, 0});
    ring.there = !width.isZero() && !colour.isTransparent();
    ring.colour = units::compositeOver(colour, ring.background);
    return ring;
}

/// `buttons`, or `links in body text`.
std::string linksOf(const CheckedRole& role) {
    return role.name == "button" ? wording::say("buttons")
                                 : wording::say("links in %1", {roleText(role.name)});
}

Statement statementOf(const CheckedRole& role, const Ring& ring) {
    const std::string what = linksOf(role);
    const std::string why = wording::say("Keyboard users cannot see where they are");
    const std::string enough = coloursWithContrast(ring.colour, ring.background, ringRatio);
    if (!ring.there)
        return {wording::say("the focus ring of %1 has no width or no colour", {what}), why,
                wording::say("Give it 2 or 3\u00A0px in %1 (Colour › Focus ring)", {enough})};
    return {wording::say(
                "the focus ring of %1 is %2 on %3, a contrast of %4:1 instead of 3:1",
                {what, ring.colour.css(), ring.background.css(),
                 units::figure(units::contrast(ring.colour, ring.background), 2, units::Rounding::Down)}),
            why, wording::say("Set its colour to %1 (Colour › Focus ring)", {enough})};
}

void checkFocus(const Subject& subject, Findings& out) {
    for (const CheckedRole& role : subject.roles) {
        if (!role.wholeLink && !role.linkRuns) continue;
        std::map<std::string, std::pair<Cause, Ring>> causes;
        for (const RolePiece& piece : role.pieces) {
            const auto cut = within(piece, subject.whole());
            const Ring ring = ringOf(subject.row.interval(piece.interval), role);
            if (!cut || (ring.there && units::contrast(ring.colour, ring.background) >= ringRatio)) continue;
            const std::string key = ring.there ? ring.colour.css() + ring.background.css() : "none";
            auto& [cause, worst] = causes.try_emplace(key, Cause{}, ring).first->second;
            cause.add(role.place, *cut, 0);
        }
        for (const auto& [key, found] : causes)
            report(out, found.first,
                   {Severity::Error, found.second.there ? "WCAG 2.2 SC 1.4.11" : "WCAG 2.2 SC 2.4.7",
                    statementOf(role, found.second), role.name + key});
    }
}

void remedyFocus(Candidates& out) {
    for (const CheckedRole& role : out.subject().roles) {
        if (std::ranges::find(out.finding().places, role.place) == out.finding().places.end()) continue;
        const Ring ring = ringOf(out.subject().row.at(out.finding().at), role);
        const std::string of = linksOf(role);
        // A ring without a colour starts from that of the text.
        const project::TextStyle& style = *out.settings(out.bands().front()).text.find(role.name);
        const Colour start = style.focus.colour.value_or(Colour{0, 0, 0, 0}).isTransparent()
                                 ? units::compositeOver(style.colour.value_or(Colour{}), ring.background)
                                 : ring.colour;
        const Colour enough = withContrast(start, ring.background, ringRatio);
        out.set(wording::say("Use %1 for the focus ring of %2", {enough.css(), of}), Candidates::Scope::Look,
                [&](project::Settings& settings, std::size_t) {
                    settings.text.of(role.name).focus.colour = enough;
                });
        out.set(wording::say("Make the focus ring of %1 3\u00A0px wide, in %2", {of, enough.css()}),
                Candidates::Scope::Look, [&](project::Settings& settings, std::size_t) {
                    settings.text.of(role.name).focus.width = units::Length::px(3);
                    settings.text.of(role.name).focus.colour = enough;
                });
    }
}

}  // namespace

extern const Check focusCheck{
    .name = "focus", .run = checkFocus, .dependsOnBreaks = false, .remedies = remedyFocus};

}  // namespace tenter::checks
