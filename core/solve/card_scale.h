// The same sizes by the card's width: one ramp a role, whatever the number of columns.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "project/problem.h"
#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::solve {

/// What one role's sizes come to by the card.
struct ByCard {
    std::string role;
    units::Ramp ramp;  ///< over the card's content width, CSS px
    /// The largest change of a size, and where: viewport width, variant.
    double before = 0, after = 0;
    double width = 0;
    std::size_t variant = 0;
};

struct CardScale {
    project::Project project;
    std::vector<ByCard> roles;
};

/// `project` with a single ramp for each role that cards use, said in the style, which follows the card in
/// every variant and band. Of all such ramps it departs least from the sizes there are, by the sum of squares
/// over all viewport widths of all variants. Empty, with `problems`, where cards cannot be containers.
std::optional<CardScale> inCardScale(const project::Project& project, text::ParagraphStore& store,
                                     project::Problems& problems);

/// What changes, in sentences, with what browsers need for it.
std::vector<std::string> sentences(const project::Project& project, const CardScale& scale);

}  // namespace tenter::solve
