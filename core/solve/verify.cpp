#include "solve/verify.h"

#include <algorithm>
#include <cmath>

#include "checks/cause.h"
#include "checks/subject.h"
#include "checks/wide.h"
#include "layout/prepared.h"
#include "solve/narrowest.h"

namespace tenter::solve {

namespace {

using sweep::Interval;

/// What rounding to emitted numbers may move a size by, CSS px, and characters to a line.
constexpr double roundedBy = 1e-9;
/// The same of two sizes apart, CSS px.
constexpr double apartBy = 0.02;
/// Widths thinner than any engine's grid are the rounding of doubles, CSS px.
constexpr double thin = 1e-6;

class Verifier {
public:
    Verifier(const project::Project& project, const layout::PreparedRow& row,
             const std::vector<Demand>& demands, Interval range)
        : project_(project), row_(row), demands_(demands), range_(range), broken_(demands.size()) {}

    void lookAt(std::size_t card, std::size_t part) {
        const auto* text = std::get_if<project::TextPart>(&project_.cards[card].parts[part]);
        if (text == nullptr) return;
        const sweep::PartPieces pieces = sweep::follow(row_, card, part, range_.from, range_.to);
        for (std::size_t i = 0; i < demands_.size(); ++i) {
            const Demand& demand = demands_[i];
            if (demand.role != text->role) continue;
            if (demand.kind == Kind::Lines)
                lines(i, pieces, row_.band(0).cards[card].parts[part].paragraph->forcedLines());
            if (demand.kind == Kind::LeastMeasure || demand.kind == Kind::MostMeasure) measure(i, pieces);
            if (demand.kind == Kind::Words)
                for (const checks::Wide& wide : checks::wideWords(row_, card, part, range_.from, range_.to))
                    note(i, wide.widths);
        }
    }

    void lookAtFigures() {
        for (std::size_t i = 0; i < demands_.size(); ++i) {
            const Demand& demand = demands_[i];
            const bool floor = demand.kind == Kind::LeastSize;
            if (!floor && demand.kind != Kind::MostSize) continue;
            const auto role = static_cast<std::uint32_t>(std::ranges::find(row_.roles(), demand.role) -
                                                         row_.roles().begin());
            for (const checks::RolePiece& piece : checks::rolePieces(row_, role, range_.from, range_.to))
                above(i, piece, floor ? demand.value - piece.size : piece.size - demand.value);
        }
    }

    std::vector<std::vector<Interval>> take() { return std::move(broken_); }

private:
    void note(std::size_t demand, const Interval& widths) {
        if (widths.to - widths.from > thin) broken_[demand].push_back(widths);
    }

    void lines(std::size_t index, const sweep::PartPieces& pieces, std::size_t forced) {
        const auto most = std::max(static_cast<std::size_t>(demands_[index].value), forced);
        for (const sweep::Piece& piece : pieces.pieces) {
            const auto cut = checks::within(piece, demands_[index].widths);
            if (cut && piece.lines > most) note(index, *cut);
        }
    }

    void measure(std::size_t index, const sweep::PartPieces& pieces) {
        const Demand& demand = demands_[index];
        for (const sweep::Piece& piece : pieces.pieces) {
            if (piece.lines < static_cast<std::uint32_t>(project::measuredLines)) continue;
            const units::Linear more = piece.width * piece.graphemes - demand.value * piece.advance;
            above(index, piece, demand.kind == Kind::MostMeasure ? more : -more);
        }
    }

    /// Where the line, which starts where `piece` does, is above 0 on it.
    template <class Piece>
    void above(std::size_t index, const Piece& piece, const units::Linear& line) {
        const auto cut = checks::within(piece, demands_[index].widths);
        if (!cut) return;
        const auto over =
            checks::whereAbove(line.from(cut->from - piece.from) - roundedBy, cut->from, cut->to);
        if (over) note(index, *over);
    }

    const project::Project& project_;
    const layout::PreparedRow& row_;
    const std::vector<Demand>& demands_;
    Interval range_;
    std::vector<std::vector<Interval>> broken_;
};

}  // namespace

std::vector<std::vector<Interval>> brokenWidths(const project::Project& project,
                                                const layout::PreparedRow& row,
                                                const std::vector<Demand>& demands,
                                                const std::vector<bool>& without, double least, double most) {
    Verifier verifier(project, row, demands, {least, most});
    for (std::size_t card = 0; card < project.cards.size(); ++card)
        for (std::size_t part = 0; part < project.cards[card].parts.size() && !without[card]; ++part)
            verifier.lookAt(card, part);
    verifier.lookAtFigures();
    return verifier.take();
}

std::vector<std::vector<Interval>> unequalWidths(const layout::PreparedRow& one,
                                                 const layout::PreparedRow& other,
                                                 const std::vector<Demand>& demands, double least,
                                                 double most) {
    std::vector<std::vector<Interval>> unequal(demands.size());
    const auto piecesOf = [&](const layout::PreparedRow& row, const std::string& role) {
        const auto found = std::ranges::find(row.roles(), role);
        return checks::rolePieces(row, static_cast<std::uint32_t>(found - row.roles().begin()), least, most);
    };
    for (std::size_t i = 0; i < demands.size(); ++i) {
        if (demands[i].kind != Kind::SameInVariants) continue;
        const auto others = piecesOf(other, demands[i].role);
        for (const checks::RolePiece& piece : piecesOf(one, demands[i].role)) {
            for (const checks::RolePiece& beside : others) {
                const double from = std::max({piece.from, beside.from, demands[i].widths.from});
                const double to = std::min({piece.to, beside.to, demands[i].widths.to});
                if (to - from <= thin) continue;
                const units::Linear apart =
                    piece.size.from(from - piece.from) - beside.size.from(from - beside.from);
                if (std::max(std::abs(apart.at(0)), std::abs(apart.at(to - from))) > apartBy)
                    unequal[i].push_back({from, to});
            }
        }
    }
    return unequal;
}

}  // namespace tenter::solve
