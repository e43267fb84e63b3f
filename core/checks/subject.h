// The input of checks: one variant under one break profile, with its curves.
#pragma once

#include <deque>
#include <string>
#include <vector>

#include "checks/options.h"
#include "layout/layout.h"
#include "sweep/curves.h"
#include "sweep/pieces.h"

namespace tenter::checks {

/// A range of widths within one interval (CSS px) in which a role's size and a card's content width are
/// straight lines. The lines start at `from`.
struct RolePiece {
    double from = 0;
    double to = 0;
    std::size_t band = 0;
    std::size_t interval = 0;
    units::Linear size;
    units::Linear column;
};

/// A role that cards use.
struct CheckedRole {
    std::string name;
    std::uint32_t index = 0;        ///< in `PreparedRow::roles()`
    project::PartRef place;         ///< its first part
    bool wholeLink = false;         ///< some part of it is a link as a whole
    bool linkRuns = false;          ///< some text of it contains links
    std::vector<RolePiece> pieces;  ///< starting at the least width divided by the usual zoom limit
};

struct CheckedPart {
    project::PartRef place;
    const project::TextPart* text = nullptr;  ///< null for a picture
    const project::PicturePart* picture = nullptr;
    sweep::PartPieces pieces;
    [[nodiscard]] bool is(const char* role) const { return text != nullptr && text->role == role; }
};

struct Subject {
    Subject(const project::Project& whole, project::VariantRef index, text::ParagraphStore& store,
            const text::BreakProfile& profile, const Options& given);

    const project::Project& project;
    std::size_t variantIndex;
    const project::Variant& variant;
    text::ParagraphStore& paragraphs;
    const Options& options;
    project::Wishes wishes;  ///< their figures are limits of checks too
    layout::PreparedRow row;
    layout::LinearSizes sizes;       ///< of `row`
    double least, most;              ///< range of viewport widths, CSS px
    std::vector<CheckedPart> parts;  ///< by card, then part
    std::vector<CheckedRole> roles;
    sweep::Curves curves;

    [[nodiscard]] const project::Limits& limits() const { return project.checking.limits; }
    /// The project that names parts: the one without its text test if it has the same parts.
    [[nodiscard]] const project::Project& namesFrom() const;
    /// False for copy that a text test changed.
    [[nodiscard]] bool isOwnCopy(const CheckedPart& part) const;
    [[nodiscard]] sweep::Interval whole() const { return {least, most}; }
};

/// One variant under every break profile, in the order of `Options::profile` or `text::profiles()`.
using Subjects = std::deque<Subject>;

/// The widths for which a wish holds, within the range of the subject.
template <class T>
sweep::Interval wishedWidths(const Subject& subject, const project::WishRange<T>& wish) {
    return {std::max(subject.least, wish.from), std::min(subject.most, wish.to)};
}

/// True for a part that is a link as a whole.
bool isLink(const project::TextPart& part);

/// A role's pieces from `least` to `most` (CSS px).
std::vector<RolePiece> rolePieces(const layout::LinearSizes& sizes, std::uint32_t role, double least,
                                  double most);

}  // namespace tenter::checks
