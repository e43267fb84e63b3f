// The gaps and paddings of the row that can be dragged, and their values.
#pragma once

#include <QPointF>
#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "session/layout_cache.h"

namespace tenter::desktop::row::editing {

/// A gap or a padding of a row as it is laid out.
struct Spacing {
    std::string path;          ///< of the setting, as in project::setSetting
    QString name;              ///< `Column gap`, `Card padding, left`
    layout::Box area;          ///< that it takes on the page, CSS px
    bool across = true;        ///< dragged to the left and right; otherwise up and down
    double direction = 1;      ///< growth, CSS px, for each CSS px to the right or down
    units::Length value;       ///< as it is set
    units::LengthBasis basis;  ///< of its relative units
    std::size_t index = 0;     ///< of the card that it is in, or that the gap follows
    /// True for one gap or padding, maybe before and after a change.
    [[nodiscard]] bool isSameAs(const Spacing& other) const {
        return path == other.path && index == other.index;
    }
};

/// All gaps and paddings of a row that are lengths.
std::vector<Spacing> spacingsOf(const LaidOutRow& row);
/// The gap or padding at a point of the page (CSS px); empty if there is none. `reach`: a narrower one is
/// found in an area of that width, CSS px.
std::optional<Spacing> spacingAt(const LaidOutRow& row, const QPointF& page, double reach);

/// The value of `spacing` when it has grown by `by` CSS px: in its own unit, rounded to 1 px, 0.05 em,
/// 0.05 rem, 0.5 % or 0.1 vw, and not below 0.
units::Length grown(const Spacing& spacing, double by);

/// `1.5 em`, `24 px`.
QString lengthTitle(const units::Length& length);

}  // namespace tenter::desktop::row::editing
