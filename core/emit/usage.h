// What a project's cards use, and so what a stylesheet and its markup need.
#pragma once

#include <string>
#include <vector>

#include "project/project.h"

namespace tenter::emit {

/// Where a picture stands in its card, as far as rules care: which edges it touches, and whether it is the
/// card's first picture, the one a band may set beside the rest.
struct PictureStand {
    bool first = false;   ///< the card's first part
    bool last = false;    ///< its last
    bool leading = true;  ///< its first picture
    friend bool operator==(const PictureStand&, const PictureStand&) = default;
    /// Word for the class: `first`, `inside`, `last`, `only`, `further`, `further-last`.
    [[nodiscard]] std::string word() const;
};

PictureStand pictureStand(const project::Card& card, std::size_t part);

/// The stands of the project's pictures, each once, in document order.
std::vector<PictureStand> pictureStands(const project::Project& project);

/// True if pictures that stand differently need classes of their own: there are several stands, and some band
/// runs pictures to the edge or sets them beside.
bool standsNeedClasses(const project::Project& project);

/// A role as it is used.
struct RoleUse {
    std::string role;
    bool wholeLink = false;  ///< some part of it is a link as a whole
    bool linkRuns = false;   ///< some copy of it has links within
};

/// Roles that cards use, in document order; if none, every role the project knows.
std::vector<RoleUse> roleUses(const project::Project& project);

bool usesRun(const project::Project& project, project::Run::Kind kind);

/// True if some copy is written in ideographs or kana.
bool usesIdeographs(const project::Project& project);

/// True for a part that is drawn as a link as a whole.
bool isWholeLink(const project::TextPart& part);

}  // namespace tenter::emit
