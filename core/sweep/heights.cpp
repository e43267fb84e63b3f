#include "sweep/heights.h"

#include <algorithm>
#include <span>

#include "layout/prepared.h"
#include "sweep/alone.h"
#include "sweep/curve_writer.h"

namespace tenter::sweep {

namespace {

/// A height that goes straight from one value to another while `t` goes from 0 to 1.
struct Climb {
    double start = 0;
    double end = 0;
    [[nodiscard]] double at(double t) const { return start + (end - start) * t; }
};

/// Adds to `turns` every t in (0, 1) at which another of `climbs` becomes the tallest.
void addTurns(const std::vector<Climb>& climbs, std::vector<double>& turns) {
    const auto rise = [](const Climb& climb) { return climb.end - climb.start; };
    const Climb* tallest =
        &*std::max_element(climbs.begin(), climbs.end(), [&](const Climb& a, const Climb& b) {
            return a.start != b.start ? a.start < b.start : rise(a) < rise(b);
        });
    while (true) {
        const Climb* next = nullptr;
        double nearest = 1;
        for (const Climb& climb : climbs) {
            const double gain = rise(climb) - rise(*tallest);
            if (gain <= 0) continue;
            const double t = (tallest->start - climb.start) / gain;
            if (t >= nearest) continue;
            nearest = t;
            next = &climb;
        }
        if (next == nullptr) return;
        turns.push_back(nearest);
        tallest = next;
    }
}

/// One line of cards over one band: what each asks, put together.
class LineOfCards {
public:
    LineOfCards(const layout::PreparedRow& row, std::size_t band, std::size_t first,
                std::span<const std::vector<CardStretch>> cards, Curves& curves,
                const std::vector<std::size_t>& firstParts)
        : plan_(row.band(band)), first_(first), cards_(cards), curves_(curves), firstParts_(firstParts) {
        for (const std::vector<CardStretch>& stretches : cards) {
            std::size_t at = 0;
            while (at < stretches.size() && stretches[at].band != band)
                ++at;
            at_.push_back(at);
        }
        band_ = band;
    }

    void run() {
        if (at_.front() >= cards_.front().size()) return;
        double from = stretch(0).from;
        while (true) {
            double to = stretch(0).to;
            for (std::size_t c = 0; c < cards_.size(); ++c)
                to = std::min(to, stretch(c).to);
            if (to > from) between(from, to);
            from = to;
            bool more = true;
            for (std::size_t c = 0; c < cards_.size(); ++c)
                while (more && stretch(c).to <= from + leastStep) {
                    const std::size_t next = at_[c] + 1;
                    more = next < cards_[c].size() && cards_[c][next].band == band_;
                    if (more) at_[c] = next;
                }
            if (!more) return;
        }
    }

private:
    [[nodiscard]] const CardStretch& stretch(std::size_t c) const { return cards_[c][at_[c]]; }

    /// How `figure` of a card's stand goes between two widths within its stretch.
    template <class Figure>
    [[nodiscard]] Climb climb(std::size_t c, double from, double to, Figure&& figure) const {
        const CardStretch& all = stretch(c);
        const Climb whole{figure(all.start), figure(all.end)};
        const double length = all.to - all.from;
        return {whole.at((from - all.from) / length), whole.at((to - all.from) / length)};
    }

    void between(double from, double to) {
        const std::size_t levels = stretch(0).start.asked.levels.size();
        turns_.assign({0, 1});
        levels_.resize(levels);
        for (std::size_t level = 0; level < levels; ++level) {
            levels_[level].clear();
            for (std::size_t c = 0; c < cards_.size(); ++c)
                levels_[level].push_back(
                    climb(c, from, to, [&](const Stand& stand) { return stand.asked.levels[level]; }));
            if (cards_.size() > 1) addTurns(levels_[level], turns_);
        }
        std::sort(turns_.begin(), turns_.end());
        heights_.resize(levels);
        for (const double t : turns_) {
            double total = 0;
            for (std::size_t level = 0; level < levels; ++level) {
                heights_[level] = 0;
                for (const Climb& each : levels_[level])
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
        const layout::Asked& asked = stretch(c).start.asked;
        double spare = 0;
        if (asked.pushedLevel >= 0) {
            const Climb needs =
                climb(c, from, to, [](const Stand& stand) { return stand.asked.pushedNeeds; });
            spare = (heights_[static_cast<std::size_t>(asked.pushedLevel)] - needs.at(t)) / asked.pushedParts;
        }
        add(curves_.cards[card].spare, width, spare);
        if (plan_.cards[card].beside < 0) return;
        const Climb around = climb(c, from, to, [](const Stand& stand) { return stand.around; });
        const auto beside = static_cast<std::size_t>(plan_.cards[card].beside);
        add(curves_.parts[firstParts_[card] + beside].slotHeight, width, total - around.at(t));
    }

    const layout::BandPlan& plan_;
    std::size_t band_ = 0;
    std::size_t first_;
    std::span<const std::vector<CardStretch>> cards_;
    Curves& curves_;
    const std::vector<std::size_t>& firstParts_;
    std::vector<std::size_t> at_;  // each card's stretch
    std::vector<double> turns_, heights_;
    std::vector<std::vector<Climb>> levels_;
};

void addOwnHeights(const std::vector<CardStretch>& stretches, std::size_t band, const layout::CardPlan& plan,
                   std::span<PartCurves> parts) {
    for (const CardStretch& stretch : stretches) {
        if (stretch.band != band) continue;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            if (plan.beside == static_cast<int>(i)) continue;
            Curve& curve = parts[i].picture ? parts[i].slotHeight : parts[i].lineHeight;
            add(curve, stretch.from, stretch.start.parts[i]);
            add(curve, stretch.to, stretch.end.parts[i]);
        }
    }
}

}  // namespace

void addHeights(const layout::PreparedRow& row, const std::vector<PartPieces>& pieces, double least,
                double most, Curves& curves) {
    const std::size_t cards = curves.cards.size();
    std::vector<std::vector<CardStretch>> stretches;
    std::vector<std::size_t> firstParts;
    std::vector<PartPieces> empty;
    std::size_t part = 0;
    for (std::size_t card = 0; card < cards; ++card) {
        const std::size_t count = row.band(0).cards[card].parts.size();
        firstParts.push_back(part);
        if (count == 0 && empty.empty()) empty.push_back(followCard(row, least, most));
        stretches.push_back(stretchesOf(
            row, card,
            count == 0 ? std::span<const PartPieces>(empty) : std::span(pieces).subspan(part, count)));
        part += count;
    }
    for (std::size_t band = 0; band < row.bandCount(); ++band) {
        const layout::BandPlan& plan = row.band(band);
        const auto columns = static_cast<std::size_t>(plan.columns);
        for (std::size_t first = 0; first < cards; first += columns) {
            const std::size_t count = std::min(columns, cards - first);
            LineOfCards(row, band, first, std::span(stretches).subspan(first, count), curves, firstParts)
                .run();
        }
        for (std::size_t card = 0; card < cards; ++card)
            addOwnHeights(stretches[card], band, plan.cards[card],
                          std::span(curves.parts).subspan(firstParts[card], plan.cards[card].parts.size()));
    }
}

}  // namespace tenter::sweep
