// Cascade layers while a stylesheet is read. Their order is known only at its end. CSS Cascade 5 § 6.4.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "css/rules.h"

namespace tenter::css {

/// The tree of layers.
class LayerTree {
public:
    static constexpr std::size_t deepest = 32;

    /// The layer with that name inside `parent`; it is added if there is none. `name`: such as `a.b`, or
    /// empty for a layer without a name. Empty result: the name is not valid or too deep. § 6.4.1, § 6.4.3.
    std::optional<std::size_t> open(std::optional<std::size_t> parent, std::string_view name);

    /// All layers, weakest first; and for each opened layer its index among them.
    [[nodiscard]] std::pair<std::vector<Layer>, std::vector<std::size_t>> ordered() const;

private:
    struct Node {
        Layer layer;
        std::size_t depth = 0;
        std::vector<std::size_t> children;
    };
    std::optional<std::size_t> openOne(std::optional<std::size_t> parent, const std::string& name);
    void place(std::size_t node, std::vector<Layer>& layers, std::vector<std::size_t>& places) const;

    std::vector<Node> nodes_;
    std::vector<std::size_t> outermost_;
    std::map<std::pair<std::size_t, std::string>, std::size_t> byName_;
};

}  // namespace tenter::css
