// The ring around what has the keyboard: is there one, and can it be seen. WCAG 2.2 SC 2.4.7, SC 1.4.11.
#include <map>

#include "checks/ground.h"
#include "checks/phrases.h"
#include "checks/registry.h"
#include "units/contrast.h"

namespace tenter::checks {

namespace {

using units::Colour;

constexpr double ringRatio = 3;

struct Ring {
    Colour colour, ground;
    bool there = true;
};

Ring ringOf(const Subject& subject, const RoleSeen& role, std::size_t band) {
    const project::TextStyle& style = *subject.row.settings(band).text.find(role.name);
    const project::FocusRing& focus = style.focus;
    Ring ring;
    ring.ground = cardGround(subject, band);
    const units::Length width = focus.width.value_or(units::Length());
    const units::Length offset = focus.offset.value_or(units::Length());
    // A ring drawn wholly within its part lies on the part's own background.
    const bool inside =
        offset.unit() == width.unit() && offset.value() <= -width.value() && offset.value() < 0;
    if (inside && role.name == "button")
        ring.ground = units::laidOn(style.background.value_or(Colour{0, 0, 0, 0}), ring.ground);
    const Colour said = focus.colour.value_or(Colour{0, 0, 0, 0});
    ring.there = !width.isZero() && !said.isTransparent();
    ring.colour = units::laidOn(said, ring.ground);
    return ring;
}

std::string focusSays(const RoleSeen& role, const Ring& ring) {
    const std::string what = role.name == "button" ? "the button" : "links in " + typeOf(role.name);
    if (!ring.there)
        return "Nothing shows that " + what +
               " has the keyboard: its focus ring is without width or colour, so whoever cannot use a mouse "
               "is "
               "lost. Give it a ring of 2 or 3\u00A0px in " +
               withContrast(ring.ground, ring.ground, ringRatio).css() + " or stronger.";
    return "The focus ring around " + what + " is " + ring.colour.css() + " on " + ring.ground.css() + ", " +
           figure(units::contrast(ring.colour, ring.ground), 2) +
           " to 1 where 3 is asked for: whoever goes by keyboard cannot see where they are. " +
           withContrast(ring.colour, ring.ground, ringRatio).css() + " is enough.";
}

}  // namespace

void checkFocus(const Subject& subject, Findings& out) {
    for (const RoleSeen& role : subject.roles) {
        if (!role.wholeLink && !role.linkRuns) continue;
        std::map<std::string, std::pair<Cause, Ring>> causes;
        for (const RolePiece& piece : role.pieces) {
            const auto cut = within(piece, subject.whole());
            const Ring ring = ringOf(subject, role, piece.band);
            if (!cut || (ring.there && units::contrast(ring.colour, ring.ground) >= ringRatio)) continue;
            const std::string key = ring.there ? ring.colour.css() + ring.ground.css() : "none";
            auto& [cause, worst] = causes.try_emplace(key, Cause{}, ring).first->second;
            cause.add(role.card, role.part, *cut, 0);
        }
        for (const auto& [key, found] : causes)
            tell(out, found.first,
                 {"focus", Severity::Error, found.second.there ? "WCAG 2.2 SC 1.4.11" : "WCAG 2.2 SC 2.4.7",
                  focusSays(role, found.second), role.name + key});
    }
}

}  // namespace tenter::checks
