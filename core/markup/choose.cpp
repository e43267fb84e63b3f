#include "markup/choose.h"

#include <algorithm>
#include <utility>

#include "markup/class_words.h"
#include "markup/encoding.h"
#include "markup/matching.h"
#include "markup/row_finder.h"
#include "markup/selectors.h"
#include "markup/theme.h"
#include "project/rules.h"
#include "project/wording.h"

namespace tenter::markup {

namespace {

std::vector<std::string_view> stableClasses(const Node& node) {
    std::vector<std::string_view> classes = node.classes();
    std::erase_if(classes, [](std::string_view name) { return !isStable(name); });
    return classes;
}

// True for elements of the same kind: the same tag and the same stable classes.
bool isLike(const Node& one, const Node& other) {
    return one.name == other.name && one.space == other.space && stableClasses(one) == stableClasses(other);
}

std::size_t depthWithin(const Tree& tree, NodeId node, NodeId top) {
    return tree.between(top, node).size();
}

class Chooser {
public:
    Chooser(const project::Project& project, const PageToAdopt& page, project::Problems& problems)
        : project_(project), asked_(page), file_(page.file.string()), problems_(problems) {}

    std::optional<std::vector<RoleChoice>> choose(NodeId node, const std::string& role) {
        const Characters characters = charactersOf(asked_.bytes, file_, problems_);
        const std::optional<Tree> tree = parse(characters.utf8, file_, problems_);
        if (!tree) return std::nullopt;
        page_ = cleaned(*tree);
        std::vector<std::string> ignored;
        std::vector<PageSheet> sheets;
        if (asked_.theme)
            sheets.push_back({*asked_.theme, asked_.themeName, {}, {}, asked_.themeName, {}});
        else
            sheets = sheetsOf(*tree, asked_.file, ignored);
        styles_.emplace(std::move(sheets));
        std::optional<FoundRow> found =
            findRow(page_, project_, file_, asked_.choices, styles_->sheet(), problems_);
        if (!found) return std::nullopt;
        found_ = std::move(*found);
        if (node >= kept().size() || kept()[node].isText())
            return wrong("There is no such element.", "Choose an element of the row.");
        if (role == "row") return chooseRow(node);
        if (role == "card") return chooseCard(node);
        if (!role.empty() && role != "picture" && !project::isRoleName(role))
            return wrong("The role must be " + std::string(project::roleNameRule) + "; it is " +
                             project::inQuotes(role) + ".",
                         "");
        return choosePart(node, role);
    }

private:
    [[nodiscard]] const Tree& kept() const { return found_.kept.tree; }

    std::nullopt_t wrong(const std::string& what, const std::string& fix) {
        problems_.push_back({file_, "", what, fix});
        return std::nullopt;
    }

    // The node in the page of an element of the kept tree. The row was copied with all its nodes, its
    // ancestors one by one.
    [[nodiscard]] NodeId inPage(NodeId node) const {
        const NodeId row = found_.kept.row;
        NodeId there = found_.pageRow;
        if (kept().isWithin(node, row))
            there += node - row;
        else
            for (NodeId at = row; at != node && at != noNode && there != noNode; at = kept()[at].parent)
                there = page_[there].parent;
        return there < page_.size() && page_[there].name == kept()[node].name ? there : noNode;
    }

    // A selector whose first match in the page is the element.
    [[nodiscard]] std::string pageSelector(NodeId node) const {
        for (const std::string_view name : stableClasses(page_[node])) {
            const auto isFirst = [&](NodeId at) { return !page_[at].isText() && page_[at].hasClass(name); };
            NodeId first = 0;
            while (!isFirst(first))
                ++first;
            if (first == node) return "." + std::string(name);
        }
        std::string path;
        for (NodeId at = node; page_[at].parent != noNode; at = page_[at].parent) {
            std::size_t place = 1;
            for (NodeId before = page_[at].previous; before != noNode; before = page_[before].previous)
                place += page_[before].isText() ? 0U : 1U;
            const bool isBody = at == page_.body();
            std::string step = isBody ? "body" : ":nth-child(" + std::to_string(place) + ")";
            if (!path.empty()) step.append(" > ").append(path);
            path = std::move(step);
            if (isBody) break;
        }
        return path;
    }

    std::optional<std::vector<RoleChoice>> chooseRow(NodeId node) {
        const NodeId there = inPage(node);
        if (there == noNode || !page_.isWithin(there, page_.body()))
            return wrong("This element cannot be the row.", "Choose one inside the body of the page.");
        return std::vector{RoleChoice{"row", pageSelector(there)}};
    }

    std::optional<std::vector<RoleChoice>> chooseCard(NodeId node) {
        const NodeId row = found_.kept.row;
        if (node == row || !kept().isWithin(node, row)) {
            // Similar elements are next to it in the page, so their parent is the row.
            const NodeId there = inPage(node);
            if (there == noNode || there == page_.body() || !page_.isWithin(there, page_.body()))
                return wrong("This element cannot be a card.", "Choose one inside the body of the page.");
            return std::vector{RoleChoice{"row", pageSelector(page_[there].parent)}};
        }
        const std::size_t depth = depthWithin(kept(), node, row);
        std::vector<NodeId> cards;
        for (NodeId at = kept().following(row, row); at != noNode; at = kept().following(at, row))
            if (!kept()[at].isText() && isLike(kept()[at], kept()[node]) &&
                depthWithin(kept(), at, row) == depth)
                cards.push_back(at);
        const NodeId there = inPage(row);
        if (there == noNode)
            return wrong("The row was not found again in the page.", "Choose the element that is the row.");
        return std::vector{RoleChoice{"row", pageSelector(there)}, RoleChoice{"card", selectorFor(cards)}};
    }

