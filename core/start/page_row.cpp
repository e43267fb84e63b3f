// The row of a page: its columns, gaps, width and padding, from the boxes of its cards.
#include <algorithm>
#include <cmath>
#include <set>

#include "markup/page_lines.h"
#include "start/page_colours.h"
#include "start/page_piece.h"
#include "wording/say.h"

namespace tenter::start {

namespace {

using css::Line;
using markup::isIn;
using markup::NodeId;
using markup::PageBox;
using units::Length;

constexpr int mostColumns = 12;
/// CSS px by which boxes can be apart and still be in one line.
constexpr double rounding = 0.1;

class RowReader {
public:
    RowReader(const PieceContext& context, PieceReading& reading)
        : context_(context),
          reading_(reading),
          boxes_(context.row.tree, context.styles, context.middle(), cautions_, noSheets_),
          row_(context.row.row) {
        boxes_.setSubject(wording::noted("The %1 of the row"),
                          wording::noted("Check the columns in the project."));
    }

    PageBox read() {
        std::vector<NodeId> chain;
        if (context_.row.classElement != row_) {
            chain.push_back(context_.row.classElement);
            chain.insert(chain.end(), context_.row.wrappers.begin(), context_.row.wrappers.end());
        }
        chain.push_back(row_);
        outer_ = boxes_.boxesOf(context_.container, markup::noNode, chain);
        for (const markup::GivenCard& card : context_.row.cards) {
            std::vector<NodeId> inner = card.wrappers;
            inner.push_back(card.node);
            cards_.push_back(boxes_.boxesOf(outer_.content, row_, inner).border);
        }
        for (const wording::Sentence& caution : cautions_)
            context_.notes.add(caution.worded(), caution.worded());
        if (cards_.empty()) return outer_.content;
        const bool mirrored = context_.styles.value(row_, "direction") == "rtl";
        if (mirrored)
            for (PageBox& card : cards_)
                card.left = less({0, 1}, sum(card.left, card.width));
        const int columns = countColumns();
        reading_.settings.row.columns = columns;
        readWidth(columns, mirrored);
        readGaps(columns);
        readBackground();
        return cards_.front();
    }

private:
    [[nodiscard]] double left(std::size_t card) const { return context_.at(cards_[card].left); }
    [[nodiscard]] double width(std::size_t card) const { return context_.at(cards_[card].width); }

    int countColumns() {
        std::size_t count = 1;
        while (count < cards_.size() && left(count) > left(count - 1) + width(count - 1) - rounding)
            ++count;
        for (std::size_t i = 1; i < cards_.size(); ++i)
            if (!context_.isSame(cards_[i].width, cards_[0].width)) sayUnequal(i);
        if (count > mostColumns) return mostColumns;
        // A line that the cards do not fill.
        if (count == cards_.size() && count > 1) {
            const std::string display = context_.styles.value(row_, "display");
            if (const auto grid = boxes_.columnsOf(row_, outer_.content.width);
                display == "grid" && grid && *grid > count && *grid <= mostColumns)
                return static_cast<int>(*grid);
        }
        return static_cast<int>(count);
    }

    void sayUnequal(std::size_t card) {
        const NodeId node = context_.row.cards[card].node;
        const bool isSpan = !context_.styles.value(node, "grid-column-start").empty();
        context_.notes.add(
            "unequal",
            wording::say("%1: card %2 has another width than the first at some viewport widths. In "
                         "the project all cards of a row are equally wide.",
                         {isSpan ? "grid-column" : "width", std::to_string(card + 1)}));
    }

    [[nodiscard]] std::vector<std::string> writtenOf(const std::vector<NodeId>& nodes,
                                                     std::initializer_list<const char*> properties) const {
        std::vector<std::string> written;
        for (const NodeId node : nodes)
            for (const char* property : properties)
                if (std::string value = context_.styles.value(node, property); !value.empty())
                    written.push_back(std::move(value));
        return written;
    }

    [[nodiscard]] std::vector<NodeId> wrappersAndCard() const {
        std::vector<NodeId> nodes = context_.row.cards.front().wrappers;
        nodes.push_back(context_.row.cards.front().node);
        return nodes;
    }

