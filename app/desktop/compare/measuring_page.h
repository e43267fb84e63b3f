// The page that frames a row, sets its width, and reads what the browser makes of it.
#pragma once

#include <QByteArray>

namespace tenter::desktop::compare {

/// HTML. It frames `row`, waits until that has its fonts and pictures, then posts readings to `readings`, as
/// judge::parseBrowserLayouts takes them. Each answer, `{"widths": […]}` in CSS px, says what to read next; none ends
/// it. What fails is posted to `failed`, in words. Addresses are relative to its own.
QByteArray measuringPage();

}  // namespace tenter::desktop::compare
