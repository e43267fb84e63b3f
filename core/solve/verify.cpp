#include "solve/verify.h"

#include <algorithm>

#include "checks/cause.h"
#include "checks/subject.h"
#include "checks/wide.h"
#include "layout/prepared.h"
#include "solve/narrowest.h"

namespace tenter::solve {

namespace {

/// What rounding to emitted numbers may move a size by, CSS px.
constexpr double roundedBy = 1e-9;

/// True if the line is above 0 somewhere on the part of `piece` within `widths`.
template <class Piece>
bool isAbove(const Piece& piece, const sweep::Interval& widths, const units::Linear& line) {
    const auto cut = checks::within(piece, widths);
    if (!cut || cut->to - cut->from < sweep::leastStep) return false;
    return line.at(cut->from - piece.from) > roundedBy || line.at(cut->to - piece.from) > roundedBy;
}

bool breaksPart(const Demand& demand, const sweep::PartPieces& pieces, const text::Paragraph& paragraph) {
    return std::ranges::any_of(pieces.pieces, [&](const sweep::Piece& piece) {
        if (demand.kind == Kind::Lines) {
            const auto cut = checks::within(piece, demand.widths);
            // Pieces thinner than any engine's grid are the rounding of doubles.
            return cut && cut->to - cut->from > 1e-6 &&
                   piece.lines >
                       std::max<std::size_t>(static_cast<std::size_t>(demand.value), forcedLines(paragraph));
        }
        if (piece.lines < static_cast<std::uint32_t>(project::measuredLines)) return false;
        const units::Linear more = piece.width * piece.graphemes - demand.value * piece.advance;
        return isAbove(piece, demand.widths, demand.kind == Kind::MostMeasure ? more : -more);
    });
}

}  // namespace

std::vector<bool> broken(const project::Project& project, std::size_t variant,
                         const std::vector<Demand>& demands, const std::vector<bool>& without,
                         text::ParagraphStore& store, const text::BreakProfile& profile) {
    const layout::PreparedRow row(project, variant, store, profile);
    const double least = project.leastWidth;
    const double most = project.mostWidth;
    std::vector<bool> found(demands.size(), false);
    for (std::size_t card = 0; card < project.cards.size(); ++card) {
        if (without[card]) continue;
        for (std::size_t part = 0; part < project.cards[card].parts.size(); ++part) {
            const auto* text = std::get_if<project::TextPart>(&project.cards[card].parts[part]);
            if (text == nullptr) continue;
            const sweep::PartPieces pieces = sweep::follow(row, card, part, least, most);
            const text::Paragraph& paragraph = *row.band(0).cards[card].parts[part].paragraph;
            for (std::size_t i = 0; i < demands.size(); ++i) {
                const Demand& demand = demands[i];
                if (found[i] || demand.role != text->role) continue;
                if (demand.kind == Kind::Lines || demand.kind == Kind::LeastMeasure ||
                    demand.kind == Kind::MostMeasure)
                    found[i] = breaksPart(demand, pieces, paragraph);
                if (demand.kind == Kind::Words)
                    found[i] = !checks::wideWords(row, card, part, least, most).empty();
            }
        }
    }
    for (std::size_t i = 0; i < demands.size(); ++i) {
        const Demand& demand = demands[i];
        const bool floor = demand.kind == Kind::LeastSize;
        if (!floor && demand.kind != Kind::MostSize) continue;
        const auto role =
            static_cast<std::uint32_t>(std::ranges::find(row.roles(), demand.role) - row.roles().begin());
        for (const checks::RolePiece& piece : checks::rolePieces(row, role, least, most))
            if (isAbove(piece, demand.widths, floor ? demand.value - piece.size : piece.size - demand.value))
                found[i] = true;
    }
    return found;
}

}  // namespace tenter::solve
