// Text parts: CSS Text 3 and 4, CSS Fonts 4.
#include <string>

#include "emit/rules.h"
#include "emit/sentences.h"
#include "emit/values.h"
#include "project/levels.h"
#include "units/number.h"

namespace tenter::emit {

using project::TextStyle;
using units::Length;
using units::Unit;

namespace {

std::string alignment(project::Align align) {
    switch (align) {
        case project::Align::Center:
            return "center";
        case project::Align::End:
            return "end";
        case project::Align::Start:
            break;
    }
    return "start";
}

/// CSS Box Alignment 3 § 4.4. The flex-… keywords work in older browsers.
std::string placement(project::Place place) {
    switch (place) {
        case project::Place::Start:
            return "flex-start";
        case project::Place::Center:
            return "center";
        case project::Place::End:
            return "flex-end";
        case project::Place::Stretch:
            break;
    }
    return "auto";
}

std::string letterCase(project::LetterCase value) {
    switch (value) {
        case project::LetterCase::Uppercase:
            return "uppercase";
        case project::LetterCase::Capitalize:
            return "capitalize";
        case project::LetterCase::None:
            break;
    }
    return "none";
}

std::string overflowWrap(project::OverflowWrap value) {
    switch (value) {
        case project::OverflowWrap::BreakWord:
            return "break-word";
        case project::OverflowWrap::Anywhere:
            return "anywhere";
        case project::OverflowWrap::Normal:
            break;
    }
    return "normal";
}

std::string spacing(const std::optional<Length>& length) {
    return !length || length->isZero() ? "normal" : length->css();
}

/// Minimum lines, as a minimum height of the content box. The height of a border box would also include
/// padding and border, which a height cannot state: a percentage of the padding refers to a width, and
/// browsers round borders to whole device px (CSS Values 4 § 5.4).
void addMinimumLines(const TextStyle& style, Rule& rule) {
    const int lines = style.keepLines.value_or(0);
    LengthSum room;
    const units::LineHeight height = style.lineHeight.value_or(units::LineHeight::times(1.4));
    room.add(height.isNumber() ? Length::em(lines * height.number()) : height.length(),
             height.isNumber() ? 1 : lines);
    rule.always("box-sizing", lines > 0 ? "content-box" : "border-box");
    rule.always("display", "block");
    rule.unless("auto", "min-height", lines > 0 ? room.css() : "auto");
}

void addPlace(const BandScope& scope, const TextStyle& style, Rule& rule) {
    const std::string place = placement(style.place.value_or(project::Place::Stretch));
    const bool levelled = scope.settings.row.level == project::Level::Subgrid;
    const bool toEnd = style.margin.top && style.margin.top->isAuto();
    const bool takesLast = project::Levels::of(scope.project, scope.settings).endsTakeLast;
    if (!levelled) {
        rule.unless("auto", "align-self", place);
        rule.unless("auto", "justify-self", "auto");
        rule.unless("auto", "grid-row-end", "auto");
    } else {
        rule.unless("auto", "align-self", toEnd ? "end" : "start");
        rule.unless("auto", "justify-self", place == "auto" ? "stretch" : place);
        rule.unless("auto", "grid-row-end", toEnd && takesLast ? "-1" : "auto");
    }
}

void addBox(const RoleUse& use, const TextStyle& style, Rule& rule) {
    rule.always("margin", sides(style.margin));
    rule.always("padding", sides(style.padding));
    // Themes style links as buttons, but rarely the other text of a card.
    const bool themed = use.role == "button";
    const std::string neutral = themed ? "" : "0";
    rule.unless(neutral, "border", border(style.border));
    rule.unless(neutral, "border-radius", sumOf(style.radius).css());
    rule.unless(themed ? "" : "transparent", "background",
                style.background.value_or(units::Colour{0, 0, 0, 0}).css());
}

void addType(const BandScope& scope, const RoleUse& use, const TextStyle& style, Rule& rule) {
    const bool spaced = style.letterSpacing && !style.letterSpacing->isZero();
    const project::Follow follow = style.follow.value_or(project::Follow::Viewport);
    const units::Ramp ramp = style.size.value_or(units::Ramp::flat(16));
    const auto size = units::FluidSize::from(ramp, scope.rootSize, scope.unit,
                                             follow == project::Follow::Card ? Unit::Cqi : Unit::Vw);
    rule.always("color", style.colour.value_or(units::Colour{}).css());
    rule.always("font-family", families(style.family.value_or(std::vector<std::string>{})));
    rule.always("font-weight", units::number(style.weight.value_or(400)));
    rule.always("font-style", style.slant == project::Slant::Italic ? "italic" : "normal");
    rule.declarations.push_back({"font-size", size.css(), {}, rampSentence(use.role, ramp, follow)});
    rule.always("line-height", style.lineHeight.value_or(units::LineHeight::times(1.4)).css());
    rule.always("letter-spacing", spacing(style.letterSpacing));
    // Letter spacing turns off different ligatures in different browsers; this turns off all. CSS Text 3
    // § 8.2.
    rule.unless("normal", "font-variant-ligatures", spaced ? "none" : "normal");
    rule.always("word-spacing", spacing(style.wordSpacing));
    rule.always("text-transform", letterCase(style.letterCase.value_or(project::LetterCase::None)));
    rule.always("text-align", alignment(style.align.value_or(project::Align::Start)));
    if (use.role == "button") rule.always("text-decoration", "none");
    rule.always("text-wrap", style.wrap == project::Wrap::Balance ? "balance" : "wrap");
    rule.always("overflow-wrap", overflowWrap(style.overflowWrap.value_or(project::OverflowWrap::Normal)));
    rule.always("hyphens", style.hyphens == project::Hyphens::None ? "none" : "manual");
}

}  // namespace

void addTextRule(const BandScope& scope, const RoleUse& use, Rules& rules) {
    const TextStyle* style = scope.settings.text.find(use.role);
    if (style == nullptr) return;
    Rule rule;
    rule.selector = partSelector(scope, use.role);
    addMinimumLines(*style, rule);
    addPlace(scope, *style, rule);
    addBox(use, *style, rule);
    addType(scope, use, *style, rule);
    rules.push_back(std::move(rule));
}

void addRunRules(const BandScope& scope, Rules& rules) {
    const auto add = [&](project::Run::Kind kind, const char* selector, const char* property,
                         const char* value) {
        if (!usesRun(scope.project, kind)) return;
        Rule rule;
        rule.selector = selector;
        rule.always(property, value);
        rules.push_back(std::move(rule));
    };
    // An imported page can use b and i too. HTML § 4.5.21 and § 4.5.22.
    const bool given = scope.given != nullptr;
    add(project::Run::Kind::Strong, given ? " :is(strong, b)" : " strong", "font-weight", "bolder");
    add(project::Run::Kind::Emphasis, given ? " :is(em, i)" : " em", "font-style", "italic");
}

}  // namespace tenter::emit
