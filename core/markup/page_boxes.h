// The content boxes of the elements around a row, by viewport width. CSS 2 § 10.3.3, CSS Sizing 3, CSS
// Flexbox 1 § 9, CSS Grid 2 § 12.
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "css/cascade.h"
#include "markup/tree.h"

namespace tenter::markup {

/// The left edge and the width of a content box in CSS px, by viewport width.
struct PageBox {
    css::Line left;
    css::Line width = {0, 1};
};

/// Lays out a chain of elements, each inside the one before, in one interval of viewport widths. The sizes of
/// content are not known; where a width depends on them, the element is assumed to fill its containing block,
/// with a sentence in `cautions`.
class PageBoxes {
public:
    /// `middle`: a width inside the interval. `sheetNames`: the names of the sources of the page's rules.
    PageBoxes(const Tree& tree, css::Styles& styles, double middle, std::set<std::string>& cautions,
              const std::vector<std::string>& sheetNames)
        : tree_(tree), styles_(styles), middle_(middle), cautions_(cautions), sheetNames_(sheetNames) {}

    /// The content box of the last element of `chain`, which starts at the root; in a grid, the cell of
    /// `row`, its child, there.
    PageBox contentBox(const std::vector<NodeId>& chain, NodeId row);

private:
    enum class Context { Block, FlexRow, FlexColumn, Grid };
    /// Margins, borders and paddings of an element in CSS px; auto margins are 0.
    struct Edges {
        css::Line marginLeft, marginRight, insideLeft, insideRight;
        bool autoLeft = false;
        bool autoRight = false;
    };
    /// A border box and its margins along a line.
    struct Item {
        css::Line size;
        bool isKnown = true;
        double grow = 0;
    };
    PageBox within(const PageBox& outer, NodeId node, Context context, NodeId parent);
    PageBox inFlexRow(const PageBox& outer, NodeId node, NodeId parent);
    PageBox inGrid(const PageBox& outer, NodeId node, NodeId parent);
    std::optional<PageBox> cellOf(const PageBox& outer, NodeId node, NodeId parent);
    std::optional<css::Line> besideFloats(NodeId node, const PageBox& outer, const css::Line& content,
                                          const Edges& edges, bool toRight);
    double inLine(NodeId node, NodeId parent);
    PageBox placed(const PageBox& outer, NodeId node, css::Line content, const Edges& edges,
                   double alignment);
    [[nodiscard]] Context contextOf(NodeId node);
    [[nodiscard]] Edges edgesOf(NodeId node, const css::Line& percentage);
    [[nodiscard]] css::Line borderOf(NodeId node, const std::string& side);
    [[nodiscard]] std::optional<css::Line> sizeOf(NodeId node, const std::string& property,
                                                  const css::Line& percentage, const Edges& edges);
    [[nodiscard]] css::Line limited(NodeId node, css::Line content, const css::Line& percentage,
                                    const Edges& edges);
    [[nodiscard]] Item itemOf(NodeId node, const css::Line& percentage);
    [[nodiscard]] std::vector<NodeId> inFlow(NodeId parent);
    [[nodiscard]] css::Line gapOf(NodeId node, const css::Line& percentage);
    [[nodiscard]] double alignmentOf(const std::string& value) const;
    [[nodiscard]] double at(const css::Line& line) const { return line.atZero + line.perPx * middle_; }
    [[nodiscard]] css::Line lengthOf(NodeId node, const std::string& property, const css::Line& percentage);
    void say(NodeId node, const std::string& what);
    void sayUnsupported(NodeId node, const std::string& property);
    void sayWhatMoves(NodeId node);
    [[nodiscard]] std::string written(NodeId node, const std::string& property);

    const Tree& tree_;
    css::Styles& styles_;
    double middle_;
    std::set<std::string>& cautions_;
    const std::vector<std::string>& sheetNames_;
};

}  // namespace tenter::markup
