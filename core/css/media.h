// Media conditions at a width. Media Queries 4.
#pragma once

#include <string_view>
#include <vector>

namespace tenter::css {

/// In this order: the lesser of two is true where both must be, the greater where one is enough. Media
/// Queries 4 § 3.2.
enum class Truth { False, Unknown, True };

/// Whether a list of media queries holds on a screen whose viewport is `width` CSS px wide, scrollbars
/// included. em and rem are of the initial 16 px (§ 1.3). What the width does not decide, such as `(hover:
/// hover)`, is Unknown; a query that is no query holds nowhere (§ 3.2).
Truth mediaHolds(std::string_view queries, double width);

/// The widths, in CSS px and rising, at which `mediaHolds` changes: it is otherwise just below or just above.
/// Of lengths that themselves follow the viewport none is told.
std::vector<double> mediaWidths(std::string_view queries);

}  // namespace tenter::css
