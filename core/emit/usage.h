// What a project's cards use; a stylesheet and its markup need only that.
#pragma once

#include <string>
#include <vector>

#include "project/project.h"

namespace tenter::emit {

/// The position of a picture in its card, as far as rules depend on it: which edges it touches, and whether
/// it is the card's first picture, which a band may set beside the text.
struct PicturePosition {
    bool first = false;   ///< the card's first part
    bool last = false;    ///< its last
    bool leading = true;  ///< its first picture
    friend bool operator==(const PicturePosition&, const PicturePosition&) = default;
    /// The word for the class: `first`, `inside`, `last`, `only`, `further`, `further-last`.
    [[nodiscard]] std::string word() const;
};

PicturePosition picturePosition(const project::Card& card, std::size_t part);

/// The positions of the project's pictures, each once, in document order.
std::vector<PicturePosition> picturePositions(const project::Project& project);

/// True if pictures in different positions need their own classes: there are several positions, and some band
/// has full-bleed pictures or sets pictures beside the text.
bool positionsNeedClasses(const project::Project& project);

/// A role and how cards use it.
struct RoleUse {
    std::string role;
    bool wholeLink = false;  ///< some part of it is a link as a whole
    bool linkRuns = false;   ///< some text of it contains links
};

/// The roles that cards use, in document order; every role of the project if cards use none.
std::vector<RoleUse> roleUses(const project::Project& project);

/// True if some text has a run of that kind.
bool usesRun(const project::Project& project, project::Run::Kind kind);

/// True if some text contains ideographs or kana.
bool usesIdeographs(const project::Project& project);

/// True for a part that is a link as a whole.
bool isWholeLink(const project::TextPart& part);

}  // namespace tenter::emit
