// Contrast of text with its background, normally and on hover. WCAG 2.2 SC 1.4.3.
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

// "Large scale": 18 pt, or 14 pt bold; bold is 700 in CSS.
constexpr double largeSize = 24;
constexpr double largeBoldSize = 18.66;
constexpr double boldWeight = 700;
constexpr double usualRatio = 4.5;
constexpr double largeRatio = 3;

/// The colours of a role's text and of its background.
struct ColourPair {
    Colour text, background;
    bool hovered = false;
    friend auto operator<=>(const ColourPair& a, const ColourPair& b) {
        const auto key = [](const ColourPair& pair) { return pair.text.css() + pair.background.css(); };
        const int order = key(a).compare(key(b));
        return order != 0 ? order <=> 0 : a.hovered <=> b.hovered;
    }
};

/// The role's colours in an interval: the normal ones, and those on hover if it has links and they differ.
std::vector<ColourPair> coloursOf(const layout::IntervalPlan& interval, const CheckedRole& role) {
    const project::TextStyle& style = *interval.band->settings.text.find(role.name);
    const Colour card = cardBackground(interval);
    const Colour background = style.background.value_or(Colour{0, 0, 0, 0});
    const auto drawn = [&](const std::optional<Colour>& text, const Colour& own, bool hovered) {
        const Colour behind = units::compositeOver(own, card);
        return ColourPair{units::compositeOver(text.value_or(Colour{}), behind), behind, hovered};
    };
    std::vector<ColourPair> all{drawn(style.colour, background, false)};
    if (!role.wholeLink && !role.linkRuns) return all;
    // Only a button's background changes on hover.
    const Colour hoverBackground =
        role.name == "button" ? style.hover.background.value_or(background) : background;
    const ColourPair hovered =
        drawn(style.hover.colour ? style.hover.colour : style.colour, hoverBackground, true);
    if (hovered.text != all[0].text || hovered.background != all[0].background) all.push_back(hovered);
    return all;
}

/// `heading text`, or `heading text on hover`.
std::string textOf(const CheckedRole& role, const ColourPair& colours) {
    const std::string text = roleText(role.name);
    return colours.hovered ? wording::say("%1 on hover", {text}) : text;
}

Statement statementOf(const Subject& subject, const Cause& cause, const CheckedRole& role,
                      const ColourPair& colours, double needed) {
    const double ratio = units::contrast(colours.text, colours.background);
    const std::string enough = coloursWithContrast(colours.text, colours.background, needed);
    return {wording::say("%1, %2 is %3 on %4, a contrast of %5:1 instead of %6:1",
                         {atWidths(subject, cause.runOfWorst()), textOf(role, colours), colours.text.css(),
                          colours.background.css(), units::figure(ratio, 2, units::Rounding::Down),
                          units::figure(needed)}),
            wording::say("It is hard to read in sunlight or with low vision"),
            colours.hovered ? wording::say("Set the text colour to %1 (Colour › Hover)", {enough})
                            : wording::say("Set the text colour to %1 (Colour › Text)", {enough})};
}

/// Adds the widths of one piece at which the contrast `ratio` is too low, and sets the ratio needed there.
void addLowContrast(const CheckedRole& role, const RolePiece& piece, const sweep::Interval& cut, bool bold,
                    double ratio, Cause& cause, double& needed) {
    if (ratio >= usualRatio) return;
    const units::Linear size = piece.size.from(cut.from - piece.from);
    const double limit = bold ? largeBoldSize : largeSize;
    const std::optional<sweep::Interval> small = whereAbove(limit - size, cut.from, cut.to);
    if (small) needed = usualRatio;
    if (ratio < largeRatio)
        cause.add(role.place, cut, -ratio);
    else if (small)
        cause.add(role.place, *small, -ratio);
}

/// The colours of a role that have too little contrast somewhere, and the ratio needed there.
using LowContrasts = std::map<ColourPair, std::pair<Cause, double>>;

LowContrasts lowContrastsOf(const Subject& subject, const CheckedRole& role) {
    LowContrasts causes;
    for (const RolePiece& piece : role.pieces) {
        const auto cut = within(piece, subject.whole());
        if (!cut) continue;
        const double weight = subject.row.settings(piece.band).text.find(role.name)->weight.value_or(400);
        for (const ColourPair& colours : coloursOf(subject.row.interval(piece.interval), role)) {
            auto& [cause, needed] = causes.try_emplace(colours, Cause{}, largeRatio).first->second;
            addLowContrast(role, piece, *cut, weight >= boldWeight,
                           units::contrast(colours.text, colours.background), cause, needed);
        }
    }
    std::erase_if(causes, [](const auto& entry) { return !entry.second.first.any(); });
    return causes;
}

std::string keyOf(const CheckedRole& role, const ColourPair& colours) {
    return role.name + colours.text.css() + colours.background.css() + (colours.hovered ? "hover" : "");
}

void checkContrast(const Subject& subject, Findings& out) {
    for (const CheckedRole& role : subject.roles)
        for (const auto& [colours, found] : lowContrastsOf(subject, role)) {
            const auto& [cause, needed] = found;
            report(out, cause,
                   {Severity::Error, "WCAG 2.2 SC 1.4.3", statementOf(subject, cause, role, colours, needed),
                    keyOf(role, colours)});
        }
}

void remedyContrast(Candidates& out) {
    const Subject& subject = out.subject();
    for (const CheckedRole& role : subject.roles)
        for (const auto& [colours, found] : lowContrastsOf(subject, role)) {
            if (!out.isFor(keyOf(role, colours))) continue;
            const ColourPair pair = colours;
            const Colour ink = withContrast(pair.text, pair.background, found.second);
            const std::string text = textOf(role, pair);
            out.set(wording::say("Use %1 for %2", {ink.css(), text}), Candidates::Scope::Look,
                    [&](project::Settings& settings, std::size_t) {
                        project::TextStyle& style = settings.text.of(role.name);
                        (pair.hovered ? style.hover.colour : style.colour) = ink;
                    });
            const Colour behind = withContrast(pair.background, pair.text, found.second);
            out.set(wording::say("Use %1 behind %2", {behind.css(), text}), Candidates::Scope::Look,
                    [&](project::Settings& settings, std::size_t band) {
                        const project::TextStyle& now = *subject.row.settings(band).text.find(role.name);
                        if (!now.background || now.background->isTransparent()) return;
                        project::TextStyle& style = settings.text.of(role.name);
                        (pair.hovered ? style.hover.background : style.background) = behind;
                    });
        }
}

}  // namespace

extern const Check contrastCheck{
    .name = "contrast", .run = checkContrast, .dependsOnBreaks = false, .remedies = remedyContrast};

}  // namespace tenter::checks
