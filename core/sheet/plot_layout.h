// A plot as lines and labels, which SVG and PDF draw alike.
#pragma once

#include <string>
#include <vector>

#include "sheet/content.h"

namespace tenter::sheet {

enum class Ink { Text, Quiet, Line, Faint, Accent };

struct PlotPoint {
    double x = 0;
    double y = 0;
};

/// A line through points.
struct PlotLine {
    std::vector<PlotPoint> points;
    Ink ink = Ink::Line;
    double width = 0.5;
    std::vector<double> dashes;  ///< lengths of dashes and gaps; empty: solid
};

enum class Anchor { Start, Middle, End };

/// A label; `y` is its baseline.
struct PlotLabel {
    PlotPoint at;
    Anchor anchor = Anchor::Start;
    std::string text;
    Ink ink = Ink::Quiet;
};

/// A plot of a given size. Lengths in the unit of that size.
struct PlotLayout {
    double width = 0;
    double height = 0;
    double textSize = 0;
    std::vector<PlotLine> lines;
    std::vector<PlotLabel> labels;
};

/// Lays out `plot` in a box. The names of the series are at their ends, so that no legend is needed.
PlotLayout layOutPlot(const Plot& plot, double width, double height, double textSize);

}  // namespace tenter::sheet
