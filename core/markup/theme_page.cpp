#include "markup/theme_page.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>
#include <set>

#include "css/media.h"
#include "markup/browser_sheet.h"
#include "markup/font_measures.h"
#include "markup/matching.h"
#include "markup/page_boxes.h"
#include "project/rules.h"
#include "project/wording.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::markup {

namespace {

using css::Line;
using units::Length;
using units::Unit;
using wording::Sentence;

constexpr double endless = std::numeric_limits<double>::infinity();
/// Lengths in CSS px, and slopes, that differ less than this are the same.
constexpr double sameLength = 1e-3;
constexpr double sameSlope = 1e-6;

bool isSame(const Line& one, const Line& other) {
    return std::abs(one.atZero - other.atZero) < sameLength && std::abs(one.perPx - other.perPx) < sameSlope;
}

std::vector<NodeId> around(const Tree& tree, NodeId row) {
    std::vector<NodeId> nodes;
    for (NodeId at = tree[row].parent; at != noNode; at = tree[at].parent)
        nodes.push_back(at);
    std::ranges::reverse(nodes);
    return nodes;
}

/// True for a property that can change the width or the horizontal place of what is in the element.
bool changesPlace(std::string_view property) {
    constexpr std::array<std::string_view, 21> parts{
        "margin",    "padding",  "border",     "width", "inline-size", "inset",   "left",
        "right",     "display",  "float",      "flex",  "grid",        "column",  "gap",
        "transform", "position", "box-sizing", "font",  "zoom",        "justify", "align"};
    if (property.find("top") != std::string_view::npos || property.find("bottom") != std::string_view::npos ||
        property.find("color") != std::string_view::npos || property.find("radius") != std::string_view::npos)
        return false;
    return std::ranges::any_of(
        parts, [&](std::string_view part) { return property.find(part) != std::string_view::npos; });
}

class PageReader {
public:
    PageReader(const Tree& tree, NodeId row, const css::Sheet& page, std::vector<SheetPlace> sheets)
        : tree_(tree),
          row_(row),
          chain_(around(tree, row)),
          sheets_(std::move(sheets)),
          elements_(tree),
          rules_(elements_, browserSheet(), page) {
        for (const NodeId node : chain_)
            if (const std::string* direction = tree[node].find("dir")) rightToLeft_ = *direction == "rtl";
        elementsAround_.assign(chain_.begin(), chain_.end());
        // Elements next to the chain can take room in its flex containers.
        for (const NodeId node : chain_)
            for (const NodeId child : tree.elementChildren(node))
                elementsAround_.push_back(child);
    }

    std::vector<PagePiece> pieces(double narrowest, double widest) {
        std::vector<double> ends = css::intervalEnds(rules_, elementsAround_, narrowest, widest);
        breakpoints_ = ends;
        ends.push_back(widest);
        double from = narrowest;
        for (const double end : ends) {
            read(from, end);
            from = end;
        }
        return std::move(pieces_);
    }

    /// Cautions for what applies to the elements around the row at some heights of the window only.
    void sayWhatNeedsHeight() {
        for (const NodeId node : chain_)
            for (const css::Applying& applying : rules_.atRest(node)) {
                if (applying.rule == nullptr || !changesPlace(applying.declaration->property)) continue;
                for (const css::Condition* condition :
                     rules_.sheetOf(applying.origin).conditionsOf(*applying.rule))
                    if (condition->kind == css::ConditionKind::Media && css::dependsOnHeight(condition->text))
                        cautions_.insert(Sentence::of(
                            wording::noted(
                                "The <%1> around the row has %2 under the media condition %3, which "
                                "depends on the height of the window. Check the container in the "
                                "project."),
                            {tree_[node].name, applying.declaration->property,
                             project::inQuotes(condition->text)}));
            }
    }

    [[nodiscard]] const Cautions& cautions() const { return cautions_; }
    [[nodiscard]] bool usesFonts() const { return usesFonts_; }
    [[nodiscard]] const std::vector<double>& breakpoints() const { return breakpoints_; }

private:
    /// Reads an interval, in parts where a length changes its slope inside it.
    void read(double from, double upTo) {
        constexpr double shortest = 0.001;
        constexpr std::size_t most = 400;
        while (upTo - from > shortest && pieces_.size() < most) {
            css::Styles styles(rules_, from, upTo, rightToLeft_);
            styles.fonts = fonts_;
            PagePiece piece{from, upTo, Line{16, 0}, {}, {255, 255, 255, 255}, rightToLeft_};
            Cautions cautions;
            if (!chain_.empty()) piece.root = rootOf(styles, cautions);
            PageBoxes boxes(tree_, styles, (from + upTo) / 2, cautions, sheets_);
            piece.box = boxes.contentBox(chain_, row_);
            for (const NodeId node : chain_)
                if (const auto colour = backgroundOf(styles, node)) piece.background = *colour;
            const auto bend = std::ranges::find_if(styles.bends(), [&](double width) {
                return width > from + shortest && width < upTo - shortest;
            });
            if (bend != styles.bends().end()) {
                // Rounded up to what a project file keeps, so that ends do not pile up.
                const double end = *bend;
                read(from, end);
                from = end;
                continue;
            }
            cautions_.insert(cautions.begin(), cautions.end());
            usesFonts_ = usesFonts_ || styles.usedFonts();
            pieces_.push_back(piece);
            return;
        }
        if (!pieces_.empty()) pieces_.back().upTo = upTo;
    }

