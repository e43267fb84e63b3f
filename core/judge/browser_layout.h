// What a browser laid out, as a page that measures itself sends it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "layout/layout.h"

namespace tenter::judge {

/// Lengths in CSS px; boxes are border boxes from the page's top left corner. CSSOM View 1 § 6.
struct BrowserPart {
    std::size_t card = 0;  ///< indices as in the project
    std::size_t part = 0;
    layout::Box box;
    std::optional<double> fontSize;      ///< text parts: as computed by the browser
    std::optional<std::uint32_t> lines;  ///< text parts
};

struct BrowserLayout {
    double width = 0;  ///< the viewport's, as the browser says it
    layout::Box row;
    std::vector<layout::Box> cards;
    std::vector<BrowserPart> parts;
    /// Moves everything down or up the page, so that the row's top is at `y`, CSS px: where other things of
    /// the page stand above the row, only it is judged.
    void moveRowTo(double y);
};

/// Readings from `{"layouts": [{"width", "row": [x, y, width, height], "cards": [box …], "parts": [{"name":
/// "CARD.PART", "box", "fontSize", "lines"} …]} …]}`. Whatever else stands there gives none, and `wrong` says
/// what is wrong and where.
std::optional<std::vector<BrowserLayout>> parseBrowserLayouts(std::string_view json, std::string& wrong);

}  // namespace tenter::judge
