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
    Edges edges = edgesOf(node, outer.width);
    std::optional<Line> content = sizeOf(node, "width", outer.width, edges);
    const std::string display = styles_.value(node, "display");
    const std::string floating = styles_.value(node, "float");
    const bool floats =
        isIn(floating, {"left", "right", "inline-start", "inline-end"}) && context == Context::Block;
    const bool shrinks = floats || display.starts_with("inline") || display.starts_with("table");
    // Automatic margins of floats and of boxes in lines are 0. CSS 2 § 10.3.5, § 10.3.9.
    if (floats || (display.starts_with("inline") && context == Context::Block))
        edges.autoLeft = edges.autoRight = false;
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

/// The columns of a grid; empty if a width depends on content. CSS Grid 2 § 7.2, § 12.
std::optional<std::vector<Line>> PageBoxes::columnsOf(NodeId grid, const Line& whole, const Line& gap) {
    struct Track {
        Line least;
        Line most;         ///< the same as `least` for a fixed track
        double share = 0;  ///< of what is left, in fr
        bool grows = false;
    };
    std::vector<Track> tracks;
    const auto lengthIn = [&](const std::string& word) { return styles_.lengthOf(grid, word, whole); };
    const auto shareIn = [](const std::string& word) {
        css::Problems ignored;
        const bool isShare = word.size() > 2 && word.ends_with("fr");
        const auto value =
            isShare ? css::calculate(word.substr(0, word.size() - 2), {}, ignored) : std::nullopt;
        return value && value->isNumber ? value->number : 0.0;
    };
    const auto inside = [](const std::string& word) {
        const std::size_t open = word.find('(');
        return word.substr(open + 1, word.rfind(')') - open - 1);
    };
    const auto add = [&](const std::string& word) {
        Track track;
        if (word.starts_with("[")) return true;
        if (word.starts_with("minmax(")) {
            const std::string both = inside(word);
            const std::size_t comma = both.find(',');
            if (comma == std::string::npos) return false;
            const std::string least(css::trimmed(std::string_view(both).substr(0, comma)));
            const std::string most(css::trimmed(std::string_view(both).substr(comma + 1)));
            const auto from = lengthIn(least);
            if (!from) return false;
            track.least = *from;
            track.share = shareIn(most);
            track.grows = true;
            const auto to = track.share > 0 ? std::optional(whole) : most == "auto" ? whole : lengthIn(most);
            if (!to) return false;
            track.most = *to;
        } else if (const double share = shareIn(word); share > 0) {
            track.share = share;
            track.grows = true;
        } else if (word == "auto") {
            track.most = whole;
            track.grows = true;
        } else if (const auto length = lengthIn(word)) {
            track.least = track.most = *length;
        } else {
            return false;
        }
        tracks.push_back(track);
        return true;
    };
    const std::size_t problems = styles_.problems.size();
    for (const std::string& word : css::valueParts(styles_.value(grid, "grid-template-columns"))) {
        if (word == "none") continue;
        if (!word.starts_with("repeat(")) {
            if (!add(word)) return std::nullopt;
            continue;
        }
        const std::string both = inside(word);
        const std::size_t comma = both.find(',');
        css::Problems ignored;
        const auto count =
            comma == std::string::npos ? std::nullopt : css::calculate(both.substr(0, comma), {}, ignored);
        if (!count || !count->isNumber || count->number < 1 || count->number > 100) return std::nullopt;
        for (int i = 0; i < static_cast<int>(count->number); ++i)
            for (const std::string& one : css::valueParts(std::string_view(both).substr(comma + 1)))
                if (!add(one)) return std::nullopt;
    }
    if (tracks.empty()) return std::vector<Line>{whole};
    Line left = whole - static_cast<double>(tracks.size() - 1) * gap;
    double shares = 0;
    std::size_t growing = 0;
    for (const Track& track : tracks) {
        shares += track.share;
        if (track.share == 0) left = left - track.least;
        growing += track.grows && track.share == 0 ? 1U : 0U;
    }
    // Several tracks that grow share what is left by their content.
    const bool isAuto = shares == 0 && growing > 0;
    if ((isAuto && growing > 1) || (shares > 0 && growing > 0)) return std::nullopt;
    std::vector<Line> columns;
    for (const Track& track : tracks) {
        Line width = track.least;
        if (track.share > 0)
            width =
                styles_.larger(track.least, track.share / std::max(1.0, shares) * styles_.larger(left, {}));
        else if (track.grows)
            width = styles_.larger(track.least,
                                   styles_.smaller(track.most, track.least + styles_.larger(left, {})));
        columns.push_back(width);
    }
    styles_.problems.resize(problems);
    return columns;
}

/// The cell of a grid item; empty if it is not known.
std::optional<PageBox> PageBoxes::cellOf(const PageBox& outer, NodeId node, NodeId parent) {
    const Line gap = gapOf(parent, outer.width);
    const auto columns = columnsOf(parent, outer.width, gap);
    if (!columns) return std::nullopt;
    const auto count = static_cast<int>(columns->size());
    const std::string areas = styles_.value(parent, "grid-template-areas");
    if (count > 1 && !isIn(areas, {"", "none"})) return std::nullopt;
    // Items without a place follow each other; every one before must have none, too.
    const auto placeOf = [&](NodeId child) {
        std::string place = styles_.value(child, "grid-column");
        if (place.empty()) place = styles_.value(child, "grid-column-start");
        return place;
    };
    int first = 0;
    int span = 1;
    const std::string place = placeOf(node);
    if (isIn(place, {"", "auto"})) {
        for (const NodeId child : inFlow(parent)) {
            if (child == node) break;
            if (!isIn(placeOf(child), {"", "auto"}) && count > 1) return std::nullopt;
            ++first;
        }
        first %= count;
    } else {
        const std::vector<std::string> words = css::valueParts(place);
        const auto lineOf = [&](const std::string& word) {
            css::Problems ignored;
            const auto value = css::calculate(word, {}, ignored);
            if (!value || !value->isNumber || value->number == 0) return 0;
            const int line = static_cast<int>(value->number);
            return line > 0 ? line : count + 2 + line;
        };
        const int from = lineOf(words.front());
        int to = from + 1;
        if (words.size() == 3 && words[1] == "/") to = lineOf(words[2]);
        if (words.size() == 4 && words[1] == "/" && words[2] == "span") to = from + lineOf(words[3]);
        if (from < 1 || to <= from || to > count + 1) return std::nullopt;
        first = from - 1;
        span = to - from;
    }
    PageBox cell{outer.left, {}};
    for (int i = 0; i < first + span; ++i) {
        const Line& width = (*columns)[static_cast<std::size_t>(i)];
        if (i < first)
            cell.left = cell.left + width + gap;
        else
            cell.width = cell.width + width + (i > first ? gap : Line{});
    }
    if (styles_.value(parent, "direction") == "rtl")
        cell.left = 2 * outer.left + outer.width - cell.left - cell.width;
    return cell;
}

PageBox PageBoxes::inGrid(const PageBox& outer, NodeId node, NodeId parent) {
    const std::optional<PageBox> found = cellOf(outer, node, parent);
    if (!found) say(node, "is in a grid whose columns depend on their content");
    const PageBox cell = found.value_or(outer);
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
