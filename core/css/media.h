// Evaluating media conditions at a width. Media Queries 4.
#pragma once

#include <string_view>
#include <vector>

namespace tenter::css {

/// The value of a condition, in this order: `and` is the smaller of two, `or` the larger. Media Queries 4
/// § 3.2.
enum class Truth { False, Unknown, True };

/// The value of a list of media queries on a screen whose viewport, scrollbar included, is `width` CSS px
/// wide. em and rem are the initial 16 px (§ 1.3). A condition that does not depend on the width, such as
/// `(hover: hover)`, is Unknown; an invalid query is False (§ 3.2).
Truth mediaHolds(std::string_view queries, double width);

/// The same as True or False on a screen of a computer: 900 px high, in light colours and landscape, with a
/// pointer that hovers, without reduced motion. Conditions on anything else are false.
bool holdsOnScreen(std::string_view queries, double width);

/// True if the value depends on the height of the viewport at some width.
bool dependsOnHeight(std::string_view queries);

/// The widths in CSS px, ascending, at which `mediaHolds` changes: its value just below or just above
/// differs. Without those of lengths that depend on the viewport themselves.
std::vector<double> mediaWidths(std::string_view queries);

}  // namespace tenter::css
