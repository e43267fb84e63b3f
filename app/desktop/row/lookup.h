// Finding parts in a layout, and the settings behind them.
#pragma once

#include <QPointF>
#include <optional>

#include "document/viewing.h"

namespace tenter::desktop::row {

/// The part under a point of the page (CSS px), as an index into `Layout::parts`; the uppermost if several.
std::optional<std::size_t> partAt(const layout::Layout& layout, const QPointF& page);
/// The card that holds part `part` of `Layout::parts`.
std::size_t cardOf(const layout::Layout& layout, std::size_t part);
/// The card under a point of the page.
std::optional<std::size_t> cardAt(const layout::Layout& layout, const QPointF& page);
/// A selection as an index into `Layout::parts`, and back.
std::optional<std::size_t> partOf(const layout::Layout& layout, const Viewing::Selection& selection);
Viewing::Selection selectionOf(const layout::Layout& layout, std::size_t part);

/// The part's style; null for pictures.
const project::TextStyle* styleOf(const Viewing& viewing, const layout::LaidPart& part);
/// `picture` or the role's name.
std::string kindOf(const Viewing& viewing, const layout::LaidPart& part);
/// The part as the project has it; null if the layout is of another project.
const project::Part* sourceOf(const Viewing& viewing, std::size_t card, const layout::LaidPart& part);
/// What the part's lengths are relative to; `percent` is 100 % of what the property refers to, CSS px.
units::LengthBasis basisOf(const Viewing& viewing, double em, double percent = 0);

/// Font size in CSS px of `role` at this width; empty if nothing uses the role.
std::optional<double> fontSizeHere(const Viewing& viewing, const std::string& role);

}  // namespace tenter::desktop::row
