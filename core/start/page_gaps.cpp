#include "start/page_gaps.h"

#include <algorithm>
#include <set>

#include "css/longhands.h"
#include "project/titles.h"
#include "start/page_fonts.h"
#include "units/scan.h"
#include "wording/say.h"

namespace tenter::start {

namespace {

using css::Line;
using markup::GivenCard;
using markup::GivenPart;
using markup::NodeId;
using units::Length;

/// The distance between two parts, or between a part and the edge of its card.
struct Gap {
    std::string above;  ///< role; empty: the edge of the card
    std::string below;
    Line size;
    bool grows = false;  ///< takes the free room of the card
};

/// Distances from a part to an element around it: what is fixed, and margins that can still collapse with
/// others. CSS 2 § 8.3.1.
struct Edge {
    Line fixed;
    std::vector<Line> margins;
    bool isAuto = false;
};

/// Margins of the roles that make all gaps.
struct Solution {
    std::map<std::string, Line> top, bottom;
    std::set<std::string> automatic;  ///< roles whose top margin is auto
    Line paddingTop, paddingBottom;
    int conflicts = 0;
};

class GapReader {
public:
    GapReader(const PieceContext& context, const Line& content, bool bleeds)
        : context_(context), content_(content), bleeds_(bleeds) {}

    void read(PieceReading& reading) {
        beside_ = reading.settings.card.direction == project::Direction::Beside;
        for (const GivenCard& card : context_.row.cards)
            readCard(card);
        if (roles_.empty()) return;
        Solution best = solved(true, true);
        for (const auto& [bottoms, declared] :
             {std::pair{true, false}, std::pair{false, true}, std::pair{false, false}}) {
            if (best.conflicts == 0) break;
            Solution other = solved(bottoms, declared);
            if (other.conflicts < best.conflicts) best = std::move(other);
        }
        if (best.conflicts > 0)
            context_.notes.add(
                "gaps-of-parts",
                wording::say(
                    "margin: the distances between parts on the page depend on which parts follow each "
                    "other. In the project each role has one margin, so some distances differ."));
        put(best, reading);
    }

private:
    [[nodiscard]] std::string display(NodeId node) const { return context_.styles.value(node, "display"); }
    [[nodiscard]] bool isFlexRow(NodeId node) const {
        return display(node).find("flex") != std::string::npos &&
               !context_.styles.value(node, "flex-direction").starts_with("column");
    }
    /// True if the margins of children do not collapse with each other.
    [[nodiscard]] bool keepsMargins(NodeId node) const {
        return display(node).find("flex") != std::string::npos ||
               display(node).find("grid") != std::string::npos;
    }
    /// True if the margins of children do not collapse with its own. CSS 2 § 9.4.1.
    [[nodiscard]] bool isClosed(NodeId node) const {
        const std::string overflow = context_.styles.value(node, "overflow-x");
        const std::string floating = context_.styles.value(node, "float");
        const NodeId parent = context_.row.tree[node].parent;
        return keepsMargins(node) || display(node) == "flow-root" || display(node) == "inline-block" ||
               (!overflow.empty() && overflow != "visible" && overflow != "clip") ||
               (!floating.empty() && floating != "none") ||
               (parent != markup::noNode && keepsMargins(parent));
    }
    [[nodiscard]] Line length(NodeId node, const std::string& property) const {
        return lengthAt(context_, node, property, content_);
    }
    [[nodiscard]] bool isIn(NodeId node, std::string_view kind) const {
        return display(node) == kind || (kind == "inline" && display(node).empty());
    }

    /// True for a picture that fills a positioned element around it.
    [[nodiscard]] bool isFillingPart(NodeId part) const {
        return context_.row.tree[part].isHtml("img") && context_.styles.value(part, "position") == "absolute";
    }

