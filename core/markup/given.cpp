#include "markup/given.h"

#include <algorithm>
#include <map>

#include "markup/matching.h"
#include "project/wording.h"

namespace tenter::markup {

namespace {

using project::inQuotes;

const std::string selectorsPlace = "/given/selectors/";

// The start tag in messages, such as `<h3 class="walk-title">`.
std::string shortTag(const Node& node) {
    const std::string* name = node.find("class");
    return "<" + node.name + (name != nullptr ? " class=" + inQuotes(*name) : "") + ">";
}

class GivenReader {
public:
    GivenReader(const project::Project& project, project::Problems& problems)
        : project_(project), problems_(problems) {}

    std::optional<GivenRow> read() { return project_.row().given && readTree() ? placed() : std::nullopt; }

    std::optional<GivenRow> readIn(Tree tree) {
        row_.tree = std::move(tree);
        return project_.row().given ? placed() : std::nullopt;
    }

private:
    std::optional<GivenRow> placed() {
        row_.classElement = classElementOf(row_.tree, project_, row_.variant);
        if (row_.classElement == noNode) {
            wrong("/given/markup", "No element of the markup has the class of a variant.",
                  "Add the class " + project_.row().variants.front().className +
                      " to the row in the CMS and in the markup.");
            return std::nullopt;
        }
        for (const auto& [role, selector] : project_.row().given->selectors)
            readRole(role, selector);
        if (!placeRow() || !placeCards()) return std::nullopt;
        placeParts();
        return std::move(row_);
    }

    void wrong(const std::string& place, const std::string& what, const std::string& fix) {
        constexpr std::size_t most = 100;
        if (reported_++ < most) problems_.push_back({"", place, what, fix});
    }

    bool readTree() {
        project::Problems unplaced;
        std::optional<Tree> tree = parse(project_.row().given->markup, "", unplaced);
        for (const project::Problem& problem : unplaced)
            wrong("/given/markup", problem.what, problem.fix);
        if (!tree) return false;
        if (!isWithinLimits(*tree)) {
            wrong("/given/markup",
                  "The markup has more than " + std::to_string(largestRow) + " elements, or is more than " +
                      std::to_string(deepestRow) + " levels deep.",
                  "Keep only the row and the elements around it.");
            return false;
        }
        row_.tree = std::move(*tree);
        return true;
    }

    void readRole(const std::string& role, const std::string& selector) {
        RoleNodes found{role, selector, {}, {}};
        if (role == "row" && isBlank(selector)) {
            found.nodes = {row_.classElement};
        } else {
            css::Problems unread;
            std::optional<css::SelectorList> list = css::readSelectors(selector, unread);
            for (const css::Problem& problem : unread)
                wrong(selectorsPlace + role, problem.what, problem.fix);
            if (!list) return;
            found.nodes = selectedWithin(row_.tree, row_.classElement, *list);
            found.parsed = std::move(*list);
            if (found.nodes.empty()) {
                wrong(selectorsPlace + role,
                      "The selector " + inQuotes(selector) + " selects nothing in the row.",
                      "Write a selector that matches inside the element with the class " +
                          project_.row().variants[row_.variant].className + ", or remove the role.");
                return;
            }
        }
        row_.roles.push_back(std::move(found));
    }

    bool placeRow() {
        const RoleNodes* found = row_.find("row");
        if (found == nullptr) return false;
        row_.row = found->nodes.front();
        row_.wrappers = row_.tree.between(row_.classElement, row_.row);
        if (found->nodes.size() > 1)
            wrong(selectorsPlace + "row",
                  "The selector " + inQuotes(found->selector) +
                      " selects more than one element; the first is used.",
                  "Write a selector for the parent of all cards.");
        return true;
    }

