#include "markup/row_finder.h"

#include <algorithm>

#include "markup/block_marks.h"
#include "markup/given.h"
#include "markup/headings.h"
#include "markup/matching.h"
#include "project/rules.h"
#include "project/wording.h"

namespace tenter::markup {

namespace {

struct ReadChoice {
    std::string role;
    css::SelectorList selectors;
};

class RowFinder {
public:
    RowFinder(Tree page, const project::Project& project, std::string file, project::Problems& problems)
        : page_(std::move(page)), project_(project), file_(std::move(file)), problems_(problems) {}

    std::optional<FoundRow> find(const std::vector<RoleChoice>& choices, const css::Sheet& sheet) {
        if (!readChoices(choices) || !findRowInPage()) return std::nullopt;
        FoundRow found;
        const bool hasClass = hasVariantClass();
        if (!hasClass) addClass();
        std::optional<Kept> kept = keptRow(page_, row_, file_, problems_);
        if (!kept) return std::nullopt;
        if (!isWithinLimits(kept->tree)) {
            wrong("The row has more than " + std::to_string(largestRow) + " elements, or is more than " +
                      std::to_string(deepestRow) + " levels deep.",
                  "Give a selector for row.");
            return std::nullopt;
        }
        found.kept = std::move(*kept);
        markPhrases(found.kept, sheet);
        found.pageRow = row_;
        found.levelBefore = levelBefore(page_, row_);
        std::size_t variant = 0;
        found.classElement = classElementOf(found.kept.tree, project_, variant);
        found.classWasAdded = !hasClass;
        if (!findCards(found)) return std::nullopt;
        for (const ReadChoice& choice : choices_)
            if (choice.role != "row" && choice.role != "card") applyChoice(choice, found);
        return found;
    }

private:
    void wrong(const std::string& what, const std::string& fix) {
        problems_.push_back({file_, "", what, fix});
    }

    bool readChoices(const std::vector<RoleChoice>& choices) {
        for (const RoleChoice& choice : choices) {
            if (!choice.role.empty() && choice.role != "card" && choice.role != "picture" &&
                !project::isRoleName(choice.role)) {
                wrong(std::string("The role must be ") + project::selectorRoleRule + "; it is " +
                          project::inQuotes(choice.role) + ".",
                      "");
                return false;
            }
            css::Problems unread;
            std::optional<css::SelectorList> list = css::readSelectors(choice.selector, unread);
            if (!list) {
                wrong("The selector " + project::inQuotes(choice.selector) + " for " + named(choice.role) +
                          " is not valid. " + (unread.empty() ? "It is empty." : unread.front().what),
                      unread.empty() ? "Write a CSS selector." : unread.front().fix);
                return false;
            }
            choices_.push_back({choice.role, std::move(*list)});
        }
        return true;
    }

    [[nodiscard]] const ReadChoice* chosen(std::string_view role) const {
        const auto found = std::ranges::find(choices_, role, &ReadChoice::role);
        return found == choices_.end() ? nullptr : &*found;
    }

    static std::string named(const std::string& role) {
        return role.empty() ? "elements without a role" : role;
    }

    bool selectsNothing(const std::string& role) {
        wrong("The selector for " + named(role) + " selects nothing.", "Write one that matches in the page.");
        return false;
    }

    // The row was copied with all its nodes.
    void markPhrases(Kept& kept, const css::Sheet& sheet) {
        if (sheet.rules.empty()) return;
        markBlocks(page_, row_, sheet, project_.mostWidth);
        for (NodeId at = kept.row; at != noNode; at = kept.tree.following(at, kept.row)) {
            const NodeId there = row_ + (at - kept.row);
            if (there < page_.size() && page_[there].name == kept.tree[at].name)
                kept.tree[at].isBlock = page_[there].isBlock;
        }
    }

    // The innermost element that contains all of `nodes`.
    NodeId commonParent(const std::vector<NodeId>& nodes) {
        NodeId parent = page_[nodes.front()].parent;
        for (const NodeId node : nodes)
            while (parent != noNode && (node == parent || !page_.isWithin(node, parent)))
                parent = page_[parent].parent;
        return parent;
    }

