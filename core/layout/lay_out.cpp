#include <algorithm>
#include <cmath>

#include "layout/card_heights.h"
#include "layout/drawn_sizes.h"

namespace tenter::layout {
namespace {

using project::Align;
using project::Place;

/// Lays out one row at one width, in four steps: the frame; the parts of each card, independent of the
/// others; the height of each line of cards; the positions on the page.
class RowLayout {
public:
    /// `drawn`: text is broken on the engine's grid.
    RowLayout(const IntervalPlan& interval, Layout& out, bool drawn)
        : interval_(interval),
          band_(*interval.band),
          roles_(interval.roles),
          out_(out),
          frame_(frameAt(interval, out.width)),
          drawn_(drawn) {
        if (drawn) useDrawnHeights();
    }

    void run() {
        out_.container = frame_.container;
        out_.row = frame_.row;
        for (const CardPlan& card : band_.cards)
            layCard(card);
        double y = frame_.contentY;
        const std::size_t columns = cardsInLine();
        for (std::size_t first = 0; first < out_.cards.size(); first += columns) {
            const std::size_t end = std::min(first + columns, out_.cards.size());
            if (first > 0) y += frame_.rowGap;
            y += band_.levelled ? alignLine(first, end, y) : stretchLine(first, end, y);
        }
        out_.row.height = y - unknownHeight_ + frame_.rowPadding.bottom - out_.row.y;
        out_.container.height = out_.row.bottom() + frame_.containerPadding.bottom;
        out_.pageHeight = out_.container.height;
    }

    /// Lays out one text part alone, in a card at the origin.
    void runSinglePart(const PartPlan& plan) {
        LaidPart part;
        part.role = plan.role;
        layText(plan, part);
        placePart(emptyCard(), part, 0);
        out_.parts.push_back(part);
    }

private:
    /// Number of cards on a full line. A row with a centred last line wraps cards that their padding makes
    /// wider than their column. CSS Flexbox 1 § 9.3.
    [[nodiscard]] std::size_t cardsInLine() const {
        const auto columns = static_cast<std::size_t>(band_.columns);
        const double width = frame_.cardWidth();
        if (!band_.centred || width <= frame_.columnWidth) return columns;
        const double fitting = (frame_.rowContentWidth + frame_.columnGap) / (width + frame_.columnGap);
        return std::max<std::size_t>(1, std::min(columns, static_cast<std::size_t>(std::max(0.0, fitting))));
    }

    [[nodiscard]] LaidCard emptyCard() const {
        LaidCard card;
        card.padding = frame_.cardPadding;
        card.border = frame_.cardBorder;
        card.box.width = frame_.cardWidth();
        return card;
    }

    /// Sizes of a card's parts. Positions follow later.
    void layCard(const CardPlan& card) {
        LaidCard laid = emptyCard();
        laid.firstPart = static_cast<std::uint32_t>(out_.parts.size());
        laid.partCount = static_cast<std::uint32_t>(card.parts.size());
        if (drawn_) {
            const auto index = static_cast<int>(out_.cards.size());
            drawnSizes_ = drawnSizesAt(interval_, out_.width, index % band_.columns);
        }
        for (std::size_t i = 0; i < card.parts.size(); ++i) {
            LaidPart part;
            part.index = i;
            part.picture = card.parts[i].picture;
            part.role = card.parts[i].role;
            if (part.picture)
                layPicture(card, i, part);
            else
                layText(card.parts[i], part);
            out_.parts.push_back(part);
            heights_.push_back(heightsOf(part));
            if (!part.picture) heights_.back().shares = sharesOf(roles_[part.role], part);
        }
        out_.cards.push_back(laid);
    }

    static PartHeights heightsOf(const LaidPart& part) {
        const double minimum = part.minimumHeight == 0 ? 0
                                                       : part.padding.top + part.padding.bottom +
                                                             2 * part.border + part.minimumHeight;
        return {part.margin.top, part.margin.bottom, part.box.height, minimum};
    }

    /// Margins and paddings at top and bottom that are set in percent.
    static double sharesOf(const RolePlan& role, const LaidPart& part) {
        const auto share = [](const units::Length& declared, double length) {
            return declared.unit() == units::Unit::Percent ? length : 0;
        };
        return share(role.margin.top, part.margin.top) + share(role.margin.bottom, part.margin.bottom) +
               share(role.padding.top, part.padding.top) + share(role.padding.bottom, part.padding.bottom);
    }

    void layPicture(const CardPlan& card, std::size_t index, LaidPart& part) {
        if (index == card.beside) {
            part.box.width = frame_.besidePictureWidth;
            return;
        }
        part.margin = pictureMargin<double>(band_, frame_);
        part.box.width = pictureWidth<double>(band_, frame_);
        const double across = drawn_ ? drawnPictureWidth(band_, drawnSizes_) : part.box.width;
        const InlineSizes<double>& sizes = drawn_ ? drawnSizes_ : frame_;
        const PartHeights heights = pictureHeights(band_, sizes, card, index, across);
        part.margin.top = heights.above;
        part.margin.bottom = heights.below;
        part.box.height = heights.box;
    }

