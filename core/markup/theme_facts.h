// What a theme says of a row's elements, so that a stylesheet can say otherwise, and only where it must.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "css/selectors.h"
#include "markup/tree.h"

namespace tenter::markup {

/// What a theme, or HTML's own style sheet, says of a property on some elements that is not `value`.
struct ThemeSays {
    bool otherwise = false;  ///< anything at all, at whatever width
    bool important = false;  ///< with `!important`, or in a style attribute: no selector is stronger
    /// Of what says it with `!important` in a layer or a style attribute, the selector: no stylesheet of the
    /// page can say otherwise. CSS Cascade 5 § 6.1, § 6.4.
    std::string insists;
    css::Specificity most;  ///< of the theme's rules that say it
    std::string selector;   ///< of the strongest of them
};

/// Elements of a tree, or a pseudo-element of each (`before`; empty for themselves).
struct Subjects {
    std::vector<NodeId> nodes;
    std::string pseudo;
};

class ThemeFacts {
public:
    /// `theme` is CSS text; what cannot be read of it is left out, as browsers do. Media conditions are taken
    /// to hold: somewhere they do.
    ThemeFacts(const Tree& tree, std::string_view theme);

    /// `property` may be a shorthand. With `inherited`, what stands above the subjects counts as said, but is
    /// no stronger for it.
    [[nodiscard]] ThemeSays says(const Subjects& subjects, const std::string& property,
                                 const std::string& value, bool inherited) const;
    /// True if the theme says anything of the subjects.
    [[nodiscard]] bool concerns(const Subjects& subjects) const;

private:
    enum class Origin { Browser, Theme, Attribute };
    struct Said {
        std::string property;  ///< a longhand
        std::string value;     ///< lower case; empty if it is part of a shorthand that was not taken apart
        Origin origin = Origin::Theme;
        bool layered = false;
        bool important = false;
        css::Specificity specificity;
        std::string selector;
    };
    void read(std::string_view sheet, Origin origin);
    void readAttributes();
    void add(NodeId node, const std::string& pseudo, const std::string& property, const std::string& value,
             const Said& how);

    const Tree& tree_;
    std::map<std::pair<NodeId, std::string>, std::vector<Said>> said_;
};

}  // namespace tenter::markup
