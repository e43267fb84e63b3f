// Rounding to whole device pixels, as browser engines paint.
#pragma once

#include "layout/layout.h"

namespace tenter::draw {

/// A rectangle in whole device px.
struct DeviceBox {
    int x = 0;
    int y = 0;
    int width = 0;
    int height = 0;
    [[nodiscard]] bool isEmpty() const { return width <= 0 || height <= 0; }
    friend bool operator==(const DeviceBox&, const DeviceBox&) = default;
};

/// The position and scale of the page on a grid of device px.
struct DeviceGrid {
    double scale = 1;  ///< device px per CSS px
    int left = 0;      ///< left edge of the page, whole device px, so that scrolling moves text by whole px
    int top = 0;       ///< top edge of the page, device px

    [[nodiscard]] double x(double css) const { return left + css * scale; }
    [[nodiscard]] double y(double css) const { return top + css * scale; }
    /// A box (CSS px) rounded to whole device px, as browser engines paint boxes.
    [[nodiscard]] DeviceBox snapped(const layout::Box& box) const;
    /// A border width (CSS px) in whole device px: rounded down, but at least 1 unless it is 0. CSS
    /// Backgrounds 3 § 3.3 and CSS Values 4 § 6 ("snap a length as a border width").
    [[nodiscard]] int borderWidth(double css) const;
    /// The baseline of a line of `part` in whole device px.
    [[nodiscard]] int baseline(const layout::LaidPart& part, const layout::LaidLine& line) const;
};

}  // namespace tenter::draw
