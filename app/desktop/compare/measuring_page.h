// The page that the browser opens: it shows the row in a frame, sets its width and measures its layout.
#pragma once

#include <QByteArray>

namespace tenter::desktop::compare {

/// The page as HTML. It shows the page `row` in a frame, waits for its fonts and pictures, and posts layouts
/// to `readings` as JSON for judge::parseBrowserLayouts. Each answer, `{"widths": […]}` in CSS px, lists the
/// widths to measure next; an empty list ends the run. Errors are posted to `failed` as text. All addresses
/// are relative to the page's own.
QByteArray measuringPage();

}  // namespace tenter::desktop::compare
