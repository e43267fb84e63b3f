// The content boxes of the elements around a row, by viewport width. CSS 2 § 10.3 and § 17.5, CSS Sizing 3,
// CSS Flexbox 1 § 9, CSS Grid 2 § 12.
#pragma once

#include <cstddef>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "css/cascade.h"
#include "markup/tree.h"
#include "wording/say.h"
#include "wording/sentence.h"

namespace tenter::markup {

/// The left edge and the width of a content box in CSS px, by viewport width.
struct PageBox {
    css::Line left;
    css::Line width = {0, 1};
};

/// What could not be read, a sentence each.
using Cautions = std::set<wording::Sentence>;

/// Where the text of a stylesheet starts.
struct SheetPlace {
    std::string file;  ///< empty: pasted text
    std::size_t firstLine = 1;
};

/// Lays out a chain of elements, each inside the one before, in one interval of viewport widths. The sizes of
/// content are not known; where a width depends on them, the element is assumed to fill its containing block,
/// with a sentence in `cautions`.
class PageBoxes {
public:
    /// `middle`: a width inside the interval. `sheets`: where the sources of the page's rules are; fewer if
    /// that is not known.
    PageBoxes(const Tree& tree, css::Styles& styles, double middle, Cautions& cautions,
              const std::vector<SheetPlace>& sheets)
        : tree_(tree), styles_(styles), middle_(middle), cautions_(cautions), sheets_(sheets) {}

    /// The content box of the last element of `chain`, which starts at the root; in a grid, the cell of
    /// `row`, its child, there.
    PageBox contentBox(const std::vector<NodeId>& chain, NodeId row);

    /// The boxes of an element.
    struct Boxes {
        PageBox border;
        PageBox content;
    };
    /// The boxes of the last element of `chain`, each element of which is inside the one before. The first is
    /// a child of `parent`, which has the content box `outer`; without a parent it is in a block container.
    Boxes boxesOf(const PageBox& outer, NodeId parent, const std::vector<NodeId>& chain);
    /// The number of columns of a grid container with that content width; empty if it is not known.
    std::optional<std::size_t> columnsOf(NodeId grid, const css::Line& width);
    /// Sentences are about an element "around the row"; this names other elements and what to do.
    /// `subject` names an element, %1, such as `The %1 around the row`.
    void setSubject(std::string_view subject, std::string_view advice) {
        subject_ = subject;
        advice_ = advice;
    }

private:
    enum class Context { Block, FlexRow, FlexColumn, Grid, Table };
    /// Margins, borders and paddings of an element in CSS px; auto margins are 0.
    struct Edges {
        css::Line marginLeft, marginRight, insideLeft, insideRight;
        bool autoLeft = false;
        bool autoRight = false;
    };
    /// A flex item.
    struct Item {
        NodeId node = noNode;
        css::Line base;    ///< flex base size of its content, CSS px
        css::Line size;    ///< hypothetical size of its content: within its limits
        css::Line around;  ///< paddings, borders and margins
        bool isKnown = true;
        double grow = 0;
        double shrink = 1;
        bool autoLeft = false;
        bool autoRight = false;
    };
    PageBox within(const PageBox& outer, NodeId node, Context context, NodeId parent);
    PageBox inFlexRow(const PageBox& outer, NodeId node, NodeId parent);
    std::vector<Item> lineOf(const PageBox& outer, NodeId node, NodeId parent);
    [[nodiscard]] double shareBefore(const std::vector<Item>& line, std::ptrdiff_t index,
                                     const std::string& justify, bool fromRight) const;
    static css::Line totalOf(const std::vector<Item>& line);
    [[nodiscard]] bool shrinksEvenly(const std::vector<Item>& line) const;
    void resolve(std::vector<Item>& line, const css::Line& room, const css::Line& percentage);
    PageBox inGrid(const PageBox& outer, NodeId node, NodeId parent);
    PageBox inTable(const PageBox& outer, NodeId node, NodeId parent);
    std::optional<css::Line> cellBefore(const PageBox& outer, NodeId node, NodeId parent, css::Line& width);
    PageBox inAnonymousCell(const PageBox& outer, NodeId row, NodeId parent);
    NodeId tableOf(NodeId node);
    css::Line spacingOf(NodeId table);
    std::optional<PageBox> outOfFlow(NodeId node, bool isFixed);
    void move(PageBox& box, const PageBox& outer, NodeId node);
    void noteContaining(NodeId node, const PageBox& box);
    std::optional<css::Line> translationOf(NodeId node, const css::Line& size);
    std::optional<PageBox> cellOf(const PageBox& outer, NodeId node, NodeId parent);
    std::optional<css::Line> besideFloats(NodeId node, const PageBox& outer, const css::Line& content,
                                          const Edges& edges, bool toRight);
    double inLine(NodeId parent);
    [[nodiscard]] bool isAloneInLine(NodeId node, NodeId parent);
    std::optional<css::Line> besideInLine(const PageBox& outer, NodeId node, NodeId parent, double alignment);
    css::Line spaceOf(NodeId parent);
    [[nodiscard]] int repetitionsOf(NodeId grid, const css::Line& whole, const css::Line& least,
                                    bool collapses);
    [[nodiscard]] bool isWider(const css::Line& one, const css::Line& other);
    void addInFlow(NodeId parent, std::vector<NodeId>& found);
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
    [[nodiscard]] double numberOf(NodeId node, const std::string& property, double usual);
    [[nodiscard]] std::vector<NodeId> inFlow(NodeId parent);
    [[nodiscard]] css::Line gapOf(NodeId node, const css::Line& percentage);
    [[nodiscard]] double alignmentOf(const std::string& value) const;
    [[nodiscard]] double at(const css::Line& line) const { return line.atZero + line.perPx * middle_; }
    [[nodiscard]] css::Line lengthOf(NodeId node, const std::string& property, const css::Line& percentage);
    /// Adds the caution `what` about an element, %1, and `declaration`, %2.
    void say(NodeId node, std::string_view what, const wording::Sentence& declaration = {});
    void sayUnsupported(NodeId node, const std::string& property);
    void sayWhatMoves(NodeId node);
    [[nodiscard]] wording::Sentence written(NodeId node, const std::string& property);

    const Tree& tree_;
    css::Styles& styles_;
    double middle_;
    Cautions& cautions_;
    const std::vector<SheetPlace>& sheets_;
    /// The padding box of the nearest element around that positioned elements refer to.
    PageBox containing_;
    std::string_view subject_ = wording::noted("The %1 around the row");
    std::string_view advice_ = wording::noted("Check the container in the project.");
};

}  // namespace tenter::markup