    Line rootOf(css::Styles& styles, Cautions& cautions) {
        const Line size = styles.fontSize(chain_.front());
        if (!styles.problems.empty())
            cautions.insert(Sentence::of(
                wording::noted("The root font size of the page is %1, which is not supported. Assumed: "
                               "16\u00A0px. Set it in the project."),
                {styles.value(chain_.front(), "font-size")}));
        return size;
    }

    static std::optional<units::Colour> backgroundOf(css::Styles& styles, NodeId node) {
        const auto colour = units::Colour::parse(styles.value(node, "background-color"));
        return colour && colour->alpha == 255 ? colour : std::nullopt;
    }

    const Tree& tree_;
    NodeId row_;
    std::vector<NodeId> chain_;
    std::vector<SheetPlace> sheets_;
    css::FontLookup fonts_ = fontLookup();
    bool usesFonts_ = false;
    TreeElements elements_;
    css::StyleRules rules_;
    std::vector<css::Elements::Element> elementsAround_;
    bool rightToLeft_ = false;
    std::vector<PagePiece> pieces_;
    std::vector<double> breakpoints_;
    Cautions cautions_;
};

Length inPx(double px) {
    return Length::px(std::abs(px) < 0.005 ? 0 : px);
}

bool isFlat(const Line& line) {
    return std::abs(line.perPx) < sameSlope;
}

/// Puts a box with these left and right edges (distances from those of the page) at the side of the page if
/// it keeps its distance from it; false if it does not.
bool putAtSide(const PagePiece& piece, const Line& left, const Line& right, project::Container& container) {
    const bool isLeft = isFlat(left);
    if (isLeft == isFlat(right)) return false;
    const Line& width = piece.box.width;
    const double near = isLeft ? left.atZero : right.atZero;
    const double beyond = isFlat(width) ? 0 : -width.atZero - near;
    if (near < -0.005 || beyond < -0.005) return false;
    container.place =
        isLeft != piece.rightToLeft ? project::ContainerPlace::Start : project::ContainerPlace::End;
    container.width = isFlat(width) ? inPx(width.atZero + near) : Length::percent(width.perPx * 100);
    (isLeft ? container.padding.left : container.padding.right) = inPx(near);
    if (beyond > 0.005) (isLeft ? container.padding.right : container.padding.left) = inPx(beyond);
    return true;
}

double tidied(double value) {
    return std::round(value * 1e6) / 1e6;
}

/// Shifts a container without paddings from the start of the page to its left edge in `piece`. Where it is
/// wider than a page from right to left, it starts at the right edge, too.
void placeAtStart(const PagePiece& piece, project::Container& container) {
    const Line& left = piece.box.left;
    const Line& width = piece.box.width;
    const Line start = piece.rightToLeft ? Line{-width.atZero, 1 - width.perPx} : Line{};
    container.place = project::ContainerPlace::Start;
    container.shift.percent = tidied((left.perPx - start.perPx) * 100);
    container.shift.px = tidied(left.atZero - start.atZero);
}

/// The container with the content box of `piece`; `exact` becomes false if no container has it.
project::Container containerOf(const PagePiece& piece, bool& exact) {
    project::Container container;
    container.background = piece.background;
    const Line left = piece.box.left;
    const Line width = piece.box.width;
    const Line right{-left.atZero - width.atZero, 1 - left.perPx - width.perPx};
    const bool even = std::abs(left.perPx - right.perPx) < sameSlope;
    if (even && isFlat(width)) {
        const double lead = left.atZero - right.atZero;
        container.width = Length::px(width.atZero + std::abs(lead));
        if (lead > 0.005) container.padding.left = inPx(lead);
        if (lead < -0.005) container.padding.right = inPx(-lead);
        return container;
    }
    if (even && left.atZero > -0.005 && right.atZero > -0.005) {
        container.width = Length::percent(width.perPx * 100);
        if (left.atZero > 0.005) container.padding.left = inPx(left.atZero);
        if (right.atZero > 0.005) container.padding.right = inPx(right.atZero);
        return container;
    }
    if (!even && std::abs(left.atZero) < 0.005 && std::abs(right.atZero) < 0.005 && left.perPx > -sameSlope &&
        right.perPx > -sameSlope) {
        container.padding.left = Length::percent(left.perPx * 100);
        container.padding.right = Length::percent(right.perPx * 100);
        return container;
    }
    if (putAtSide(piece, left, right, container)) return container;
    // Somewhere between: a width and equal paddings, and a shift from the centre.
    Line outer = width;
    const double rems = width.atZero / piece.root.atZero;
    if (!isFlat(piece.root) && piece.root.atZero > 0 && rems > 0 &&
        std::abs(width.perPx - rems * piece.root.perPx) < sameSlope) {
        container.width = Length::rem(rems);
    } else if (isFlat(width)) {
        container.width = inPx(width.atZero);
    } else if (width.perPx > 0 && width.atZero < 0.005) {
        outer.atZero = 0;
        container.width = Length::percent(width.perPx * 100);
        container.padding.left = container.padding.right = inPx(-width.atZero / 2);
    } else if (width.perPx < 0 && width.atZero > 0) {
        outer.perPx = 0;
        container.width = inPx(width.atZero);
        container.padding.left = container.padding.right = Length::percent(-width.perPx * 50);
    } else if (width.perPx > 0) {
        container.width = Length::percent(width.perPx * 100);
        container.addedWidth = tidied(width.atZero);
        placeAtStart(piece, container);
        return container;
    } else {
        exact = false;
        container.width = Length::percent(0);
        return container;
    }
    const double side = (outer.atZero - width.atZero) / 2;
    const double sidePerPx = (outer.perPx - width.perPx) / 2;
    container.shift.percent = tidied((left.perPx - sidePerPx - (1 - outer.perPx) / 2) * 100);
    container.shift.px = tidied(left.atZero - side + outer.atZero / 2);
    return container;
}

/// The container of a piece that grows with the page and of the next one, which does not: a width in percent
/// with a maximum. Empty if the two do not join like that.
std::optional<project::Container> joined(const PagePiece& piece, const PagePiece& next, bool& exact) {
    const Line& width = piece.box.width;
    const Line& left = piece.box.left;
    const double right = -left.atZero - width.atZero;
    const bool even = std::abs(left.perPx - (1 - width.perPx) / 2) < sameSlope;
    if (!even || width.perPx < sameSlope || std::abs(next.box.width.perPx) > sameSlope ||
        piece.background != next.background)
        return std::nullopt;
    const double most = next.box.width.atZero + left.atZero + right;
    const Line nextLeft{-most / 2 + left.atZero, 0.5};
    const bool meets = std::abs(width.perPx * piece.upTo - most) < 0.1;
    if (!meets || !isSame(nextLeft, next.box.left)) return std::nullopt;
    project::Container container = containerOf(piece, exact);
    container.maxWidth = Length::px(most);
    return container;
}

std::string inWords(const Length& length) {
    if (length.unit() == Unit::Px || length.isZero()) return units::px(length.value());
    if (length.unit() == Unit::Percent) return units::percent(length.value() / 100, 2);
    return length.css();
}

}  // namespace