    /// The edge of `nodes`, from the outermost to the part, on one side.
    [[nodiscard]] Edge edgeOf(const std::vector<NodeId>& nodes, const std::string& side) const {
        Edge edge;
        const NodeId part = nodes.back();
        const NodeId around = context_.row.tree[part].parent;
        const bool inLine = !keepsMargins(around);
        const bool isInline = inLine && isIn(part, "inline");
        const bool isBoxInLine =
            inLine && (isIn(part, "inline-block") || (isInline && context_.row.tree[part].isHtml("img")));
        if (isBoxInLine)
            edge.fixed = length(part, "margin-" + side);
        else if (!isInline)
            edge.margins.push_back(length(part, "margin-" + side));
        const bool isPicture = context_.row.tree[part].isHtml("img");
        const std::string align = context_.styles.value(part, "vertical-align");
        if (isPicture && inLine && side == "bottom" && isIn(part, "inline") &&
            (align.empty() || align == "baseline"))
            edge.fixed = sum(edge.fixed, roomBelowBaseline(context_, around));
        edge.isAuto = context_.styles.value(part, "margin-" + side) == "auto" && keepsMargins(around);
        bool isInside = isFillingPart(part);
        if (isInside) edge = {};
        for (std::size_t i = nodes.size() - 1; i-- > 0;) {
            const NodeId node = nodes[i];
            // The paddings of an element whose positioned content fills it are the height of that content.
            if (isInside && context_.styles.value(node, "position").empty()) continue;
            const bool isFilled = isInside;
            isInside = false;
            if (isFilled) {
                edge.margins.push_back(length(node, "margin-" + side));
                continue;
            }
            if (isIn(node, "contents") ||
                (isIn(node, "inline") && !keepsMargins(context_.row.tree[node].parent)))
                continue;
            const Line inside = sum(length(node, "padding-" + side), borderAt(context_, node, side));
            if (isClosed(node) || !context_.isSame(inside, {})) {
                edge.fixed = sum(edge.fixed, sum(collapsed(edge.margins), inside));
                edge.margins.clear();
            }
            edge.margins.push_back(length(node, "margin-" + side));
            edge.isAuto = edge.isAuto || (context_.styles.value(node, "margin-" + side) == "auto" &&
                                          keepsMargins(context_.row.tree[node].parent));
        }
        return edge;
    }

    /// The largest of the positive margins and the smallest of the negative ones.
    [[nodiscard]] Line collapsed(const std::vector<Line>& margins) const {
        Line most;
        Line least;
        for (const Line& margin : margins) {
            if (context_.at(margin) > 0)
                most = context_.styles.larger(most, margin);
            else
                least = context_.styles.smaller(least, margin);
        }
        return sum(most, least);
    }

    [[nodiscard]] std::vector<NodeId> pathOf(const GivenPart& part) const {
        std::vector<NodeId> path = part.wrappers;
        path.push_back(part.node);
        return path;
    }

    /// The number of the row of a grid with one column that a child is in, from 0. CSS Grid 2 § 8.
    [[nodiscard]] std::size_t gridRowOf(NodeId grid, NodeId child) const {
        const std::string start = context_.styles.value(child, "grid-row-start");
        if (const auto line = units::scanNumber(start); line && line->rest.empty() && line->value >= 1)
            return static_cast<std::size_t>(line->value) - 1;
        const std::vector<std::string> areas =
            css::valueParts(context_.styles.value(grid, "grid-template-areas"));
        const auto names = [&](const std::string& row) {
            const std::vector<std::string> words =
                css::valueParts(row.size() < 2 ? row : row.substr(1, row.size() - 2));
            return std::ranges::find(words, start) != words.end();
        };
        if (!start.empty())
            if (const auto row = std::ranges::find_if(areas, names); row != areas.end())
                return static_cast<std::size_t>(row - areas.begin());
        const std::vector<NodeId> children = context_.row.tree.elementChildren(grid);
        return static_cast<std::size_t>(std::ranges::find(children, child) - children.begin());
    }

    /// True if the free room of a grid with one column is between two of its children: in the row of the
    /// first, or in that of the second above it.
    [[nodiscard]] bool pushesInGrid(NodeId grid, NodeId above, NodeId below) const {
        const std::vector<std::string> tracks =
            css::valueParts(context_.styles.value(grid, "grid-template-rows"));
        const auto grows = [&](NodeId child) {
            const std::size_t row = gridRowOf(grid, child);
            return row < tracks.size() && !tracks[row].starts_with("repeat(") &&
                   (tracks[row].ends_with("fr") || tracks[row].ends_with("fr)"));
        };
        if (grows(above)) return true;
        const std::string self = context_.styles.value(below, "align-self");
        return grows(below) && (self == "end" || self == "flex-end");
    }

    /// True if an element before the second part takes the free room between the two.
    [[nodiscard]] bool pushes(NodeId parent, NodeId above, NodeId below) const {
        if (display(parent).find("grid") != std::string::npos) return pushesInGrid(parent, above, below);
        if (display(parent).find("flex") == std::string::npos || isFlexRow(parent)) return false;
        const std::string grow = context_.styles.value(above, "flex-grow");
        const bool grows = !grow.empty() && grow != "0";
        const std::string content = context_.styles.value(parent, "justify-content");
        const std::vector<NodeId> children = context_.row.tree.elementChildren(parent);
        const bool isSpread = content == "space-between" && children.size() == 2 && children.back() == below;
        return grows || isSpread;
    }

