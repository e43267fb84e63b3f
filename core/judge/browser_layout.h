// The layout of a row in a browser, as the measuring page sends it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "layout/layout.h"

namespace tenter::judge {

/// A part as the browser laid it out. Lengths in CSS px; boxes are border boxes, from the page's top left
/// corner. CSSOM View 1 § 6.
struct BrowserPart {
    std::size_t card = 0;  ///< index of the card in the project
    std::size_t part = 0;  ///< index of the part in the card
    layout::Box box;
    std::optional<double> fontSize;      ///< computed font size (text parts)
    std::optional<std::uint32_t> lines;  ///< number of lines (text parts)
};

/// A row as the browser laid it out at one viewport width. Lengths in CSS px.
struct BrowserLayout {
    double width = 0;  ///< viewport width that the browser reports
    layout::Box row;
    std::vector<layout::Box> cards;
    std::vector<BrowserPart> parts;
    /// Moves everything vertically, so that the top of the row is at `y` (CSS px). Used if the page has other
    /// content above the row.
    void moveRowTo(double y);
};

/// The layouts in `{"layouts": [{"width", "row": [x, y, width, height], "cards": [box …], "parts": [{"name":
/// "CARD.PART", "box", "fontSize", "lines"} …]} …]}`. Empty for any other text; `wrong` then has the place
/// and what is wrong there.
std::optional<std::vector<BrowserLayout>> parseBrowserLayouts(std::string_view json, std::string& wrong);

}  // namespace tenter::judge