namespace {

units::RootSize rootOf(const Line& line) {
    if (std::abs(line.perPx) < sameSlope) return line.atZero;
    units::RootSize::Calculation calculation;
    calculation.px = line.atZero;
    calculation.vw = line.perPx * 100;
    return units::RootSize::of(calculation);
}

/// What `narrow` changes of `wide`.
project::ContainerChange changed(const project::Container& narrow, const project::Container& wide) {
    project::ContainerChange change;
    if (narrow.width != wide.width) change.width = narrow.width;
    if (narrow.maxWidth != wide.maxWidth) change.maxWidth = narrow.maxWidth;
    if (narrow.addedWidth != wide.addedWidth) change.addedWidth = narrow.addedWidth;
    if (narrow.place != wide.place) change.place = narrow.place;
    if (narrow.shift != wide.shift) change.shift = narrow.shift;
    if (narrow.background != wide.background) change.background = narrow.background;
    for (const auto side : {&project::Sides::left, &project::Sides::right})
        if (narrow.padding.*side != wide.padding.*side)
            change.padding.*side = (narrow.padding.*side).value_or(Length());
    return change;
}

}  // namespace

void ThemePage::into(project::Page& page, bool withContainer) const {
    page.rootSize = rootOf(ranges.back().rootSize);
    if (withContainer) {
        page.container = container();
        page.ranges.clear();
    }
    for (project::PageRange& range : page.ranges)
        range.rootSize.reset();
    if (!withContainer) return;
    for (const ThemeRange& theme : ranges) {
        project::PageRange range;
        const units::RootSize root = rootOf(theme.rootSize);
        if (root != page.rootSize) range.rootSize = root;
        range.container = changed(theme.container, page.container);
        range.upTo = std::round(theme.upTo * 100) / 100;
        if (std::isfinite(theme.upTo)) page.ranges.push_back(std::move(range));
    }
}

