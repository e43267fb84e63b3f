#include "markup/theme_page.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <tuple>

#include "css/ascii.h"
#include "css/match.h"
#include "css/media.h"
#include "css/rules.h"
#include "css/shorthands.h"
#include "markup/matching.h"
#include "project/wording.h"
#include "units/quantities.h"

namespace tenter::markup {

namespace {

using units::Length;
using units::Unit;

constexpr double none = std::numeric_limits<double>::infinity();

using Values = std::map<std::string, std::string>;

/// The declarations that win on one element at one width. CSS Cascade 5 § 6.1.
class Cascade {
public:
    Cascade(const Tree& tree, const css::Sheet& sheet, double width)
        : tree_(tree), sheet_(sheet), elements_(tree), width_(width) {}

    [[nodiscard]] Values of(NodeId node) const {
        struct Winner {
            std::tuple<bool, bool, css::Specificity> rank;
            std::string value;
        };
        std::map<std::string, Winner> winners;
        const auto take = [&](const css::Declaration& declaration, bool unlayered,
                              css::Specificity specificity) {
            const std::tuple rank{declaration.important, unlayered, specificity};
            for (const auto& [property, value] : longhandsIn(declaration)) {
                const auto [known, isNew] = winners.try_emplace(property, Winner{rank, value});
                if (!isNew && !(rank < known->second.rank)) known->second = {rank, value};
            }
        };
        for (const css::StyleRule& rule : sheet_.rules) {
            if (!holds(rule)) continue;
            for (const css::Complex& selector : rule.selectors) {
                if (!selector.pseudoElements().empty() || !css::matches(selector, elements_, node)) continue;
                for (const css::Declaration& declaration : rule.declarations)
                    take(declaration, !rule.layer, css::specificityOf(selector));
            }
        }
        if (const std::string* style = tree_[node].find("style")) {
            css::Problems ignored;
            const int beyond = std::numeric_limits<int>::max();
            for (const css::Declaration& declaration : css::readDeclarations(*style, ignored))
                take(declaration, true, {beyond, 0, 0});
        }
        Values values;
        for (auto& [property, winner] : winners)
            values[property] = css::lowered(winner.value);
        return values;
    }

private:
    [[nodiscard]] bool holds(const css::StyleRule& rule) const {
        return std::ranges::all_of(sheet_.conditionsOf(rule), [&](const css::Condition* condition) {
            return condition->kind != css::ConditionKind::Media ||
                   css::mediaHolds(condition->text, width_) == css::Truth::True;
        });
    }

    static std::vector<std::pair<std::string, std::string>> longhandsIn(const css::Declaration& declaration) {
        // Inline sides are read as left and right. CSS Logical 1 § 4.
        std::string property = declaration.property;
        for (const char* what : {"margin", "padding"})
            if (property == std::string(what) + "-inline")
                return {{std::string(what) + "-left", declaration.value},
                        {std::string(what) + "-right", declaration.value}};
        if (property == "max-inline-size") property = "max-width";
        if (property == "inline-size") property = "width";
        std::vector<std::pair<std::string, std::string>> found;
        for (const css::Longhand& longhand : css::longhandsOf(property, declaration.value))
            if (longhand.value) found.emplace_back(longhand.property, *longhand.value);
        found.emplace_back(property, declaration.value);
        return found;
    }

    const Tree& tree_;
    const css::Sheet& sheet_;
    TreeElements elements_;
    double width_;
};

/// The content width that is left of the viewport width W: min(share · W − left − right, most).
struct Room {
    double share = 1;
    double left = 0, right = 0;            ///< px
    double most = none;                    ///< px
    double leftShare = 0, rightShare = 0;  ///< of W; only while nothing else reduces the width
    friend bool operator==(const Room&, const Room&) = default;
};

class RoomReader {
public:
    RoomReader(const Tree& tree, double root, std::vector<std::string>& cautions)
        : tree_(tree), root_(root), cautions_(cautions) {}

