// Links: hover, keyboard focus, and links that cover their card. Media Queries 4 § 6.1, Selectors 4 § 9.4.
#include "emit/rules.h"
#include "emit/values.h"

namespace tenter::emit {

using project::TextStyle;

namespace {

constexpr units::Colour clear{0, 0, 0, 0};

/// A link inside text has the colour and the type of the text, not those of the theme's links.
void addInnerLink(const RoleUse& use, const std::string& selector, Rules& rules) {
    Rule rule;
    rule.selector = selector;
    rule.always("color", "inherit");
    rule.always("font", "inherit");
    rule.always("text-decoration", use.linkRuns ? "underline" : "none");
    rules.push_back(std::move(rule));
}

/// Adds the hover rule. True if it changes anything.
bool addHover(const TextStyle& style, bool button, const std::string& selector, Rules& rules) {
    const auto css = [](const std::optional<units::Colour>& colour) { return colour.value_or(clear).css(); };
    const auto under = [&](const std::optional<units::Colour>& hover,
                           const std::optional<units::Colour>& rest) { return css(hover ? hover : rest); };
    Rule rule;
    rule.selector = selector + ":hover";
    rule.when = When::Hover;
    rule.unless(css(style.colour), "color", under(style.hover.colour, style.colour));
    if (button) {
        rule.unless(css(style.background), "background", under(style.hover.background, style.background));
        // Without a border its colour is not visible.
        const bool bordered = style.border.width && !style.border.width->isZero();
        rule.unless(
            css(style.border.colour), "border-color",
            bordered ? under(style.hover.borderColour, style.border.colour) : css(style.border.colour));
    }
    rule.needed = false;
    for (const Declaration& declaration : rule.declarations)
        rule.needed = rule.needed || declaration.value != declaration.neutral;
    const bool changes = rule.needed;
    rules.push_back(std::move(rule));
    return changes;
}

void addTransition(bool needed, const std::string& selector, Rules& rules) {
    Rule rule;
    rule.selector = selector;
    rule.when = When::MotionAllowed;
    rule.always("transition", "color 0.15s, background-color 0.15s, border-color 0.15s");
    rule.needed = needed;
    rules.push_back(std::move(rule));
}

void addFocus(const TextStyle& style, const std::string& selector, Rules& rules) {
    Rule rule;
    rule.selector = selector + ":focus-visible";
    rule.needed = style.focus.colour.has_value();
    rule.always("outline",
                sumOf(style.focus.width).css() + " solid " + style.focus.colour.value_or(clear).css());
    rule.always("outline-offset", sumOf(style.focus.offset).css());
    rules.push_back(std::move(rule));
}

void addCardLink(const BandScope& scope, const std::string& selector, Rules& rules) {
    const bool linked = scope.settings.card.linked.value_or(false);
    Rule rule;
    rule.selector = selector + "::after";
    rule.needed = linked;
    rule.always("content", linked ? "\"\"" : "none");
    rule.always("position", "absolute");
    rule.always("inset", "0");
    rules.push_back(std::move(rule));
}

}  // namespace

void addLinkRules(const BandScope& scope, const RoleUse& use, Rules& rules) {
    const TextStyle* style = scope.settings.text.find(use.role);
    if (style == nullptr || !(use.wholeLink || use.linkRuns)) return;
    const bool button = use.role == "button";
    const std::string own = partSelector(scope, use.role);
    const std::string link = button ? own : own + " a";
    if (!button) addInnerLink(use, link, rules);
    if (button) addCardLink(scope, own, rules);
    addFocus(*style, link, rules);
    const bool changes = addHover(*style, button, link, rules);
    addTransition(changes, link, rules);
}

}  // namespace tenter::emit
