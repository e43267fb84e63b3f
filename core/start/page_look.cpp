#include "start/page_look.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

#include "markup/browser_sheet.h"
#include "markup/font_measures.h"
#include "markup/matching.h"
#include "markup/page_boxes.h"
#include "project/cascade.h"
#include "start/page_chrome.h"
#include "start/page_piece.h"
#include "start/page_sizes.h"

namespace tenter::start {

namespace {

using css::Line;
using markup::NodeId;
using units::Length;

constexpr std::array<std::string_view, 1> underPointer{"hover"};
/// Intervals that are shorter, in CSS px, are part of a neighbour.
constexpr double shortest = 0.05;

class LookReader {
public:
    LookReader(const markup::GivenRow& row, const std::string& theme, const project::Page& page, double least,
               double most, text::Fonts& fonts)
        : theme_(theme),
          row_(row),
          page_(page),
          least_(least),
          most_(most),
          sheet_(css::readSheet(theme)),
          elements_(row_.tree),
          rules_(elements_, markup::browserSheet(), sheet_),
          notes_(theme),
          fonts_(fonts) {
        css::Styles widest(rules_, most, most, false);
        moveToChrome(row_, widest);
    }

    PageLook read() {
        readPieces();
        PageLook look;
        if (pieces_.empty()) return look;
        const RoleSizes sizes = roleSizes(pieces_);
        makeBands(sizes, look);
        look.notes = notes_.notes();
        look.found = foundElements(row_, rules_, theme_, ends_, least_, [this](css::Styles& styles) {
            styles.fonts = lookup_;
            setContainers(styles, (styles.least() + styles.most()) / 2);
        });
        return look;
    }

private:
    [[nodiscard]] std::vector<double> ends() const {
        std::vector<css::Elements::Element> elements;
        for (NodeId at = 0; at < row_.tree.size(); ++at)
            if (!row_.tree[at].isText()) elements.push_back(at);
        std::vector<double> ends = css::intervalEnds(rules_, elements, least_, most_);
        for (const project::PageRange& range : page_.ranges)
            if (range.upTo && *range.upTo > least_ && *range.upTo < most_) ends.push_back(*range.upTo);
        ends.push_back(most_);
        std::ranges::sort(ends);
        // Between `max-width: 767px` and `min-width: 768px` there is no whole width. Such a gap is part of
        // the interval above.
        std::vector<double> whole;
        double from = least_;
        for (const double end : ends)
            if (std::floor(end) > from || end == most_) {
                whole.push_back(end);
                from = end;
            }
        return whole;
    }

    void readPieces() {
        double from = least_;
        ends_ = ends();
        for (const double end : ends_) {
            read(from, end);
            from = end;
        }
    }

    /// The content box of the container in the range that contains `width`.
    [[nodiscard]] markup::PageBox containerAt(css::Styles& styles, double width, const Line& root) const {
        const project::Container container = page_.at(width).container;
        const auto lineOf = [&](const Length& length) -> Line {
            switch (length.unit()) {
                case units::Unit::Percent:
                case units::Unit::Vw:
                    return {0, length.value() / 100};
                case units::Unit::Rem:
                case units::Unit::Em:
                    return {length.value() * root.atZero, length.value() * root.perPx};
                default:
                    return {length.isKeyword() ? 0 : length.value(), 0};
            }
        };
        Line outer = sum(lineOf(container.width), Line{container.addedWidth, 0});
        if (!container.maxWidth.isNone()) outer = styles.smaller(outer, lineOf(container.maxWidth));
        const Line before = lineOf(container.padding.left.value_or(Length()));
        const Line after = lineOf(container.padding.right.value_or(Length()));
        // Distances are from the container: where it is on the page makes no difference for the row.
        return {before, less(outer, sum(before, after))};
    }

    /// Sets the widths of the elements around the row that container queries refer to.
    void setContainers(css::Styles& styles, double middle) const {
        std::vector<NodeId> chain;
        for (NodeId at = row_.tree[row_.row].parent; at != markup::noNode; at = row_.tree[at].parent)
            chain.insert(chain.begin(), at);
        markup::Cautions cautions;
        const std::vector<markup::SheetPlace> noSheets;
        markup::PageBoxes(row_.tree, styles, middle, cautions, noSheets).contentBox(chain, row_.row);
    }

