#include "markup/page_boxes.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "css/ascii.h"
#include "css/longhands.h"
#include "markup/page_grid.h"
#include "markup/page_lines.h"
#include "project/wording.h"
#include "wording/say.h"

namespace tenter::markup {

namespace {

using css::Line;
using wording::Sentence;

double lineAt(const Line& line, double width) {
    return line.atZero + line.perPx * width;
}

std::string tagInWords(const Node& node) {
    const std::string* classes = node.find("class");
    return "<" + node.name + (classes != nullptr ? " class=" + project::inQuotes(*classes) : "") + ">";
}

}  // namespace

void PageBoxes::say(NodeId node, std::string_view what, const Sentence& declaration) {
    Sentence fact = Sentence::of(what, {Sentence::of(subject_, {tagInWords(tree_[node])}), declaration});
    //: A sentence, and what to do about it
    constexpr std::string_view both = wording::noted("%1. %2");
    cautions_.insert(Sentence::of(both, {std::move(fact), Sentence::of(advice_)}));
}

/// Says of a property with its value where it is set: `max-width: 60vh (look.css:12)`.
wording::Sentence PageBoxes::written(NodeId node, const std::string& property) {
    const std::string value = styles_.value(node, property);
    std::string text = property + ": " + (value.size() > 80 ? value.substr(0, 80) + "…" : value);
    const css::Applying* winner = styles_.winner(node, property);
    if (winner == nullptr || winner->origin == css::Origin::Browser) return text;
    if (winner->rule == nullptr) return Sentence::of(wording::noted("%1 (in its style attribute)"), {text});
    const css::StyleRule& rule = *winner->rule;
    if (rule.source >= sheets_.size())
        return Sentence::of(wording::noted("%1 (line %2 of a style element)"),
                            {text, std::to_string(rule.line)});
    const SheetPlace& sheet = sheets_[rule.source];
    const std::string line = std::to_string(sheet.firstLine + rule.line - 1);
    if (sheet.file.empty())
        return Sentence::of(wording::noted("%1 (line %2 of the pasted text)"), {text, line});
    return Sentence::of(wording::noted("%1 (%2)"), {text, sheet.file + ":" + line});
}

void PageBoxes::sayUnsupported(NodeId node, const std::string& property) {
    say(node, wording::noted("%1 has %2, which is not supported"), written(node, property));
}

/// A length; 0 for keywords, and, with a caution, for what is not read.
Line PageBoxes::lengthOf(NodeId node, const std::string& property, const Line& percentage) {
    const std::size_t problems = styles_.problems.size();
    const std::optional<Line> length = styles_.length(node, property, percentage, "0");
    if (!length && styles_.problems.size() > problems) sayUnsupported(node, property);
    return length.value_or(Line{});
}

/// Properties of an element around the row that move or size it in ways that are not computed.
void PageBoxes::sayWhatMoves(NodeId node) {
    const std::string columns = styles_.value(node, "column-count");
    const std::string columnWidth = styles_.value(node, "column-width");
    if (!isIn(columns, {"", "auto"}) || !isIn(columnWidth, {"", "auto"}))
        say(node, wording::noted("%1 has columns, so the width that it gives the row is not known"));
    if (!isIn(styles_.value(node, "zoom"), {"", "1", "normal", "100%"})) sayUnsupported(node, "zoom");
    if (!isIn(styles_.value(node, "writing-mode"), {"", "horizontal-tb", "lr", "lr-tb", "rl"}))
        sayUnsupported(node, "writing-mode");
    // A scrollbar of the page is known, that of another element is not. CSS Overflow 3 § 3.3.
    const bool isPage = tree_[node].parent == noNode || node == tree_.body();
    if (!isPage && styles_.value(node, "overflow-y") == "scroll")
        say(node, wording::noted("%1 has %2, so a scrollbar can take room from the row"),
            written(node, "overflow-y"));
    for (const char* property : {"scale", "rotate"})
        if (!isIn(styles_.value(node, property), {"", "none"})) sayUnsupported(node, property);
}

PageBoxes::Context PageBoxes::contextOf(NodeId node) {
    const std::string display = styles_.value(node, "display");
    if (isIn(display, {"grid", "inline-grid"})) return Context::Grid;
    if (isIn(display, {"table", "inline-table", "table-row", "table-row-group"})) return Context::Table;
    if (!isIn(display, {"flex", "inline-flex"})) return Context::Block;
    return styles_.value(node, "flex-direction").starts_with("column") ? Context::FlexColumn
                                                                       : Context::FlexRow;
}

PageBox PageBoxes::contentBox(const std::vector<NodeId>& chain, NodeId row) {
    PageBox box;
    Context context = Context::Block;
    NodeId parent = noNode;
    for (const NodeId node : chain) {
        const std::string display = styles_.value(node, "display");
        if (display == "contents") continue;
        const PageBox outer = box;
        box = within(outer, node, context, parent);
        move(box, outer, node);
        context = contextOf(node);
        parent = node;
        sayWhatMoves(node);
        noteContaining(node, box);
        if (isIn(styles_.value(node, "container-type"), {"inline-size", "size"}))
            styles_.setContainer(node, box.width);
    }
    if (parent == noNode) return box;
    if (context == Context::Grid) {
        if (const std::optional<PageBox> cell = cellOf(box, row, parent)) return *cell;
        say(parent, wording::noted("%1 is a grid whose columns depend on their content"));
    }
    const bool wraps = styles_.value(parent, "flex-wrap").starts_with("wrap");
    if (context == Context::FlexRow && !wraps && inFlow(parent).size() > 1)
        say(parent, wording::noted("%1 puts the row beside other elements in a flex container"));
    if (context == Context::Table) return inAnonymousCell(box, row, parent);
    return box;
}

PageBoxes::Boxes PageBoxes::boxesOf(const PageBox& outer, NodeId parent, const std::vector<NodeId>& chain) {
    Boxes boxes{outer, outer};
    Context context = parent == noNode ? Context::Block : contextOf(parent);
    for (const NodeId node : chain) {
        if (styles_.value(node, "display") == "contents") continue;
        Line percentage = boxes.content.width;
        if (context == Context::Grid)
            if (const std::optional<PageBox> cell = cellOf(boxes.content, node, parent))
                percentage = cell->width;
        boxes.content = within(boxes.content, node, context, parent);
        const Edges edges = edgesOf(node, percentage);
        boxes.border = {boxes.content.left - edges.insideLeft,
                        boxes.content.width + edges.insideLeft + edges.insideRight};
        context = contextOf(node);
        parent = node;
        if (isIn(styles_.value(node, "container-type"), {"inline-size", "size"}))
            styles_.setContainer(node, boxes.content.width);
    }
    return boxes;
}

std::optional<std::size_t> PageBoxes::columnsOf(NodeId grid, const Line& width) {
    const std::size_t problems = styles_.problems.size();
    const auto read = gridTemplateOf(
        styles_.value(grid, "grid-template-columns"), styles_.value(grid, "grid-template-areas"), width,
        [&](const std::string& text) { return styles_.lengthOf(grid, text, width); },
        [&](const Line& least, bool collapses) { return repetitionsOf(grid, width, least, collapses); });
    styles_.problems.resize(problems);
    return read ? std::optional(read->tracks.size()) : std::nullopt;
}

/// How many columns of at least `least` fit a grid with the content width `whole`. CSS Grid 2 § 7.2.3.2.
int PageBoxes::repetitionsOf(NodeId grid, const Line& whole, const Line& least, bool collapses) {
    constexpr int most = 200;
    const Line gap = gapOf(grid, whole);
    const double each = at(least + gap);
    const double fitting = each > 0 ? std::floor((at(whole + gap) + 1e-6) / each) : 1;
    const int count = static_cast<int>(std::clamp(fitting, 1.0, static_cast<double>(most)));
    // Where one column more fits, or one less.
    for (const int other : {count, count + 1})
        if (other > 1) std::ignore = styles_.larger(other * (least + gap) - gap, whole);
    const int items = static_cast<int>(std::max<std::size_t>(inFlow(grid).size(), 1));
    return collapses ? std::min(count, items) : count;
}

/// True if `one` is the wider in the middle of the interval; a bend where that changes.
bool PageBoxes::isWider(const Line& one, const Line& other) {
    constexpr double rounding = 0.02;
    std::ignore = styles_.larger(one, other);
    return at(one - other) > rounding;
}

css::Line PageBoxes::borderOf(NodeId node, const std::string& side) {
    const std::string style = styles_.value(node, "border-" + side + "-style");
    if (isIn(style, {"", "none", "hidden"})) return {};
    const std::string width = styles_.value(node, "border-" + side + "-width");
    if (width == "thin") return {1, 0};
    if (isIn(width, {"", "medium"})) return {3, 0};
    if (width == "thick") return {5, 0};
    Line line = lengthOf(node, "border-" + side + "-width", {});
    // Browsers make borders whole px wide, at least 1. CSS Values 4 § 5.4.
    constexpr double mostSteps = 40;
    const double steps = std::abs(line.perPx) * (styles_.most() - styles_.least());
    if (steps > mostSteps) return line;
    if (line.perPx != 0) {
        const auto [least, most] = std::minmax({lineAt(line, styles_.least()), lineAt(line, styles_.most())});
        // `larger` notes the viewport width at which the line reaches each whole px.
        for (int step = static_cast<int>(std::ceil(least)); step <= most; ++step)
            std::ignore = styles_.larger(line, {static_cast<double>(step), 0});
    }
    const double px = at(line);
    return {px > 0 ? std::max(1.0, std::floor(px + 1e-9)) : 0, 0};
}

PageBoxes::Edges PageBoxes::edgesOf(NodeId node, const Line& percentage) {
    Edges edges;
    const auto read = [&](const std::string& property) { return lengthOf(node, property, percentage); };
    edges.autoLeft = styles_.value(node, "margin-left") == "auto";
    edges.autoRight = styles_.value(node, "margin-right") == "auto";
    edges.marginLeft = read("margin-left");
    edges.marginRight = read("margin-right");
    // A calculation below 0 is 0. CSS Values 4 § 10.12.
    edges.insideLeft = styles_.larger(read("padding-left"), {}) + borderOf(node, "left");
    edges.insideRight = styles_.larger(read("padding-right"), {}) + borderOf(node, "right");
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
            sayUnsupported(node, property);
        else if (isIn(value, {"min-content", "max-content", "fit-content"}))
            say(node, wording::noted("%1 has %2, so its width depends on its content"),
                written(node, property));
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
    // CSS 2 § 10.3.3: the direction of the containing block.
    const NodeId around = tree_[node].parent;
    const bool rightToLeft = around != noNode && styles_.value(around, "direction") == "rtl";
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

/// The room that floats before a float take on its line, at its side. Empty if it is not known.
std::optional<Line> PageBoxes::besideFloats(NodeId node, const PageBox& outer, const Line& content,
                                            const Edges& edges, bool toRight) {
    const auto sideOf = [&](NodeId one) {
        const std::string side = styles_.value(one, "float");
        return isIn(side, {"right", "inline-end"}) ? 1 : isIn(side, {"left", "inline-start"}) ? -1 : 0;
    };
    const int side = toRight ? 1 : -1;
    Line taken;
    Line opposite;
    for (const NodeId child : inFlow(tree_[node].parent)) {
        if (child == node) break;
        const int own = sideOf(child);
        const std::string clear = styles_.value(child, "clear");
        if (own == 0) {
            // Floats before a block in the flow can reach past it.
            if (at(taken) > 0.02 || at(opposite) > 0.02) return std::nullopt;
            continue;
        }
        const Edges around = edgesOf(child, outer.width);
        const std::optional<Line> width = sizeOf(child, "width", outer.width, around);
        if (!width) return std::nullopt;
        const Line size = limited(child, *width, outer.width, around) + around.insideLeft +
                          around.insideRight + around.marginLeft + around.marginRight;
        if (!isIn(clear, {"", "none"}) || isWider(taken + opposite + size, outer.width))
            taken = opposite = Line{};
        (own == side ? taken : opposite) = (own == side ? taken : opposite) + size;
    }
    const Line size = content + edges.insideLeft + edges.insideRight + edges.marginLeft + edges.marginRight;
    if (!isIn(styles_.value(node, "clear"), {"", "none"})) return Line{};
    return isWider(taken + opposite + size, outer.width) ? Line{} : taken;
}

/// Where boxes in a line are: 0 at the start, 0.5 in the centre, 1 at the end.
double PageBoxes::inLine(NodeId parent) {
    const std::string align = styles_.value(parent, "text-align");
    const bool rightToLeft = styles_.value(parent, "direction") == "rtl";
    if (align.find("center") != std::string::npos) return 0.5;
    if (isIn(align, {"left", "-webkit-left"})) return rightToLeft ? 1 : 0;
    if (isIn(align, {"right", "-webkit-right"})) return rightToLeft ? 0 : 1;
    return align == "end" ? 1 : 0;
}

/// True if no other content is in lines with the box.
bool PageBoxes::isAloneInLine(NodeId node, NodeId parent) {
    for (NodeId child = tree_[parent].firstChild; child != noNode; child = tree_[child].next) {
        if (child == node) continue;
        const bool isText = tree_[child].isText();
        const std::string display = isText ? "" : styles_.value(child, "display");
        const bool isInline = isText ? !isBlank(tree_[child].text)
                                     : isIn(display, {"", "inline"}) || display.starts_with("inline-");
        if (isInline) return false;
    }
    return true;
}

/// The width of a space between boxes in a line of `parent`.
Line PageBoxes::spaceOf(NodeId parent) {
    const Line size = styles_.fontSize(parent);
    if (at(size) <= 0) return {};
    double advance = css::FontMeasures{}.space;
    if (styles_.fonts)
        if (const auto measures =
                styles_.fonts(styles_.value(parent, "font-family"), styles_.value(parent, "font-weight"),
                              styles_.value(parent, "font-style")))
            advance = measures->space;
    return styles_.larger(
        advance * size + lengthOf(parent, "letter-spacing", {}) + lengthOf(parent, "word-spacing", {}), {});
}

/// The room before a box in a line that the boxes before it and the free room take. Empty if other content is
/// in the line, or if the width of a box is not known. CSS 2 § 9.4.2.
std::optional<Line> PageBoxes::besideInLine(const PageBox& outer, NodeId node, NodeId parent,
                                            double alignment) {
    if (styles_.value(parent, "direction") == "rtl") return std::nullopt;
    Line taken;
    Line before;
    bool isFirst = true;
    bool hasSpace = false;
    bool isPast = false;
    for (NodeId child = tree_[parent].firstChild; child != noNode; child = tree_[child].next) {
        if (tree_[child].isText()) {
            if (!isBlank(tree_[child].text)) return std::nullopt;
            hasSpace = hasSpace || !tree_[child].text.empty();
            continue;
        }
        const std::string display = styles_.value(child, "display");
        if (display == "none" || isIn(styles_.value(child, "position"), {"absolute", "fixed"})) continue;
        if (isIn(display, {"", "inline", "contents"})) return std::nullopt;
        Edges edges = edgesOf(child, outer.width);
        const std::optional<Line> width = sizeOf(child, "width", outer.width, edges);
        const bool isBlock = !display.starts_with("inline");
        if (!isBlock && !width) return std::nullopt;
        const Line space = hasSpace && !isFirst ? spaceOf(parent) : Line{};
        const Line size = isBlock ? Line{}
                                  : limited(child, *width, outer.width, edges) + edges.insideLeft +
                                        edges.insideRight + edges.marginLeft + edges.marginRight;
        // Blocks are on lines of their own.
        const bool breaks = !isFirst && (isBlock || isWider(taken + space + size, outer.width));
        if (breaks && isPast) break;
        taken = isFirst || breaks ? Line{} : taken + space;
        if (child == node) {
            before = taken;
            isPast = true;
        }
        taken = taken + size;
        isFirst = isBlock;
        hasSpace = false;
    }
    return before + alignment * (outer.width - taken);
}

PageBox PageBoxes::within(const PageBox& outer, NodeId node, Context context, NodeId parent) {
    const std::string position = styles_.value(node, "position");
    if (isIn(position, {"absolute", "fixed"})) {
        if (const std::optional<PageBox> box = outOfFlow(node, position == "fixed")) return *box;
        say(node, wording::noted("%1 has %2, so its place is not known"), "position: " + position);
    } else if (context == Context::FlexRow) {
        return inFlexRow(outer, node, parent);
    } else if (context == Context::Grid) {
        return inGrid(outer, node, parent);
    } else if (context == Context::Table) {
        return inTable(outer, node, parent);
    }
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
        if (!content && !stretches) say(node, wording::noted("%1 is only as wide as its content"));
    }
    if (!content && shrinks) say(node, wording::noted("%1 is only as wide as its content"));
    if (!content)
        content = outer.width - edges.marginLeft - edges.marginRight - edges.insideLeft - edges.insideRight;
    content = limited(node, *content, outer.width, edges);
    if (floats) {
        const bool toRight = floating == "right" || floating == "inline-end";
        const std::optional<Line> beside = besideFloats(node, outer, *content, edges, toRight);
        if (!beside) say(node, wording::noted("%1 floats next to other elements, so its place is not known"));
        const Line room = outer.width - beside.value_or(Line{});
        PageBox free{toRight ? outer.left : outer.left + beside.value_or(Line{}), room};
        return placed(free, node, *content, edges, toRight ? 1 : 0);
    }
    if (display.starts_with("inline") && context == Context::Block && parent != noNode) {
        alignment = inLine(parent);
        if (!isAloneInLine(node, parent)) {
            if (const std::optional<Line> beside = besideInLine(outer, node, parent, alignment))
                return {outer.left + *beside + edges.marginLeft + edges.insideLeft, *content};
            say(node, wording::noted("%1 is in a line with other content, so its place is not known"));
        }
    }
    return placed(outer, node, *content, edges, alignment);
}

void PageBoxes::addInFlow(NodeId parent, std::vector<NodeId>& found) {
    for (const NodeId child : tree_.elementChildren(parent)) {
        const std::string display = styles_.value(child, "display");
        if (display == "none" || isIn(styles_.value(child, "position"), {"absolute", "fixed"})) continue;
        if (display == "contents")
            addInFlow(child, found);
        else
            found.push_back(child);
    }
}

std::vector<NodeId> PageBoxes::inFlow(NodeId parent) {
    std::vector<NodeId> found;
    addInFlow(parent, found);
    // CSS Flexbox 1 § 5.4.
    const auto orderOf = [&](NodeId child) {
        css::Problems ignored;
        const std::string order = styles_.value(child, "order");
        const auto value = order.empty() ? std::nullopt : css::calculate(order, {}, ignored);
        return value && value->isNumber ? value->number : 0.0;
    };
    std::ranges::stable_sort(found, {}, orderOf);
    return found;
}

Line PageBoxes::gapOf(NodeId node, const Line& percentage) {
    return lengthOf(node, "column-gap", percentage);
}

/// The cell of a grid item; empty if it is not known.
std::optional<PageBox> PageBoxes::cellOf(const PageBox& outer, NodeId node, NodeId parent) {
    const Line gap = gapOf(parent, outer.width);
    const std::size_t problems = styles_.problems.size();
    const auto grid = gridTemplateOf(
        styles_.value(parent, "grid-template-columns"), styles_.value(parent, "grid-template-areas"),
        outer.width, [&](const std::string& text) { return styles_.lengthOf(parent, text, outer.width); },
        [&](const Line& least, bool collapses) {
            return repetitionsOf(parent, outer.width, least, collapses);
        });
    if (!grid) return std::nullopt;
    styles_.problems.resize(problems);
    const std::size_t count = grid->tracks.size();
    std::vector<bool> isEmpty(count, true);
    std::optional<GridPlace> own;
    std::size_t before = 0;  // items without a place that come before the element
    bool allAutomatic = true;
    bool isPast = false;
    for (const NodeId child : inFlow(parent)) {
        const std::string start = styles_.value(child, "grid-column-start");
        const std::string end = styles_.value(child, "grid-column-end");
        const auto place = gridPlaceOf(start, end, *grid);
        // A line outside the template makes columns that depend on content.
        const bool isPlaced = !(isIn(start, {"", "auto"}) || start.starts_with("span ")) ||
                              !(isIn(end, {"", "auto"}) || end.starts_with("span "));
        if (!place && isPlaced) return std::nullopt;
        if (child == node) {
            own = place;
            isPast = true;
        }
        if (place)
            std::fill(isEmpty.begin() + (place->from - 1), isEmpty.begin() + (place->to - 1), false);
        else if (count > 1)
            isEmpty.assign(count, false);
        allAutomatic = allAutomatic && !place;
        if (!isPast) ++before;
    }
    if (!own) {
        // Items without a place follow each other; every one before must have none, too.
        const std::string span =
            styles_.value(node, "grid-column-start") + styles_.value(node, "grid-column-end");
        if (count > 1 && (!allAutomatic || span.find("span") != std::string::npos)) return std::nullopt;
        const int first = static_cast<int>(before % count) + 1;
        own = GridPlace{first, first + 1};
    }
    const auto columns = gridColumns(*grid, outer.width, gap, isEmpty, styles_);
    if (!columns) return std::nullopt;
    PageBox cell{outer.left, {}};
    for (int i = 0; i < own->to - 1; ++i) {
        const Line& width = (*columns)[static_cast<std::size_t>(i)];
        if (i < own->from - 1)
            cell.left = cell.left + width + gap;
        else
            cell.width = cell.width + width + (i >= own->from ? gap : Line{});
    }
    if (styles_.value(parent, "direction") == "rtl")
        cell.left = 2 * outer.left + outer.width - cell.left - cell.width;
    return cell;
}

PageBox PageBoxes::inGrid(const PageBox& outer, NodeId node, NodeId parent) {
    const std::optional<PageBox> found = cellOf(outer, node, parent);
    if (!found) say(node, wording::noted("%1 is in a grid whose columns depend on their content"));
    const PageBox cell = found.value_or(outer);
    const Edges edges = edgesOf(node, cell.width);
    std::optional<Line> content = sizeOf(node, "width", cell.width, edges);
    std::string align = styles_.value(node, "justify-self");
    if (isIn(align, {"", "auto"})) align = styles_.value(parent, "justify-items");
    const bool stretches =
        isIn(align, {"", "normal", "stretch", "legacy"}) && !edges.autoLeft && !edges.autoRight;
    if (!content && !stretches) say(node, wording::noted("%1 is only as wide as its content"));
    if (!content)
        content = cell.width - edges.marginLeft - edges.marginRight - edges.insideLeft - edges.insideRight;
    return placed(cell, node, limited(node, *content, cell.width, edges), edges, alignmentOf(align));
}

}  // namespace tenter::markup
