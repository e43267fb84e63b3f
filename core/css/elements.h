// A tree of HTML elements, as selectors see it.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace tenter::css {

/// Whoever holds the tree numbers its elements and answers for them. Text nodes and comments are no elements.
class Elements {
public:
    using Element = std::size_t;
    virtual ~Elements() = default;

    /// `div`, in any case of letters.
    [[nodiscard]] virtual std::string_view tag(Element element) const = 0;
    /// `name` is in lower case. Ids and classes are asked for as `id` and `class`.
    [[nodiscard]] virtual std::optional<std::string_view> attribute(Element element,
                                                                    std::string_view name) const = 0;
    /// Empty for the root.
    [[nodiscard]] virtual std::optional<Element> parent(Element element) const = 0;
    [[nodiscard]] virtual std::optional<Element> previousSibling(Element element) const = 0;
    [[nodiscard]] virtual std::optional<Element> nextSibling(Element element) const = 0;
    [[nodiscard]] virtual std::optional<Element> firstChild(Element element) const = 0;
    /// Has neither elements nor text, white space included. Selectors 4 § 14.2, as browsers have it.
    [[nodiscard]] virtual bool isEmpty(Element element) const = 0;
};

}  // namespace tenter::css
