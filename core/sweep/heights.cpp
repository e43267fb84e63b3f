#include "sweep/heights.h"

#include <algorithm>
#include <span>

#include "layout/prepared.h"
#include "sweep/card_pieces.h"
#include "sweep/curve_writer.h"

namespace tenter::sweep {

namespace {

/// A height that changes linearly from `start` to `end` while t goes from 0 to 1.
struct LinearHeight {
    double start = 0;
    double end = 0;
    [[nodiscard]] double at(double t) const { return start + (end - start) * t; }
};

/// Adds to `crossings` every t in (0, 1) at which another of `heights` becomes the tallest.
void addCrossings(const std::vector<LinearHeight>& heights, std::vector<double>& crossings) {
    const auto rise = [](const LinearHeight& height) { return height.end - height.start; };
    const LinearHeight* tallest =
        &*std::max_element(heights.begin(), heights.end(), [&](const LinearHeight& a, const LinearHeight& b) {
            return a.start != b.start ? a.start < b.start : rise(a) < rise(b);
        });
    while (true) {
        const LinearHeight* next = nullptr;
        double nearest = 1;
        for (const LinearHeight& height : heights) {
            const double gain = rise(height) - rise(*tallest);
            if (gain <= 0) continue;
            const double t = (tallest->start - height.start) / gain;
            if (t >= nearest) continue;
            nearest = t;
            next = &height;
        }
        if (next == nullptr) return;
        crossings.push_back(nearest);
        tallest = next;
    }
}

/// Combines the heights that the cards of one line need in one band.
class LineOfCards {
public:
    LineOfCards(const layout::PreparedRow& row, std::size_t band, std::size_t first,
                std::span<const std::vector<CardPiece>> cards, Curves& curves,
                const std::vector<std::size_t>& firstParts)
        : plan_(row.band(band)), first_(first), cards_(cards), curves_(curves), firstParts_(firstParts) {
        for (const std::vector<CardPiece>& pieces : cards) {
            std::size_t at = 0;
            while (at < pieces.size() && pieces[at].band != band)
                ++at;
            at_.push_back(at);
        }
        band_ = band;
    }

    void run() {
        if (at_.front() >= cards_.front().size()) return;
        double from = piece(0).from;
        while (true) {
            double to = piece(0).to;
            for (std::size_t c = 0; c < cards_.size(); ++c)
                to = std::min(to, piece(c).to);
            if (to > from) between(from, to);
            from = to;
            bool more = true;
            for (std::size_t c = 0; c < cards_.size(); ++c)
                while (more && piece(c).to <= from + leastStep) {
                    const std::size_t next = at_[c] + 1;
                    more = next < cards_[c].size() && cards_[c][next].band == band_;
                    if (more) at_[c] = next;
                }
            if (!more) return;
        }
    }

private:
    [[nodiscard]] const CardPiece& piece(std::size_t c) const { return cards_[c][at_[c]]; }

    /// How `figure` of a card's measures changes between two widths within its piece.
    template <class Figure>
    [[nodiscard]] LinearHeight heightOf(std::size_t c, double from, double to, Figure&& figure) const {
        const CardPiece& all = piece(c);
        const LinearHeight whole{figure(all.start), figure(all.end)};
        const double length = all.to - all.from;
        return {whole.at((from - all.from) / length), whole.at((to - all.from) / length)};
    }

    void between(double from, double to) {
        const std::size_t levels = piece(0).start.contribution.levels.size();
        crossings_.assign({0, 1});
        levels_.resize(levels);
        for (std::size_t level = 0; level < levels; ++level) {
            levels_[level].clear();
            for (std::size_t c = 0; c < cards_.size(); ++c)
                levels_[level].push_back(heightOf(c, from, to, [&](const CardMeasures& measures) {
                    return measures.contribution.levels[level];
                }));
            if (cards_.size() > 1) addCrossings(levels_[level], crossings_);
        }
        std::sort(crossings_.begin(), crossings_.end());
        heights_.resize(levels);
        for (const double t : crossings_) {
            double total = 0;
            for (std::size_t level = 0; level < levels; ++level) {
                heights_[level] = 0;
                for (const LinearHeight& each : levels_[level])
                    heights_[level] = std::max(heights_[level], each.at(t));
                total += heights_[level];
            }
            for (std::size_t c = 0; c < cards_.size(); ++c)
                addAt(c, from, to, t, total);
        }
    }

