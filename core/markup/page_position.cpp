// Elements around a row that are moved from their places or taken out of the flow. CSS Positioned Layout 3 §
// 3 and § 4; CSS Transforms 2 § 5.
#include "css/ascii.h"
#include "css/longhands.h"
#include "css/math.h"
#include "markup/page_boxes.h"
#include "markup/page_lines.h"

namespace tenter::markup {

using css::Line;

/// The content box of an element with `position: absolute` or `fixed`; empty where it depends on the content
/// or on where the element would be in the flow.
std::optional<PageBox> PageBoxes::outOfFlow(NodeId node, bool isFixed) {
    const PageBox around = isFixed ? PageBox{} : containing_;
    const auto side = [&](const char* name) { return styles_.length(node, name, around.width, "auto"); };
    const std::optional<Line> left = side("left");
    const std::optional<Line> right = side("right");
    Edges edges = edgesOf(node, around.width);
    std::optional<Line> content = sizeOf(node, "width", around.width, edges);
    const Line inside = edges.insideLeft + edges.insideRight;
    if (!left && !right) return std::nullopt;
    if (!content) {
        const bool isByContent =
            isIn(styles_.value(node, "width"), {"min-content", "max-content", "fit-content"});
        if (!left || !right || isByContent) return std::nullopt;
        content = around.width - *left - *right - edges.marginLeft - edges.marginRight - inside;
    }
    content = limited(node, *content, around.width, edges);
    const bool rightToLeft = styles_.value(tree_[node].parent, "direction") == "rtl";
    if (left && right && (edges.autoLeft || edges.autoRight)) {
        const PageBox between{around.left + *left, around.width - *left - *right};
        return placed(between, node, *content, edges, 0);
    }
    if (left && !(right && rightToLeft))
        return PageBox{around.left + *left + edges.marginLeft + edges.insideLeft, *content};
    return PageBox{around.left + around.width - *right - edges.marginRight - edges.insideRight - *content,
                   *content};
}

/// How far `transform` or `translate` moves a border box of this width to the right. Empty for other
/// transforms.
std::optional<Line> PageBoxes::translationOf(NodeId node, const Line& size) {
    Line moved;
    const auto add = [&](const std::string& text) {
        const std::optional<Line> length = styles_.lengthOf(node, text, size);
        if (length) moved = moved + *length;
        return length.has_value();
    };
    const std::string translate = styles_.value(node, "translate");
    if (!isIn(translate, {"", "none"}) && !add(css::valueParts(translate).front())) return std::nullopt;
    const std::string transform = styles_.value(node, "transform");
    if (isIn(transform, {"", "none"})) return moved;
    for (const std::string& function : css::valueParts(transform)) {
        const std::size_t open = function.find('(');
        if (open == std::string::npos) return std::nullopt;
        const std::string name = function.substr(0, open);
        const std::string inside = function.substr(open + 1, function.rfind(')') - open - 1);
        if (name == "translatey" || name == "translatez") continue;
        if (!isIn(name, {"translate", "translatex", "translate3d"})) return std::nullopt;
        if (!add(std::string(css::trimmed(css::listItems(inside).front())))) return std::nullopt;
    }
    return moved;
}

/// Moves the content box of an element that has `position: relative` or is translated. `outer` is the box of
/// its parent.
void PageBoxes::move(PageBox& box, const PageBox& outer, NodeId node) {
    const auto side = [&](const char* name) {
        const std::size_t problems = styles_.problems.size();
        const std::optional<Line> length = styles_.length(node, name, outer.width, "auto");
        if (!length && styles_.problems.size() > problems) sayUnsupported(node, name);
        return length;
    };
    if (styles_.value(node, "position") == "relative") {
        const std::optional<Line> left = side("left");
        const std::optional<Line> right = side("right");
        const bool rightToLeft =
            tree_[node].parent != noNode && styles_.value(tree_[node].parent, "direction") == "rtl";
        if (left && !(right && rightToLeft))
            box.left = box.left + *left;
        else if (right)
            box.left = box.left - *right;
    }
    const Edges edges = edgesOf(node, outer.width);
    const Line size = box.width + edges.insideLeft + edges.insideRight;
    const std::size_t problems = styles_.problems.size();
    if (const std::optional<Line> moved = translationOf(node, size)) {
        box.left = box.left + *moved;
        return;
    }
    styles_.problems.resize(problems);
    for (const char* property : {"transform", "translate"})
        if (!isIn(styles_.value(node, property), {"", "none"})) sayUnsupported(node, property);
}

/// Remembers the padding box of an element for positioned elements in it. CSS Positioned Layout 3 § 2.1.
void PageBoxes::noteContaining(NodeId node, const PageBox& box) {
    bool isContaining = !isIn(styles_.value(node, "position"), {"", "static"});
    for (const char* property :
         {"transform", "translate", "scale", "rotate", "filter", "perspective", "backdrop-filter"})
        isContaining = isContaining || !isIn(styles_.value(node, property), {"", "none"});
    isContaining =
        isContaining || isIn(styles_.value(node, "contain"), {"layout", "paint", "strict", "content"});
    if (!isContaining) return;
    const Line left = lengthOf(node, "padding-left", box.width);
    const Line right = lengthOf(node, "padding-right", box.width);
    containing_ = {box.left - left, box.width + left + right};
}

}  // namespace tenter::markup
