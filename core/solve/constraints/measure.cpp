// At least and at most a number of characters per line.
#include "project/wishes.h"
#include "solve/bound_finder.h"
#include "solve/member_constraint.h"
#include "solve/violations.h"
#include "solve/wish_key.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::solve::constraints {

namespace {

constexpr WishKey measureKey{"measure", "35-75",
                             "characters per line, 1 to 1000; 35-: at least 35; -75: at most 75",
                             [](NotationReader& reader, const std::string& value, project::Json& entry) {
                                 return reader.putRange(entry, "leastMeasure", "mostMeasure", value,
                                                        "write for example 35-75, 35- or -75");
                             }};

/// A measure of at least a number of characters bounds the size from above, one of at most that from below.
class MeasureConstraint : public FigureConstraint<double, BoundConstraint> {
public:
    MeasureConstraint(std::string_view name, bool isLeast, double limit, Member member)
        : FigureConstraint({.name = name,
                            .key = &measureKey,
                            .relaxation = RelaxationRange{limit, 0.5},
                            .removalRank = 2,
                            .toleranceStep = 0.0005,
                            .isLowerBound = !isLeast},
                           member),
          isLeast_(isLeast) {}

    [[nodiscard]] std::string condition(const Wish& wish) const override {
        const std::string characters = units::figure(wish.value);
        return isLeast_ ? wording::say("at least %1 characters per line", {characters})
                        : wording::say("at most %1 characters per line", {characters});
    }
    [[nodiscard]] std::string ofRole(const Wish& wish, const std::string& role) const override {
        return withCondition(role, condition(wish));
    }

    void addBounds(BoundFinder& finder) const override {
        finder.forEachText(
            [&](const text::Paragraph& paragraph, const ShortenedWord& shortened) {
                return narrowestLines(paragraph, project::measuredLines - 1, finder.range(), referenceSize,
                                      shortened);
            },
            [&](const BoundFinder::Text& text) { addBound(finder, text); });
    }

    void verifyText(const VerifiedText& text, Violations& violations) const override {
        for (const sweep::Piece& piece : text.pieces.pieces) {
            if (piece.lines < static_cast<std::uint32_t>(project::measuredLines)) continue;
            const units::Linear excess =
                piece.width * piece.graphemes - violations.wish.value * piece.advance;
            violations.notePositive(piece, isLeast_ ? -excess : excess);
        }
    }

private:
    /// Text of fewer than `project::measuredLines` lines has no measure. So an upper bound by measure is at
    /// least the size at which the text has two lines, and a lower bound below that size does not apply.
    void addBound(BoundFinder& finder, const BoundFinder::Text& text) const {
        const double from = finder.range().from;
        const double to = finder.range().to;
        const Bound first = boundAt(finder, text, from);
        const Bound last = boundAt(finder, text, to);
        const Bound firstTwo = finder.upperBound(text, finder.widening(), from);
        const Bound lastTwo = finder.upperBound(text, finder.widening(), to);
        const double startExcess = first.size - firstTwo.size;
        const double endExcess = last.size - lastTwo.size;
        const auto add = [&](double a, double b, bool byMeasure) {
            const auto at = [&](const Bound& start, const Bound& stop, double width) {
                Bound bound = start;
                bound.size += (stop.size - start.size) * (width - from) / (to - from);
                return bound;
            };
            if (byMeasure)
                finder.add(isLeast_, a, b, at(first, last, a), at(first, last, b));
            else if (isLeast_)
                finder.add(isLeast_, a, b, at(firstTwo, lastTwo, a), at(firstTwo, lastTwo, b));
        };
        if ((startExcess < 0) == (endExcess < 0)) return add(from, to, startExcess >= 0);
        const double crossing = from + (to - from) * startExcess / (startExcess - endExcess);
        add(from, crossing, startExcess >= 0);
        add(crossing, to, endExcess >= 0);
    }

    /// The size at which a full line has exactly the wished number of characters.
    [[nodiscard]] Bound boundAt(const BoundFinder& finder, const BoundFinder::Text& text,
                                double width) const {
        const LinearRange& range = finder.range();
        const Wish& wish = finder.wish();
        const auto clusters = static_cast<std::uint32_t>(text.paragraph.clusters().size());
        LineShape whole;
        whole.ems = text.paragraph.ems(0, clusters);
        whole.letters = text.paragraph.letters(0, clusters);
        whole.words = text.paragraph.words(0, clusters);
        whole.end = clusters;
        const double letters = text.paragraph.graphemes(0, clusters);
        // The measure is compared strictly, so the tolerance applies to the wished figure.
        const double value = wish.value * (isLeast_ ? 1 + wish.tolerance : 1 - wish.tolerance);
        const double available = range.at(isLeast_ ? range.available : range.mostAvailable, width);
        const double remaining = letters * available - value * whole.fixedWidth(range, width);
        const double perSize =
            value * whole.widthPerSize(range) + letters * (isLeast_ ? range.emEdges : range.leastEmEdges);
        return {perSize > 0 ? remaining / perSize : unlimitedSize, {text.card, text.part, whole, true}};
    }

    bool isLeast_;
};

}  // namespace

const Constraint& leastMeasure() {
    static const MeasureConstraint kind("leastMeasure", true, 1, &project::RoleWishes::leastMeasure);
    return kind;
}

const Constraint& mostMeasure() {
    static const MeasureConstraint kind("mostMeasure", false, 1000, &project::RoleWishes::mostMeasure);
    return kind;
}

}  // namespace tenter::solve::constraints