    void layText(const PartPlan& plan, LaidPart& part) {
        const RolePlan& role = roles_[plan.role];
        const text::Paragraph& paragraph = *plan.paragraph;
        TextInlineSizes<double> across = textInlineSizes<double>(role, paragraph, frame_);
        if (drawn_) useDrawn(role, paragraph, across);
        const units::LengthBasis& basis = across.basis;
        part.fontSize = basis.em;
        part.glyphSize = std::max(basis.em, role.leastSize);
        // Heights follow the engine's grid; otherwise positions would drift from the browser's card by card.
        const TextHeights down =
            textHeights(role, across, drawn_ ? drawnSizes_.basis : snappedBasis(band_, frame_));
        const units::LengthBasis& snapped = down.basis;
        part.lineHeight = down.lineHeight;
        part.letterSpacing = across.letterSpacing;
        part.wordSpacing = across.wordSpacing;
        part.margin = down.margin;
        part.padding = down.padding;
        part.border = across.border;
        part.paragraph = plan.paragraph.get();
        part.available = across.available;
        part.box.width = across.edges + contentWidth(role, paragraph, across, snapped);

        part.firstLine = static_cast<std::uint32_t>(out_.lines.size());
        scratch().clear();
        across.query.heightSize = down.drawnSize;
        across.query.lineHeight = part.lineHeight;
        text::breakLines(paragraph, across.query, *band_.profile, scratch());
        text::LineExtent extent =
            text::extentOf(paragraph, {}, down.drawnSize, part.lineHeight, *band_.profile);
        for (const text::Line& line : scratch()) {
            if (paragraph.unlikeStruts())
                extent = text::extentOf(paragraph, line, down.drawnSize, part.lineHeight, *band_.profile);
            out_.lines.push_back({line, 0, 0, extent});
            part.slack = std::min(part.slack, line.slack);
            part.box.height += out_.lines.back().extent.above + out_.lines.back().extent.below;
        }
        part.lineCount = static_cast<std::uint32_t>(out_.lines.size()) - part.firstLine;
        part.minimumHeight = down.minimumHeight;
        part.box.height = std::max(part.box.height, part.minimumHeight) + part.padding.top +
                          part.padding.bottom + 2 * part.border;
        part.measure = meanMeasure(paragraph, part);
    }

    /// Replaces paddings and gaps by those on the engine's grid: percentages of other widths.
    void useDrawnHeights() {
        drawnSizes_ = drawnSizesAt(interval_, out_.width, 0);
        const auto use = [](Edges& edges, const Edges& drawn) {
            edges.top = drawn.top;
            edges.bottom = drawn.bottom;
        };
        use(frame_.containerPadding, drawnSizes_.containerPadding);
        use(frame_.rowPadding, drawnSizes_.rowPadding);
        use(frame_.cardPadding, drawnSizes_.cardPadding);
        frame_.rowGap = drawnSizes_.rowGap;
        frame_.row.y = frame_.containerPadding.top;
        frame_.contentY = frame_.row.y + frame_.rowPadding.top;
    }

    /// Replaces the values that text is broken with by those on the engine's grid.
    void useDrawn(const RolePlan& role, const text::Paragraph& paragraph,
                  TextInlineSizes<double>& across) const {
        thread_local text::DrawnPositions positions;
        const DrawnQuery drawn = drawnQuery(role, paragraph, drawnSizes_, positions);
        // On the grid another thing may decide the width of the box.
        if (drawn.fitsLabel != across.fitsLabel || drawn.fitsWord != across.fitsWord)
            across.available = drawn.query.available;
        across.fitsLabel = drawn.fitsLabel;
        across.fitsWord = drawn.fitsWord;
        across.query = drawn.query;
    }

    /// Content width of a part's box. Where the text decides it, it follows from the size that the engine
    /// draws at this width, not from the mean of its truncations.
    [[nodiscard]] double contentWidth(const RolePlan& role, const text::Paragraph& paragraph,
                                      const TextInlineSizes<double>& across,
                                      const units::LengthBasis& snapped) const {
        if (!across.fitsLabel && !across.fitsWord) return across.available;
        text::LineQuery query = labelQuery(role, across.query, snapped);
        query.drawn = nullptr;
        const double size = std::max(snapped.em, role.leastSize);
        if (across.fitsLabel) return text::labelWidth(paragraph, query, size, *band_.profile);
        query.size = band_.profile->drawnSize(size, paragraph.strut().get());
        return text::minContent(paragraph, query);
    }