    /// Width, maximum and padding, so that the columns are where the cards are.
    void readWidth(int columns, bool mirrored) {
        project::RowSettings& row = reading_.settings.row;
        Line content = cards_.front().width;
        gap_ = {};
        if (columns > 1 && cards_.size() > 1) {
            gap_ = less(cards_[1].left, sum(cards_[0].left, cards_[0].width));
            for (int i = 1; i < columns; ++i)
                content = sum(content, sum(gap_, cards_.front().width));
        }
        const Line& whole = context_.container.width;
        const Line start = mirrored
                               ? less(cards_.front().left, less({0, 1}, sum(context_.container.left, whole)))
                               : less(cards_.front().left, context_.container.left);
        const Line end = less(whole, sum(start, content));
        const Line& leftSpace = mirrored ? end : start;
        const Line& rightSpace = mirrored ? start : end;
        const LengthFinder lengths(context_, context_.root, whole);
        const std::vector<std::string> written =
            writtenOf({row_}, {"padding-left", "padding-right", "margin-left", "margin-right"});
        row.width = Length::percent(100);
        row.maxWidth = Length::ofNone();
        if (asWritten(content, leftSpace, rightSpace, lengths)) return;
        // As wide as the container, with padding.
        const auto before = lengths.find(leftSpace, written);
        const auto after = lengths.find(rightSpace, written);
        if (before && after && before->value() >= 0 && after->value() >= 0) {
            setPadding(*before, *after);
            return;
        }
        // A width in the centre.
        const auto wide = lengths.find(content, writtenOf({row_}, {"width", "max-width"}));
        if (wide && context_.isSame(leftSpace, rightSpace)) {
            row.width = *wide;
            setPadding({}, {});
            return;
        }
        // Wider than its content by a padding on one side.
        context_.notes.add(
            "row-width", wording::say("%1, %2: Tenter cannot place the row there at every width. It uses the "
                                      "nearest place.",
                                      {context_.notes.written(context_.styles, row_, "width"),
                                       context_.notes.written(context_.styles, row_, "margin-left")}));
        setPadding(Length::px(std::max(0.0, std::round(context_.at(leftSpace) * 100) / 100)),
                   Length::px(std::max(0.0, std::round(context_.at(rightSpace) * 100) / 100)));
    }

    void setPadding(const Length& before, const Length& after) {
        reading_.settings.row.padding.left = before;
        reading_.settings.row.padding.right = after;
    }

    /// The width, maximum and padding of the element itself, if they put the columns in their place.
    bool asWritten(const Line& content, const Line& leftSpace, const Line& rightSpace,
                   const LengthFinder& lengths) {
        const Line& whole = context_.container.width;
        const bool isBorderBox = context_.styles.value(row_, "box-sizing") == "border-box";
        const auto lengthOf = [&](const char* property) -> std::optional<Length> {
            const auto length = Length::parse(context_.styles.value(row_, property));
            return length && !length->isKeyword() && length->value() >= 0 ? length : std::nullopt;
        };
        const auto most = lengthOf("max-width");
        const auto wide = lengthOf("width");
        if (!most && !wide) return false;
        for (const bool withPadding : {false, true}) {
            project::Sides padding;
            padding.left = padding.right = Length();
            if (withPadding) {
                padding.left = lengthOf("padding-left").value_or(Length());
                padding.right = lengthOf("padding-right").value_or(Length());
            }
            const Line sides = sum(lengths.lineOf(*padding.left), lengths.lineOf(*padding.right));
            Line outer = wide ? lengths.lineOf(*wide) : whole;
            if (most) outer = context_.styles.smaller(outer, lengths.lineOf(*most));
            const Line columns = less(outer, sides);
            const Line free = less(whole, outer);
            const Line before = sum({free.atZero / 2, free.perPx / 2}, lengths.lineOf(*padding.left));
            const bool fits = context_.isSame(columns, content) && context_.isSame(before, leftSpace) &&
                              context_.isSame(less(less(whole, before), columns), rightSpace);
            if (!fits) continue;
            if (wide) reading_.settings.row.width = *wide;
            if (most) reading_.settings.row.maxWidth = *most;
            setPadding(*padding.left, *padding.right);
            return true;
        }
        // The element is as wide as written with its content box; its padding is beside that.
        if (!most || wide || isBorderBox) return false;
        const Line padding = sum(lengthAt(context_, row_, "padding-left", whole),
                                 lengthAt(context_, row_, "padding-right", whole));
        const auto outermost = lengths.find(sum(lengths.lineOf(*most), padding), {});
        const auto before = lengthOf("padding-left").value_or(Length());
        const auto after = lengthOf("padding-right").value_or(Length());
        if (!outermost) return false;
        const Line outer = context_.styles.smaller(whole, lengths.lineOf(*outermost));
        const Line free = less(whole, outer);
        const Line left = sum({free.atZero / 2, free.perPx / 2}, lengths.lineOf(before));
        if (!context_.isSame(less(outer, padding), content) || !context_.isSame(left, leftSpace))
            return false;
        reading_.settings.row.maxWidth = *outermost;
        setPadding(before, after);
        return true;
    }

