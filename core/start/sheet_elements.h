// The elements that the selectors of a stylesheet name.
#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "css/rules.h"

namespace tenter::start {

/// What a compound selector says about an element.
struct ElementKey {
    std::string tag;                   ///< empty: any
    std::vector<std::string> classes;  ///< sorted
    // NOLINTNEXTLINE(modernize-use-nullptr): clang-tidy 14 takes the zero of <=> for a pointer.
    friend auto operator<=>(const ElementKey&, const ElementKey&) = default;
    friend bool operator==(const ElementKey&, const ElementKey&) = default;
    [[nodiscard]] bool isEmpty() const { return tag.empty() && classes.empty(); }
    /// `h3.card-title`
    [[nodiscard]] std::string selector() const;
};

/// An element that rules select.
struct SheetElement {
    ElementKey key;
    std::vector<ElementKey>
        around;  ///< the longest chain of elements around it in a selector, outermost first
    std::map<std::string, std::set<std::string>> values;  ///< of its declarations, by property
    std::map<std::string, std::set<std::string>> always;  ///< the same without those of rules with conditions
    std::vector<std::string> words;                       ///< of its class names, in lower case

    [[nodiscard]] bool declares(const std::string& property) const { return values.contains(property); }
    /// True if a value of the property contains the text.
    [[nodiscard]] bool has(const std::string& property, std::string_view part) const;
    /// The same for rules without conditions.
    [[nodiscard]] bool alwaysHas(const std::string& property, std::string_view part) const;
    [[nodiscard]] bool isWithin(const ElementKey& other) const;
};

/// The elements that the selectors of a sheet name, those of the first rules first. Pseudo-elements, and
/// selectors of :root, html, body or * alone, are left out. `:is()` and `:where()` stand for their first
/// argument; other pseudo-classes are ignored.
std::vector<SheetElement> elementsOf(const css::Sheet& sheet);

}  // namespace tenter::start
