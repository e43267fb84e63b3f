// Cascade layers in the making: their order is known once the whole sheet has been read. CSS Cascade 5 § 6.4.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "css/rules.h"

namespace tenter::css {

class LayerTree {
public:
    static constexpr std::size_t deepest = 32;

    /// The layer of that name (`a.b`, empty for one without a name) within `parent`, new if it is not there
    /// yet. Empty if `name` is none or too deep. § 6.4.1, § 6.4.3.
    std::optional<std::size_t> open(std::optional<std::size_t> parent, std::string_view name);

    /// All layers, weakest first, and for each that was opened its place among them.
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
