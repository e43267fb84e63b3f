// A laid-out row with the project that it comes from, and look-ups in both.
#pragma once

#include <string>

#include "layout/layout.h"
#include "project/project.h"
#include "units/length.h"

namespace tenter::draw {

/// The row of one variant, laid out at one width. What it refers to must live longer.
struct LaidOutRow {
    const project::Project& project;
    const layout::PreparedRow& prepared;
    const layout::Layout& layout;
    /// The settings of the row at that width.
    [[nodiscard]] const project::Settings& settings() const { return prepared.settings(layout.band); }
    /// Root size and container at that width.
    [[nodiscard]] project::PageSettings page() const { return project.page.at(layout.width); }
    /// 1 rem in CSS px at that width.
    [[nodiscard]] double rem() const { return prepared.rem(layout.width); }
};

/// The text style of a part; null for pictures.
const project::TextStyle* styleOf(const LaidOutRow& row, const layout::LaidPart& part);
/// `picture` or the role's name.
std::string kindOf(const LaidOutRow& row, const layout::LaidPart& part);
/// The part in the project; null if the project does not have it.
const project::Part* sourceOf(const LaidOutRow& row, std::size_t card, const layout::LaidPart& part);
/// The basis for resolving lengths: `em` is 1 em and `percent` is 100 %, both in CSS px.
units::LengthBasis basisOf(const LaidOutRow& row, double em, double percent = 0);

}  // namespace tenter::draw
