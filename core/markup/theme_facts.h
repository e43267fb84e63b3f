// The declarations of a theme for the elements of a row. The stylesheet overrides them only where necessary.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "css/cascade.h"
#include "css/elements.h"
#include "css/rules.h"
#include "css/selectors.h"
#include "markup/tree.h"

namespace tenter::markup {

/// How a theme, or the browser's own stylesheet, sets a property of some elements to another value.
struct ThemeValue {
    bool differs = false;  ///< true if any rule sets another value, at any width
    bool important =
        false;  ///< true if set with `!important` or in a style attribute, which no selector overrides
    /// The selector of a rule that no stylesheet can override: `!important` in a layer or in a style
    /// attribute. Empty if there is none. CSS Cascade 5 § 6.1, § 6.4.
    std::string unbeatable;
    std::string unbeatableOrigin;  ///< its file and line, such as `look.css:12`; empty if it is not known
    css::Specificity most;         ///< highest specificity of the rules of the theme that set it
    std::string selector;          ///< selector of the strongest of them
};

/// Elements of a tree, or a pseudo-element of each of them (such as `before`; empty: the elements
/// themselves).
struct Subjects {
    std::vector<NodeId> nodes;
    std::string pseudo;
};

/// All declarations of a theme for the elements of a tree.
class ThemeFacts {
public:
    /// `theme` is CSS text; its invalid parts are dropped, as in browsers. Media conditions count as true if
    /// they can be true at some width; those for print only do not count.
    ThemeFacts(const Tree& tree, std::string_view theme);

    /// How the theme sets `property`, which can be a shorthand, of the subjects to a value other than
    /// `value`. With `inherited`, declarations for ancestors count too, without their specificity.
    [[nodiscard]] ThemeValue valueOf(const Subjects& subjects, const std::string& property,
                                     const std::string& value, bool inherited) const;
    /// True if a length of the element is negative at some viewport width, or is not known at some.
    [[nodiscard]] bool canBeNegative(NodeId node, const std::string& property) const;
    /// The value of a length of an element as CSS text in px and vw, if it is relative to the font size of
    /// the element, if this is not that of the root, and if the value is the same line over all viewport
    /// widths. Else empty.
    [[nodiscard]] std::optional<std::string> fontRelative(NodeId node, const std::string& property) const;
    /// True if the theme has any declaration for the subjects.
    [[nodiscard]] bool affects(const Subjects& subjects) const;

private:
    enum class Origin { Browser, Theme, Attribute };
    struct Declared {
        std::string property;  ///< a longhand
        std::string value;     ///< lower case; empty if it comes from a shorthand that is not expanded
        Origin origin = Origin::Theme;
        bool layered = false;
        bool important = false;
        css::Specificity specificity;
        std::string selector;
        std::string where;     ///< file and line of the rule
        bool onScreen = true;  ///< true if its conditions hold on a screen at some width
    };
    void read(const css::Sheet& sheet, Origin origin, std::string_view source);
    void readAttributes();
    void forIntervals(const css::Elements& elements, NodeId node,
                      const std::function<bool(css::Styles&, double from, double to)>& visit) const;
    void add(NodeId node, const std::string& pseudo, const std::string& property, const std::string& value,
             const Declared& how);

    const Tree& tree_;
    css::Sheet theme_;
    std::map<std::pair<NodeId, std::string>, std::vector<Declared>> declared_;
};

}  // namespace tenter::markup
