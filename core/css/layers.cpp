#include "css/layers.h"

#include "css/tokens.h"

namespace tenter::css {

namespace {

// The parts of a layer name such as `a.b.c`, without white space. Empty if it is not a layer name.
std::vector<std::string> namePartsOf(std::string_view name) {
    std::vector<std::string> parts;
    Tokeniser tokeniser(name);
    while (true) {
        const Token part = tokeniser.next();
        if (!part.is(TokenKind::Ident) || parts.size() == LayerTree::deepest) return {};
        parts.push_back(part.text);
        const Token next = tokeniser.next();
        if (next.is(TokenKind::End)) return parts;
        if (!next.isDelim('.')) return {};
    }
}

}  // namespace

std::optional<std::size_t> LayerTree::openOne(std::optional<std::size_t> parent, const std::string& name) {
    const std::pair key(parent ? *parent + 1 : 0, name);
    if (const auto found = byName_.find(key); !name.empty() && found != byName_.end()) return found->second;
    const std::size_t depth = parent ? nodes_[*parent].depth + 1 : 0;
    if (depth == deepest) return std::nullopt;
    const std::size_t added = nodes_.size();
    nodes_.push_back({{name, parent}, depth, {}});
    (parent ? nodes_[*parent].children : outermost_).push_back(added);
    if (!name.empty()) byName_.emplace(key, added);
    return added;
}

std::optional<std::size_t> LayerTree::open(std::optional<std::size_t> parent, std::string_view name) {
    if (name.empty()) return openOne(parent, {});
    std::optional<std::size_t> layer;
    for (const std::string& part : namePartsOf(name)) {
        layer = openOne(layer ? layer : parent, part);
        if (!layer) return std::nullopt;
    }
    return layer;
}

// A layer is weaker than the rules that are directly in its parent. § 6.4.
void LayerTree::place(std::size_t node, std::vector<Layer>& layers, std::vector<std::size_t>& places) const {
    for (const std::size_t child : nodes_[node].children)
        place(child, layers, places);
    places[node] = layers.size();
    layers.push_back(nodes_[node].layer);
}

std::pair<std::vector<Layer>, std::vector<std::size_t>> LayerTree::ordered() const {
    std::vector<Layer> layers;
    std::vector<std::size_t> places(nodes_.size());
    for (const std::size_t node : outermost_)
        place(node, layers, places);
    for (Layer& layer : layers) {
        if (layer.parent) layer.parent = places[*layer.parent];
    }
    return {std::move(layers), std::move(places)};
}

}  // namespace tenter::css
