// The style of a text of a page.
#include <algorithm>
#include <charconv>
#include <cmath>
#include <sstream>

#include "css/longhands.h"
#include "start/page_colours.h"
#include "start/page_fonts.h"
#include "start/page_piece.h"
#include "wording/say.h"

namespace tenter::start {

namespace {

using css::Line;
using markup::NodeId;
using project::Length;
using units::Colour;
using units::LineHeight;

std::optional<double> weightIn(const std::string& text) {
    if (text == "bold" || text == "bolder") return 700;
    if (text.empty() || text == "normal") return 400;
    if (text == "lighter") return 300;
    double number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool isWeight =
        error == std::errc() && end == text.data() + text.size() && number >= 1 && number <= 1000;
    return isWeight ? std::optional(number) : std::nullopt;
}

class TextReader {
public:
    TextReader(const PieceContext& context, NodeId node, std::string role, const Line& width)
        : context_(context),
          node_(node),
          role_(std::move(role)),
          size_(context.styles.fontSize(node)),
          lengths_(context, size_, width),
          width_(width) {}

    project::TextStyle read() {
        readType();
        readBox();
        readHover();
        return std::move(style_);
    }

private:
    [[nodiscard]] std::string value(const std::string& property) const {
        return context_.styles.value(node_, property);
    }
    /// Adds the sentence `meaning`, in which %1 is the declaration of the property.
    void note(const std::string& property, std::string_view meaning) const {
        context_.notes.add(
            role_ + property,
            wording::say(meaning, {context_.notes.writtenOf(role_, context_.styles, node_, property)}));
    }

    /// A colour; that of the text for `currentcolor`. What cannot be read is reported.
    std::optional<Colour> colour(css::Styles& styles, const std::string& property) const {
        const std::string text = styles.value(node_, property);
        if (const auto found = colourAmong(text)) return found;
        if (property.starts_with("border") && text.find("currentcolor") != std::string::npos)
            return colour(styles, "color");
        const bool isOther = text.find('(') != std::string::npos;
        if (isOther && text.find("gradient") != std::string::npos)
            note(property, wording::noted("%1 is not a colour. The project has no background there."));
        else if (isOther && text.find("url(") == std::string::npos)
            note(property, wording::noted(
                               "%1 is a colour in a notation that is not supported. Set it in the project."));
        return std::nullopt;
    }

    void readType() {
        style_.colour = colour(context_.styles, "color").value_or(Colour{0, 0, 0, 255});
        style_.family = familiesIn(context_, node_);
        if (const auto weight = weightIn(value("font-weight")))
            style_.weight = *weight;
        else
            note("font-weight", wording::noted("%1 cannot be read."));
        const std::string slant = value("font-style");
        style_.slant = slant.starts_with("italic") || slant.starts_with("oblique") ? project::Slant::Italic
                                                                                   : project::Slant::Normal;
        readLineHeight();
        style_.letterSpacing = spacing("letter-spacing");
        style_.wordSpacing = spacing("word-spacing");
        const std::string letters = value("text-transform");
        style_.letterCase = letters == "uppercase"    ? project::LetterCase::Uppercase
                            : letters == "capitalize" ? project::LetterCase::Capitalize
                                                      : project::LetterCase::None;
        if (letters == "lowercase")
            note("text-transform", wording::noted("%1: a project has no lower case."));
        readAlignment();
        style_.wrap = value("text-wrap").find("balance") != std::string::npos ? project::Wrap::Balance
                                                                              : project::Wrap::Wrap;
        const std::string breaks =
            value("overflow-wrap").empty() ? value("word-wrap") : value("overflow-wrap");
        style_.overflowWrap = breaks == "anywhere"     ? project::OverflowWrap::Anywhere
                              : breaks == "break-word" ? project::OverflowWrap::BreakWord
                                                       : project::OverflowWrap::Normal;
        style_.hyphens = value("hyphens") == "none" ? project::Hyphens::None : project::Hyphens::Manual;
        if (value("hyphens") == "auto")
            note("hyphens", wording::noted("%1: a project hyphenates only at soft hyphens."));
        style_.keepLines = 0;
        style_.follow = project::Follow::Viewport;
    }

    void readAlignment() {
        const std::string align = value("text-align");
        const bool mirrored = value("direction") == "rtl";
        const bool atEnd = align == "end" || align == (mirrored ? "left" : "right");
        style_.align = align.find("center") != std::string::npos ? project::Align::Center
                       : atEnd                                   ? project::Align::End
                                                                 : project::Align::Start;
        if (align == "justify")
            note("text-align",
                 wording::noted("%1: Tenter does not justify text. It aligns the text at the start."));
    }

    Length spacing(const std::string& property) const {
        const std::string text = value(property);
        if (text.empty() || text == "normal") return {};
        // An inherited length was computed where it is set.
        const auto line = context_.styles.length(node_, property, size_, "0");
        return lengths_.nearest(line.value_or(Line{}), {text}, node_, property, false, true);
    }

