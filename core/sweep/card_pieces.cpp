#include "sweep/card_pieces.h"

#include <algorithm>

namespace tenter::sweep {

namespace {

/// The greatest distance from an event at which a layout represents one side of it, CSS px.
constexpr double sideDistance = 1e-6;

/// The heights of a part, and the height of its lines or of its picture. CSS px.
struct MeasuredPart {
    layout::PartHeights heights;
    double inner = 0;
};

/// Measures one card and its parts at one width after the other.
class CardMeter {
public:
    CardMeter(const layout::PreparedRow& row, std::size_t card) : row_(row), card_(card) {
        measured_.resize(row.band(0).cards[card].parts.size());
        heights_.resize(measured_.size());
    }

    /// Goes to viewport width `width` (CSS px).
    void setWidth(double width) {
        interval_ = &row_.at(width);
        frame_ = layout::frameAt(*interval_, width);
        basis_ = layout::snappedBasis(*interval_->band, frame_);
    }
    void measure(std::size_t part, std::uint32_t lines) {
        const layout::BandPlan& band = *interval_->band;
        const layout::CardPlan& card = band.cards[card_];
        MeasuredPart& measured = measured_[part];
        if (!card.parts[part].picture) {
            measured = text(card.parts[part], lines);
        } else if (card.beside != part) {
            measured.heights =
                layout::pictureHeights(band, frame_, card, part, layout::pictureWidth<double>(band, frame_));
            measured.inner = measured.heights.box;
        }
        heights_[part] = measured.heights;
    }
    /// True if the height of a part depends on where its lines break, not only on their number.
    [[nodiscard]] bool needsBreaks(std::size_t band, std::size_t part) const {
        const layout::PartPlan& plan = row_.band(band).cards[card_].parts[part];
        return !plan.picture && plan.paragraph->unlikeStruts();
    }
    /// The measures of the card with its parts as last measured.
    void read(CardMeasures& measures) const {
        const layout::BandPlan& band = *interval_->band;
        layout::CardHeights(*interval_, frame_, band.cards[card_], heights_)
            .contribute(measures.contribution);
        measures.around =
            2 * frame_.cardBorder + (band.bleed ? 0 : frame_.cardPadding.top + frame_.cardPadding.bottom);
        measures.parts.clear();
        for (const MeasuredPart& part : measured_)
            measures.parts.push_back(part.inner);
    }

private:
    [[nodiscard]] MeasuredPart text(const layout::PartPlan& plan, std::uint32_t lines) const {
        const layout::RolePlan& role = interval_->roles[plan.role];
        const text::Paragraph& paragraph = *plan.paragraph;
        const layout::TextInlineSizes<double> across = layout::textEdges<double>(role, frame_);
        const layout::TextHeights down = layout::textHeights(role, across, basis_);
        const double content = std::max(linesHeight(role, paragraph, down, lines), down.minimumHeight);
        const double edges = down.padding.top + down.padding.bottom + 2 * across.border;
        return {{down.margin.top, down.margin.bottom, content + edges,
                 down.minimumHeight == 0 ? 0 : down.minimumHeight + edges},
                down.lineHeight};
    }
    /// Height of all lines. Which of them holds a run of another weight or style depends on the breaks.
    [[nodiscard]] double linesHeight(const layout::RolePlan& role, const text::Paragraph& paragraph,
                                     const layout::TextHeights& down, std::uint32_t lines) const {
        if (!paragraph.unlikeStruts()) return lines * down.lineHeight;
        thread_local std::vector<text::Line> broken;
        broken.clear();
        text::LineQuery query = layout::textInlineSizes<double>(role, paragraph, frame_).query;
        query.heightSize = down.drawnSize;
        query.lineHeight = down.lineHeight;
        text::breakLines(paragraph, query, *role.profile, broken);
        double sum = 0;
        for (const text::Line& line : broken) {
            const text::LineExtent extent =
                text::extentOf(paragraph, line, down.drawnSize, down.lineHeight, *role.profile);
            sum += extent.above + extent.below;
        }
        return sum;
    }

    const layout::PreparedRow& row_;
    std::size_t card_;
    const layout::IntervalPlan* interval_ = nullptr;
    layout::Frame frame_;
    units::LengthBasis basis_;
    std::vector<MeasuredPart> measured_;
    std::vector<layout::PartHeights> heights_;
};

struct Start {
    double width = 0;
    std::size_t band = 0;
};

/// The starts of the pieces of all parts, rising. Starts closer than `leastStep` are one: each part reaches
/// the same event with its own rounding.
std::vector<Start> startsOf(std::span<const PartPieces> parts) {
    std::vector<Start> all;
    for (const PartPieces& part : parts)
        for (const Piece& piece : part.pieces)
            all.push_back({piece.from, piece.band});
    std::sort(all.begin(), all.end(), [](const Start& a, const Start& b) {
        return a.width != b.width ? a.width < b.width : a.band < b.band;
    });
    std::vector<Start> starts;
    for (const Start& start : all) {
        if (starts.empty() || start.width > starts.back().width + leastStep)
            starts.push_back(start);
        else if (start.band != starts.back().band)
            starts.back() = start;
    }
    return starts;
}

}  // namespace

std::vector<CardPiece> cardPieces(const layout::PreparedRow& row, std::size_t card,
                                  std::span<const PartPieces> parts) {
    const std::vector<Start> starts = startsOf(parts);
    const double most = parts.back().pieces.back().to;
    const std::size_t partCount = row.band(0).cards[card].parts.size();
    std::vector<CardPiece> pieces(starts.size());
    std::vector<std::size_t> current(parts.size(), 0);  // index of each part's piece
    CardMeter meter(row, card);
    for (std::size_t i = 0; i < starts.size(); ++i) {
        CardPiece& piece = pieces[i];
        piece.from = starts[i].width;
        piece.to = i + 1 < starts.size() ? starts[i + 1].width : most;
        piece.band = starts[i].band;
        const double inside = std::min(sideDistance, (piece.to - piece.from) / 4);
        // Where only line counts change, the rest is what it was just below.
        std::vector<bool> changed(parts.size(), i == 0);
        bool otherWidth = i == 0;
        for (std::size_t part = 0; part < parts.size(); ++part) {
            const std::vector<Piece>& all = parts[part].pieces;
            std::size_t& at = current[part];
            while (at + 1 < all.size() && all[at].to <= piece.from + leastStep) {
                ++at;
                changed[part] = true;
                otherWidth =
                    otherWidth || all[at].kink || (part < partCount && meter.needsBreaks(piece.band, part));
            }
        }
        if (otherWidth) meter.setWidth(piece.from + inside);
        for (std::size_t part = 0; part < partCount; ++part)
            if (changed[part]) meter.measure(part, parts[part].pieces[current[part]].lines);
        meter.read(piece.start);
        meter.setWidth(piece.to - inside);
        for (std::size_t part = 0; part < partCount; ++part)
            meter.measure(part, parts[part].pieces[current[part]].lines);
        meter.read(piece.end);
    }
    return pieces;
}

}  // namespace tenter::sweep
