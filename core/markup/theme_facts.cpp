#include "markup/theme_facts.h"

#include <algorithm>
#include <array>

#include "css/ascii.h"
#include "css/cascade.h"
#include "css/longhands.h"
#include "css/media.h"
#include "css/rules.h"
#include "css/shorthands.h"
#include "markup/browser_sheet.h"
#include "markup/matching.h"
#include "markup/theme.h"
#include "units/number.h"

namespace tenter::markup {

namespace {

struct Shorthand {
    std::string_view name;
    std::string_view longhands;
};

/// Shorthands that css::longhandsOf does not expand. CSS Cascade 5 § 3.1.
constexpr std::array<Shorthand, 19> furtherShorthands{{
    {"font",
     "font-family font-size font-style font-weight font-stretch font-variant-caps font-variant-ligatures "
     "font-kerning font-feature-settings line-height"},
    {"font-variant", "font-variant-caps font-variant-ligatures"},
    {"list-style", "list-style-type list-style-position list-style-image"},
    {"grid-column", "grid-column-start grid-column-end"},
    {"grid-row", "grid-row-start grid-row-end"},
    {"grid-area", "grid-column-start grid-column-end grid-row-start grid-row-end"},
    {"grid-template", "grid-template-columns grid-template-rows grid-template-areas"},
    {"grid",
     "grid-template-columns grid-template-rows grid-template-areas grid-auto-flow grid-auto-rows "
     "grid-auto-columns"},
    {"place-items", "align-items justify-items"},
    {"place-content", "align-content justify-content"},
    {"place-self", "align-self justify-self"},
    {"text-decoration", "text-decoration-line text-decoration-style text-decoration-color"},
    {"outline", "outline-width outline-style outline-color"},
    {"columns", "column-count column-width"},
    {"transition", "transition transition-property transition-duration"},
    {"animation", "animation animation-name"},
    {"white-space", "white-space text-wrap-mode"},
    {"text-wrap", "text-wrap-mode text-wrap-style"},
    {"flex-flow", "flex-direction flex-wrap"},
}};

std::string tidied(std::string_view value) {
    std::string text;
    for (const char c : value) {
        if (css::isSpace(c)) {
            if (!text.empty() && text.back() != ' ') text += ' ';
        } else {
            text += css::lowered(c);
        }
    }
    while (!text.empty() && text.back() == ' ')
        text.pop_back();
    if (text == "0px" || text == "0em" || text == "0%" || text == "0rem") return "0";
    return text;
}

/// The name of a property that is known by another one. Compatibility Standard § 3.1, CSS Text 3 § 5.2.
std::string standardName(const std::string& property) {
    constexpr std::string_view prefix = "-webkit-";
    if (property == "word-wrap") return "overflow-wrap";
    if (property == "font-width") return "font-stretch";
    if (property.starts_with("grid-") && property.ends_with("gap")) return property.substr(5);
    if (!property.starts_with(prefix)) return property;
    const std::string name = property.substr(prefix.size());
    // The properties of the old flex boxes have no other name.
    const bool isOld = name.starts_with("box-") && name != "box-sizing" && name != "box-shadow";
    return isOld || name == "line-clamp" ? property : name;
}

/// True if a transition changes no length: colours and the like only.
bool changesNoLength(const std::string& property, const std::string& value) {
    constexpr std::array<std::string_view, 14> harmless{
        "color",  "background", "border-color", "box-shadow", "text-shadow", "opacity", "transform",
        "filter", "outline",    "fill",         "stroke",     "visibility",  "none",    "text-decoration"};
    if (property == "transition-duration" && (value == "0s" || value == "0ms")) return true;
    if (!property.starts_with("transition") || value.empty()) return false;
    std::string_view rest = value;
    while (true) {
        const std::size_t comma = std::min(rest.find(','), rest.size());
        bool isHarmless = false;
        for (const std::string& word : css::valueParts(rest.substr(0, comma)))
            isHarmless = isHarmless || std::ranges::any_of(harmless, [&](std::string_view name) {
                             return word.starts_with(name) || word.ends_with("-color");
                         });
        // Commas inside cubic-bezier() end a part too early; such a part is a number or a bracket.
        const std::string part(rest.substr(0, comma));
        const bool isNumber = part.find_first_of("abcdefghijklmnopqrstuvwxyz") == std::string::npos;
        if (!isHarmless && !isNumber) return false;
        if (comma == rest.size()) return true;
        rest.remove_prefix(comma + 1);
    }
}

/// The longhands of a logical property. Those of both directions count; a value is known if it is the same in
/// both. Empty for other properties. CSS Logical 1.
std::vector<css::Longhand> logicalLonghands(const std::string& property, const std::string& value) {
    if (property.find("inline") == std::string::npos && property.find("block") == std::string::npos)
        return {};
    std::vector<css::Longhand> both = css::physicalLonghands(property, value, false);
    if (both.size() == 1 && both.front().property == property) return {};
    for (css::Longhand& other : css::physicalLonghands(property, value, true)) {
        const auto same = std::ranges::find(both, other.property, &css::Longhand::property);
        if (same == both.end())
            both.push_back(std::move(other));
        else if (same->value != other.value)
            same->value.reset();
    }
    for (css::Longhand& longhand : both)
        if (longhand.value) longhand.value = tidied(*longhand.value);
    return both;
}

std::vector<css::Longhand> longhandsIn(const std::string& written, const std::string& value) {
    const std::string property = standardName(written);
    if (std::vector<css::Longhand> logical = logicalLonghands(property, value); !logical.empty())
        return logical;
    std::vector<css::Longhand> longhands = css::longhandsOf(property, value);
    for (css::Longhand& longhand : longhands)
        if (longhand.value) longhand.value = tidied(*longhand.value);
    if (!longhands.empty()) return longhands;
    const auto* known = std::ranges::find(furtherShorthands, property, &Shorthand::name);
    if (known == furtherShorthands.end()) return {{property, tidied(value)}};
    // A keyword such as `auto`, `none`, `normal` or `inherit` is the value of each longhand.
    const bool isWord = std::ranges::all_of(value, [](char c) { return css::isLetter(c); });
    // `font` resets longhands that it cannot set to their initial values. CSS Fonts 4 § 2.8.
    const auto firstValue = [&](std::string_view longhand) -> std::optional<std::string> {
        if (property == "transition" || property == "animation") return tidied(value);
        if (property != "font" || isWord) return std::nullopt;
        const bool said = (longhand == "font-variant-caps" && value.find("caps") != std::string::npos) ||
                          (longhand == "font-stretch" && (value.find("condensed") != std::string::npos ||
                                                          value.find("expanded") != std::string::npos));
        if (said) return std::nullopt;
        if (longhand == "font-kerning") return "auto";
        const bool normally = longhand == "font-variant-caps" || longhand == "font-stretch" ||
                              longhand == "font-variant-ligatures" || longhand == "font-feature-settings";
        return normally ? std::optional<std::string>("normal") : std::nullopt;
    };
    std::string_view rest = known->longhands;
    while (!rest.empty()) {
        const std::size_t end = std::min(rest.find(' '), rest.size());
        std::optional<std::string> each;
        if (isWord)
            each = tidied(value);
        else
            each = firstValue(rest.substr(0, end));
        longhands.push_back({std::string(rest.substr(0, end)), each});
        rest.remove_prefix(std::min(end + 1, rest.size()));
    }
    return longhands;
}

}  // namespace

namespace {

/// Where the conditions of a rule can be true: on the screen of css::holdsOnScreen, for some readers, or not.
enum class Reach { Nowhere, ForSome, OnScreen };

Reach reachOf(const css::Sheet& sheet, const css::StyleRule& rule) {
    Reach reach = Reach::OnScreen;
    for (const css::Condition* condition : sheet.conditionsOf(rule)) {
        Reach own = Reach::ForSome;
        if (condition->kind == css::ConditionKind::Supports)
            own = css::isSupported(condition->text) ? Reach::OnScreen : Reach::Nowhere;
        if (condition->kind == css::ConditionKind::Media) {
            std::vector<double> widths{1};
            for (const double width : css::mediaWidths(condition->text)) {
                widths.push_back(width);
                widths.push_back(width + 0.01);
            }
            own = Reach::Nowhere;
            for (const double width : widths) {
                if (css::holdsOnScreen(condition->text, width)) own = Reach::OnScreen;
                if (own == Reach::Nowhere && css::mediaHolds(condition->text, width) != css::Truth::False)
                    own = Reach::ForSome;
            }
        }
        reach = std::min(reach, own);
    }
    return reach;
}

}  // namespace

ThemeFacts::ThemeFacts(const Tree& tree, std::string_view theme)
    : tree_(tree), theme_(css::readSheet(theme)) {
    read(browserSheet(), Origin::Browser, {});
    read(theme_, Origin::Theme, theme);
    readAttributes();
}

void ThemeFacts::read(const css::Sheet& sheet, Origin origin, std::string_view source) {
    const KeptElements elements(tree_);
    for (const css::StyleRule& rule : sheet.rules) {
        const Reach reach = reachOf(sheet, rule);
        if (reach == Reach::Nowhere) continue;
        for (const css::Complex& selector : rule.selectors) {
            const auto& pseudos = selector.pseudoElements();
            const std::string pseudo = pseudos.empty() ? std::string() : pseudos.front().name;
            Declared how;
            how.origin = origin;
            how.layered = rule.layer.has_value();
            how.specificity = css::specificityOf(selector);
            how.selector = rule.selectorText.substr(0, 200);
            how.onScreen = reach == Reach::OnScreen;
            how.where = placeInWords(originOfRule(source, rule.line));
            for (NodeId at = 0; at < tree_.size(); ++at) {
                if (tree_[at].isText() || !css::matches(selector, elements, at, dynamicPseudoClasses))
                    continue;
                for (const css::Declaration& declaration : rule.declarations) {
                    how.important = declaration.important;
                    add(at, pseudo, declaration.property, declaration.value, how);
                }
            }
        }
    }
}

void ThemeFacts::readAttributes() {
    for (NodeId at = 0; at < tree_.size(); ++at) {
        const std::string* style = tree_[at].isText() ? nullptr : tree_[at].find("style");
        if (style == nullptr) continue;
        css::Problems ignored;
        Declared how;
        how.origin = Origin::Attribute;
        how.selector = "style attribute";
        for (const css::Declaration& declaration : css::readDeclarations(*style, ignored)) {
            how.important = declaration.important;
            add(at, {}, declaration.property, declaration.value, how);
        }
    }
}

void ThemeFacts::add(NodeId node, const std::string& pseudo, const std::string& property,
                     const std::string& value, const Declared& how) {
    for (const css::Longhand& longhand : longhandsIn(property, value)) {
        Declared one = how;
        one.property = longhand.property;
        one.value = longhand.value.value_or("");
        declared_[{node, pseudo}].push_back(std::move(one));
    }
}

ThemeValue ThemeFacts::valueOf(const Subjects& subjects, const std::string& property,
                               const std::string& value, bool inherited) const {
    ThemeValue found;
    const std::vector<css::Longhand> wanted = longhandsIn(property, value);
    const auto look = [&](NodeId node, const std::string& pseudo, bool above) {
        const auto all = declared_.find({node, pseudo});
        if (all == declared_.end()) return;
        for (const Declared& said : all->second) {
            const auto same = std::ranges::find(wanted, said.property, &css::Longhand::property);
            if (same == wanted.end()) continue;
            if (same->value && !said.value.empty() && *same->value == said.value) continue;
            if (changesNoLength(said.property, said.value)) continue;
            // A duration alone is for all properties; with a list of properties that list says it.
            if (said.property == "transition-duration" &&
                std::ranges::find(all->second, "transition-property", &Declared::property) !=
                    all->second.end())
                continue;
            // The browser's own sheet sets no inherited property of elements around a row.
            if (above && said.origin == Origin::Browser) continue;
            found.differs = true;
            if (above || said.origin == Origin::Browser) continue;
            found.important = found.important || said.important || said.origin == Origin::Attribute;
            if (said.important && said.onScreen && (said.layered || said.origin == Origin::Attribute)) {
                found.unbeatable = said.selector;
                found.unbeatableOrigin = said.where;
            }
            if (said.origin != Origin::Theme || said.layered) continue;
            if (found.selector.empty() || found.most < said.specificity) {
                found.most = said.specificity;
                found.selector = said.selector;
            }
        }
    };
    for (const NodeId node : subjects.nodes) {
        look(node, subjects.pseudo, false);
        if (!inherited || !subjects.pseudo.empty()) continue;
        for (NodeId at = tree_[node].parent; at != noNode; at = tree_[at].parent)
            look(at, {}, true);
    }
    return found;
}

/// Visits the intervals of widths in which no condition changes, until `visit` returns false.
void ThemeFacts::forIntervals(const css::Elements& elements, NodeId node,
                              const std::function<bool(css::Styles&, double, double)>& visit) const {
    // All viewports that a project can have.
    constexpr double narrowest = 1;
    constexpr double widest = 10'000;
    const css::StyleRules rules(elements, browserSheet(), theme_);
    std::vector<css::Elements::Element> chain;
    for (NodeId at = node; at != noNode; at = tree_[at].parent)
        chain.push_back(at);
    std::vector<double> ends = css::intervalEnds(rules, chain, narrowest, widest);
    ends.push_back(widest);
    double from = narrowest;
    for (const double end : ends) {
        css::Styles styles(rules, from, end, false);
        if (!visit(styles, from, end)) return;
        from = end;
    }
}

bool ThemeFacts::canBeNegative(NodeId node, const std::string& property) const {
    bool isNegative = false;
    for (const bool assumes : {true, false})
        forIntervals(KeptElements(tree_, assumes), node, [&](css::Styles& styles, double from, double to) {
            const auto value = styles.length(node, property, css::Line{0, 1}, "0");
            isNegative = isNegative || (!styles.problems.empty() && !value) ||
                         (value && std::min(value->atZero + value->perPx * from,
                                            value->atZero + value->perPx * to) < 0);
            return !isNegative;
        });
    return isNegative;
}

std::optional<std::string> ThemeFacts::fontRelative(NodeId node, const std::string& property) const {
    std::optional<css::Line> whole;
    bool isSame = true;
    bool isRelative = false;
    forIntervals(KeptElements(tree_), node, [&](css::Styles& styles, double, double) {
        const auto value = styles.length(node, property, css::Line{0, 1}, "0");
        isSame = value && styles.bends().empty() && (!whole || *whole == *value);
        whole = value;
        const std::string text = styles.value(node, property);
        // The stylesheet gives the row the root's font size.
        const bool isOther = !(styles.fontSize(node) == styles.fontSize(0));
        for (std::size_t at = text.find("em"); at != std::string::npos; at = text.find("em", at + 1))
            isRelative = isRelative || (isOther && (at == 0 || text[at - 1] != 'r'));
        return isSame;
    });
    if (!isSame || !isRelative || !whole) return std::nullopt;
    const std::string px = units::number(whole->atZero) + "px";
    return whole->perPx == 0 ? px : "calc(" + px + " + " + units::number(whole->perPx * 100) + "vw)";
}

bool ThemeFacts::affects(const Subjects& subjects) const {
    return std::ranges::any_of(subjects.nodes, [&](NodeId node) {
        const auto all = declared_.find({node, subjects.pseudo});
        return all != declared_.end() && std::ranges::any_of(all->second, [](const Declared& said) {
                   return said.origin != Origin::Browser;
               });
    });
}

}  // namespace tenter::markup
