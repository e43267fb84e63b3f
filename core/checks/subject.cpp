#include "checks/subject.h"

#include <algorithm>

#include "layout/inline_sizes.h"

namespace tenter::checks {

namespace {

using units::Linear;

CheckedRole& checkedRole(std::vector<CheckedRole>& roles, const layout::PreparedRow& row,
                         const CheckedPart& part) {
    const auto known = std::ranges::find(roles, part.text->role, &CheckedRole::name);
    if (known != roles.end()) return *known;
    CheckedRole role;
    role.name = part.text->role;
    role.index = row.band(0).part(part.place).role;
    role.place = part.place;
    return roles.emplace_back(std::move(role));
}

}  // namespace

bool isLink(const project::TextPart& part) {
    return part.role == "button" || !part.link.empty();
}

std::vector<RolePiece> rolePieces(const layout::LinearSizes& sizes, std::uint32_t role, double least,
                                  double most) {
    const layout::PreparedRow& row = sizes.row();
    std::vector<RolePiece> pieces;
    sweep::Stride stride;
    sweep::walkIntervals(row, least, most, [&](std::size_t index, double from, double to) {
        const layout::IntervalPlan& interval = row.interval(index);
        const layout::InlineSizes<Linear>& across = sizes.at(index, from);
        RolePiece piece{from,
                        to,
                        interval.bandIndex,
                        index,
                        interval.roles[role].size.resolve(across.basis),
                        across.cardContent};
        const double until = std::min({piece.size.until, piece.column.until, across.basis.rem.until});
        piece.to = stride.next(from, until, to);
        pieces.push_back(piece);
        return piece.to;
    });
    return pieces;
}

Subject::Subject(const project::Project& whole, project::VariantRef index, text::ParagraphStore& store,
                 const text::BreakProfile& profile, const Options& given)
    : project(whole),
      variantIndex(index.variant),
      variant(whole.variant(index)),
      paragraphs(store),
      options(given),
      wishes(project::effectiveWishes(whole)),
      row(whole, index, store, profile),
      sizes(row),
      least(whole.leastWidth),
      most(whole.mostWidth) {
    std::vector<sweep::PartPieces> pieces;
    const std::vector<project::Card>& cards = project.row(index.row).cards;
    for (std::size_t card = 0; card < cards.size(); ++card) {
        const std::vector<project::Part>& all = cards[card].parts;
        for (std::size_t part = 0; part < all.size(); ++part) {
            CheckedPart checked;
            checked.place = row.place(card, part);
            checked.text = std::get_if<project::TextPart>(&all[part]);
            checked.picture = std::get_if<project::PicturePart>(&all[part]);
            pieces.push_back(sweep::partPieces(sizes, checked.place, least, most));
            if (checked.text != nullptr) {
                CheckedRole& role = checkedRole(roles, row, checked);
                const bool link = isLink(*checked.text);
                role.wholeLink = role.wholeLink || link;
                role.linkRuns = role.linkRuns ||
                                (!link && std::ranges::find(checked.text->copy, project::Run::Kind::Link,
                                                            &project::Run::kind) != checked.text->copy.end());
            }
            parts.push_back(std::move(checked));
        }
    }
    curves = sweep::curvesOf(row, pieces, least, most);
    for (std::size_t i = 0; i < parts.size(); ++i)
        parts[i].pieces = std::move(pieces[i]);
    for (CheckedRole& role : roles)
        role.pieces = rolePieces(sizes, role.index, least / whole.checking.limits.usualZoom, most);
}

const project::Project& Subject::namesFrom() const {
    const project::Project* untried = options.untried.get();
    const auto sameParts = [](const project::Card& one, const project::Card& other) {
        return std::ranges::equal(one.parts, other.parts, {}, &project::Part::index, &project::Part::index);
    };
    return untried != nullptr && std::ranges::equal(project.row().cards, untried->row().cards, sameParts)
               ? *untried
               : project;
}

bool Subject::isOwnCopy(const CheckedPart& part) const {
    const project::Project& own = namesFrom();
    if (part.text == nullptr || &own == &project) return true;
    const auto* text = std::get_if<project::TextPart>(&own.part(part.place));
    return text != nullptr && text->copy == part.text->copy;
}

}  // namespace tenter::checks
