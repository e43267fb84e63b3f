// The interface through which selectors see a tree of HTML elements.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace tenter::css {

/// A tree of elements, each known by a number. Text nodes and comments are not elements.
class Elements {
public:
    using Element = std::size_t;
    virtual ~Elements() = default;

    /// The tag name, such as `div`, in any case.
    [[nodiscard]] virtual std::string_view tag(Element element) const = 0;
    /// The value of the attribute with the lower-case `name`, `id` and `class` included; empty if there is
    /// none.
    [[nodiscard]] virtual std::optional<std::string_view> attribute(Element element,
                                                                    std::string_view name) const = 0;
    /// The parent; empty for the root.
    [[nodiscard]] virtual std::optional<Element> parent(Element element) const = 0;
    [[nodiscard]] virtual std::optional<Element> previousSibling(Element element) const = 0;
    [[nodiscard]] virtual std::optional<Element> nextSibling(Element element) const = 0;
    [[nodiscard]] virtual std::optional<Element> firstChild(Element element) const = 0;
    /// True if the element contains neither elements nor text; white space counts as text, as in browsers.
    /// Selectors 4 § 14.2.
    [[nodiscard]] virtual bool isEmpty(Element element) const = 0;
    /// False if the element may have siblings that the tree does not contain. Selectors then match if they
    /// could match with such siblings.
    [[nodiscard]] virtual bool knowsSiblings(Element /*element*/) const { return true; }
    /// False if selectors do not match where only unknown siblings could make them match.
    [[nodiscard]] virtual bool assumesSiblings() const { return true; }
};

}  // namespace tenter::css