    /// Margins above and below the cards and the elements around them; without those of blocks, which
    /// collapse.
    [[nodiscard]] Line outside(const char* margin, const char* padding, std::size_t card) const {
        Line all;
        std::vector<NodeId> nodes = context_.row.cards[card].wrappers;
        nodes.push_back(context_.row.cards[card].node);
        for (const NodeId node : nodes) {
            all = sum(all, lengthAt(context_, node, margin, outer_.content.width));
            if (node != nodes.back()) all = sum(all, lengthAt(context_, node, padding, outer_.content.width));
        }
        return all;
    }

    [[nodiscard]] bool isBlock() const {
        const std::string display = context_.styles.value(row_, "display");
        const bool laysOut =
            display.find("grid") != std::string::npos || display.find("flex") != std::string::npos;
        const std::vector<NodeId> nodes = wrappersAndCard();
        const bool floats = !isIn(context_.styles.value(nodes.front(), "float"), {"", "none"});
        return !laysOut && !floats;
    }

    void readGaps(int columns) {
        project::RowSettings& row = reading_.settings.row;
        const LengthFinder lengths(context_, context_.root, outer_.content.width);
        const std::vector<NodeId> nodes = wrappersAndCard();
        std::vector<std::string> written = writtenOf({row_}, {"column-gap"});
        const std::vector<std::string> around =
            writtenOf(nodes, {"padding-left", "padding-right", "margin-left", "margin-right"});
        written.insert(written.end(), around.begin(), around.end());
        if (columns > 1 && cards_.size() > 1) {
            for (std::size_t i = 1;
                 i < std::min<std::size_t>(static_cast<std::size_t>(columns), cards_.size()); ++i)
                if (!context_.isSame(less(cards_[i].left, sum(cards_[i - 1].left, cards_[i - 1].width)),
                                     gap_))
                    context_.notes.add(
                        "gaps", wording::say("The gaps between the cards of the page are not equal. The "
                                             "project has the first."));
            // A percentage is of the content of the row, which is here that of the columns.
            Line content = cards_.front().width;
            for (int i = 1; i < columns; ++i)
                content = sum(content, sum(gap_, cards_.front().width));
            const LengthFinder inRow(context_, context_.root, content);
            // The sum of the paddings on both sides of a gap.
            for (const std::string& text : around)
                if (const auto length = Length::parse(text); length && !length->isKeyword())
                    written.push_back(length->times(2).css());
            row.columnGap = inRow.nearest(gap_, written, row_, "column-gap");
        }
        readVertical(lengths, nodes);
    }

