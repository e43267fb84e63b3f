#include "markup/page_boxes.h"

#include <algorithm>
#include <cmath>

#include "css/ascii.h"
#include "css/longhands.h"
#include "project/wording.h"

namespace tenter::markup {

namespace {

using css::Line;

Line operator+(const Line& one, const Line& other) {
    return {one.atZero + other.atZero, one.perPx + other.perPx};
}
Line operator-(const Line& one, const Line& other) {
    return {one.atZero - other.atZero, one.perPx - other.perPx};
}
Line operator*(double factor, const Line& line) {
    return {factor * line.atZero, factor * line.perPx};
}

bool isIn(std::string_view word, std::initializer_list<std::string_view> words) {
    return std::ranges::find(words, word) != words.end();
}

std::string tagInWords(const Node& node) {
    const std::string* classes = node.find("class");
    return "<" + node.name + (classes != nullptr ? " class=" + project::inQuotes(*classes) : "") + ">";
}

}  // namespace

void PageBoxes::say(NodeId node, const std::string& what) {
    cautions_.insert("The " + tagInWords(tree_[node]) + " around the row " + what +
                     ". Check the container in the project.");
}

PageBoxes::Context PageBoxes::contextOf(NodeId node) {
    const std::string display = styles_.value(node, "display");
    if (isIn(display, {"grid", "inline-grid"})) return Context::Grid;
    if (!isIn(display, {"flex", "inline-flex"})) return Context::Block;
    return styles_.value(node, "flex-direction").starts_with("column") ? Context::FlexColumn
                                                                       : Context::FlexRow;
}

PageBox PageBoxes::contentBox(const std::vector<NodeId>& chain) {
    PageBox box;
    Context context = Context::Block;
    NodeId parent = noNode;
    for (const NodeId node : chain) {
        const std::string display = styles_.value(node, "display");
        if (display == "contents") continue;
        box = within(box, node, context, parent);
        context = contextOf(node);
        parent = node;
        if (!styles_.value(node, "column-count").empty() && styles_.value(node, "column-count") != "auto")
            say(node, "has columns, so the width that it gives the row is not known");
        const std::string zoom = styles_.value(node, "zoom");
        if (!isIn(zoom, {"", "1", "normal", "100%"}))
            say(node, "has zoom: " + zoom + ", which is not supported");
    }
    return box;
}

css::Line PageBoxes::borderOf(NodeId node, const std::string& side) {
    const std::string style = styles_.value(node, "border-" + side + "-style");
    if (isIn(style, {"", "none", "hidden"})) return {};
    const std::string width = styles_.value(node, "border-" + side + "-width");
    if (width == "thin") return {1, 0};
    if (isIn(width, {"", "medium"})) return {3, 0};
    if (width == "thick") return {5, 0};
    return styles_.lengthOf(node, width, std::nullopt).value_or(Line{});
}

PageBoxes::Edges PageBoxes::edgesOf(NodeId node, const Line& percentage) {
    Edges edges;
    const auto read = [&](const std::string& property) {
        return styles_.length(node, property, percentage, "0").value_or(Line{});
    };
    edges.autoLeft = styles_.value(node, "margin-left") == "auto";
    edges.autoRight = styles_.value(node, "margin-right") == "auto";
    edges.marginLeft = read("margin-left");
    edges.marginRight = read("margin-right");
    edges.insideLeft = read("padding-left") + borderOf(node, "left");
    edges.insideRight = read("padding-right") + borderOf(node, "right");
    return edges;
}

/// The content width that a property gives; empty for keywords.
std::optional<Line> PageBoxes::sizeOf(NodeId node, const std::string& property, const Line& percentage,
                                      const Edges& edges) {
    const std::size_t problems = styles_.problems.size();
    const std::optional<Line> size = styles_.length(node, property, percentage, "auto");
    if (!size) {
        const std::string value = styles_.value(node, property);
        if (styles_.problems.size() > problems)
            say(node, "has " + property + ": " + value + ", which is not supported");
        else if (isIn(value, {"min-content", "max-content"}))
            say(node, "has " + property + ": " + value + ", so its width depends on its content");
        return std::nullopt;
    }
    if (styles_.value(node, "box-sizing") != "border-box") return size;
    return styles_.larger(*size - edges.insideLeft - edges.insideRight, {});
}

Line PageBoxes::limited(NodeId node, Line content, const Line& percentage, const Edges& edges) {
    if (const auto most = sizeOf(node, "max-width", percentage, edges))
        content = styles_.smaller(content, *most);
    if (const auto least = sizeOf(node, "min-width", percentage, edges))
        content = styles_.larger(content, *least);
    return styles_.larger(content, {});
}

/// The content box of a border box in the space of `outer`. Auto margins take what is free, before
/// `alignment` does: 0 at the start, 0.5 in the centre, 1 at the end.
PageBox PageBoxes::placed(const PageBox& outer, NodeId node, Line content, const Edges& edges,
                          double alignment) {
    const Line size = content + edges.insideLeft + edges.insideRight;
    const Line free = outer.width - size - edges.marginLeft - edges.marginRight;
    Line left = outer.left + edges.marginLeft + edges.insideLeft;
    const bool rightToLeft = styles_.value(node, "direction") == "rtl";
    if (edges.autoLeft && edges.autoRight) {
        left = left + 0.5 * styles_.larger(free, {});
    } else if (edges.autoLeft) {
        left = left + styles_.larger(free, {});
    } else if (!edges.autoRight) {
        left = left + (rightToLeft ? 1 - alignment : alignment) * free;
    } else if (rightToLeft) {
        left = left + free - styles_.larger(free, {});
    }
    return {left, content};
}

double PageBoxes::alignmentOf(const std::string& value) const {
    if (value.find("center") != std::string::npos) return 0.5;
    return value.find("end") != std::string::npos ? 1 : 0;
}

PageBox PageBoxes::within(const PageBox& outer, NodeId node, Context context, NodeId parent) {
    const std::string position = styles_.value(node, "position");
    if (isIn(position, {"absolute", "fixed"}))
        say(node, "has position: " + position + ", so its place is not known");
    else if (context == Context::FlexRow)
        return inFlexRow(outer, node, parent);
    else if (context == Context::Grid)
        return inGrid(outer, node, parent);
    const Edges edges = edgesOf(node, outer.width);
    std::optional<Line> content = sizeOf(node, "width", outer.width, edges);
    const std::string display = styles_.value(node, "display");
    const std::string floating = styles_.value(node, "float");
    const bool floats =
        isIn(floating, {"left", "right", "inline-start", "inline-end"}) && context == Context::Block;
    const bool shrinks = floats || display.starts_with("inline") || display.starts_with("table");
    double alignment = 0;
    if (context == Context::FlexColumn) {
        std::string align = styles_.value(node, "align-self");
        if (isIn(align, {"", "auto"})) align = styles_.value(parent, "align-items");
        alignment = alignmentOf(align);
        const bool stretches = isIn(align, {"", "normal", "stretch"}) && !edges.autoLeft && !edges.autoRight;
        if (!content && !stretches) say(node, "is only as wide as its content");
    }
    if (!content && shrinks) say(node, "is only as wide as its content");
    if (!content)
        content = outer.width - edges.marginLeft - edges.marginRight - edges.insideLeft - edges.insideRight;
    content = limited(node, *content, outer.width, edges);
    if (floats) {
        const Line size =
            *content + edges.insideLeft + edges.insideRight + edges.marginLeft + edges.marginRight;
        if (at(outer.width - size) > 0.5 && tree_[node].parent != noNode &&
            tree_.elementChildren(tree_[node].parent).size() > 1)
            say(node, "floats next to other elements, so its place is not known");
        alignment = floating == "right" ? 1 : 0;
    }
    return placed(outer, node, *content, edges, alignment);
}

std::vector<NodeId> PageBoxes::inFlow(NodeId parent) {
    std::vector<NodeId> found;
    for (const NodeId child : tree_.elementChildren(parent)) {
        if (styles_.value(child, "display") == "none") continue;
        if (isIn(styles_.value(child, "position"), {"absolute", "fixed"})) continue;
        found.push_back(child);
    }
    return found;
}

Line PageBoxes::gapOf(NodeId node, const Line& percentage) {
    return styles_.length(node, "column-gap", percentage, "0").value_or(Line{});
}

/// The flex base size with margins. CSS Flexbox 1 § 9.2.
PageBoxes::Item PageBoxes::itemOf(NodeId node, const Line& percentage) {
    const Edges edges = edgesOf(node, percentage);
    Item item;
    const std::string grow = styles_.value(node, "flex-grow");
    css::Problems ignored;
    if (!grow.empty())
        if (const auto value = css::calculate(grow, {}, ignored)) item.grow = value->number;
    std::optional<Line> content;
    if (isIn(styles_.value(node, "flex-basis"), {"", "auto"}))
        content = sizeOf(node, "width", percentage, edges);
    else
        content = sizeOf(node, "flex-basis", percentage, edges);
    item.isKnown = content.has_value();
    item.size = limited(node, content.value_or(Line{}), percentage, edges) + edges.insideLeft +
                edges.insideRight + edges.marginLeft + edges.marginRight;
    return item;
}

PageBox PageBoxes::inFlexRow(const PageBox& outer, NodeId node, NodeId parent) {
    const Edges edges = edgesOf(node, outer.width);
    const Line around = edges.insideLeft + edges.insideRight + edges.marginLeft + edges.marginRight;
    const std::vector<NodeId> children = inFlow(parent);
    const bool wraps = styles_.value(parent, "flex-wrap").starts_with("wrap");
    const Line gap = gapOf(parent, outer.width);
    // The line of the flex container on which the element is. CSS Flexbox 1 § 9.3.
    std::vector<std::pair<NodeId, Item>> line;
    Line taken;
    bool found = false;
    for (const NodeId child : children) {
        const Item item = itemOf(child, outer.width);
        const Line next = taken + item.size + (line.empty() ? Line{} : gap);
        if (wraps && !line.empty() && at(next - outer.width) > 0.02) {
            if (found) break;
            line.clear();
            taken = item.size;
        } else {
            taken = next;
        }
        line.emplace_back(child, item);
        found = found || child == node;
    }
    double grows = 0;
    bool known = true;
    for (const auto& [child, item] : line) {
        grows += item.grow;
        known = known && (item.isKnown || (line.size() == 1 && item.grow > 0));
    }
    const Line free = outer.width - taken;
    if (!known) say(node, "is in a flex container next to elements whose width depends on their content");
    Line before;
    Line content = outer.width - around;
    for (const auto& [child, item] : line) {
        const bool isOwn = child == node;
        Line size = item.size;
        if (grows > 0) size = size + item.grow / std::max(1.0, grows) * free;
        if (isOwn && (known || line.size() > 1)) content = size - around;
        if (isOwn) break;
        before = before + size + gap;
    }
    // One item shrinks to its container; several are assumed to fit.
    if (line.size() == 1) content = styles_.smaller(content, outer.width - around);
    content = limited(node, content, outer.width, edges);
    double alignment = grows > 0 ? 0 : alignmentOf(styles_.value(parent, "justify-content"));
    if (line.size() > 1 && alignment > 0) {
        before = before + alignment * free;
        alignment = 0;
    }
    if (line.size() == 1) return placed(outer, node, content, edges, alignment);
    const bool rightToLeft = styles_.value(parent, "direction") == "rtl";
    if (rightToLeft)
        return {outer.left + outer.width - before - edges.marginRight - edges.insideRight - content, content};
    return {outer.left + before + edges.marginLeft + edges.insideLeft, content};
}

PageBox PageBoxes::inGrid(const PageBox& outer, NodeId node, NodeId parent) {
    const std::string columns = styles_.value(parent, "grid-template-columns");
    PageBox cell = outer;
    if (!isIn(columns, {"", "none", "auto", "1fr", "minmax(0, 1fr)", "minmax(0,1fr)", "100%"}))
        say(node, "is in a grid with columns, so its width is not known");
    const Edges edges = edgesOf(node, cell.width);
    std::optional<Line> content = sizeOf(node, "width", cell.width, edges);
    std::string align = styles_.value(node, "justify-self");
    if (isIn(align, {"", "auto"})) align = styles_.value(parent, "justify-items");
    const bool stretches =
        isIn(align, {"", "normal", "stretch", "legacy"}) && !edges.autoLeft && !edges.autoRight;
    if (!content && !stretches) say(node, "is only as wide as its content");
    if (!content)
        content = cell.width - edges.marginLeft - edges.marginRight - edges.insideLeft - edges.insideRight;
    return placed(cell, node, limited(node, *content, cell.width, edges), edges, alignmentOf(align));
}

}  // namespace tenter::markup
