// What every laid-out text must satisfy.
#pragma once

#include <cmath>
#include <span>

#include "fuzz.h"
#include "text/lines.h"

namespace tenter::fuzz {

/// Requires that `lines` (of type text::Line) cover all clusters of `paragraph`, in order, each once, and
/// that widths and slacks are numbers.
inline void requireCovered(const text::Paragraph& paragraph, std::span<const text::Line> lines) {
    std::uint32_t at = 0;
    for (const text::Line& line : lines) {
        require(line.first == at, "a line starts where the one before it ended");
        require(line.first <= line.end && line.end <= line.next, "a line ends after it starts");
        require(std::isfinite(line.width) && std::isfinite(line.slack), "width and slack are finite");
        require(line.slack <= 1, "slack is at most 1");
        at = line.next;
    }
    require(at == paragraph.clusters().size(), "the lines cover the text");
    require(lines.size() <= paragraph.clusters().size() + 1, "there are not more lines than clusters");
}

}  // namespace tenter::fuzz