    // The elements that correspond to `node` in each card: at most one in each.
    [[nodiscard]] std::vector<NodeId> likeInCards(NodeId node) const {
        const auto home = std::ranges::find_if(
            found_.cards, [&](const FoundCard& card) { return kept().isWithin(node, card.node); });
        std::vector<NodeId> wanted;
        if (home == found_.cards.end() || home->node == node) return wanted;
        const std::vector<NodeId> own = likeWithin(home->node, node);
        const auto order = static_cast<std::size_t>(std::ranges::find(own, node) - own.begin());
        for (const FoundCard& card : found_.cards)
            if (const std::vector<NodeId> like = likeWithin(card.node, node); order < like.size())
                wanted.push_back(like[order]);
        return wanted;
    }

    [[nodiscard]] std::vector<NodeId> likeWithin(NodeId card, NodeId node) const {
        std::vector<NodeId> like;
        for (NodeId at = kept().following(card, card); at != noNode; at = kept().following(at, card))
            if (!kept()[at].isText() && isLike(kept()[at], kept()[node])) like.push_back(at);
        return like;
    }

    [[nodiscard]] bool overlap(NodeId one, NodeId other) const {
        return kept().isWithin(one, other) || kept().isWithin(other, one);
    }

    std::optional<std::vector<RoleChoice>> choosePart(NodeId node, const std::string& role) {
        const std::vector<NodeId> wanted = likeInCards(node);
        if (wanted.empty())
            return wrong("This element is not in a card.",
                         "Choose one inside a card, or make it the row or a card.");
        for (const NodeId part : wanted) {
            FoundCard& card = *std::ranges::find_if(
                found_.cards, [&](const FoundCard& one) { return kept().isWithin(part, one.node); });
            std::erase_if(card.parts, [&](const GuessedPart& one) {
                return overlap(one.node, part) || (role == "picture" && one.role == "picture");
            });
            if (role == "heading")
                for (GuessedPart& one : card.parts)
                    if (one.role == "heading") one.role = "body";
            if (!role.empty()) card.parts.push_back({role, part});
            std::ranges::sort(card.parts, {}, &GuessedPart::node);
        }
        return allChoices();
    }

    // The choices of row and cards as given, then every role as it is now, then elements that would be
    // guessed as parts but are none.
    std::optional<std::vector<RoleChoice>> allChoices() {
        std::vector<RoleChoice> said;
        std::ranges::copy_if(asked_.choices, std::back_inserter(said), [](const RoleChoice& choice) {
            return choice.role == "row" || choice.role == "card";
        });
        project::Problems ignored;
        const std::optional<FoundRow> guessed =
            findRow(page_, project_, file_, said, styles_->sheet(), ignored);
        std::vector<std::pair<std::string, std::vector<NodeId>>> roles;
        const auto add = [&](const std::string& role, NodeId node) {
            const auto known = std::ranges::find(roles, role, &decltype(roles)::value_type::first);
            if (known == roles.end())
                roles.emplace_back(role, std::vector{node});
            else
                known->second.push_back(node);
        };
        std::vector<NodeId> none;
        for (std::size_t c = 0; c < found_.cards.size(); ++c) {
            const std::vector<GuessedPart>& parts = found_.cards[c].parts;
            for (const GuessedPart& part : parts)
                add(part.role, part.node);
            if (!guessed || c >= guessed->cards.size()) continue;
            for (const GuessedPart& guess : guessed->cards[c].parts)
                if (std::ranges::none_of(
                        parts, [&](const GuessedPart& part) { return overlap(part.node, guess.node); }))
                    none.push_back(guess.node);
        }
        for (const auto& [role, nodes] : roles)
            said.push_back({role, selectorFor(nodes)});
        if (!none.empty()) said.push_back({"", selectorFor(none)});
        return said;
    }

    [[nodiscard]] std::vector<NodeId> selectedInCards(const std::string& selector) const {
        css::Problems unread;
        const std::optional<css::SelectorList> list = css::readSelectors(selector, unread);
        if (!list) return {};
        std::vector<NodeId> nodes = selectedIn(kept(), *list);
        std::erase_if(nodes, [&](NodeId node) {
            return node == found_.kept.row || !kept().isWithin(node, found_.kept.row);
        });
        return nodes;
    }

    // A selector matched inside the element with the class, if it selects the same in the whole tree; else
    // one for the whole tree.
    [[nodiscard]] std::string selectorFor(const std::vector<NodeId>& nodes) const {
        std::vector<std::string> classes;
        for (const project::Variant& variant : project_.row().variants)
            classes.push_back(variant.className);
        std::string selector = SelectorMaker(kept(), found_.classElement, classes).derived(nodes).selector;
        if (selectedInCards(selector) != nodes)
            selector = SelectorMaker(kept(), 0, classes).derived(nodes).selector;
        return selector;
    }

    const project::Project& project_;
    const PageToAdopt& asked_;
    std::string file_;
    project::Problems& problems_;
    Tree page_;
    std::optional<PageStyles> styles_;
    FoundRow found_;
};

}  // namespace

std::optional<std::vector<RoleChoice>> choose(const project::Project& project, const PageToAdopt& page,
                                              NodeId node, const std::string& role,
                                              project::Problems& problems) {
    return Chooser(project, page, problems).choose(node, role);
}

}  // namespace tenter::markup