    bool findRowInPage() {
        if (const ReadChoice* choice = chosen("row"); choice != nullptr) {
            const std::vector<NodeId> nodes = selectedIn(page_, choice->selectors);
            if (nodes.empty() || !page_.isWithin(nodes.front(), page_.body())) return selectsNothing("row");
            row_ = nodes.front();
            return true;
        }
        if (const ReadChoice* choice = chosen("card"); choice != nullptr) {
            const std::vector<NodeId> nodes = selectedIn(page_, choice->selectors);
            if (nodes.empty()) return selectsNothing("card");
            row_ = commonParent(nodes);
            if (row_ != noNode && page_.isWithin(row_, page_.body())) return true;
            return selectsNothing("card");
        }
        if (const std::optional<GuessedRow> guess = guessRow(page_)) {
            row_ = guess->row;
            return true;
        }
        wrong(
            "No row of cards was found: the page has no repeated elements that contain text and a picture, "
            "heading or link.",
            "Enter a selector for card.");
        return false;
    }

    bool hasVariantClass() {
        for (NodeId at = row_; at != noNode; at = page_[at].parent)
            for (const project::Variant& variant : project_.row().variants)
                if (page_[at].hasClass(variant.className)) return true;
        return false;
    }

    void addClass() {
        const std::string& name = project_.row().variants.front().className;
        std::vector<Attribute>& attributes = page_[row_].attributes;
        const auto found = std::ranges::find(attributes, "class", &Attribute::name);
        if (found == attributes.end())
            attributes.push_back({"class", name});
        else
            found->value += (isBlank(found->value) ? "" : " ") + name;
    }

    bool findCards(FoundRow& found) {
        const Tree& tree = found.kept.tree;
        std::vector<NodeId> cards;
        if (const ReadChoice* choice = chosen("card"); choice != nullptr) {
            for (const NodeId node : selectedIn(tree, choice->selectors)) {
                const bool inRow = node != found.kept.row && tree.isWithin(node, found.kept.row);
                if (inRow && (cards.empty() || !tree.isWithin(node, cards.back()))) cards.push_back(node);
            }
        } else {
            cards = guessCards(tree, found.kept.row);
        }
        if (cards.empty()) {
            wrong("The row has no cards.", "Enter a selector for card.");
            return false;
        }
        constexpr std::size_t most = 500;  // of a project
        if (cards.size() > most) {
            wrong("The row has more than " + std::to_string(most) + " cards.", "Give a selector for row.");
            return false;
        }
        for (const NodeId card : cards)
            found.cards.push_back({card, guessParts(tree, card, found.loose)});
        return true;
    }

    static NodeId pictureIn(const Tree& tree, NodeId node) {
        for (NodeId at = node; at != noNode; at = tree.following(at, node))
            if (tree[at].isHtml("img")) return at;
        return noNode;
    }

    // A choice replaces guesses: for the same element, for elements inside and around it, and for others with
    // the same role, which become body. An element chosen for no role is not a part.
    void applyChoice(const ReadChoice& choice, FoundRow& found) {
        const Tree& tree = found.kept.tree;
        std::vector<NodeId> nodes = selectedIn(tree, choice.selectors);
        if (choice.role == "picture")
            std::ranges::transform(nodes, nodes.begin(), [&](NodeId node) { return pictureIn(tree, node); });
        std::size_t taken = 0;
        for (FoundCard& card : found.cards) {
            std::vector<GuessedPart> chosenParts;
            for (const NodeId node : nodes) {
                if (node == noNode || node == card.node || !tree.isWithin(node, card.node)) continue;
                if (!chosenParts.empty() && tree.isWithin(node, chosenParts.back().node)) continue;
                chosenParts.push_back({choice.role, node});
                std::erase_if(card.parts, [&](const GuessedPart& part) {
                    return tree.isWithin(part.node, node) || tree.isWithin(node, part.node);
                });
            }
            taken += chosenParts.size();
            if (choice.role.empty()) continue;
            if (choice.role == "picture") {
                std::erase_if(card.parts, [](const GuessedPart& part) { return part.role == "picture"; });
            } else {
                for (GuessedPart& part : card.parts)
                    if (part.role == choice.role) part.role = "body";
            }
            card.parts.insert(card.parts.end(), chosenParts.begin(), chosenParts.end());
            std::ranges::sort(card.parts, {}, &GuessedPart::node);
        }
        if (taken == 0) selectsNothing(choice.role);
    }

    Tree page_;
    const project::Project& project_;
    std::string file_;
    project::Problems& problems_;
    std::vector<ReadChoice> choices_;
    NodeId row_ = noNode;
};

}  // namespace

std::optional<FoundRow> findRow(Tree page, const project::Project& project, const std::string& file,
                                const std::vector<RoleChoice>& choices, const css::Sheet& sheet,
                                project::Problems& problems) {
    return RowFinder(std::move(page), project, file, problems).find(choices, sheet);
}

}  // namespace tenter::markup