    Room within(Room room, NodeId node, const Values& values) {
        const std::string display = valueOf(values, "display", "block");
        if (display == "flex" || display == "grid" || display == "inline-flex" || display == "inline-grid")
            say(node, "has display: " + display + ", so the width that it gives the row is not known");
        const bool borderBox = valueOf(values, "box-sizing", "content-box") == "border-box";
        const std::optional<Length> width = length(node, values, "width", "auto");
        const std::optional<Length> most = length(node, values, "max-width", "none");
        const bool isAuto = !width || width->isKeyword();
        if (isAuto) {
            take(room, node, values, "margin-left", true);
            take(room, node, values, "margin-right", false);
            fold(room);
        }
        const double paddings = sideOf(node, values, "padding-left") + sideOf(node, values, "padding-right");
        // With `border-box` the padding is inside the width; else it is outside.
        if (!isAuto) narrow(room, node, *width, borderBox ? 0 : paddings);
        if (most && !most->isKeyword()) limit(room, node, *most, borderBox ? 0 : paddings);
        take(room, node, values, "padding-left", true);
        take(room, node, values, "padding-right", false);
        fold(room);
        return room;
    }

private:
    static std::string valueOf(const Values& values, const std::string& property,
                               const std::string& fallback) {
        const auto found = values.find(property);
        return found == values.end() ? fallback : found->second;
    }

    void say(NodeId node, const std::string& what) {
        const std::string* classes = tree_[node].find("class");
        cautions_.push_back("The <" + tree_[node].name +
                            (classes != nullptr ? " class=" + project::inQuotes(*classes) : "") +
                            "> around the row " + what + ". Set the container in the project.");
    }

    std::optional<Length> length(NodeId node, const Values& values, const std::string& property,
                                 const std::string& fallback) {
        const std::string value = valueOf(values, property, fallback);
        const std::optional<Length> read = Length::parse(value);
        if (!read) say(node, "has " + property + ": " + value + ", which is not supported");
        return read;
    }

    [[nodiscard]] double px(const Length& length) const { return length.resolve({root_, root_, 0, 0, 0}); }

    double sideOf(NodeId node, const Values& values, const std::string& property) {
        const auto found = values.find(property);
        const std::optional<Length> read = found == values.end() ? Length() : Length::parse(found->second);
        if (!read) {
            say(node, "has " + property + ": " + found->second + ", which is not supported");
            return 0;
        }
        return read->isKeyword() || read->unit() == Unit::Percent || read->unit() == Unit::Vw ? 0 : px(*read);
    }

    void take(Room& room, NodeId node, const Values& values, const std::string& property, bool left) {
        const auto found = values.find(property);
        const std::optional<Length> read = found == values.end() ? Length() : Length::parse(found->second);
        if (read && (read->unit() == Unit::Percent || read->unit() == Unit::Vw)) {
            const bool isFirst = room.share == 1 && room.left == 0 && room.right == 0 && room.most == none;
            if (!isFirst)
                say(node, "has " + property + ": " + found->second +
                              " inside another element with padding or a width, which is not supported");
            else
                (left ? room.leftShare : room.rightShare) += read->value() / 100;
            return;
        }
        const double taken = sideOf(node, values, property);
        (left ? room.left : room.right) += taken;
        room.most -= taken;
    }

    /// Equal shares on both sides become a narrower box in the middle.
    static void fold(Room& room) {
        if (room.leftShare != room.rightShare) return;
        room.share -= 2 * room.leftShare;
        room.leftShare = room.rightShare = 0;
    }

    void narrow(Room& room, NodeId node, const Length& width, double outside) {
        if (width.unit() != Unit::Percent) {
            limit(room, node, width, outside);
            return;
        }
        const double share = std::clamp(width.value() / 100, 0.01, 1.0);
        // The padding is outside such a box, but is subtracted from it below.
        room.left = share * room.left - outside / 2;
        room.right = share * room.right - outside / 2;
        room.most = share * room.most + outside;
        room.share *= share;
    }

    void limit(Room& room, NodeId node, const Length& most, double outside) {
        if (most.unit() == Unit::Percent || most.unit() == Unit::Vw) {
            if (most.value() < 100) say(node, "has max-width: " + most.css() + ", which is not supported");
            return;
        }
        room.most = std::min(room.most, px(most) + outside);
    }

