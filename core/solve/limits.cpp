#include "solve/limits.h"

#include <algorithm>

#include "layout/prepared.h"

namespace tenter::solve {

namespace {

/// No size of type is as large; CSS px.
constexpr double beyond = 1e4;
/// A size of type by which spacings in px are weighed against ems; CSS px.
constexpr double usualSize = 16;
/// Widths nearer than this are one, CSS px.
constexpr double near = 1e-6;

struct PartSought {
    std::size_t card = 0;
    std::size_t part = 0;
};

class LimitFinder {
public:
    LimitFinder(const Sight& sight, std::uint32_t role, const Demand& demand, const Margins& margins,
                const Shortened* shortened, const Witness* shortenedAt)
        : sight_(sight),
          role_(role),
          demand_(demand),
          margins_(margins),
          shortened_(shortened),
          shortenedAt_(shortenedAt) {}

    std::vector<Limit> over(const std::vector<PartSought>& parts) {
        const std::vector<Stretch>& stretches = sight_.roles[role_];
        for (index_ = 0; index_ < stretches.size(); ++index_) {
            stretch_ = &stretches[index_];
            // Stretches are cut at a wish's widths, near enough.
            if (stretch_->from < demand_.widths.from - near || stretch_->to > demand_.widths.to + near)
                continue;
            if (stretch_->band != band_) shapes_.assign(parts.size(), std::nullopt);
            band_ = stretch_->band;
            const bool narrow = stretch_->to <= narrowWidths;
            factor_ = 1 + (narrow ? margins_.narrowSlack : margins_.slack) + demand_.spare;
            if (demand_.kind == Kind::LeastSize || demand_.kind == Kind::MostSize)
                addFigure();
            else
                for (std::size_t i = 0; i < parts.size(); ++i)
                    addPart(parts[i], i);
        }
        return std::move(limits_);
    }

private:
    const text::Paragraph& paragraphOf(const PartSought& part) const {
        return *sight_.row->band(stretch_->band).cards[part.card].parts[part.part].paragraph;
    }
    Shortened shortenedIn(const PartSought& part) const {
        const bool here =
            shortened_ != nullptr && shortenedAt_->card == part.card && shortenedAt_->part == part.part;
        return here ? *shortened_ : Shortened();
    }

    void addFigure() {
        const bool cap = demand_.kind == Kind::MostSize;
        const Bound bound{demand_.value + (cap ? -demand_.spare : demand_.spare), {}};
        limits_.push_back({cap, index_, {stretch_->from, stretch_->to}, bound, bound});
    }

    void addPart(const PartSought& part, std::size_t index) {
        const text::Paragraph& paragraph = paragraphOf(part);
        if (paragraph.empty()) return;
        // Lines are chosen once for a band: which are best depends on the width only by spacings in px.
        if (!shapes_[index]) shapes_[index] = shapesOf(paragraph, shortenedIn(part));
        const std::vector<LineShape>& shapes = *shapes_[index];
        if (shapes.empty()) return;
        const double from = stretch_->from;
        const double to = stretch_->to;
        if (demand_.kind == Kind::Lines || demand_.kind == Kind::Words) {
            const double more = demand_.kind == Kind::Lines ? factor_ * (1 + margins_.reserve) : factor_;
            put(true, from, to, capOf(part, shapes, more, from), capOf(part, shapes, more, to));
        } else {
            addMeasure(part, paragraph, shapes);
        }
    }

    std::vector<LineShape> shapesOf(const text::Paragraph& paragraph, const Shortened& shortened) const {
        if (demand_.kind == Kind::Words) return wordsOf(paragraph, shortened);
        const std::size_t lines = demand_.kind == Kind::Lines
                                      ? static_cast<std::size_t>(demand_.value)
                                      : static_cast<std::size_t>(project::measuredLines - 1);
        // More lines than can be broken are no wish: that words fit is another one.
        if (demand_.kind == Kind::Lines && lines >= paragraph.opportunities().size()) return {};
        return narrowest(paragraph, lines, *stretch_, usualSize, shortened);
    }

    /// The largest size at which `shapes`, `more` times as wide, fit at viewport width `width`.
    Bound capOf(const PartSought& part, const std::vector<LineShape>& shapes, double more,
                double width) const {
        Bound tightest{beyond, {part.card, part.part, {}, true}};
        const double room = stretch_->at(stretch_->room, width);
        for (const LineShape& shape : shapes) {
            const double left = room - more * shape.fixed(*stretch_, width);
            const double grows = more * shape.perSize(*stretch_) + stretch_->emEdges;
            const double most = grows > 0 ? left / grows : left >= 0 ? beyond : 0;
            if (most >= tightest.size) continue;
            tightest.size = most;
            tightest.by.line = shape;
        }
        return tightest;
    }