    /// `query` with letter and word spacing as the engine computes them for a box that shrinks to its label:
    /// for the truncated font size, and truncated too if they follow the viewport.
    [[nodiscard]] text::LineQuery labelQuery(const RolePlan& role, text::LineQuery query,
                                             const units::LengthBasis& snapped) const {
        query.letterSpacing = drawnSpacing(role, role.letterSpacing, snapped);
        query.wordSpacing = drawnSpacing(role, role.wordSpacing, snapped);
        return query;
    }

    /// Mean number of characters on a line of full width: available width divided by the mean advance.
    static double meanMeasure(const text::Paragraph& paragraph, const LaidPart& part) {
        const auto end = static_cast<std::uint32_t>(paragraph.clusters().size());
        const double advance = paragraph.ems(0, end) * part.glyphSize +
                               paragraph.letters(0, end) * part.letterSpacing +
                               paragraph.words(0, end) * part.wordSpacing;
        return advance > 0 ? part.available * paragraph.graphemes(0, end) / advance : 0;
    }

    [[nodiscard]] bool isBeside(std::size_t card, const LaidPart& part) const {
        return band_.cards[card].beside == part.index;
    }
    [[nodiscard]] std::size_t levelOf(std::size_t card, std::size_t part) const {
        return band_.cards[card].parts[part].level;
    }
    LaidPart& part(const LaidCard& card, std::size_t i) { return out_.parts[card.firstPart + i]; }
    /// The heights of card `c` of `out_.cards`.
    [[nodiscard]] CardHeights cardHeights(std::size_t c) const {
        const LaidCard& card = out_.cards[c];
        return {interval_, frame_, band_.cards[c],
                std::span(heights_).subspan(card.firstPart, card.partCount)};
    }

    /// Stretches the cards of one line to the tallest; automatic top margins take the spare height. Returns
    /// the height of the line.
    double stretchLine(std::size_t first, std::size_t end, double y) {
        double tallest = 0;
        for (std::size_t c = first; c < end; ++c) {
            LaidCard& card = out_.cards[c];
            card.box.height = cardHeights(c).own();
            tallest = std::max(tallest, card.box.height);
        }
        for (std::size_t c = first; c < end; ++c) {
            LaidCard& card = out_.cards[c];
            const CardHeights own = cardHeights(c);
            const int autoMargins = own.autoMargins();
            const double spare = autoMargins > 0 ? (tallest - card.box.height) / autoMargins : 0;
            card.box.height = tallest;
            placeCard(c, first, end, y);
            double at = y + card.border + card.padding.top;
            for (std::size_t i = 0; i < card.partCount; ++i) {
                LaidPart& laid = part(card, i);
                if (isBeside(c, laid)) {
                    placeBeside(card, laid);
                    continue;
                }
                laid.autoMargin = own.hasAutoMargin(i) ? spare : 0;
                at += laid.margin.top + laid.autoMargin;
                placePart(card, laid, at);
                at += laid.box.height + laid.margin.bottom;
            }
        }
        return tallest;
    }

    /// Aligns the parts of the cards of one line: each part is in the level that its order gives it. Returns
    /// the height of the line.
    double alignLine(std::size_t first, std::size_t end, double y) {
        const std::size_t levels = band_.levels.count;
        std::vector<double> heights(levels, 0);
        std::vector<double> ofRow(levels, 0);
        std::vector<double> own;
        const auto raise = [&own](std::vector<double>& all) {
            for (std::size_t level = 0; level < all.size(); ++level)
                all[level] = std::max(all[level], own[level]);
        };
        for (std::size_t c = first; c < end; ++c) {
            cardHeights(c).levels(own);
            raise(heights);
            if (band_.profile->addsGapToMinHeight()) cardHeights(c).levelsOfRow(own);
            raise(ofRow);
        }
        double total = 0;
        std::vector<double> starts(levels, 0);
        for (std::size_t level = 0; level < levels; ++level) {
            starts[level] = total;
            total += heights[level];
            unknownHeight_ += heights[level] - ofRow[level];
        }
        for (std::size_t c = first; c < end; ++c) {
            LaidCard& card = out_.cards[c];
            const CardHeights needed = cardHeights(c);
            card.box.height = total;
            placeCard(c, first, end, y);
            for (std::size_t i = 0; i < card.partCount; ++i) {
                LaidPart& laid = part(card, i);
                if (isBeside(c, laid)) {
                    placeBeside(card, laid);
                    continue;
                }
                const std::size_t level = levelOf(c, i);
                double at = y + starts[level] + laid.margin.top;
                if (level == 0) at += card.border + card.padding.top;
                if (needed.hasAutoMargin(i)) laid.autoMargin = heights[level] - needed.inLevel(i);
                placePart(card, laid, at + laid.autoMargin);
            }
        }
        return total;
    }