    void addAt(std::size_t c, double from, double to, double t, double total) {
        const double width = t == 1 ? to : from + (to - from) * t;
        const std::size_t card = first_ + c;
        add(curves_.cards[card].height, width, total);
        const layout::CardContribution& contribution = piece(c).start.contribution;
        double spare = 0;
        if (contribution.autoMarginLevel >= 0) {
            const LinearHeight needs = heightOf(c, from, to, [](const CardMeasures& measures) {
                return measures.contribution.autoMarginHeight;
            });
            spare = (heights_[static_cast<std::size_t>(contribution.autoMarginLevel)] - needs.at(t)) /
                    contribution.autoMarginParts;
        }
        add(curves_.cards[card].spare, width, spare);
        const std::optional<std::size_t> beside = plan_.cards[card].beside;
        if (!beside) return;
        const LinearHeight around =
            heightOf(c, from, to, [](const CardMeasures& measures) { return measures.around; });
        add(curves_.parts[firstParts_[card] + *beside].slotHeight, width, total - around.at(t));
    }

    const layout::BandPlan& plan_;
    std::size_t band_ = 0;
    std::size_t first_;
    std::span<const std::vector<CardPiece>> cards_;
    Curves& curves_;
    const std::vector<std::size_t>& firstParts_;
    std::vector<std::size_t> at_;  // index of each card's piece
    std::vector<double> crossings_, heights_;
    std::vector<std::vector<LinearHeight>> levels_;
};

/// Adds the heights of parts that do not depend on other parts.
void addOwnHeights(const std::vector<CardPiece>& pieces, std::size_t band, const layout::CardPlan& plan,
                   std::span<PartCurves> parts) {
    for (const CardPiece& piece : pieces) {
        if (piece.band != band) continue;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            if (plan.beside == i) continue;
            Curve& curve = parts[i].picture ? parts[i].slotHeight : parts[i].lineHeight;
            add(curve, piece.from, piece.start.parts[i]);
            add(curve, piece.to, piece.end.parts[i]);
        }
    }
}

}  // namespace

void addHeights(const layout::PreparedRow& row, const std::vector<PartPieces>& pieces, double least,
                double most, Curves& curves) {
    const std::size_t cards = curves.cards.size();
    std::vector<std::vector<CardPiece>> piecesOfCards;
    std::vector<std::size_t> firstParts;
    std::vector<PartPieces> empty;
    std::size_t part = 0;
    for (std::size_t card = 0; card < cards; ++card) {
        const std::size_t count = row.band(0).cards[card].parts.size();
        firstParts.push_back(part);
        if (count == 0 && empty.empty()) empty.push_back(cardContentPieces(row, least, most));
        piecesOfCards.push_back(cardPieces(
            row, card,
            count == 0 ? std::span<const PartPieces>(empty) : std::span(pieces).subspan(part, count)));
        part += count;
    }
    for (std::size_t band = 0; band < row.bandCount(); ++band) {
        const layout::BandPlan& plan = row.band(band);
        const auto columns = static_cast<std::size_t>(plan.columns);
        for (std::size_t first = 0; first < cards; first += columns) {
            const std::size_t count = std::min(columns, cards - first);
            LineOfCards(row, band, first, std::span(piecesOfCards).subspan(first, count), curves, firstParts)
                .run();
        }
        for (std::size_t card = 0; card < cards; ++card)
            addOwnHeights(piecesOfCards[card], band, plan.cards[card],
                          std::span(curves.parts).subspan(firstParts[card], plan.cards[card].parts.size()));
    }
}

}  // namespace tenter::sweep
