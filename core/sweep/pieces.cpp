#include "sweep/pieces.h"

#include <algorithm>
#include <limits>

#include "text/linear_lines.h"

namespace tenter::sweep {

namespace {

using units::Linear;

/// Instead of the index of a part: the content box of the card.
constexpr std::size_t ofCard = std::numeric_limits<std::size_t>::max();

class PieceWalk {
public:
    PieceWalk(const layout::LinearSizes& sizes, std::size_t card, std::size_t part, double tightness)
        : sizes_(sizes), row_(sizes.row()), card_(card), part_(part), tightness_(tightness) {}

    PartPieces over(double least, double most) {
        walkIntervals(row_, least, most, [&](std::size_t index, double from, double to) {
            interval_ = index;
            const layout::IntervalPlan& interval = row_.interval(index);
            const layout::BandPlan& band = *interval.band;
            const layout::InlineSizes<Linear>& across = sizes_.at(index, from);
            if (part_ == ofCard) return overCard(across, from, to);
            const layout::CardPlan& card = band.cards[card_];
            if (card.parts[part_].picture) return overPicture(band, card, across, from, to);
            return overText(interval, card.parts[part_], across, from, to);
        });
        return std::move(done_);
    }

private:
    [[nodiscard]] Piece pieceFrom(double from) const {
        Piece piece;
        piece.band = row_.interval(interval_).bandIndex;
        piece.interval = interval_;
        piece.from = from;
        return piece;
    }

    double overCard(const layout::InlineSizes<Linear>& across, double from, double to) {
        Piece piece = pieceFrom(from);
        piece.width = across.cardContent;
        piece.to = stride_.next(from, std::min(piece.width.until, across.basis.rem.until), to);
        done_.pieces.push_back(piece);
        return piece.to;
    }

    double overPicture(const layout::BandPlan& band, const layout::CardPlan& card,
                       const layout::InlineSizes<Linear>& across, double from, double to) {
        Piece piece = pieceFrom(from);
        piece.width = card.beside == part_ ? across.besidePictureWidth : layout::pictureWidth(band, across);
        const double until = std::min({piece.width.until, across.cardContent.until, across.basis.rem.until});
        piece.to = stride_.next(from, until, to);
        done_.pieces.push_back(piece);
        return piece.to;
    }

    double overText(const layout::IntervalPlan& interval, const layout::PartPlan& plan,
                    const layout::InlineSizes<Linear>& across, double from, double to) {
        const text::Paragraph& paragraph = *plan.paragraph;
        const layout::TextInlineSizes<Linear> text =
            layout::textInlineSizes(interval.roles[plan.role], paragraph, across);
        const text::LinearLineQuery& query = text.query;
        const auto clusters = static_cast<std::uint32_t>(paragraph.clusters().size());
        Piece piece = pieceFrom(from);
        piece.width = text.available;
        piece.size = text.basis.em;
        piece.advance = paragraph.ems(0, clusters) * piece.size +
                        paragraph.letters(0, clusters) * text.letterSpacing +
                        paragraph.words(0, clusters) * text.wordSpacing;
        piece.graphemes = paragraph.graphemes(0, clusters);
        const double until =
            std::min({piece.width.until, piece.advance.until, query.size.until, query.available.until,
                      query.letterSpacing.until, query.wordSpacing.until, across.cardContent.until,
                      across.basis.rem.until});
        piece.to = stride_.next(from, until, to);
        breakLines(paragraph, query, piece);
        return piece.to;
    }

    /// Divides `piece`, on which `query` is straight, at the widths at which a line break changes.
    void breakLines(const text::Paragraph& paragraph, const text::LinearLineQuery& query, Piece piece) {
        const double start = piece.from;
        const double to = piece.to;
        bool first = true;
        Stride stride;
        for (double at = start; at < to;) {
            text::LinearLineQuery here = query;
            here.size = straight(query.size, at - start);
            here.available = straight(query.available, at - start);
            here.letterSpacing = straight(query.letterSpacing, at - start);
            here.wordSpacing = straight(query.wordSpacing, at - start);
            text::LinearLineCounter follower(here.available, tightness_);
            if (!paragraph.empty())
                text::Breaker<Linear, text::LinearLineCounter>(paragraph, here, follower).run();
            std::uint32_t lines = follower.lines();
            double until = follower.until();
            if (here.balance && !follower.overflows() && lines > 0)
                lines = row_.profile().balancedLines(paragraph, here, lines, until);
            const double next = stride.next(at, until, to);
            addTight(at, next, follower);
            if (first || lines != piece.lines) {
                if (!first) close(piece, start, at);
                piece.kink = first;
                piece.lines = lines;
                first = false;
            }
            at = next;
        }
        close(piece, start, to);
    }

    /// Adds `piece` up to `to` and continues from there. Its lines start at `start`.
    void close(Piece& piece, double start, double to) {
        Piece done = piece;
        done.to = to;
        done.width = piece.width.from(piece.from - start);
        done.size = piece.size.from(piece.from - start);
        done.advance = piece.advance.from(piece.from - start);
        done_.pieces.push_back(done);
        piece.from = to;
    }

    static Linear straight(const Linear& line, double t) { return {line.at(t), line.slope}; }

    void addTight(double from, double to, const text::LinearLineCounter& follower) {
        if (follower.tightBefore() > 0) addTight({from, std::min(to, from + follower.tightBefore())});
        if (from + follower.tightPast() < to) addTight({from + follower.tightPast(), to});
    }
    void addTight(const Interval& found) {
        std::vector<Interval>& tight = done_.tight;
        if (!tight.empty() && found.from <= tight.back().to + leastStep)
            tight.back().to = std::max(tight.back().to, found.to);
        else
            tight.push_back(found);
    }

    const layout::LinearSizes& sizes_;
    const layout::PreparedRow& row_;
    std::size_t card_;
    std::size_t part_;
    double tightness_;
    std::size_t interval_ = 0;
    PartPieces done_;
    Stride stride_;
};

}  // namespace

PartPieces cardContentPieces(const layout::LinearSizes& sizes, double least, double most) {
    return PieceWalk(sizes, 0, ofCard, text::tightSlack).over(least, most);
}

PartPieces partPieces(const layout::LinearSizes& sizes, project::PartRef place, double least, double most,
                      double tightness) {
    return PieceWalk(sizes, place.card, place.part, tightness).over(least, most);
}

}  // namespace tenter::sweep
