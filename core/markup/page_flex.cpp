// The widths of flex items around a row. CSS Flexbox 1 § 9.
#include <algorithm>
#include <cmath>
#include <iterator>
#include <tuple>

#include "css/math.h"
#include "markup/page_boxes.h"
#include "markup/page_lines.h"
#include "wording/say.h"

namespace tenter::markup {

using css::Line;

namespace {

/// Lengths in CSS px that differ less than this are the same.
constexpr double sameSize = 0.02;

}  // namespace

double PageBoxes::numberOf(NodeId node, const std::string& property, double usual) {
    css::Problems ignored;
    const std::string text = styles_.value(node, property);
    const auto value = text.empty() ? std::nullopt : css::calculate(text, {}, ignored);
    return value && value->isNumber ? value->number : usual;
}

/// § 9.2. An item whose size depends on its content has the size 0.
PageBoxes::Item PageBoxes::itemOf(NodeId node, const Line& percentage) {
    const Edges edges = edgesOf(node, percentage);
    const bool isAutomatic = isIn(styles_.value(node, "flex-basis"), {"", "auto"});
    const std::optional<Line> content = sizeOf(node, isAutomatic ? "width" : "flex-basis", percentage, edges);
    Item item;
    item.node = node;
    item.grow = numberOf(node, "flex-grow", 0);
    item.shrink = numberOf(node, "flex-shrink", 1);
    item.isKnown = content.has_value();
    item.base = content.value_or(Line{});
    item.size = limited(node, item.base, percentage, edges);
    item.autoLeft = edges.autoLeft;
    item.autoRight = edges.autoRight;
    item.around = edges.insideLeft + edges.insideRight + edges.marginLeft + edges.marginRight;
    return item;
}

/// The items on the line of an item. § 9.3.
std::vector<PageBoxes::Item> PageBoxes::lineOf(const PageBox& outer, NodeId node, NodeId parent) {
    const bool wraps = styles_.value(parent, "flex-wrap").starts_with("wrap");
    const Line gap = gapOf(parent, outer.width);
    std::vector<Item> line;
    Line taken;
    bool found = false;
    for (const NodeId child : inFlow(parent)) {
        const Item item = itemOf(child, outer.width);
        const Line next = taken + item.size + item.around + (line.empty() ? Line{} : gap);
        // The line changes at the width at which the item just fits.
        if (wraps && !line.empty()) std::ignore = styles_.larger(next, outer.width);
        if (wraps && !line.empty() && at(next - outer.width) > sameSize) {
            if (found) break;
            line.clear();
            taken = item.size + item.around;
        } else {
            taken = next;
        }
        line.push_back(item);
        found = found || child == node;
    }
    return line;
}

/// Lets the items of a line grow or shrink into `room`, which is without gaps. § 9.7.
void PageBoxes::resolve(std::vector<Item>& line, const Line& room, const Line& percentage) {
    Line taken;
    for (const Item& item : line)
        taken = taken + item.size + item.around;
    const bool grows = at(room - taken) > 0;
    std::ignore = styles_.larger(taken, room);
    std::vector<bool> isFrozen(line.size());
    for (std::size_t i = 0; i < line.size(); ++i) {
        const double factor = grows ? line[i].grow : line[i].shrink;
        const double beyond = at(line[i].base - line[i].size);
        isFrozen[i] = factor == 0 || (grows ? beyond > sameSize : beyond < -sameSize);
    }
    // Each round freezes an item.
    for (std::size_t round = 0; round <= line.size(); ++round) {
        Line free = room;
        double factors = 0;
        double scaled = 0;
        for (std::size_t i = 0; i < line.size(); ++i) {
            free = free - line[i].around - (isFrozen[i] ? line[i].size : line[i].base);
            if (isFrozen[i]) continue;
            factors += grows ? line[i].grow : line[i].shrink;
            scaled += line[i].shrink * at(line[i].base);
        }
        if (factors == 0) return;
        if (factors < 1) free = factors * free;
        std::vector<double> beyond(line.size());
        double sum = 0;
        for (std::size_t i = 0; i < line.size(); ++i) {
            if (isFrozen[i]) continue;
            Item& item = line[i];
            const double share = grows        ? item.grow / factors
                                 : scaled > 0 ? item.shrink * at(item.base) / scaled
                                              : 0;
            const Line target = item.base + share * free;
            item.size = limited(item.node, target, percentage, edgesOf(item.node, percentage));
            beyond[i] = at(item.size - target);
            sum += beyond[i];
        }
        bool isDone = true;
        for (std::size_t i = 0; i < line.size(); ++i) {
            if (isFrozen[i] || std::abs(beyond[i]) <= sameSize) continue;
            if (std::abs(sum) <= sameSize || (beyond[i] > 0) == (sum > 0)) {
                isFrozen[i] = true;
                isDone = false;
            }
        }
        if (isDone) return;
    }
}

PageBox PageBoxes::inFlexRow(const PageBox& outer, NodeId node, NodeId parent) {
    const Edges edges = edgesOf(node, outer.width);
    const Line around = edges.insideLeft + edges.insideRight + edges.marginLeft + edges.marginRight;
    const Line gap = gapOf(parent, outer.width);
    std::vector<Item> line = lineOf(outer, node, parent);
    const Line room = outer.width - static_cast<double>(line.size() - 1) * gap;
    // An item alone on its line that grows, or is as wide as its content, is assumed to fill it.
    const bool isAlone = line.size() == 1;
    if (!std::ranges::all_of(line,
                             [&](const Item& item) { return item.isKnown || (isAlone && item.grow > 0); }))
        say(node, wording::noted(
                      "%1 is in a flex container next to elements whose width depends on their content"));
    if (isAlone && !line.front().isKnown) {
        line.front().base = line.front().size = limited(node, outer.width - around, outer.width, edges);
    } else {
        // Shares of what is missing are straight lines only if the sizes are in the same ratio at all widths.
        const bool shrinks = at(room) < at(totalOf(line)) - sameSize;
        if (shrinks && !shrinksEvenly(line))
            say(node, wording::noted("%1 is in a flex container that is too narrow for its elements"));
        resolve(line, room, outer.width);
    }
    const Line free = room - totalOf(line);
    const std::string justify = styles_.value(parent, "justify-content");
    const auto own = std::ranges::find(line, node, &Item::node);
    if (isAlone) return placed(outer, node, own->size, edges, alignmentOf(justify));
    const bool reversed = styles_.value(parent, "flex-direction") == "row-reverse";
    const bool fromRight = (styles_.value(parent, "direction") == "rtl") != reversed;
    Line before;
    for (auto item = line.begin(); item != own; ++item)
        before = before + item->size + item->around + gap;
    if (at(free) > 0) before = before + shareBefore(line, own - line.begin(), justify, fromRight) * free;
    if (fromRight)
        return {outer.left + outer.width - before - edges.marginRight - edges.insideRight - own->size,
                own->size};
    return {outer.left + before + edges.marginLeft + edges.insideLeft, own->size};
}

/// The part of the free space of a line that is before an item: automatic margins take it, or alignment
/// distributes it. § 9.5; CSS Box Alignment 3 § 4.3.
double PageBoxes::shareBefore(const std::vector<Item>& line, std::ptrdiff_t index, const std::string& justify,
                              bool fromRight) const {
    double margins = 0;
    double marginsBefore = 0;
    for (std::ptrdiff_t i = 0; i < std::ssize(line); ++i) {
        const Item& item = line[static_cast<std::size_t>(i)];
        const double start = (fromRight ? item.autoRight : item.autoLeft) ? 1 : 0;
        const double end = (fromRight ? item.autoLeft : item.autoRight) ? 1 : 0;
        margins += start + end;
        marginsBefore += (i <= index ? start : 0) + (i < index ? end : 0);
    }
    if (margins > 0) return marginsBefore / margins;
    const auto count = static_cast<double>(line.size());
    const auto before = static_cast<double>(index);
    if (justify == "space-between") return before / (count - 1);
    if (justify == "space-around") return (before + 0.5) / count;
    if (justify == "space-evenly") return (before + 1) / (count + 1);
    return alignmentOf(justify);
}

Line PageBoxes::totalOf(const std::vector<Item>& line) {
    Line total;
    for (const Item& item : line)
        total = total + item.size + item.around;
    return total;
}

/// True if the items that shrink keep the ratio of their base sizes at all widths.
bool PageBoxes::shrinksEvenly(const std::vector<Item>& line) const {
    const Item* first = nullptr;
    for (const Item& item : line) {
        if (item.shrink == 0) continue;
        if (first == nullptr) first = &item;
        const double cross = first->base.atZero * item.base.perPx - first->base.perPx * item.base.atZero;
        if (std::abs(cross) > 1e-6 * std::max(1.0, at(first->base) * at(item.base))) return false;
    }
    return true;
}

}  // namespace tenter::markup