    void readCard(const GivenCard& card) {
        std::vector<const GivenPart*> parts;
        for (const GivenPart& part : card.parts)
            if (display(part.node) != "none" && (!beside_ || part.role != "picture")) parts.push_back(&part);
        if (parts.empty()) return;
        for (const GivenPart* part : parts)
            addRole(*part);
        Edge first = edgeOf(pathOf(*parts.front()), "top");
        gaps_.push_back({"", parts.front()->role, sum(first.fixed, collapsed(first.margins)), false});
        for (std::size_t i = 1; i < parts.size(); ++i)
            readBetween(card, *parts[i - 1], *parts[i]);
        const Edge last = edgeOf(pathOf(*parts.back()), "bottom");
        gaps_.push_back({parts.back()->role, "", sum(last.fixed, collapsed(last.margins)), false});
    }

    void addRole(const GivenPart& part) {
        if (std::ranges::find(roles_, part.role) == roles_.end()) {
            roles_.push_back(part.role);
            const bool isAuto = context_.styles.value(part.node, "margin-top") == "auto";
            top_[part.role] = isAuto ? Line{} : length(part.node, "margin-top");
            bottom_[part.role] = length(part.node, "margin-bottom");
        }
        for (const NodeId node : pathOf(part))
            for (const char* property :
                 {"margin-top", "margin-bottom", "padding-top", "padding-bottom", "row-gap"})
                if (std::string text = context_.styles.value(node, property); !text.empty())
                    written_.insert(std::move(text));
    }

    void readBetween(const GivenCard& card, const GivenPart& above, const GivenPart& below) {
        const std::vector<NodeId> one = pathOf(above);
        const std::vector<NodeId> other = pathOf(below);
        std::size_t shared = 0;
        while (shared < std::min(one.size(), other.size()) - 1 && one[shared] == other[shared])
            ++shared;
        const NodeId parent = shared == 0 ? card.node : one[shared - 1];
        if (isFlexRow(parent))
            context_.notes.add(
                "side-by-side",
                wording::say("display: %1 and %2 are side by side on the page (%3). In the project "
                             "parts stand below each other.",
                             {project::roleName(above.role), project::roleName(below.role),
                              context_.notes.written(context_.styles, parent, "display")}));
        const Edge bottom = edgeOf({one.begin() + static_cast<std::ptrdiff_t>(shared), one.end()}, "bottom");
        const Edge top = edgeOf({other.begin() + static_cast<std::ptrdiff_t>(shared), other.end()}, "top");
        Gap gap{above.role, below.role, sum(bottom.fixed, top.fixed), false};
        if (isFlexRow(parent)) {
            gap.size = {};
        } else if (keepsMargins(parent)) {
            gap.size = sum(gap.size, sum(collapsed(bottom.margins), collapsed(top.margins)));
            gap.size = sum(gap.size, length(parent, "row-gap"));
        } else {
            std::vector<Line> margins = bottom.margins;
            margins.insert(margins.end(), top.margins.begin(), top.margins.end());
            gap.size = sum(gap.size, collapsed(margins));
        }
        gap.grows = top.isAuto || pushes(parent, one[shared], other[shared]);
        gaps_.push_back(std::move(gap));
        if (std::string text = context_.styles.value(parent, "row-gap"); !text.empty()) written_.insert(text);
    }

    /// Sets a margin; counts a conflict if it has another value.
    void set(std::map<std::string, Line>& margins, const std::string& role, const Line& size,
             Solution& solution) const {
        const auto [known, isNew] = margins.try_emplace(role, size);
        if (!isNew && !context_.isSame(known->second, size)) ++solution.conflicts;
    }

    /// With `bottoms` the bottom margins are known and the top margins follow; else the other way round.
    /// `declared`: those known are the margins of the page, else 0.
    [[nodiscard]] Solution solved(bool bottoms, bool declared) const {
        Solution solution;
        for (const Gap& gap : gaps_)
            if (gap.grows) solution.automatic.insert(gap.below);
        std::map<std::string, Line>& known = bottoms ? solution.bottom : solution.top;
        // The room above a part at the end of its card is the bottom margin of the part before it.
        for (const Gap& gap : gaps_)
            if (gap.grows) set(solution.bottom, gap.above, gap.size, solution);
        for (const std::string& role : roles_)
            known.try_emplace(role, declared ? (bottoms ? bottom_ : top_).at(role) : Line{});
        for (const std::string& role : solution.automatic)
            solution.top[role] = {};
        for (const Gap& gap : gaps_) {
            if (gap.above.empty() || gap.below.empty() || gap.grows) continue;
            if (solution.automatic.contains(gap.below)) {
                set(solution.bottom, gap.above, gap.size, solution);
            } else if (bottoms) {
                set(solution.top, gap.below, less(gap.size, solution.bottom.at(gap.above)), solution);
            } else {
                set(solution.bottom, gap.above, less(gap.size, solution.top.at(gap.below)), solution);
            }
        }
        setEdges(solution, bottoms);
        return solution;
    }

