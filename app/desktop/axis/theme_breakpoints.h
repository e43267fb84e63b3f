// The breakpoints in the theme's CSS of an imported row, and the ends of the page ranges, as dotted lines on
// the width axis.
#pragma once

#include <QPainter>
#include <QString>
#include <vector>

#include "axis/width_scale.h"
#include "css/breakpoints.h"
#include "project/project.h"
#include "row/ink.h"

namespace tenter::desktop::axis {

class ThemeBreakpoints {
public:
    explicit ThemeBreakpoints(const WidthScale& scale) : scale_(scale) {}
    /// Reads the theme and the page ranges of a project. Returns true if they differ from those before.
    bool read(const project::Project& project);
    /// The breakpoints of the theme; empty for rows that are not imported.
    [[nodiscard]] const std::vector<css::Breakpoint>& all() const { return all_; }
    /// The ends of the page ranges, rising, CSS px.
    [[nodiscard]] const std::vector<double>& pageRangeEnds() const { return pageRangeEnds_; }
    /// All of them in sentences, for screen readers; empty if there are none.
    [[nodiscard]] QString description() const;
    /// What is near position `x` (px), a line for each; may be empty.
    [[nodiscard]] QString toolTipAt(double x) const;
    /// Paints a line from the top to `bottom` (px) for each, with the name of what changes there.
    void paint(QPainter& painter, const row::Ink& ink, double bottom) const;

private:
    const WidthScale& scale_;
    project::SharedText css_;
    std::vector<css::Breakpoint> all_;
    std::vector<double> pageRangeEnds_;
};

}  // namespace tenter::desktop::axis
