#include "markup/obstacles.h"

#include <algorithm>
#include <set>
#include <span>
#include <string_view>
#include <tuple>

#include "markup/neutral_values.h"
#include "markup/theme_facts.h"

namespace tenter::markup {

namespace {

class ObstacleFinder {
public:
    ObstacleFinder(const GivenRow& row, const std::string& theme) : row_(row), facts_(row.tree, theme) {}

    std::vector<Obstacle> find() {
        look(row_.row, at("row"), rowResets, rowProperties);
        for (std::size_t c = 0; c < row_.cards.size(); ++c) {
            const GivenCard& card = row_.cards[c];
            wrappers(card.wrappers, at("", c));
            look(card.node, at("card", c), cardResets, cardProperties);
            for (std::size_t p = 0; p < card.parts.size(); ++p) {
                const GivenPart& part = card.parts[p];
                wrappers(part.wrappers, at("", c, p));
                const Obstacle place = at(part.role, c, p);
                if (part.role == "picture")
                    look(part.node, place, pictureResets, pictureProperties);
                else
                    look(part.node, place, textResets, textProperties);
            }
        }
        return std::move(found_);
    }

private:
    static Obstacle at(const std::string& role, std::size_t card = 0, std::size_t part = 0) {
        return {{}, {}, {}, role, card, part};
    }

    void look(NodeId node, const Obstacle& place, std::span<const Neutral> resets,
              std::span<const std::string_view> properties) {
        for (const Neutral& reset : resets)
            if (reset.why != neutral::looks || reset.property == "border")
                add(node, place, std::string(reset.property), std::string(reset.value));
        for (const std::string_view property : properties)
            add(node, place, std::string(property), "");
        boxes(node, place);
    }

    /// Boxes before and after an element, which the stylesheet removes.
    void boxes(NodeId node, const Obstacle& place) {
        for (const char* pseudo : {"before", "after"})
            add(node, place, "content", "none", pseudo);
    }

    void wrappers(const std::vector<NodeId>& nodes, const Obstacle& place) {
        for (const NodeId node : nodes) {
            add(node, place, "display", row_.tree[node].isHtml("a") ? "flex" : "contents");
            boxes(node, place);
        }
    }

    void add(NodeId node, Obstacle place, const std::string& property, const std::string& value,
             const std::string& pseudo = {}) {
        const ThemeValue theme = facts_.valueOf({{node}, pseudo}, property, value, false);
        if (theme.unbeatable.empty() || !known_.emplace(property, theme.unbeatable, place.role).second)
            return;
        place.property = property;
        place.selector = theme.unbeatable;
        place.origin = theme.unbeatableOrigin;
        found_.push_back(std::move(place));
    }

    const GivenRow& row_;
    ThemeFacts facts_;
    std::set<std::tuple<std::string, std::string, std::string>> known_;
    std::vector<Obstacle> found_;
};

}  // namespace

std::vector<Obstacle> obstaclesOf(const GivenRow& row, const std::string& theme) {
    return ObstacleFinder(row, theme).find();
}

}  // namespace tenter::markup