    /// The padding of the cards above the first and below the last part.
    void setEdges(Solution& solution, bool bottoms) const {
        bool hasTop = false;
        bool hasBottom = false;
        for (const Gap& gap : gaps_) {
            const bool touches = bleeds_ && (gap.above == "picture" || gap.below == "picture");
            if (gap.above.empty() && !touches) {
                const auto margin = solution.top.find(gap.below);
                if (margin == solution.top.end()) {
                    solution.top[gap.below] =
                        solution.automatic.contains(gap.below) ? Line{} : top_.at(gap.below);
                }
                setPadding(solution.paddingTop, hasTop, "padding-top",
                           less(gap.size, solution.top.at(gap.below)), solution);
            }
            if (gap.below.empty() && !touches) {
                const auto margin = solution.bottom.find(gap.above);
                if (margin == solution.bottom.end())
                    solution.bottom[gap.above] = bottoms ? bottom_.at(gap.above) : Line{};
                setPadding(solution.paddingBottom, hasBottom, "padding-bottom",
                           less(gap.size, solution.bottom.at(gap.above)), solution);
            }
        }
    }

    /// `inside`: what is added to the padding of the page's card. It can be negative, the sum cannot.
    void setPadding(Line& padding, bool& isKnown, const std::string& property, const Line& inside,
                    Solution& solution) const {
        const double all = context_.at(sum(inside, length(context_.row.cards.front().node, property)));
        if (isKnown ? !context_.isSame(padding, inside) : all < -0.02) ++solution.conflicts;
        if (!isKnown && all >= -0.02) padding = inside;
        isKnown = true;
    }

    void put(const Solution& solution, PieceReading& reading) const {
        const std::vector<std::string> written(written_.begin(), written_.end());
        const NodeId card = context_.row.cards.front().node;
        project::CardSettings& settings = reading.settings.card;
        const LengthFinder ofCard(context_, context_.root, content_);
        const auto padding = [&](const Line& inside, const std::string& side) {
            // `gaps_` are those inside the padding of the card.
            const std::string property = "padding-" + side;
            Line all = sum(inside, length(card, property));
            // A border that other sides do not have is room inside the card.
            if (!hasEvenBorder(context_, card)) all = sum(all, borderAt(context_, card, side));
            std::vector<std::string> own{context_.styles.value(card, property)};
            own.insert(own.end(), written.begin(), written.end());
            return ofCard.nearest(all, own, card, property);
        };
        settings.padding.top = padding(solution.paddingTop, "top");
        settings.padding.bottom = padding(solution.paddingBottom, "bottom");
        for (const std::string& role : roles_) {
            const auto size = reading.sizes.find(role);
            const LengthFinder lengths(context_, size == reading.sizes.end() ? context_.root : size->second,
                                       content_);
            const NodeId node = firstOf(role);
            const auto margin = [&](const std::map<std::string, Line>& margins, const char* property) {
                const auto found = margins.find(role);
                const Line line = found == margins.end() ? Line{} : found->second;
                return lengths.nearest(line, ordered(node, property, written), node, property, true, true);
            };
            project::Sides& sides =
                role == "picture" ? reading.settings.picture.margin : reading.settings.text.of(role).margin;
            sides.top = solution.automatic.contains(role) && role != "picture"
                            ? Length::ofAuto()
                            : margin(solution.top, "margin-top");
            sides.bottom = margin(solution.bottom, "margin-bottom");
        }
    }

    [[nodiscard]] std::vector<std::string> ordered(NodeId node, const char* property,
                                                   const std::vector<std::string>& written) const {
        std::vector<std::string> all{context_.styles.value(node, property)};
        all.insert(all.end(), written.begin(), written.end());
        return all;
    }

    [[nodiscard]] NodeId firstOf(const std::string& role) const {
        const markup::RoleNodes* nodes = context_.row.find(role);
        return nodes == nullptr || nodes->nodes.empty() ? context_.row.row : nodes->nodes.front();
    }

    const PieceContext& context_;
    Line content_;
    bool bleeds_;
    bool beside_ = false;  ///< the picture is beside the other parts
    std::vector<std::string> roles_;
    std::map<std::string, Line> top_, bottom_;  ///< margins of the first element of each role
    std::vector<Gap> gaps_;
    std::set<std::string> written_;
};

}  // namespace

void readGaps(const PieceContext& context, const Line& content, bool bleeds, PieceReading& reading) {
    GapReader(context, content, bleeds).read(reading);
}

}  // namespace tenter::start
