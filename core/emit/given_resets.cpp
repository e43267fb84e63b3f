#include "emit/given_resets.h"

#include <algorithm>
#include <span>
#include <string_view>

namespace tenter::emit {

namespace {

/// A neutral declaration that overrides one of a theme.
struct Reset {
    std::string_view property;
    std::string_view value;
    std::string_view why;  ///< the comment in the stylesheet
    /// True for a property that themes often set. It is printed if the theme is not known. Common practice,
    /// no source.
    bool usual = false;
};

constexpr std::string_view columns = "overrides the theme's columns";
constexpr std::string_view heights = "as high as its content";
constexpr std::string_view place = "overrides the theme's position";
constexpr std::string_view measures = "overrides the theme's width";
constexpr std::string_view looks = "overrides the theme's look";
constexpr std::string_view lettering = "overrides the theme's type";

constexpr Reset rowResets[] = {
    {"float", "none", columns, true},
    {"position", "static", place},
    {"flex-direction", "row", columns},
    {"align-items", "normal", columns},
    {"align-content", "normal", columns},
    {"justify-items", "normal", columns},
    {"grid-auto-flow", "row", columns},
    {"grid-auto-columns", "auto", columns},
    {"grid-auto-rows", "auto", columns},
    {"grid-template-rows", "none", columns},
    {"grid-template-areas", "none", columns},
    {"height", "auto", heights},
    {"min-width", "0", columns},
    {"min-height", "0", heights},
    {"max-height", "none", heights},
    {"overflow", "visible", heights},
    {"border", "0", looks},
    {"transform", "none", place},
};
constexpr Reset cardResets[] = {
    {"float", "none", columns, true},
    {"clear", "none", columns},
    {"max-width", "none", columns, true},
    {"grid-column", "auto", columns, true},
    {"order", "0", columns},
    {"align-self", "auto", columns},
    {"justify-self", "auto", columns},
    {"inset", "auto", place},
    {"flex-wrap", "nowrap", columns},
    {"align-items", "normal", columns},
    {"align-content", "normal", columns},
    {"justify-content", "normal", columns},
    {"column-gap", "normal", columns},
    {"height", "auto", heights},
    {"min-height", "0", heights, true},
    {"max-height", "none", heights},
    {"overflow", "visible", heights},
    {"transform", "none", place},
};
constexpr Reset pictureResets[] = {
    {"float", "none", place, true}, {"min-width", "0", measures},
    {"min-height", "0", measures},  {"max-height", "none", measures, true},
    {"flex", "0 1 auto", place},    {"order", "0", place},
    {"grid-column", "auto", place}, {"object-position", "50% 50%", looks},
    {"box-shadow", "none", looks},  {"opacity", "1", looks},
    {"transform", "none", place},
};
constexpr Reset textResets[] = {
    {"float", "none", place, true},
    {"clear", "none", place},
    {"position", "static", place, true},
    {"flex", "0 1 auto", place},
    {"order", "0", place},
    {"grid-column", "auto", place},
    {"width", "auto", measures, true},
    {"min-width", "0", measures, true},
    {"max-width", "none", measures, true},
    {"height", "auto", heights},
    {"max-height", "none", heights},
    {"overflow", "visible", heights},
    {"columns", "auto", measures},
    {"transform", "none", place},
    {"text-decoration", "none", looks},
    {"box-shadow", "none", looks},
    {"opacity", "1", looks},
};
/// Inherited properties, which ancestors can set.
constexpr Reset letterResets[] = {
    {"text-indent", "0", lettering},
    {"white-space", "normal", lettering},
    {"word-break", "normal", lettering},
    {"line-break", "auto", lettering},
    {"text-align-last", "auto", lettering},
    {"hanging-punctuation", "none", lettering},
    {"font-variant-caps", "normal", lettering},
    {"font-variant-numeric", "normal", lettering},
    {"font-stretch", "normal", lettering},
    {"font-kerning", "auto", lettering},
    {"font-feature-settings", "normal", lettering},
    {"font-size-adjust", "none", lettering},
    {"text-shadow", "none", looks},
};
/// For elements around the row, which take no room.
constexpr Reset outerResets[] = {
    {"display", "block", columns},    {"width", "auto", columns},       {"min-width", "0", columns},
    {"max-width", "none", columns},   {"height", "auto", heights},      {"min-height", "0", heights},
    {"max-height", "none", heights},  {"margin", "0", columns},         {"padding", "0", columns},
    {"border", "0", columns},         {"float", "none", columns, true}, {"position", "static", place},
    {"overflow", "visible", heights}, {"columns", "auto", columns},     {"transform", "none", place},
};
/// For a link around parts, which stays a box for its focus outline.
constexpr Reset linkResets[] = {
    {"float", "none", place},         {"position", "static", place},
    {"flex", "0 1 auto", place},      {"order", "0", place},
    {"align-self", "auto", place},    {"justify-content", "normal", place},
    {"align-items", "normal", place}, {"row-gap", "normal", place},
    {"width", "auto", measures},      {"min-width", "0", measures},
    {"max-width", "none", measures},  {"height", "auto", heights},
    {"min-height", "0", heights},     {"max-height", "none", heights},
    {"overflow", "visible", heights}, {"margin", "0", place},
    {"padding", "0", place},          {"border", "0", looks},
    {"transform", "none", place},
};
/// For elements inside a part, whose type is that of the part.
constexpr Reset innerResets[] = {
    {"display", "inline", lettering},
    {"float", "none", lettering},
    {"position", "static", lettering},
    {"margin", "0", lettering},
    {"padding", "0", lettering},
    {"border", "0", lettering},
    {"font-family", "inherit", lettering},
    {"font-size", "inherit", lettering},
    {"line-height", "inherit", lettering},
    {"letter-spacing", "inherit", lettering},
    {"word-spacing", "inherit", lettering},
    {"text-transform", "inherit", lettering},
    {"white-space", "inherit", lettering},
    {"vertical-align", "baseline", lettering},
    {"word-break", "inherit", lettering},
    {"overflow-wrap", "inherit", lettering},
};
/// For elements inside a part that are not emphasis.
constexpr Reset plainResets[] = {
    {"font-weight", "inherit", lettering},
    {"font-style", "inherit", lettering},
};
/// For elements inside a part that are not links; links have rules of their own.
constexpr Reset lookResets[] = {
    {"color", "inherit", looks},
    {"background", "none", looks},
    {"text-decoration", "none", looks},
};

class Resetter {
public:
    Resetter(const BandScope& scope, Rules& rules)
        : scope_(scope), rules_(rules), themeUnknown_(!scope.given->knowsTheme()) {}

