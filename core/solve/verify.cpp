#include "solve/verify.h"

#include <algorithm>

#include "layout/prepared.h"
#include "solve/cancellation.h"
#include "solve/constraint.h"
#include "solve/violations.h"

namespace tenter::solve {

namespace {

std::vector<Violations> noViolations(const std::vector<Wish>& wishes, double least, double most) {
    std::vector<Violations> all;
    all.reserve(wishes.size());
    for (const Wish& wish : wishes)
        all.emplace_back(wish, sweep::Interval{least, most});
    return all;
}

std::vector<std::vector<sweep::Interval>> widthsOf(std::vector<Violations>& violations) {
    std::vector<std::vector<sweep::Interval>> all;
    all.reserve(violations.size());
    for (Violations& one : violations)
        all.push_back(one.take());
    return all;
}

}  // namespace

std::vector<checks::RolePiece> sizePieces(const layout::LinearSizes& sizes, const std::string& role,
                                          const sweep::Interval& range) {
    const std::vector<std::string>& roles = sizes.row().roles();
    const auto index = static_cast<std::uint32_t>(std::ranges::find(roles, role) - roles.begin());
    return checks::rolePieces(sizes, index, range.from, range.to);
}

std::vector<std::vector<sweep::Interval>> violatedWidths(const project::Project& project,
                                                         const layout::PreparedRow& row,
                                                         const std::vector<Wish>& wishes,
                                                         const std::vector<bool>& ignoredCards, double least,
                                                         double most, const std::stop_token& cancellation) {
    std::vector<Violations> violations = noViolations(wishes, least, most);
    const layout::LinearSizes sizes(row);
    for (std::size_t card = 0; card < project.row().cards.size(); ++card) {
        for (std::size_t part = 0; part < project.row().cards[card].parts.size() && !ignoredCards[card];
             ++part) {
            const auto* text = std::get_if<project::TextPart>(&project.row().cards[card].parts[part]);
            if (text == nullptr) continue;
            throwIfStopped(cancellation);
            const sweep::PartPieces pieces = sweep::partPieces(sizes, row.place(card, part), least, most);
            for (Violations& one : violations)
                if (one.wish.role == text->role)
                    one.wish.kind->verifyText({sizes, row.place(card, part), pieces}, one);
        }
    }
    for (Violations& one : violations)
        one.wish.kind->verifySize(sizes, one);
    return widthsOf(violations);
}

std::vector<std::vector<sweep::Interval>> violatedTogether(const layout::PreparedRow& one,
                                                           const layout::PreparedRow& other,
                                                           const std::vector<Wish>& wishes, double least,
                                                           double most) {
    std::vector<Violations> violations = noViolations(wishes, least, most);
    for (Violations& each : violations)
        each.wish.kind->verifyVariants(one, other, each);
    return widthsOf(violations);
}

}  // namespace tenter::solve