    const Tree& tree_;
    double root_;
    std::vector<std::string>& cautions_;
};

double rootSizeOf(const Values& root, std::vector<std::string>& cautions) {
    const auto found = root.find("font-size");
    if (found == root.end()) return 16;
    const std::optional<Length> size = Length::parse(found->second);
    const bool fixed = size && !size->isKeyword() && size->unit() != Unit::Vw && size->unit() != Unit::Cqi;
    const double px = fixed ? size->resolve({16, 16, 16, 0, 0}) : 0;
    if (px >= 1 && px <= 100) return px;
    cautions.push_back("The root font size of the page is " + found->second +
                       ", which is not supported. Assumed: 16\u00A0px. Set it in the project.");
    return 16;
}

std::optional<units::Colour> backgroundOf(const Values& values) {
    for (const char* property : {"background-color", "background"}) {
        const auto found = values.find(property);
        if (found == values.end()) continue;
        const auto colour = units::Colour::parse(found->second);
        if (colour && colour->alpha == 255) return colour;
    }
    return std::nullopt;
}

/// HTML § 15.3.3.
Values withBodysMargin(const Node& node, Values values) {
    if (node.isHtml("body"))
        for (const char* side : {"margin-left", "margin-right"})
            values.try_emplace(side, "8px");
    return values;
}

/// A centred container with the same content width. Its em is the root size.
project::Container containerOf(const Room& room) {
    project::Container container;
    if (room.leftShare != 0 || room.rightShare != 0) {
        container.padding.left = Length::percent(room.leftShare * 100);
        container.padding.right = Length::percent(room.rightShare * 100);
        return container;
    }
    container.width = Length::percent(room.share * 100);
    if (room.most < none) container.maxWidth = Length::px(room.most + room.left + room.right);
    if (std::abs(room.left) > 0.005) container.padding.left = Length::px(room.left);
    if (std::abs(room.right) > 0.005) container.padding.right = Length::px(room.right);
    return container;
}

std::string inWords(const Length& length) {
    if (length.unit() == Unit::Px || length.isZero()) return units::px(length.value());
    if (length.unit() == Unit::Percent) return units::percent(length.value() / 100, 2);
    return length.css();
}

std::vector<NodeId> around(const Tree& tree, NodeId row) {
    std::vector<NodeId> nodes;
    for (NodeId at = tree[row].parent; at != noNode; at = tree[at].parent)
        nodes.push_back(at);
    std::ranges::reverse(nodes);
    return nodes;
}

}  // namespace

ThemePage themePage(const Tree& tree, NodeId row, std::string_view theme, double narrowest, double widest) {
    ThemePage page;
    const css::Sheet sheet = css::readSheet(theme);
    const std::vector<NodeId> nodes = around(tree, row);
    const Cascade wide(tree, sheet, widest);
    const Cascade narrow(tree, sheet, narrowest);
    page.rootSize = nodes.empty() ? 16 : rootSizeOf(wide.of(nodes.front()), page.cautions);
    std::vector<std::string> ignored;
    RoomReader reader(tree, page.rootSize, page.cautions);
    RoomReader silent(tree, page.rootSize, ignored);
    Room room;
    Room narrowRoom;
    for (const NodeId node : nodes) {
        const Values values = withBodysMargin(tree[node], wide.of(node));
        if (const auto colour = backgroundOf(values)) page.container.background = *colour;
        if (tree[node].isHtml("html")) continue;
        room = reader.within(room, node, values);
        narrowRoom = silent.within(narrowRoom, node, withBodysMargin(tree[node], narrow.of(node)));
    }
    const units::Colour background = page.container.background;
    page.container = containerOf(room);
    page.container.background = background;
    if (room != narrowRoom)
        page.cautions.push_back(
            "The theme changes the width of the container at narrow viewports. Tenter imported the values "
            "for wide viewports.");
    return page;
}

std::string ThemePage::containerSentence() const {
    std::string sentence = cautions.empty() ? "Container: " : "Container (assumed): ";
    sentence += inWords(container.width) + " of the viewport width";
    if (!container.maxWidth.isNone()) sentence += ", at most " + inWords(container.maxWidth);
    const std::optional<Length>& left = container.padding.left;
    const std::optional<Length>& right = container.padding.right;
    if (left && left == right) return sentence + ", padding " + inWords(*left) + " on each side.";
    if (left) sentence += ", padding " + inWords(*left) + " on the left";
    if (right) sentence += ", padding " + inWords(*right) + " on the right";
    return sentence + ".";
}

}  // namespace tenter::markup