    /// The size at which a line of full width holds the wished number of characters.
    Bound measureBound(const PartSought& part, const text::Paragraph& paragraph, double width) const {
        const auto clusters = static_cast<std::uint32_t>(paragraph.clusters().size());
        LineShape whole;
        whole.ems = paragraph.ems(0, clusters);
        whole.letters = paragraph.letters(0, clusters);
        whole.words = paragraph.words(0, clusters);
        whole.end = clusters;
        const double letters = paragraph.graphemes(0, clusters);
        // A margin of this demand's own: characters at the limit are told by a strict comparison.
        const double spare = demand_.kind == Kind::LeastMeasure ? 1 + demand_.spare : 1 - demand_.spare;
        const double value = demand_.value * spare;
        const bool floor = demand_.kind == Kind::MostMeasure;
        const double room = stretch_->at(floor ? stretch_->mostRoom : stretch_->room, width);
        const double left = letters * room - value * whole.fixed(*stretch_, width);
        const double grows =
            value * whole.perSize(*stretch_) + letters * (floor ? stretch_->leastEmEdges : stretch_->emEdges);
        Bound bound{grows > 0 ? left / grows : beyond, {part.card, part.part, whole, true}};
        return bound;
    }

    /// Copy of fewer than three lines has no measure: a cap by measure is lifted to where there are two
    /// lines, and a floor under that asks nothing.
    void addMeasure(const PartSought& part, const text::Paragraph& paragraph,
                    const std::vector<LineShape>& twoLines) {
        const bool cap = demand_.kind == Kind::LeastMeasure;
        const double from = stretch_->from;
        const double to = stretch_->to;
        const Bound first = measureBound(part, paragraph, from);
        const Bound last = measureBound(part, paragraph, to);
        Bound firstTwo = capOf(part, twoLines, factor_, from);
        Bound lastTwo = capOf(part, twoLines, factor_, to);
        const double lead = first.size - firstTwo.size;
        const double end = last.size - lastTwo.size;
        const auto add = [&](double a, double b, bool measured) {
            const auto at = [&](const Bound& start, const Bound& stop, double width) {
                Bound bound = start;
                bound.size += (stop.size - start.size) * (width - from) / (to - from);
                return bound;
            };
            if (measured)
                put(cap, a, b, at(first, last, a), at(first, last, b));
            else if (cap)
                put(cap, a, b, at(firstTwo, lastTwo, a), at(firstTwo, lastTwo, b));
        };
        if ((lead < 0) == (end < 0)) return add(from, to, lead >= 0);
        const double crossing = from + (to - from) * lead / (lead - end);
        add(from, crossing, lead >= 0);
        add(crossing, to, end >= 0);
    }

    void put(bool cap, double from, double to, const Bound& start, const Bound& end) {
        // Two bounds over the same widths make one: a straight line is under both where its ends are.
        for (Limit& limit : limits_) {
            if (limit.stretch != index_ || limit.cap != cap || limit.widths != sweep::Interval{from, to})
                continue;
            const auto tighten = [&](Bound& held, const Bound& more) {
                if (cap ? more.size < held.size : more.size > held.size) held = more;
            };
            tighten(limit.start, start);
            tighten(limit.end, end);
            return;
        }
        limits_.push_back({cap, index_, {from, to}, start, end});
    }

    const Sight& sight_;
    std::uint32_t role_;
    const Demand& demand_;
    const Margins& margins_;
    const Shortened* shortened_;
    const Witness* shortenedAt_;
    std::size_t index_ = 0;
    const Stretch* stretch_ = nullptr;
    double factor_ = 1;
    std::size_t band_ = static_cast<std::size_t>(-1);
    std::vector<std::optional<std::vector<LineShape>>> shapes_;  // by part, of this band
    std::vector<Limit> limits_;
};

}  // namespace

std::vector<Limit> limitsOf(const Sight& sight, std::uint32_t role, const Demand& demand,
                            const Margins& margins, const std::vector<bool>& without,
                            const Shortened* shortened, const Witness* shortenedAt) {
    std::vector<PartSought> parts;
    const std::vector<layout::CardPlan>& cards = sight.row->band(0).cards;
    for (std::size_t card = 0; card < cards.size(); ++card) {
        if (without[card]) continue;
        for (std::size_t part = 0; part < cards[card].parts.size(); ++part)
            if (!cards[card].parts[part].picture && cards[card].parts[part].role == role)
                parts.push_back({card, part});
    }
    return LimitFinder(sight, role, demand, margins, shortened, shortenedAt).over(parts);
}

}  // namespace tenter::solve