    void run() {
        const std::string row = rowSelector(scope_);
        into(row, rowResets);
        into(row, letterResets);
        boxes(row, "no extra item in the grid", true);
        const std::string card = partSelector(scope_, "card");
        into(card, cardResets);
        into(card, letterResets);
        boxes(card, "no extra part in the card", true);
        const std::string picture = partSelector(scope_, "picture");
        if (!picture.empty()) into(picture, pictureResets);
        for (const RoleUse& use : scope_.uses)
            resetText(use);
        if (!row.empty()) resetOuter();
        for (const ElementGroup& wrapper : scope_.given->wrappers())
            resetWrapper(wrapper);
    }

private:
    void apply(Rule& rule, std::span<const Reset> resets) const {
        for (const Reset& reset : resets) {
            const std::string property(reset.property);
            if (std::ranges::find(rule.declarations, property, &Declaration::property) !=
                rule.declarations.end())
                continue;
            rule.reset(property, std::string(reset.value), std::string(reset.why));
            rule.declarations.back().printedAlways = reset.usual && themeUnknown_;
        }
    }

    void into(const std::string& selector, std::span<const Reset> resets) {
        for (Rule& rule : rules_) {
            if (rule.selector != selector || rule.when != When::Always) continue;
            apply(rule, resets);
            return;
        }
    }

    /// Resets for boxes that a theme adds before and after an element.
    void boxes(const std::string& selector, const std::string& why, bool usual, bool after = true) {
        for (const char* pseudo : {"::before", "::after"}) {
            if (!after && std::string_view(pseudo) == "::after") continue;
            Rule rule;
            rule.selector = selector + pseudo;
            rule.reset("content", "none", why);
            rule.declarations.back().printedAlways = usual && themeUnknown_;
            rules_.push_back(std::move(rule));
        }
    }

    void resetText(const RoleUse& use) {
        const std::string selector = partSelector(scope_, use.role);
        into(selector, textResets);
        into(selector, letterResets);
        // A card that is one link needs the `::after` box of the button.
        boxes(selector, "no extra text", false, use.role != "button" || !anyLinked());
        for (const ElementGroup& inner : scope_.given->inside(use.role)) {
            Rule rule;
            rule.selector = inner.selector;
            apply(rule, innerResets);
            const bool bold = inner.tag == "strong" || inner.tag == "b";
            const bool italic = inner.tag == "em" || inner.tag == "i";
            if (!bold && !italic) apply(rule, plainResets);
            if (inner.tag != "a") apply(rule, lookResets);
            rules_.push_back(std::move(rule));
            boxes(inner.selector, "no extra text", false);
        }
    }

    [[nodiscard]] bool anyLinked() const {
        return std::ranges::any_of(rules_, [](const Rule& rule) {
            return rule.selector.ends_with("::after") && rule.declarations.size() > 1;
        });
    }

    void resetOuter() {
        Rule rule;
        apply(rule, outerResets);
        rules_.push_back(std::move(rule));
        boxes("", "no extra box next to the row", true);
    }

    void resetWrapper(const ElementGroup& wrapper) {
        Rule rule;
        rule.selector = wrapper.selector;
        if (wrapper.tag == "a") {
            rule.always("display", "flex");
            rule.always("flex-direction", "column");
            apply(rule, linkResets);
        } else {
            rule.always("display", "contents");
            rule.declarations.back().remark = "its parts become items of the card";
        }
        apply(rule, letterResets);
        rules_.push_back(std::move(rule));
        boxes(wrapper.selector, "no extra part", false);
    }

    const BandScope& scope_;
    Rules& rules_;
    bool themeUnknown_;
};

}  // namespace

void addResets(const BandScope& scope, Rules& rules) {
    Resetter(scope, rules).run();
}

}  // namespace tenter::emit
