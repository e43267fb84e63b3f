// Measuring the container of a row and the root size of its page in a browser.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "markup/theme.h"
#include "markup/theme_page.h"
#include "markup/tree.h"

namespace tenter::markup {

/// Opens an HTML page in a browser and returns the text that its script posts to the address `result`, which
/// is relative to that of the page. Empty if that fails.
using Browse = std::function<std::optional<std::string>(const std::string& html)>;

/// The page at one viewport width, as a browser lays it out. CSS px.
struct MeasuredPage {
    double width = 0;
    double left = 0;     ///< left edge of the content box of the row's parent
    double content = 0;  ///< its width
    double rootSize = 0;
};

/// A page whose script measures the parent of `row` at every whole viewport width from `narrowest` to
/// `widest` (CSS px). The page of the row is in a frame of it: scripts are off there and nothing is fetched.
std::string measuringPage(const Tree& page, NodeId row, const std::vector<PageSheet>& sheets, int narrowest,
                          int widest);

/// What such a page posts; empty if it is anything else.
std::optional<std::vector<MeasuredPage>> readMeasured(std::string_view text);

/// Puts measured values into `theme` where they differ from it by more than 0.5 px, and adds a caution for
/// each property that differs. False if nothing differs.
bool correct(ThemePage& theme, const std::vector<MeasuredPage>& measured);

}  // namespace tenter::markup