    bool placeCards() {
        const RoleNodes* found = row_.find("card");
        if (found == nullptr) return false;
        for (const NodeId node : found->nodes) {
            if (node == row_.row || !row_.tree.isWithin(node, row_.row)) {
                wrong(selectorsPlace + "card",
                      "The card " + shortTag(row_.tree[node]) + " is outside the row.",
                      "Write a selector for the cards, and one for their parent as the row.");
            } else if (!row_.cards.empty() && row_.tree.isWithin(node, row_.cards.back().node)) {
                wrong(selectorsPlace + "card",
                      "The card " + shortTag(row_.tree[node]) + " is inside another card.",
                      "Write a selector for the outer or for the inner ones.");
            } else {
                row_.cards.push_back({node, row_.tree.between(row_.row, node), {}});
            }
        }
        return !row_.cards.empty();
    }

    void placeParts() {
        // In document order, each with its role.
        std::multimap<NodeId, const RoleNodes*> nodes;
        for (const RoleNodes& role : row_.roles) {
            if (role.role == "row" || role.role == "card") continue;
            for (const NodeId node : role.nodes)
                nodes.emplace(node, &role);
        }
        std::size_t card = 0;
        for (const auto& [node, role] : nodes) {
            while (card < row_.cards.size() && node > row_.cards[card].node &&
                   !row_.tree.isWithin(node, row_.cards[card].node))
                ++card;
            if (card == row_.cards.size() || node <= row_.cards[card].node) {
                wrong(selectorsPlace + role->role, shortTag(row_.tree[node]) + " is outside the cards.",
                      "Write a selector that selects only parts of cards.");
                if (card == row_.cards.size()) card = row_.cards.size() - 1;
                continue;
            }
            placePart(row_.cards[card], node, role->role);
        }
    }

    void placePart(GivenCard& card, NodeId node, const std::string& role) {
        if (!card.parts.empty() && row_.tree.isWithin(node, card.parts.back().node)) {
            const GivenPart& outer = card.parts.back();
            const bool isSame = outer.node == node;
            wrong(selectorsPlace + role,
                  shortTag(row_.tree[node]) +
                      (isSame ? " already has the role " + outer.role
                              : " is inside an element that has the role " + outer.role) +
                      ".",
                  "Write selectors that select each part once, and no part inside another.");
            return;
        }
        card.parts.push_back({role, node, row_.tree.between(card.node, node)});
    }

    const project::Project& project_;
    project::Problems& problems_;
    std::size_t reported_ = 0;
    GivenRow row_;
};

}  // namespace

const RoleNodes* GivenRow::find(const std::string& role) const {
    const auto found = std::ranges::find(roles, role, &RoleNodes::role);
    return found == roles.end() ? nullptr : &*found;
}

std::vector<GivenWrapper> GivenRow::partWrappers() const {
    std::vector<GivenWrapper> found;
    for (std::size_t c = 0; c < cards.size(); ++c) {
        std::map<NodeId, GivenWrapper> ofCard;
        for (std::size_t p = 0; p < cards[c].parts.size(); ++p) {
            for (const NodeId node : cards[c].parts[p].wrappers) {
                const auto [entry, isNew] = ofCard.try_emplace(node, GivenWrapper{node, c, p, p});
                entry->second.end = p + 1;
            }
        }
        for (const auto& [unused, wrapper] : ofCard)
            found.push_back(wrapper);
    }
    return found;
}

std::optional<GivenRow> givenRow(const project::Project& project, project::Problems& problems) {
    return GivenReader(project, problems).read();
}

std::optional<GivenRow> givenRowIn(Tree tree, const project::Project& project, project::Problems& problems) {
    return GivenReader(project, problems).readIn(std::move(tree));
}

NodeId classElementOf(const Tree& tree, const project::Project& project, std::size_t& variant) {
    for (NodeId at = 0; at < tree.size(); ++at) {
        if (tree[at].isText()) continue;
        for (std::size_t v = 0; v < project.row().variants.size(); ++v) {
            if (!tree[at].hasClass(project.row().variants[v].className)) continue;
            variant = v;
            return at;
        }
    }
    return noNode;
}

}  // namespace tenter::markup
