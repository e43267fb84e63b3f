// At most a number of lines.
#include <algorithm>

#include "solve/bound_finder.h"
#include "solve/member_constraint.h"
#include "solve/violations.h"
#include "solve/wish_key.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::solve::constraints {

namespace {

constexpr WishKey linesKey{"lines", "2", "at most 2 lines (1 to 50)",
                           [](NotationReader& reader, const std::string& value, project::Json& entry) {
                               return reader.putNumber(entry, "lines", value,
                                                       "write a number of lines, for example 2");
                           }};

class LinesConstraint : public FigureConstraint<int, BoundConstraint> {
public:
    LinesConstraint()
        : FigureConstraint({.name = "lines",
                            .key = &linesKey,
                            .relaxation = RelaxationRange{50, 1},
                            .toleranceStep = 0.0025,
                            .usesReserve = true,
                            .isLimitedByWord = true},
                           &project::RoleWishes::lines) {}

    [[nodiscard]] std::string condition(const Wish& wish) const override {
        return wish.value == 1 ? wording::say("one line")
                               : wording::say("at most %1 lines", {units::figure(wish.value)});
    }
    [[nodiscard]] std::string ofRole(const Wish& wish, const std::string& role) const override {
        //: A role, and a wish on its lines
        return wish.value == 1 ? wording::say("%1 on one line", {role})
                               : wording::say("%1 in at most %2 lines", {role, units::figure(wish.value)});
    }

    void addBounds(BoundFinder& finder) const override {
        const auto lines = static_cast<std::size_t>(finder.wish().value);
        const LinearRange& range = finder.range();
        const double factor = finder.widening() * (1 + finder.margins().reserve);
        finder.forEachText(
            [&](const text::Paragraph& paragraph, const ShortenedWord& shortened) {
                // With as many lines as there are words, only the wish on words remains.
                return lines >= paragraph.opportunities().size()
                           ? std::vector<LineShape>()
                           : narrowestLines(paragraph, lines, range, referenceSize, shortened);
            },
            [&](const BoundFinder::Text& text) {
                finder.add(true, range.from, range.to, finder.upperBound(text, factor, range.from),
                           finder.upperBound(text, factor, range.to));
            });
    }

    void verifyText(const VerifiedText& text, Violations& violations) const override {
        const std::size_t forced =
            text.sizes.row().band(0).cards[text.place.card].parts[text.place.part].paragraph->forcedLines();
        const auto most = std::max(static_cast<std::size_t>(violations.wish.value), forced);
        for (const sweep::Piece& piece : text.pieces.pieces) {
            const auto cut = checks::within(piece, violations.wish.widths);
            if (cut && piece.lines > most) violations.note(*cut);
        }
    }
};

}  // namespace

const Constraint& lines() {
    static const LinesConstraint kind;
    return kind;
}

}  // namespace tenter::solve::constraints
