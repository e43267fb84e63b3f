// Cells of CSS tables around a row, where their widths do not depend on content. CSS 2 § 17.5 and § 17.6.
#include <cmath>

#include "css/longhands.h"
#include "markup/page_boxes.h"
#include "markup/page_lines.h"
#include "wording/say.h"

namespace tenter::markup {

using css::Line;

/// The table of a row or group of rows; any other element itself.
NodeId PageBoxes::tableOf(NodeId node) {
    while (isIn(styles_.value(node, "display"), {"table-row", "table-row-group"}) &&
           tree_[node].parent != noNode)
        node = tree_[node].parent;
    return node;
}

/// The horizontal distance between the cells of a table.
Line PageBoxes::spacingOf(NodeId table) {
    if (styles_.value(table, "border-collapse") == "collapse") return {};
    const std::vector<std::string> words = css::valueParts(styles_.value(table, "border-spacing"));
    if (words.empty()) return tree_[table].isHtml("table") ? Line{2, 0} : Line{};
    const std::size_t problems = styles_.problems.size();
    const std::optional<Line> spacing = styles_.lengthOf(table, words.front(), std::nullopt);
    if (!spacing && styles_.problems.size() > problems) sayUnsupported(table, "border-spacing");
    return spacing.value_or(Line{});
}

/// The left edge of a cell in the row of cells of `parent`, from that of `outer`, the content box of its
/// table; and its border box `width`. Empty if they depend on content.
std::optional<Line> PageBoxes::cellBefore(const PageBox& outer, NodeId node, NodeId parent, Line& width) {
    const NodeId table = tableOf(parent);
    const Line spacing = spacingOf(table);
    const std::vector<NodeId> cells = inFlow(parent);
    const bool isFixed = styles_.value(table, "table-layout") == "fixed";
    const Line room = outer.width - static_cast<double>(cells.size() + 1) * spacing;
    Line taken;
    std::vector<std::optional<Line>> columns;
    std::size_t automatic = 0;
    for (const NodeId cell : cells) {
        if (styles_.value(cell, "display") != "table-cell") return std::nullopt;
        const Edges edges = edgesOf(cell, outer.width);
        // In automatic layout a percentage is that of the column, paddings and borders included.
        const bool isPart = !isFixed && styles_.value(cell, "width").find('%') != std::string::npos;
        std::optional<Line> size = sizeOf(cell, "width", room, isPart ? Edges{} : edges);
        if (size && !isPart) size = *size + edges.insideLeft + edges.insideRight;
        automatic += size ? 0U : 1U;
        taken = taken + size.value_or(Line{});
        columns.push_back(size);
    }
    const Line free = room - taken;
    // What is left is for automatic columns; how several share it, or how others are made to fit, depends on
    // their content.
    const bool isKnown =
        automatic == 0 ? std::abs(at(free)) < 0.02 : at(free) >= 0 && (automatic == 1 || isFixed);
    if (!isKnown) return std::nullopt;
    Line before = spacing;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        width = columns[i] ? *columns[i] : 1.0 / static_cast<double>(automatic) * free;
        if (cells[i] == node) return before;
        before = before + width + spacing;
    }
    return std::nullopt;
}

/// The cell that a table makes around `row`, which the stylesheet makes a grid. CSS 2 § 17.2.1.
PageBox PageBoxes::inAnonymousCell(const PageBox& outer, NodeId row, NodeId parent) {
    for (const NodeId child : inFlow(parent))
        if (child != row && styles_.value(child, "display").starts_with("table-"))
            say(parent, wording::noted("%1 is a table of which the row is a cell"));
    const Line spacing = spacingOf(tableOf(parent));
    return {outer.left + spacing, outer.width - 2.0 * spacing};
}

PageBox PageBoxes::inTable(const PageBox& outer, NodeId node, NodeId parent) {
    const std::string display = styles_.value(node, "display");
    if (isIn(display, {"table-row", "table-row-group"})) return outer;
    const Edges edges = edgesOf(node, outer.width);
    Line width;
    const std::optional<Line> before = cellBefore(outer, node, parent, width);
    if (!before) {
        say(node, wording::noted("%1 is in a table whose columns depend on their content"));
        return outer;
    }
    const Line content = width - edges.insideLeft - edges.insideRight;
    const Line start = *before + edges.insideLeft;
    if (styles_.value(parent, "direction") == "rtl")
        return {outer.left + outer.width - *before - edges.insideRight - content, content};
    return {outer.left + start, content};
}

}  // namespace tenter::markup