    void readVertical(const LengthFinder& lengths, const std::vector<NodeId>& nodes) {
        project::RowSettings& row = reading_.settings.row;
        const std::string display = context_.styles.value(row_, "display");
        const bool hasGap =
            display.find("grid") != std::string::npos || display.find("flex") != std::string::npos;
        // Rules such as `.card + .card` give the first card other margins than those below it.
        const auto columns = static_cast<std::size_t>(row.columns.value_or(1));
        const std::size_t next = columns < cards_.size() ? columns : 0;
        const Line above = outside("margin-top", "padding-top", 0);
        const Line below = outside("margin-bottom", "padding-bottom", cards_.size() - 1);
        const Line over = outside("margin-bottom", "padding-bottom", 0);
        const Line under = outside("margin-top", "padding-top", next);
        const bool block = isBlock();
        Line between = hasGap ? lengthAt(context_, row_, "row-gap", {}) : Line{};
        between = sum(between, block ? context_.styles.larger(under, over) : sum(under, over));
        std::vector<std::string> written = writtenOf({row_}, {"row-gap"});
        std::vector<std::string> around =
            writtenOf(nodes, {"margin-bottom", "margin-top", "padding-bottom", "padding-top"});
        written.insert(written.end(), around.begin(), around.end());
        around = writtenOf({context_.row.cards[next].node}, {"margin-top"});
        written.insert(written.end(), around.begin(), around.end());
        if (cards_.size() > 1) row.rowGap = lengths.nearest(between, written, row_, "row-gap", false);
        const Line& whole = context_.container.width;
        const LengthFinder inContainer(context_, context_.root, whole);
        const auto side = [&](const char* padding, const char* border, const Line& beyond) {
            const Line own = sum(lengthAt(context_, row_, padding, whole), borderAt(context_, row_, border));
            return inContainer.nearest(sum(own, beyond), writtenOf({row_}, {padding}), row_, padding);
        };
        row.padding.top = side("padding-top", "top", above);
        row.padding.bottom = side("padding-bottom", "bottom", below);
    }

    void readBackground() {
        project::RowSettings& row = reading_.settings.row;
        row.background =
            colourAmong(context_.styles.value(row_, "background-color")).value_or(units::Colour{0, 0, 0, 0});
        for (const char* side : {"top", "right", "bottom", "left"})
            if (!context_.isSame(borderAt(context_, row_, side), {}))
                context_.notes.add(
                    "row-border",
                    wording::say("%1: the row of the page has a border. A project has none; its "
                                 "width is in the padding.",
                                 {"border-" + std::string(side)}));
        const std::string align = context_.styles.value(row_, "justify-content");
        if (align == "center" && reading_.settings.row.columns > 1 &&
            cards_.size() % static_cast<std::size_t>(*reading_.settings.row.columns) != 0 &&
            cards_.size() > static_cast<std::size_t>(*reading_.settings.row.columns))
            row.lastLine = project::LastLine::Center;
        const std::string items = context_.styles.value(row_, "align-items");
        const std::string display = context_.styles.value(row_, "display");
        // Cards that share the lines of the row's grid. CSS Grid 2 § 9.
        const NodeId card = context_.row.cards.front().node;
        const bool isSubgrid =
            display == "grid" && context_.row.cards.front().wrappers.empty() &&
            context_.styles.value(card, "display") == "grid" &&
            context_.styles.value(card, "grid-template-rows").find("subgrid") != std::string::npos;
        row.level = isSubgrid ? project::Level::Subgrid : project::Level::None;
        const bool stretches =
            (display == "grid" || display == "flex") && isIn(items, {"", "normal", "stretch"});
        if (!stretches && *reading_.settings.row.columns > 1)
            context_.notes.add(
                "heights", wording::say("%1: cards of one line have different heights on the page. In the "
                                        "project they are as tall as the tallest.",
                                        {display == "grid" || display == "flex"
                                             ? context_.notes.written(context_.styles, row_, "align-items")
                                             : "display"}));
    }

    const PieceContext& context_;
    PieceReading& reading_;
    markup::Cautions cautions_;
    std::vector<markup::SheetPlace> noSheets_;
    markup::PageBoxes boxes_;
    NodeId row_;
    markup::PageBoxes::Boxes outer_;
    std::vector<PageBox> cards_;
    Line gap_;
};

}  // namespace

PageBox readRow(const PieceContext& context, PieceReading& reading) {
    return RowReader(context, reading).read();
}

}  // namespace tenter::start
