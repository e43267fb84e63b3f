// The breakpoints in the theme's CSS of an imported row, as dotted lines on the width axis.
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
    /// Reads the theme of a project. Returns true if it differs from the one before.
    bool read(const project::Project& project);
    /// Empty for rows that are not imported.
    [[nodiscard]] const std::vector<css::Breakpoint>& all() const { return all_; }
    /// All breakpoints in one sentence, for screen readers; empty if there are none.
    [[nodiscard]] QString description() const;
    /// The breakpoints near position `x` (px), a line for each; may be empty.
    [[nodiscard]] QString toolTipAt(double x) const;
    /// Paints a line from the top to `bottom` (px) for each, with the name of the theme.
    void paint(QPainter& painter, const row::Ink& ink, double bottom) const;

private:
    const WidthScale& scale_;
    project::SharedText css_;
    std::vector<css::Breakpoint> all_;
};

}  // namespace tenter::desktop::axis