std::vector<ThemeRange> rangesOf(const std::vector<PagePiece>& pieces, bool& exact) {
    std::vector<ThemeRange> ranges;
    for (std::size_t i = 0; i < pieces.size();) {
        std::size_t last = i;
        const auto continues = [&](std::size_t next) {
            return next < pieces.size() && isSame(pieces[next].root, pieces[i].root);
        };
        while (continues(last + 1) && isSame(pieces[last + 1].box.left, pieces[i].box.left) &&
               isSame(pieces[last + 1].box.width, pieces[i].box.width) &&
               pieces[last + 1].background == pieces[i].background)
            ++last;
        std::optional<project::Container> container;
        if (continues(last + 1)) {
            PagePiece whole = pieces[i];
            whole.upTo = pieces[last].upTo;
            container = joined(whole, pieces[last + 1], exact);
            if (container) {
                const std::size_t second = ++last;
                while (continues(last + 1) && isSame(pieces[last + 1].box.left, pieces[second].box.left) &&
                       isSame(pieces[last + 1].box.width, pieces[second].box.width) &&
                       pieces[last + 1].background == pieces[second].background)
                    ++last;
            }
        }
        if (!container) container = containerOf(pieces[i], exact);
        ranges.push_back({pieces[last].upTo, pieces[i].root, *container});
        i = last + 1;
    }
    return ranges;
}

Sentence inexactPlace() {
    return Sentence::of(
        wording::noted("The content of an element around the row is wider than this element at some viewport "
                       "widths. Tenter shows the row with less width there."));
}

ThemePage themePage(const Tree& tree, NodeId row, const css::Sheet& sheet, double narrowest, double widest,
                    std::vector<SheetPlace> sheets) {
    ThemePage page;
    PageReader reader(tree, row, sheet, std::move(sheets));
    bool exact = true;
    page.ranges = rangesOf(reader.pieces(narrowest, widest), exact);
    // As many as a project holds; the widest ones, because the narrowest of them reaches down to 0.
    if (page.ranges.size() > project::mostPageRanges)
        page.ranges.erase(page.ranges.begin(),
                          page.ranges.end() - static_cast<std::ptrdiff_t>(project::mostPageRanges));
    if (page.ranges.empty()) page.ranges.push_back({});
    page.ranges.back().upTo = endless;
    reader.sayWhatNeedsHeight();
    page.cautions.assign(reader.cautions().begin(), reader.cautions().end());
    if (!exact) page.cautions.push_back(inexactPlace());
    page.unread = page.cautions;
    if (reader.usesFonts())
        page.notes.push_back(wording::say(
            "The theme has lengths in ch, ex, cap or ic around the row. They depend on the font. "
            "Tenter assumes the fonts of this computer."));
    page.breakpoints = reader.breakpoints();
    return page;
}

double ThemePage::rootSize() const {
    return ranges.back().rootSize.atZero;
}

std::string ThemePage::containerSentence() const {
    const project::Container& wide = container();
    const std::string width = inWords(wide.width);
    std::string facts = wide.width.unit() == Unit::Percent ? wording::say("%1 of the viewport width", {width})
                                                           : wording::say("%1 wide", {width});
    //: A list of facts about the container of a page
    const auto add = [&](const std::string& fact) { facts = wording::say("%1, %2", {facts, fact}); };
    if (!wide.maxWidth.isNone()) add(wording::say("at most %1", {inWords(wide.maxWidth)}));
    if (wide.addedWidth > 0) add(wording::say("and %1", {units::px(wide.addedWidth)}));
    const std::optional<Length>& left = wide.padding.left;
    const std::optional<Length>& right = wide.padding.right;
    if (left && left == right) {
        add(wording::say("padding %1 on each side", {inWords(*left)}));
    } else {
        if (left) add(wording::say("padding %1 on the left", {inWords(*left)}));
        if (right) add(wording::say("padding %1 on the right", {inWords(*right)}));
    }
    if (ranges.size() > 1)
        facts = wording::sayCount("%1; the theme changes it or the root font size at %n viewport width",
                                  "%1; the theme changes it or the root font size at %n viewport widths",
                                  ranges.size() - 1, {facts});
    return cautions.empty() ? wording::say("Container: %1.", {facts})
                            : wording::say("Container (assumed): %1.", {facts});
}

}  // namespace tenter::markup