    void readLineHeight() {
        const std::string text = value("line-height");
        const auto height = context_.styles.lineHeight(node_);
        if (const auto written = LineHeight::parse(text); written && written->isNumber()) {
            style_.lineHeight = *written;
            return;
        }
        if (!height) {
            const double normal = normalLineHeight(context_, node_);
            style_.lineHeight = LineHeight::times(normal);
            return;
        }
        // A multiple of the size of the element itself, or a length.
        const double share = context_.at(*height) / std::max(1.0, context_.at(size_));
        const Line multiple{size_.atZero * share, size_.perPx * share};
        if (const auto written = Length::parse(text); written && text.find('%') == std::string::npos &&
                                                      context_.isSame(lengths_.lineOf(*written), *height)) {
            style_.lineHeight = LineHeight::of(*written);
            return;
        }
        const auto length = lengths_.find(*height, {}, false);
        const bool isNumber = context_.isSame(multiple, *height);
        if (isNumber && (!length || !context_.isSame(size_, Line{context_.at(size_), 0})))
            style_.lineHeight = LineHeight::times(share);
        else
            style_.lineHeight = LineHeight::of(lengths_.nearest(*height, {}, node_, "line-height", false));
    }

    void readBox() {
        // The padding of a box in a line takes no room above and below it.
        const bool isInline = value("display").empty() || value("display") == "inline";
        const bool isEven = hasEvenBorder(context_, node_);
        const auto side = [&](const std::string& name) {
            const std::string property = "padding-" + name;
            Line line = lengthAt(context_, node_, property, width_);
            // A border that other sides do not have is room inside the box.
            if (!isEven) line = sum(line, borderAt(context_, node_, name));
            return lengths_.nearest(line, {value(property)}, node_, property);
        };
        style_.padding = {side("top"), side("right"), side("bottom"), side("left")};
        if (isInline && isInLine() && !(style_.padding.top->isZero() && style_.padding.bottom->isZero())) {
            note("padding-top", wording::noted("%1 of an element in a line takes no room on the page. The "
                                               "project has no padding above and below it."));
            style_.padding.top = style_.padding.bottom = Length();
        }
        style_.background = colour(context_.styles, "background-color").value_or(Colour{0, 0, 0, 0});
        const std::string grow = context_.styles.value(node_, "flex-grow");
        if (!grow.empty() && grow != "0" && !style_.background->isTransparent())
            note("flex-grow", wording::noted("%1: the background fills the free room of the card on the "
                                             "page, in the project only the text."));
        style_.border.width = Length();
        style_.border.colour = Colour{0, 0, 0, 0};
        const Line top = borderAt(context_, node_, "top");
        if (!isEven) {
            note("border-bottom-width",
                 wording::noted(
                     "%1: the borders of the sides differ. Tenter draws no border; its width is in the "
                     "padding."));
        } else if (!context_.isSame(top, {})) {
            style_.border.width =
                lengths_.nearest(top, {value("border-top-width")}, node_, "border-top-width", false);
            style_.border.colour = colour(context_.styles, "border-top-color").value_or(Colour{0, 0, 0, 0});
        }
        style_.radius = radiusAt(context_, node_, lengths_);
    }

    /// True if the element is in a line of a block container.
    [[nodiscard]] bool isInLine() const {
        const std::string around = context_.styles.value(context_.row.tree[node_].parent, "display");
        return around.find("flex") == std::string::npos && around.find("grid") == std::string::npos;
    }

    void readHover() {
        const auto over = [&](const char* property, const std::optional<Colour>& atRest) {
            return colour(context_.hovered, property).value_or(atRest.value_or(Colour{0, 0, 0, 0}));
        };
        style_.hover.colour = over("color", style_.colour);
        style_.hover.background = over("background-color", style_.background);
        style_.hover.borderColour = style_.border.width->isZero()
                                        ? style_.border.colour
                                        : over("border-top-color", style_.border.colour);
        for (const char* property : {"transform", "box-shadow", "text-decoration", "opacity"})
            if (context_.hovered.value(node_, property) != value(property))
                context_.notes.add(
                    role_ + property + "-hover",
                    wording::say("%1 under the pointer is not in the project.",
                                 {context_.notes.writtenOf(role_, context_.hovered, node_, property)}));
    }

    const PieceContext& context_;
    NodeId node_;
    std::string role_;
    Line size_;
    LengthFinder lengths_;
    Line width_;
    project::TextStyle style_;
};

}  // namespace

Length radiusAt(const PieceContext& context, NodeId node, const LengthFinder& lengths) {
    std::string text = context.styles.value(node, "border-top-left-radius");
    std::string property = "border-top-left-radius";
    if (text.empty()) {
        property = "border-radius";
        text = context.styles.value(node, property);
    }
    if (text.empty()) return {};
    const std::vector<std::string> parts = css::valueParts(text);
    const bool isEven =
        std::ranges::all_of(parts, [&](const std::string& part) { return part == parts.front(); });
    if (!isEven)
        context.notes.add(property + std::to_string(node),
                          wording::say("%1: the corners differ. The project has the radius of the first.",
                                       {context.notes.written(context.styles, node, property)}));
    if (parts.front().find('%') != std::string::npos) {
        context.notes.add(property + std::to_string(node),
                          wording::say("%1: Tenter has no percentages for corners. It uses 999\u00A0px.",
                                       {context.notes.written(context.styles, node, property)}));
        return Length::px(999);
    }
    const auto line = context.styles.lengthOf(node, parts.front(), Line{});
    return line ? lengths.nearest(*line, {parts.front()}, node, property, false) : Length();
}

project::TextStyle textStyleAt(const PieceContext& context, NodeId node, const std::string& role,
                               const Line& width) {
    return TextReader(context, node, role, width).read();
}

}  // namespace tenter::start
