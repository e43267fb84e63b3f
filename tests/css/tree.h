// A tree of elements to match selectors against.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "css/elements.h"

namespace tenter::css {

class Tree : public Elements {
public:
    using Attributes = std::map<std::string, std::string, std::less<>>;

    Element add(std::optional<Element> parent, std::string tag, Attributes attributes = {}) {
        const Element added = nodes_.size();
        nodes_.push_back({std::move(tag), std::move(attributes), parent, {}, {}, {}, {}, false});
        if (!parent) return added;
        const std::optional<Element> last = nodes_[*parent].last;
        nodes_[added].previous = last;
        if (last) {
            nodes_[*last].next = added;
        } else {
            nodes_[*parent].first = added;
        }
        nodes_[*parent].last = added;
        return added;
    }
    void addText(Element element) { nodes_[element].text = true; }
    [[nodiscard]] std::size_t size() const { return nodes_.size(); }

    [[nodiscard]] std::string_view tag(Element element) const override { return nodes_[element].tag; }
    [[nodiscard]] std::optional<std::string_view> attribute(Element element,
                                                            std::string_view name) const override {
        const auto found = nodes_[element].attributes.find(name);
        if (found == nodes_[element].attributes.end()) return std::nullopt;
        return found->second;
    }
    [[nodiscard]] std::optional<Element> parent(Element element) const override {
        return nodes_[element].parent;
    }
    [[nodiscard]] std::optional<Element> previousSibling(Element element) const override {
        return nodes_[element].previous;
    }
    [[nodiscard]] std::optional<Element> nextSibling(Element element) const override {
        return nodes_[element].next;
    }
    [[nodiscard]] std::optional<Element> firstChild(Element element) const override {
        return nodes_[element].first;
    }
    [[nodiscard]] bool isEmpty(Element element) const override {
        return !nodes_[element].first && !nodes_[element].text;
    }

private:
    struct Node {
        std::string tag;
        Attributes attributes;
        std::optional<Element> parent, previous, next, first, last;
        bool text = false;
    };
    std::vector<Node> nodes_;
};

}  // namespace tenter::css