    /// Reads an interval, in parts where a length changes its slope inside it.
    void read(double from, double upTo) {
        constexpr std::size_t mostPieces = 200;
        double readFrom = from;
        while (upTo - from > shortest && pieces_.size() < mostPieces) {
            const PageNotes before = notes_;
            std::set<double> bends;
            PieceReading piece = readPiece(readFrom, upTo, bends);
            piece.from = from;
            const auto bend = bends.upper_bound(readFrom + 1e-9);
            if (bend == bends.end() || *bend > upTo - shortest) {
                pieces_.push_back(std::move(piece));
                return;
            }
            notes_ = before;
            if (*bend < from + shortest) {
                // Too short for a piece: the lines after the bend are those of the whole.
                readFrom = *bend + 1e-6;
                continue;
            }
            read(from, *bend);
            from = readFrom = *bend;
        }
        if (!pieces_.empty()) pieces_.back().upTo = upTo;
    }

    PieceReading readPiece(double from, double upTo, std::set<double>& bends) {
        css::Styles styles(rules_, from, upTo, false);
        css::Styles hovered(rules_, from, upTo, false, underPointer);
        styles.fonts = hovered.fonts = lookup_;
        PieceContext context{row_, styles, hovered, from, upTo, {16, 0}, {}, notes_, fonts_};
        NodeId root = row_.row;
        while (row_.tree[root].parent != markup::noNode)
            root = row_.tree[root].parent;
        context.root = styles.fontSize(root);
        context.container = containerAt(styles, upTo, context.root);
        for (css::Styles* each : {&styles, &hovered})
            setContainers(*each, (from + upTo) / 2);
        PieceReading piece{from, upTo, {}, {}};
        const markup::PageBox card = readRow(context, piece);
        readCards(context, card, piece);
        bends = styles.bends();
        return piece;
    }

    /// The end of a piece. At the width at which one card more just fits on a line, it is on that line: such
    /// a width is that of the next piece, while the ends of media conditions are in the piece below.
    [[nodiscard]] double endOf(std::size_t piece) const {
        constexpr double below = 0.02;
        const double end = pieces_[piece].upTo;
        const bool isFit = pieces_[piece].settings.row.columns != pieces_[piece + 1].settings.row.columns &&
                           std::ranges::find(ends_, end) == ends_.end();
        return isFit ? end - below : end;
    }

    /// Bands end where settings or ramps change.
    void makeBands(const RoleSizes& sizes, PageLook& look) {
        const auto settingsOf = [&](std::size_t i) {
            project::Settings settings = pieces_[i].settings;
            for (const auto& [role, ramps] : sizes)
                if (i < ramps.size()) settings.text.of(role).size = ramps[i];
            return settings;
        };
        look.style = settingsOf(pieces_.size() - 1);
        for (std::size_t i = 0; i < pieces_.size();) {
            const project::Settings settings = settingsOf(i);
            std::size_t last = i;
            while (last + 1 < pieces_.size() && settingsOf(last + 1) == settings)
                ++last;
            project::Band band;
            if (last + 1 < pieces_.size()) {
                band.upTo = std::round(endOf(last) * 100) / 100;
                band.set = project::difference(look.style, project::merged(look.style, settings));
            }
            look.bands.push_back(std::move(band));
            i = last + 1;
        }
    }

    std::string theme_;
    markup::GivenRow row_;
    const project::Page& page_;
    double least_;
    double most_;
    css::Sheet sheet_;
    markup::TreeElements elements_;
    css::StyleRules rules_;
    PageNotes notes_;
    text::Fonts& fonts_;
    css::FontLookup lookup_ = markup::fontLookup();
    std::vector<double> ends_;  ///< where a media condition or the page changes
    std::vector<PieceReading> pieces_;
};

}  // namespace

PageLook pageLook(const markup::GivenRow& row, const std::string& theme, const project::Page& page,
                  double least, double most, text::Fonts& fonts) {
    return LookReader(row, theme, page, least, most, fonts).read();
}

}  // namespace tenter::start