    void placeCard(std::size_t c, std::size_t first, std::size_t end, double y) {
        LaidCard& card = out_.cards[c];
        const auto column = static_cast<double>(c - first);
        double offset = column * (frame_.columnWidth + frame_.columnGap);
        if (band_.centred) {
            const auto count = static_cast<double>(end - first);
            // Cards that are too wide for the row overflow equally on both sides. CSS Box Alignment 3 § 4.4.
            const double cards = column * frame_.cardWidth() + column * frame_.columnGap;
            offset =
                cards +
                (frame_.rowContentWidth - count * frame_.cardWidth() - (count - 1) * frame_.columnGap) / 2;
        }
        card.box.y = y;
        card.box.x = band_.rightToLeft ? frame_.contentX + frame_.rowContentWidth - offset - card.box.width
                                       : frame_.contentX + offset;
    }

    void placeBeside(const LaidCard& card, LaidPart& laid) const {
        const double inset = card.border + frame_.besideInset;
        laid.box.x = band_.rightToLeft ? card.box.right() - inset - laid.box.width : card.box.x + inset;
        const double top = band_.bleed ? 0 : card.padding.top;
        const double bottom = band_.bleed ? 0 : card.padding.bottom;
        laid.box.y = card.box.y + card.border + top;
        laid.box.height = std::max(0.0, card.box.height - 2 * card.border - top - bottom);
    }

    /// Horizontal position of a part and its lines; `y` is the top of its border box.
    void placePart(const LaidCard& card, LaidPart& laid, double y) {
        laid.box.y = y;
        const double left = card.box.x + card.border + card.padding.left + laid.margin.left;
        const double right = card.box.x + card.border + card.padding.left + frame_.cardContent -
                             laid.margin.right - laid.box.width;
        const Place place = laid.picture ? Place::Stretch : roles_[laid.role].place;
        switch (place) {
            case Place::Center:
                laid.box.x = (left + right) / 2;
                break;
            case Place::End:
                laid.box.x = band_.rightToLeft ? left : right;
                break;
            default:
                laid.box.x = band_.rightToLeft ? right : left;
        }
        if (!laid.picture) placeLines(laid);
    }

    void placeLines(const LaidPart& laid) {
        const RolePlan& role = roles_[laid.role];
        const double contentX = laid.box.x + laid.border + laid.padding.left;
        double top = laid.box.y + laid.border + laid.padding.top;
        for (std::uint32_t i = 0; i < laid.lineCount; ++i) {
            LaidLine& line = out_.lines[laid.firstLine + i];
            // A line that overflows is aligned to the start edge. CSS Text 3 § 6.1.
            const double spare = laid.available - line.line.width;
            double before = 0;
            if (role.align == Align::Center) before = std::max(0.0, spare / 2);
            if (role.align == Align::End) before = std::max(0.0, spare);
            line.x = contentX + (band_.rightToLeft ? spare - before : before);
            line.baseline = top + line.extent.above;
            top += line.extent.above + line.extent.below;
        }
    }

    static std::vector<text::Line>& scratch() {
        thread_local std::vector<text::Line> lines;
        return lines;
    }

    const IntervalPlan& interval_;
    const BandPlan& band_;
    const std::vector<RolePlan>& roles_;
    Layout& out_;
    Frame frame_;
    std::vector<PartHeights> heights_;  // of `out_.parts`
    double unknownHeight_ = 0;          // of the cards, by which the engine makes the row too low
    InlineSizes<double> drawnSizes_;    // of the card that is laid out, if `drawn_`
    bool drawn_;
};

void clear(const PreparedRow& row, double width, Layout& out) {
    out.width = width;
    out.interval = row.intervalAt(width);
    out.band = row.interval(out.interval).bandIndex;
    out.cards.clear();
    out.parts.clear();
    out.lines.clear();
}

}  // namespace

void layOut(const PreparedRow& row, double width, Layout& out) {
    clear(row, width, out);
    RowLayout(row.interval(out.interval), out, false).run();
}

void layOutDrawn(const PreparedRow& row, double width, Layout& out) {
    clear(row, width, out);
    RowLayout(row.interval(out.interval), out, true).run();
}

Layout layOutDrawn(const PreparedRow& row, double width) {
    Layout out;
    layOutDrawn(row, width, out);
    return out;
}

const LaidPart& layOutSingleText(const PreparedRow& row, double width, project::PartRef place, Layout& out) {
    clear(row, width, out);
    const IntervalPlan& interval = row.interval(out.interval);
    RowLayout(interval, out, false).runSinglePart(interval.part(place));
    return out.parts.front();
}

Layout layOut(const PreparedRow& row, double width) {
    Layout out;
    layOut(row, width, out);
    return out;
}

}  // namespace tenter::layout
