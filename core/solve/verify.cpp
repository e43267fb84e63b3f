#include "solve/verify.h"

#include <algorithm>
#include <cmath>

#include "checks/cause.h"
#include "checks/subject.h"
#include "checks/word_overflow.h"
#include "layout/prepared.h"
#include "solve/line_shapes.h"

namespace tenter::solve {

namespace {

using sweep::Interval;

/// Tolerance for the rounding of doubles, in CSS px and in characters per line.
constexpr double comparisonTolerance = 1e-9;
/// Largest difference of two equal sizes after rounding to emitted numbers, CSS px.
constexpr double equalSizeTolerance = 0.02;
/// Narrower intervals come from the rounding of doubles, CSS px; engines work on coarser grids.
constexpr double leastInterval = 1e-6;

class Verifier {
public:
    Verifier(const project::Project& project, const layout::PreparedRow& row, const std::vector<Wish>& wishes,
             Interval range)
        : project_(project), row_(row), wishes_(wishes), range_(range), violated_(wishes.size()) {}

    void checkPart(std::size_t card, std::size_t part) {
        const auto* text = std::get_if<project::TextPart>(&project_.cards[card].parts[part]);
        if (text == nullptr) return;
        const sweep::PartPieces pieces = sweep::partPieces(row_, {card, part}, range_.from, range_.to);
        for (std::size_t i = 0; i < wishes_.size(); ++i) {
            const Wish& wish = wishes_[i];
            if (wish.role != text->role) continue;
            if (wish.kind == WishKind::Lines)
                checkLines(i, pieces, row_.band(0).cards[card].parts[part].paragraph->forcedLines());
            if (wish.kind == WishKind::LeastMeasure || wish.kind == WishKind::MostMeasure)
                checkMeasure(i, pieces);
            if (wish.kind == WishKind::Words)
                for (const checks::WordOverflow& wide :
                     checks::wordOverflows(row_, {card, part}, range_.from, range_.to))
                    note(i, wide.widths);
        }
    }

    void checkSizes() {
        for (std::size_t i = 0; i < wishes_.size(); ++i) {
            const Wish& wish = wishes_[i];
            const bool lower = wish.kind == WishKind::LeastSize;
            if (!lower && wish.kind != WishKind::MostSize) continue;
            const auto role =
                static_cast<std::uint32_t>(std::ranges::find(row_.roles(), wish.role) - row_.roles().begin());
            for (const checks::RolePiece& piece : checks::rolePieces(row_, role, range_.from, range_.to))
                notePositive(i, piece, lower ? wish.value - piece.size : piece.size - wish.value);
        }
    }

    std::vector<std::vector<Interval>> take() { return std::move(violated_); }

private:
    void note(std::size_t wish, const Interval& widths) {
        if (widths.to - widths.from > leastInterval) violated_[wish].push_back(widths);
    }

    void checkLines(std::size_t index, const sweep::PartPieces& pieces, std::size_t forced) {
        const auto most = std::max(static_cast<std::size_t>(wishes_[index].value), forced);
        for (const sweep::Piece& piece : pieces.pieces) {
            const auto cut = checks::within(piece, wishes_[index].widths);
            if (cut && piece.lines > most) note(index, *cut);
        }
    }

    void checkMeasure(std::size_t index, const sweep::PartPieces& pieces) {
        const Wish& wish = wishes_[index];
        for (const sweep::Piece& piece : pieces.pieces) {
            if (piece.lines < static_cast<std::uint32_t>(project::measuredLines)) continue;
            const units::Linear excess = piece.width * piece.graphemes - wish.value * piece.advance;
            notePositive(index, piece, wish.kind == WishKind::MostMeasure ? excess : -excess);
        }
    }

    /// Notes the widths of `piece` at which `line`, whose origin is its start, is positive.
    template <class Piece>
    void notePositive(std::size_t index, const Piece& piece, const units::Linear& line) {
        const auto cut = checks::within(piece, wishes_[index].widths);
        if (!cut) return;
        const auto over =
            checks::whereAbove(line.from(cut->from - piece.from) - comparisonTolerance, cut->from, cut->to);
        if (over) note(index, *over);
    }

    const project::Project& project_;
    const layout::PreparedRow& row_;
    const std::vector<Wish>& wishes_;
    Interval range_;
    std::vector<std::vector<Interval>> violated_;
};

}  // namespace

std::vector<std::vector<Interval>> violatedWidths(const project::Project& project,
                                                  const layout::PreparedRow& row,
                                                  const std::vector<Wish>& wishes,
                                                  const std::vector<bool>& ignoredCards, double least,
                                                  double most) {
    Verifier verifier(project, row, wishes, {least, most});
    for (std::size_t card = 0; card < project.cards.size(); ++card)
        for (std::size_t part = 0; part < project.cards[card].parts.size() && !ignoredCards[card]; ++part)
            verifier.checkPart(card, part);
    verifier.checkSizes();
    return verifier.take();
}

std::vector<std::vector<Interval>> unequalWidths(const layout::PreparedRow& one,
                                                 const layout::PreparedRow& other,
                                                 const std::vector<Wish>& wishes, double least, double most) {
    std::vector<std::vector<Interval>> unequal(wishes.size());
    const auto piecesOf = [&](const layout::PreparedRow& row, const std::string& role) {
        const auto found = std::ranges::find(row.roles(), role);
        return checks::rolePieces(row, static_cast<std::uint32_t>(found - row.roles().begin()), least, most);
    };
    for (std::size_t i = 0; i < wishes.size(); ++i) {
        if (wishes[i].kind != WishKind::SameInVariants) continue;
        const auto others = piecesOf(other, wishes[i].role);
        for (const checks::RolePiece& piece : piecesOf(one, wishes[i].role)) {
            for (const checks::RolePiece& beside : others) {
                const double from = std::max({piece.from, beside.from, wishes[i].widths.from});
                const double to = std::min({piece.to, beside.to, wishes[i].widths.to});
                if (to - from <= leastInterval) continue;
                const units::Linear difference =
                    piece.size.from(from - piece.from) - beside.size.from(from - beside.from);
                if (std::max(std::abs(difference.at(0)), std::abs(difference.at(to - from))) >
                    equalSizeTolerance)
                    unequal[i].push_back({from, to});
            }
        }
    }
    return unequal;
}

}  // namespace tenter::solve
