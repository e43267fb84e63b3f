// What checks look at: a variant under one break profile, swept.
#pragma once

#include <string>
#include <vector>

#include "checks/options.h"
#include "layout/layout.h"
#include "sweep/curves.h"
#include "sweep/pieces.h"

namespace tenter::checks {

/// Widths from `from` to `to` (CSS px, of one band) on which a role's size and a card's content width are
/// straight lines, starting at `from`.
struct RolePiece {
    double from = 0;
    double to = 0;
    std::size_t band = 0;
    units::Linear size;
    units::Linear column;
};

/// A role that cards use.
struct RoleSeen {
    std::string name;
    std::uint32_t index = 0;  ///< in `Band::roles`
    std::size_t card = 0;     ///< its first part
    std::size_t part = 0;
    bool wholeLink = false;         ///< some part of it is a link as a whole
    bool linkRuns = false;          ///< some copy of it has links within
    std::vector<RolePiece> pieces;  ///< from a fifth of the least width on, as zoom wants it
};

struct PartSeen {
    std::size_t card = 0;
    std::size_t part = 0;
    const project::TextPart* text = nullptr;  ///< null for a picture
    const project::PicturePart* picture = nullptr;
    sweep::PartPieces pieces;
    [[nodiscard]] bool is(const char* role) const { return text != nullptr && text->role == role; }
};

struct Subject {
    Subject(const project::Project& whole, std::size_t index, text::ParagraphStore& store,
            const text::BreakProfile& profile, const Options& told);

    const project::Project& project;
    std::size_t variantIndex;
    const project::Variant& variant;
    text::ParagraphStore& paragraphs;
    const Options& options;
    project::Wishes wishes;  ///< whose figures make findings too
    layout::PreparedRow row;
    double least, most;           ///< range of viewport widths, CSS px
    std::vector<PartSeen> parts;  ///< by card, then part
    std::vector<RoleSeen> roles;
    sweep::Curves curves;

    [[nodiscard]] const project::Limits& limits() const { return project.checking.limits; }
    /// The project whose copy names parts: its own, where another was tried with the same parts.
    [[nodiscard]] const project::Project& namesFrom() const;
    /// False for copy that a trial made.
    [[nodiscard]] bool isOwnCopy(const PartSeen& part) const;
    [[nodiscard]] sweep::Interval whole() const { return {least, most}; }
};

/// The widths a wish holds for, within the subject's range.
template <class T>
sweep::Interval wishedWidths(const Subject& subject, const project::Held<T>& wish) {
    return {std::max(subject.least, wish.from), std::min(subject.most, wish.to)};
}

/// True for a part that is drawn as a link as a whole.
bool isLink(const project::TextPart& part);

/// A role's pieces from `least` to `most` (CSS px).
std::vector<RolePiece> rolePieces(const layout::PreparedRow& row, std::uint32_t role, double least,
                                  double most);

}  // namespace tenter::checks
