// The columns of a grid container, by viewport width, where they do not depend on content. CSS Grid 2 § 7, §
// 8 and § 12.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "css/cascade.h"

namespace tenter::markup {

/// A column of a grid-template-columns value.
struct GridTrack {
    css::Line least;
    css::Line most;                 ///< the same as `least` for a fixed track
    double share = 0;               ///< of the space that is left, in fr
    bool dependsOnContent = false;  ///< auto, min-content, max-content and fit-content()
    bool stretches = false;         ///< auto, or minmax() up to auto
};

/// The tracks of a template, and the names of its lines.
struct GridTemplate {
    std::vector<GridTrack> tracks;
    std::vector<std::pair<std::string, int>> lines;  ///< name and number of the line, from 1
    /// The last line with that name; 0 if there is none.
    [[nodiscard]] int find(std::string_view name) const;
};

/// Reads lengths in the context of the grid; `whole` is its content width.
using GridLength = std::function<std::optional<css::Line>(const std::string&)>;

/// How many times a column is repeated: `least` is its smallest width, `collapses` is true for auto-fit,
/// which has no columns without items.
using GridRepetitions = std::function<int(const css::Line& least, bool collapses)>;

/// Reads the values of grid-template-columns and grid-template-areas. Empty for what is not supported, such
/// as automatic repetitions next to other columns.
std::optional<GridTemplate> gridTemplateOf(std::string_view columns, std::string_view areas,
                                           const css::Line& whole, const GridLength& length,
                                           const GridRepetitions& repetitions);

/// The columns between two lines, the first from 1: `1 / 3`, `main`, `span 2`, `2 / -1`. Empty for automatic
/// places and for what is not read.
struct GridPlace {
    int from = 1;
    int to = 2;
};
std::optional<GridPlace> gridPlaceOf(const std::string& start, const std::string& end,
                                     const GridTemplate& grid);

/// The widths of the tracks. `isEmpty` says of each whether no item is in it, so that content takes no room.
/// Empty if a width depends on content.
std::optional<std::vector<css::Line>> gridColumns(const GridTemplate& grid, const css::Line& whole,
                                                  const css::Line& gap, const std::vector<bool>& isEmpty,
                                                  css::Styles& styles);

}  // namespace tenter::markup
